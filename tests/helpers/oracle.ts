/**
 * A second, slower way to the level reactions: the force method, dense, in 32 digits.
 *
 * The part is clamped at its left end and let move there as a rigid body; its flexibility between any two contacts comes
 * from virtual work, by numerical integration. In the contact forces r and the motion a of the clamp the problem is
 *
 *   w = (F + K⁻¹)·r + N·a + u₀ − h,   Nᵀ·r = R,   0 ≤ r ⊥ w ≥ 0.
 *
 * Which contacts bear is first found by an interior-point method (J. Nocedal, S. Wright, Numerical Optimization, 2nd ed.,
 * chapter 16.6), then corrected one at a time until forces and gaps of the solved equations have the right signs.
 */

import type { LoadItem, PartModel } from "../../src/statics";
import { solveDoubleDouble } from "./doubleDouble";
import { solveDense } from "./solveDense";

export interface OracleAnswer {
  /** N, by contact. */
  readonly reactions: readonly number[];
}

/** Null where the signs could not be settled (contacts that just touch, motions that nothing holds). */
export function oracle(part: PartModel): OracleAnswer | null {
  const problem = forceProblem(part);
  let bearing = interiorPoint(problem);
  for (let turn = 0; turn < 4 * part.contacts.length; turn++) {
    const solved = solveWith(problem, bearing);
    if (solved === null) return null;
    let worst = 1e-12;
    let change = -1;
    for (let j = 0; j < bearing.length; j++) {
      // In units of the weight: a pull of a bearing contact, or what a free one is pressed by.
      const wrong = bearing[j] ? -solved.r[j]! : -solved.w[j]! / problem.give[j]!;
      if (wrong > worst) {
        worst = wrong;
        change = j;
      }
    }
    if (change < 0) return { reactions: solved.r.map((force) => Math.max(0, force) * problem.weight) };
    bearing = bearing.map((bears, j) => (j === change ? !bears : bears));
  }
  return null;
}

/** Everything in units of the weight W and of the part's length l; displacements in units of W/mean k. */
export interface ForceProblem {
  readonly weight: number;
  readonly flexibility: readonly (readonly number[])[];
  /** 1/k of each contact. */
  readonly give: readonly number[];
  /** (1, (s − from)/l, t/l) of each contact. */
  readonly arms: readonly (readonly [number, number, number])[];
  /** h − u₀. */
  readonly rise: readonly number[];
  readonly resultant: readonly [number, number, number];
}

/** The contact problem in the contact forces. */
export function forceProblem(part: PartModel): ForceProblem {
  const { contacts, from, to } = part;
  const l = to - from;
  const unit = contacts.reduce((total, contact) => total + contact.stiffness, 0) / contacts.length;
  let [weight, momentS, momentT] = [0, 0, 0];
  for (const { s, down, aboutPsi, aboutTheta } of part.loads.flatMap((load) => pointsOf(load, part))) {
    weight += down;
    momentS += down * (s - from) + aboutPsi;
    momentT += aboutTheta;
  }
  const scaled = (displacement: number) => (displacement * unit) / weight;
  const first = contacts[0]!.height;
  const hanging = contacts.map(({ s, t }) => {
    let u = 0;
    for (const load of part.loads) {
      for (const at of pointsOf(load, part, s)) {
        u -= at.down * bending(part, s, at.s) + at.aboutPsi * slope(part, s, at.s);
        u -= at.aboutTheta * t * twist(part, s, at.s);
      }
    }
    return u;
  });
  return {
    weight,
    flexibility: contacts.map((a) =>
      contacts.map((b) => unit * (bending(part, a.s, b.s) + a.t * b.t * twist(part, a.s, b.s))),
    ),
    give: contacts.map((contact) => unit / contact.stiffness),
    arms: contacts.map(({ s, t }) => [1, (s - from) / l, t / l]),
    rise: contacts.map(({ height }, j) => scaled(height - first - hanging[j]!)),
    resultant: [1, momentS / (weight * l), momentT / (weight * l)],
  };
}

interface LoadPoint {
  readonly s: number;
  readonly down: number;
  readonly aboutPsi: number;
  readonly aboutTheta: number;
}

/** Loads as points: a line load by four Gauss points on every stretch that no border cuts. */
function pointsOf(load: LoadItem, part: PartModel, ...borders: readonly number[]): LoadPoint[] {
  if (load.kind === "point") {
    return [{ s: load.s, down: load.down, aboutPsi: load.momentS, aboutTheta: load.momentT }];
  }
  const cuts = [load.from, load.to, ...borders, ...part.segments.map((segment) => segment.to)]
    .filter((s) => s >= load.from && s <= load.to)
    .sort((a, b) => a - b);
  return cuts.slice(1).flatMap((to, index) => {
    const from = cuts[index]!;
    return gauss.map(([x, weight]) => {
      const s = from + x * (to - from);
      const share = (s - load.from) / (load.to - load.from);
      const q = load.intensity[0] + share * (load.intensity[1] - load.intensity[0]);
      const down = q * weight * (to - from);
      return { s, down, aboutPsi: 0, aboutTheta: down * load.t };
    });
  });
}

