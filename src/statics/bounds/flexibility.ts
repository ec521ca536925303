/**
 * Flexibility of one part in closed form, clamped at its middle (docs/mechanics-bounds.md, B3 to B5). What the clamp
 * adds is a motion as a rigid body, which the contact problem leaves free.
 */

import type { LoadItem, PartModel, PointLoad } from "../model";

/** An action on one section: upward force at (s, t), or couples on the section rotation ψ and the twist θ. */
export interface Action {
  readonly s: number;
  /** N, upward. */
  readonly force: number;
  /** N·m, generalised force on ψ. */
  readonly onBending: number;
  /** N·m, generalised force on θ, that of the force's own arm included. */
  readonly onTwist: number;
}

/** Integrals from the clamp to a distance z on one side of it. */
interface Integrals {
  /** ∫ 1/EI, ∫ ζ/EI, ∫ ζ²/EI. */
  readonly i0: number;
  readonly i1: number;
  readonly i2: number;
  /** ∫ 1/kGA. */
  readonly shear: number;
  /** ∫ 1/GJ. */
  readonly torsion: number;
}

interface Piece extends Integrals {
  readonly end: number;
  readonly EI: number;
  readonly kGA: number;
  readonly GJ: number;
}

export interface Flexibility {
  /** s of the clamp, m. */
  readonly middle: number;
  /** Upward displacement at (s, t) under an action, m. */
  displacement(s: number, t: number, action: Action): number;
}

/** The two halves of a part as cantilevers from its middle. */
export function flexibilityOf(part: PartModel): Flexibility {
  const middle = (part.from + part.to) / 2;
  const right = piecesOf(
    part.segments.map((segment) => ({ ...segment, from: segment.from - middle, to: segment.to - middle })),
  );
  const left = piecesOf(
    part.segments.map((segment) => ({ ...segment, from: middle - segment.to, to: middle - segment.from })).reverse(),
  );
  return {
    middle,
    displacement(s, t, action) {
      const side = s >= middle ? 1 : -1;
      const reach = side * (s - middle);
      const arm = side * (action.s - middle);
      if (arm <= 0 || reach <= 0) return 0;
      const { i0, i1, i2, shear, torsion } = integralsTo(Math.min(reach, arm), side === 1 ? right : left);
      // B4: v = F·[z·z₀·∫1/EI − (z + z₀)·∫ζ/EI + ∫ζ²/EI + ∫1/kGA] + M·[z·∫1/EI − ∫ζ/EI], both to the lesser of z, z₀
      const bending = action.force * (reach * arm * i0 - (reach + arm) * i1 + i2 + shear);
      const rotation = side * action.onBending * (reach * i0 - i1);
      return bending + rotation + t * action.onTwist * torsion;
    },
  };
}

function piecesOf(segments: readonly { from: number; to: number; EI: number; kGA: number; GJ: number }[]): Piece[] {
  const pieces: Piece[] = [];
  let start = 0;
  let sum: Integrals = { i0: 0, i1: 0, i2: 0, shear: 0, torsion: 0 };
  for (const { to, EI, kGA, GJ } of segments) {
    if (to <= start) continue;
    pieces.push({ end: to, EI, kGA, GJ, ...sum });
    sum = advanced(sum, start, to, { EI, kGA, GJ });
    start = to;
  }
  return pieces;
}

function advanced(sum: Integrals, from: number, to: number, at: { EI: number; kGA: number; GJ: number }): Integrals {
  return {
    i0: sum.i0 + (to - from) / at.EI,
    i1: sum.i1 + (to ** 2 - from ** 2) / (2 * at.EI),
    i2: sum.i2 + (to ** 3 - from ** 3) / (3 * at.EI),
    shear: sum.shear + (to - from) / at.kGA,
    torsion: sum.torsion + (to - from) / at.GJ,
  };
}

function integralsTo(z: number, pieces: readonly Piece[]): Integrals {
  let start = 0;
  for (const piece of pieces) {
    if (z <= piece.end) return advanced(piece, start, z, piece);
    start = piece.end;
  }
  const last = pieces.at(-1);
  return last === undefined ? { i0: 0, i1: 0, i2: 0, shear: 0, torsion: 0 } : advanced(last, startOf(pieces), z, last);
}

function startOf(pieces: readonly Piece[]): number {
  return pieces.at(-2)?.end ?? 0;
}

/** Gauss–Legendre points and weights on [−1, 1], exact to degree five. */
const gauss: readonly (readonly [number, number])[] = [
  [-Math.sqrt(3 / 5), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(3 / 5), 5 / 9],
];

/**
 * The actions that a load is equal to, as far as displacements at contacts go: between contacts and changes of section
 * the influence is a cubic, the intensity linear, so three Gauss points a stretch are exact (B5).
 */
export function actionsOf(load: LoadItem, breaks: readonly number[]): Action[] {
  if (load.kind === "point") return [actionOf(load)];
  const stops = [load.from, ...breaks.filter((s) => s > load.from && s < load.to), load.to];
  return stops.slice(1).flatMap((to, index) => {
    const from = stops[index]!;
    return gauss.map(([ξ, weight]) => {
      const s = (from + to) / 2 + (ξ * (to - from)) / 2;
      const share = (s - load.from) / (load.to - load.from);
      const intensity = load.intensity[0] + share * (load.intensity[1] - load.intensity[0]);
      const down = (intensity * weight * (to - from)) / 2;
      return { s, force: -down, onBending: 0, onTwist: -down * load.t };
    });
  });
}

function actionOf(load: Pick<PointLoad, "s" | "down" | "momentS" | "momentT">): Action {
  return { s: load.s, force: -load.down, onBending: -load.momentS, onTwist: -load.momentT };
}
