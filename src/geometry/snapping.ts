/** Stations that a dragged stand is drawn to, each with the name it is said by. Metres. */

import { type Layout, type Piece, partsOf, pieceLength, type StandId, type Step } from "../plan";

/** A place on a scale. */
export interface Station {
  readonly value: number;
  /** What is said when something snaps to it. */
  readonly name: string;
}

/**
 * The station that `value` snaps to, or null where none is within `reach`, m: the nearest, of equally near ones the
 * first. Only where no station is in reach, the nearest whole multiple of `roundStep` (m; null = none) that is.
 */
export function snap(
  value: number,
  stations: readonly Station[],
  reach: number,
  roundStep: number | null = null,
): Station | null {
  const distance = (station: Station) => Math.abs(station.value - value);
  const nearest = stations.reduce<Station | null>(
    (best, station) => (best === null || distance(station) < distance(best) ? station : best),
    null,
  );
  if (nearest !== null && distance(nearest) <= reach) return nearest;
  if (roundStep === null || roundStep <= 0) return null;
  const round: Station = { value: Math.round(value / roundStep) * roundStep, name: "round number" };
  return distance(round) <= reach ? round : null;
}

/**
 * Stations along the piece (s) for one stand of a layout: ends, joints, masses, the special spots for so many
 * stands, other stands' mirror images about the middle. Those off the piece are left out.
 */
export function stationsAlong(
  piece: Piece,
  layout: Layout,
  step: Pick<Step, "parts" | "absent"> | null,
  dragged: StandId,
): Station[] {
  const length = pieceLength(piece);
  const others = layout.placements.filter(({ stand }) => stand !== dragged);
  const stations: Station[] = [
    { value: 0, name: piece.ends.datum },
    { value: length, name: piece.ends.far },
    { value: length / 2, name: "middle" },
    ...jointsOf(piece, step, length).map((value) => ({ value, name: "joint" })),
    ...piece.masses.flatMap((mass) =>
      mass.kind === "point" && !step?.absent.includes(mass.id) ? [{ value: mass.s, name: `under ${mass.name}` }] : [],
    ),
    ...specialSpots(layout.placements.length).map(({ value, name }) => ({ value: value * length, name })),
    ...others.map(({ stand, s }) => ({ value: length - s, name: `mirror of ${stand}` })),
  ];
  return stations.filter(({ value }) => value >= 0 && value <= length);
}

/** Stations across the piece (t): its axis, masses, the other stands. */
export function stationsAcross(piece: Piece, layout: Layout, dragged: StandId): Station[] {
  const others = layout.placements.filter(({ stand }) => stand !== dragged);
  return [
    { value: 0, name: "axis" },
    ...piece.masses.map(({ t, name }) => ({ value: t, name: `under ${name}` })),
    ...others.map(({ stand, t }) => ({ value: t, name: `in line with ${stand}` })),
  ];
}

/** Where parts end and where the stiffness changes, the ends of the piece left out. */
function jointsOf(piece: Piece, step: Pick<Step, "parts"> | null, length: number): number[] {
  const parts = step === null ? [] : partsOf(piece, step).flat();
  const segments = piece.stiffness === "rigid" ? [] : piece.stiffness.flatMap(({ from, to }) => [from, to]);
  return [...new Set([...parts, ...segments])].filter((s) => s > 0 && s < length);
}

/**
 * Distance from the end over the length, where two supports of a uniform bar shorten its axis least (Bessel): the root
 * near 0.22 of a⁴ + 18a³ − 11a² − 3a + 1 = 0, the derivative of ∫y′².
 */
export const besselPoint = 0.220309940683479;

/** The same where the ends come level: (1 − 1/√3)/2. G. B. Airy, Mem. R. Astron. Soc. 15 (1846). */
export const airyPoint = (1 - 1 / Math.sqrt(3)) / 2;

/** Overhang over spacing at which three rigid level supports of a uniform bar carry equally: 18x² + 8x − 7 = 0. */
const threeEqual = (-8 + Math.sqrt(64 + 4 * 18 * 7)) / 36;

/** The same for four, equally spaced: 12x² + 10x − 7 = 0. */
const fourEqual = (Math.sqrt(109) - 5) / 12;

/** Spots known for a uniform piece on so many stands, as fractions of its length. */
export function specialSpots(standCount: number): Station[] {
  switch (standCount) {
    case 2:
      return [...mirrored(besselPoint, "least sag (Bessel)"), ...mirrored(airyPoint, "ends level (Airy)")];
    case 3:
      return mirrored(threeEqual / (2 + 2 * threeEqual), "equal reactions, three stands");
    case 4: {
      const end = fourEqual / (3 + 2 * fourEqual);
      const inner = (1 + fourEqual) / (3 + 2 * fourEqual);
      return [...mirrored(end, "equal reactions, four stands"), ...mirrored(inner, "equal reactions, four stands")];
    }
    default:
      return [];
  }
}

function mirrored(value: number, name: string): Station[] {
  return [
    { value, name },
    { value: 1 - value, name },
  ];
}