/** Gauss–Legendre, four points on [0, 1]. */
const gauss: readonly (readonly [x: number, weight: number])[] = [-1, 1].flatMap((side) =>
  [-1, 1].map((inner) => {
    const x = side * Math.sqrt(3 / 7 + inner * (2 / 7) * Math.sqrt(6 / 5));
    return [(1 + x) / 2, (18 - inner * Math.sqrt(30)) / 72] as const;
  }),
);

/** ∫ over the stretch from the clamp to the nearer of two places. */
function integral(
  part: PartModel,
  end: number,
  integrand: (x: number, segment: PartModel["segments"][number]) => number,
): number {
  let total = 0;
  for (const segment of part.segments) {
    const to = Math.min(segment.to, end);
    if (to <= segment.from) break;
    for (const [x, weight] of gauss) {
      total += weight * (to - segment.from) * integrand(segment.from + x * (to - segment.from), segment);
    }
  }
  return total;
}

/** Rise at s under 1 N upward at p: virtual work of moments and shears. */
function bending(part: PartModel, s: number, p: number): number {
  return integral(part, Math.min(s, p), (x, { EI, kGA }) => ((s - x) * (p - x)) / EI + 1 / kGA);
}

/** Rise at s under a unit couple on ψ at p, which turns what lies right of it downward by −1. */
function slope(part: PartModel, s: number, p: number): number {
  return integral(part, Math.min(s, p), (x, { EI }) => (s - x) / EI);
}

function twist(part: PartModel, s: number, p: number): number {
  return integral(part, Math.min(s, p), (_, { GJ }) => 1 / GJ);
}

/** The equations with given bearing contacts, in 32 digits: forces, and w of all contacts. */
function solveWith(problem: ForceProblem, bearing: readonly boolean[]): { r: number[]; w: number[] } | null {
  const { flexibility, give, arms, rise, resultant } = problem;
  const active = bearing.flatMap((bears, j) => (bears ? [j] : []));
  const matrix = [
    ...active.map((i) => [...active.map((j) => flexibility[i]![j]! + (i === j ? give[i]! : 0)), ...arms[i]!]),
    ...[0, 1, 2].map((axis) => [...active.map((j) => arms[j]![axis]!), 0, 0, 0]),
  ];
  const x = solveDoubleDouble(matrix, [...active.map((i) => rise[i]!), ...resultant]);
  if (x === null) return null;
  const r = bearing.map(() => 0);
  for (const [index, j] of active.entries()) r[j] = x[index]!;
  const motion = x.slice(active.length);
  const w = r.map((force, i) => {
    const bent = flexibility[i]!.reduce((total, entry, j) => total + entry * r[j]!, 0);
    const moved = arms[i]!.reduce((total, arm, axis) => total + arm * motion[axis]!, 0);
    return bent + give[i]! * force + moved - rise[i]!;
  });
  return { r, w };
}

/** Contacts whose force outweighs their gap once an interior-point method has run. */
function interiorPoint({ flexibility, give, arms, rise, resultant }: ForceProblem): boolean[] {
  const n = give.length;
  let r = new Array<number>(n).fill(1 / n);
  let z = new Array<number>(n).fill(Math.max(...give));
  let a = [0, 0, 0];
  const D = flexibility.map((row, i) => row.map((entry, j) => entry + (i === j ? give[i]! : 0)));
  for (let turn = 0; turn < 80; turn++) {
    const mu = r.reduce((total, force, i) => total + force * z[i]!, 0) / n;
    // Newton on D·r + N·a − rise − z = 0, Nᵀ·r = R, r·z = σ·μ.
    const dual = D.map(
      (row, i) =>
        row.reduce((total, entry, j) => total + entry * r[j]!, 0) +
        arms[i]!.reduce((total, arm, axis) => total + arm * a[axis]!, 0) -
        rise[i]! -
        z[i]!,
    );
    const primal = resultant.map(
      (value, axis) => arms.reduce((total, arm, j) => total + arm[axis]! * r[j]!, 0) - value,
    );
    const off = Math.max(...dual.map(Math.abs), ...primal.map(Math.abs));
    if (mu < 1e-13 && off < 1e-9) break;
    const target = 0.1 * mu;
    const matrix = [
      ...D.map((row, i) => [...row.map((entry, j) => entry + (i === j ? z[i]! / r[i]! : 0)), ...arms[i]!]),
      ...[0, 1, 2].map((axis) => [...arms.map((arm) => arm[axis]!), 0, 0, 0]),
    ];
    const right = [...dual.map((value, i) => -value + target / r[i]! - z[i]!), ...primal.map((value) => -value)];
    const step = solveDense(matrix, right);
    const dr = step.slice(0, n);
    const dz = dr.map((change, i) => target / r[i]! - z[i]! - (z[i]! / r[i]!) * change);
    let length = 1;
    for (let i = 0; i < n; i++) {
      if (dr[i]! < 0) length = Math.min(length, (-0.95 * r[i]!) / dr[i]!);
      if (dz[i]! < 0) length = Math.min(length, (-0.95 * z[i]!) / dz[i]!);
    }
    if (!(length > 1e-12)) break;
    r = r.map((force, i) => force + length * dr[i]!);
    z = z.map((gap, i) => gap + length * dz[i]!);
    a = a.map((motion, axis) => motion + length * step[n + axis]!);
  }
  return r.map((force, i) => force * give[i]! > z[i]!);
}
