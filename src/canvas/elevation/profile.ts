/**
 * What the elevation draws: heights, with everything that departs from a straight line at the height of the tops drawn so
 * many times as large, gaps, shims and the bend alike, so that what touches touches on the drawing too. Lengths in m.
 */

import { pieceFrame, standFrame, toOuter } from "../../geometry";
import { type Placement, type Plan, type Point, partsOf, type Step, standOf, typeOf } from "../../plan";
import type { StandLevel, StepLevel } from "../../statics";

export interface Profile {
  /** How many times as large departures are drawn; 1 = true to scale. */
  readonly times: number;
  readonly stands: readonly StandProfile[];
  readonly parts: readonly PartProfile[];
  /** Height of the floor under the axis, m. */
  readonly floor: (s: number) => number;
}

export interface StandProfile {
  readonly placement: Placement;
  /** Height of its floor. */
  readonly floor: number;
  /** Height of the bearing surface as drawn, shim included. */
  readonly top: number;
  /** The shim as drawn. */
  readonly shim: number;
  /** null where the stand bears or nothing is known. */
  readonly gap: number | null;
  /** Underside of the piece over it, as drawn; null where no part is over it. */
  readonly underside: number | null;
}

export interface PartProfile {
  readonly from: number;
  readonly to: number;
  /** (s, height of the datum plane as drawn), ascending in s. */
  readonly datum: readonly Point[];
}

/** A straight line: height at s = 0 and rise per metre. */
interface Line {
  readonly at0: number;
  readonly rise: number;
}
const on = ({ at0, rise }: Line, s: number): number => at0 + rise * s;

/** Height of the floor under a point of the piece's axis, m; 0 at the bay's origin. */
export function floorUnder(plan: Pick<Plan, "bay" | "piece">): (s: number) => number {
  const slope = plan.bay?.floor.slope ?? level;
  if (slope[0] === 0 && slope[1] === 0) return () => 0;
  const frame = pieceFrame(plan.piece.pose);
  return (s) => {
    const [x, y] = toOuter(frame, [s, 0]);
    return slope[0] * x + slope[1] * y;
  };
}
const level = [0, 0] as const;

/** Height of the underside over the datum plane at s, m; on a step the lower surface. */
export function undersideAt(plan: Plan, s: number): number {
  const heights = plan.piece.underside
    .filter(({ from, to }) => s >= from && s <= to)
    .map(({ from, to, z }) => z[0] + ((z[1] - z[0]) * (s - from)) / (to - from));
  return heights.length === 0 ? 0 : Math.min(...heights);
}

/** Where the underside has a corner or a step between two places, and these two, m, ascending. */
export function undersideStations(plan: Plan, from: number, to: number): readonly number[] {
  const corners = plan.piece.underside.flatMap((segment) => [segment.from, segment.to]);
  return [from, ...corners.filter((s) => s > from && s < to).sort((a, b) => a - b), to];
}

/** The profile of a step. `enlarge` picks the factor from the greatest departure, m. */
export function profileOf(
  plan: Plan,
  step: Step,
  answer: StepLevel | null,
  placements: readonly Placement[],
  enlarge: (departure: number) => number,
): Profile {
  const floor = floorUnder(plan);
  const stands = placements.map((placement) => {
    const answered = answer?.stands.find(({ stand }) => stand === placement.stand) ?? null;
    const above = floor(placement.s);
    const touch = above + placement.height + standOf(plan, placement.stand).heightOffset + placement.shim;
    return { placement, answered, floor: above, contact: touch - undersideAt(plan, placement.s) };
  });
  const bearing = stands.filter(({ answered }) => bears(answered));
  const reference = referenceFor((bearing.length > 0 ? bearing : stands).map(pointOf), floor);
  const curves = (answer?.parts ?? []).map(({ curves }) => curves);
  const parts = partsOf(plan.piece, step).map(([from, to], index) => {
    const curve = curves[index] ?? null;
    const datum: Point[] =
      curve === null
        ? [from, to].map((s) => [s, on(reference, s)])
        : curve.s.map((s, station) => [s, curve.v[station]!]);
    return { from, to, datum };
  });
  const departures = [
    ...parts.flatMap(({ datum }) => datum.map(([s, z]) => Math.abs(z - on(reference, s)))),
    ...stands.map(({ placement, contact }) => Math.abs(contact - on(reference, placement.s))),
  ];
  const times = enlarge(Math.max(0, ...departures));
  const drawn = (s: number, z: number): number => on(reference, s) + times * (z - on(reference, s));
  const drawnParts = parts.map((part) => ({ ...part, datum: part.datum.map(([s, z]): Point => [s, drawn(s, z)]) }));
  return {
    times,
    floor,
    parts: drawnParts,
    stands: stands.map(({ placement, answered, floor: above, contact }) => {
      const lift = undersideAt(plan, placement.s);
      const part = drawnParts.find(({ from, to }) => placement.s >= from && placement.s <= to);
      const underside = part === undefined ? null : heightOn(part.datum, placement.s) + lift;
      const top = drawn(placement.s, contact) + lift;
      return {
        placement,
        floor: above,
        // What bears is pressed down as far as the piece goes.
        top: underside !== null && bears(answered) ? Math.min(top, underside) : top,
        shim: shimAsDrawn(placement, times),
        gap: answered?.gap === null || answered?.gap === undefined || answered.gap <= 0 ? null : answered.gap,
        underside,
      };
    }),
  };
}

/**
 * A shim is drawn as much larger as all departures, though not taller than most of its stand; a packing that makes up a
 * step of the underside is drawn true to scale.
 */
function shimAsDrawn({ shim, height }: Placement, times: number): number {
  return shim > thickestShim ? shim : Math.min(shim * times, height * 0.6);
}

/** What is thicker is a packing and no shim, m. */
const thickestShim = 0.012;

const bears = (stand: StandLevel | null): boolean => stand?.reaction != null && stand.reaction > 0;
const pointOf = ({ placement, contact }: { readonly placement: Placement; readonly contact: number }): Point => [
  placement.s,
  contact,
];

/**
 * The line that departures are drawn from: along the floor at the mean height of the points, so that stands of one height
 * are drawn so; where that leaves too much to be drawn larger, the straight line nearest to the points (least squares).
 */
function referenceFor(points: readonly Point[], floor: (s: number) => number): Line {
  const count = points.length;
  if (count === 0) return { at0: heightWithoutStands, rise: floor(1) - floor(0) };
  const ms = points.reduce((sum, [s]) => sum + s, 0) / count;
  const mz = points.reduce((sum, [, z]) => sum + z, 0) / count;
  const through = (rise: number): Line => ({ at0: mz - rise * ms, rise });
  const alongFloor = through(floor(1) - floor(0));
  const most = Math.max(...points.map(([s, z]) => Math.abs(z - on(alongFloor, s))));
  const spread = points.reduce((sum, [s]) => sum + (s - ms) ** 2, 0);
  if (most <= drawnAlongFloor || spread < 1e-9) return alongFloor;
  return through(points.reduce((sum, [s, z]) => sum + (s - ms) * (z - mz), 0) / spread);
}

/** Departures from a line along the floor that are drawn as such, m; a piece that lies more askew is drawn askew. */
const drawnAlongFloor = 0.015;

/** Where a piece without stands is drawn, m over the floor. */
const heightWithoutStands = 0.6;

/** Height of a line of points at s, m. */
export function heightOn(points: readonly Point[], s: number): number {
  const after = points.findIndex(([at]) => at >= s);
  if (after < 0) return points.at(-1)![1];
  if (after === 0) return points[0]![1];
  const [[s0, z0], [s1, z1]] = [points[after - 1]!, points[after]!];
  return s1 === s0 ? z1 : z0 + ((z1 - z0) * (s - s0)) / (s1 - s0);
}

/** Round factors for what is drawn larger than it is. */
const factors = [1, 2, 5, 10, 20, 50, 100, 200] as const;

/** How tall the greatest departure may be drawn: px at most, and of the height of the stands. */
const departureOnScreen = { most: 30, least: 8, ofHeight: 0.5 } as const;

/**
 * The factor to draw a departure (m) with, at a scale (px a metre), over stands so high (m): the one before while it
 * serves, so that the picture does not jump, else the best one.
 */
export function factorFor(departure: number, scale: number, height: number, before: number): number {
  const pixels = departure * scale;
  const most = Math.max(
    departureOnScreen.least,
    Math.min(departureOnScreen.most, height * scale * departureOnScreen.ofHeight),
  );
  const drawn = pixels * before;
  if (drawn <= most && (drawn >= most / 4 || before === factors.at(-1))) return before;
  return pixels === 0 ? 1 : (factors.filter((factor) => factor * pixels <= most * 0.8).at(-1) ?? 1);
}

/** Half the width of a stand's top seen from the side, and where its feet and shoulders are, m along s from its middle. */
export function sideOf(
  plan: Plan,
  placement: Placement,
): {
  readonly half: number;
  readonly legs: readonly { readonly shoulder: number; readonly foot: number }[];
  readonly plate: number;
} {
  const type = typeOf(plan, placement.stand);
  const { cos, sin } = standFrame(placement);
  const along = (square: number, across: number): number => square * cos - across * sin;
  const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
  const half = (Math.abs(type.top.width * cos) + Math.abs(type.top.length * sin)) / 2;
  const square = type.top.width / 2;
  const spacing = type.legSpacing / 2;
  const signs = [
    [-1, -1],
    [1, -1],
    [-1, 1],
    [1, 1],
  ] as const;
  return {
    half,
    plate: (Math.abs(type.foot.length * cos) + Math.abs(type.foot.width * sin)) / 2,
    legs: signs.map(([i, j]) => ({
      shoulder: along(i * square, j * spacing),
      foot: along(
        i * (square + placement.height * tangent(type.splay.along)),
        j * (spacing + placement.height * tangent(type.splay.across)),
      ),
    })),
  };
}

/** The profile on its way from one to another, `share` from 0 to 1: what both have moves, what is new is there. */
export function between(before: Profile, after: Profile, share: number): Profile {
  const toward = (a: number, b: number): number => a + (b - a) * share;
  return {
    ...after,
    parts: after.parts.map((part, index) => {
      const was = before.parts[index]?.datum;
      if (was === undefined) return part;
      return { ...part, datum: part.datum.map(([s, z]): Point => [s, toward(heightOn(was, s), z)]) };
    }),
    stands: after.stands.map((stand) => {
      const was = before.stands.find(({ placement }) => placement.stand === stand.placement.stand);
      if (was === undefined) return stand;
      return {
        ...stand,
        top: toward(was.top, stand.top),
        shim: toward(was.shim, stand.shim),
        underside:
          was.underside === null || stand.underside === null ? stand.underside : toward(was.underside, stand.underside),
      };
    }),
  };
}
