/** A level solution by another way than the engine's, for beams of one stiffness. */

import type { PlanDocument } from "../../src/plan";

/** Standard gravity, m/s². */
const g = 9.80665;

/**
 * Reactions, N, of a beam of constant EI on springs that only push, by the force method: the deflection at the springs
 * that bear is that of the beam on the two outermost of them, each yielding by R/k, plus the height of its shim.
 * Flexibilities of the simple beam from the closed form of its bent line under a single load; a uniform load as 4000
 * single ones. Springs that would pull are left out until none does.
 */
export function onSprings(plan: PlanDocument): readonly number[] {
  const { piece, layouts, standTypes } = plan;
  const segments = piece.stiffness;
  if (segments === "rigid") throw new Error("expected a beam");
  const EI = segments[0]!.EI;
  const k = standTypes[0]!.stiffness!;
  const springs = layouts[0]!.placements.map(({ s, shim = 0 }) => ({ s, shim }));
  const loads = piece.masses.flatMap((mass) => {
    if (mass.kind === "point") return [{ s: mass.s, force: mass.mass * g }];
    const count = 4000;
    const step = (mass.to - mass.from) / count;
    return Array.from({ length: count }, (_, index) => ({
      s: mass.from + (index + 0.5) * step,
      force: mass.massPerLength[0] * step * g,
    }));
  });

  let bearing = springs.map((_, index) => index);
  for (;;) {
    const first = springs[bearing[0]!]!;
    const last = springs[bearing.at(-1)!]!;
    const span = last.s - first.s;
    // Simple beam with overhangs: v at x under a unit load at a, by the moment-area method over three cubic pieces.
    const cubic = (x: number) => (x > 0 ? x ** 3 / 6 : 0);
    const bent = (x: number, a: number) => {
      const right = (a - first.s) / span;
      const left = 1 - right;
      // EI·v'' = left⟨x − s₁⟩ + right⟨x − s₂⟩ − ⟨x − a⟩ + (moment of an overhang before s₁), v = 0 at both supports.
      const raw = (at: number) => left * cubic(at - first.s) + right * cubic(at - last.s) - cubic(at - a);
      const line = (raw(last.s) - raw(first.s)) / span;
      return -(raw(x) - raw(first.s) - line * (x - first.s)) / EI;
    };
    const inner = bearing.slice(1, -1);
    // Unknowns: the inner reactions. Height of the beam at i: chord of the end springs − bent + Σ R_j·bent.
    const ends = (force: number, s: number) => {
      const right = (force * (s - first.s)) / span;
      return [force - right, right] as const;
    };
    const total = loads.reduce(
      (sum, { s, force }) => {
        const [left, right] = ends(force, s);
        return [sum[0] + left, sum[1] + right] as const;
      },
      [0, 0] as readonly [number, number],
    );
    const chord = (at: number, left: number, right: number) => {
      const share = (at - first.s) / span;
      return (1 - share) * (first.shim - left / k) + share * (last.shim - right / k);
    };
    const rows = inner.map((i) => {
      const at = springs[i]!;
      const sag = loads.reduce((sum, { s, force }) => sum + force * bent(at.s, s), 0);
      const free = chord(at.s, total[0], total[1]) - sag;
      const matrix = inner.map((j) => {
        const other = springs[j]!;
        const [left, right] = ends(1, other.s);
        // A reaction lifts the beam there, and takes load off the ends, which so rise.
        const rise = chord(at.s, -left, -right) - chord(at.s, 0, 0);
        return bent(at.s, other.s) + rise + (i === j ? 1 / k : 0);
      });
      return { matrix, right: at.shim - free };
    });
    const forces = solve(
      rows.map(({ matrix }) => [...matrix]),
      rows.map(({ right }) => right),
    );
    const reactions = springs.map(() => 0);
    let [left, right] = total;
    for (const [index, i] of inner.entries()) {
      reactions[i] = forces[index]!;
      const [fromLeft, fromRight] = ends(forces[index]!, springs[i]!.s);
      left -= fromLeft;
      right -= fromRight;
    }
    reactions[bearing[0]!] = left;
    reactions[bearing.at(-1)!] = right;
    const pulled = bearing.filter((i) => reactions[i]! < 0);
    if (pulled.length === 0) return reactions;
    const worst = pulled.reduce((least, i) => (reactions[i]! < reactions[least]! ? i : least));
    bearing = bearing.filter((i) => i !== worst);
  }
}

/** Gaussian elimination with pivots. */
function solve(matrix: number[][], right: number[]): number[] {
  const size = right.length;
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column; row < size; row += 1)
      if (Math.abs(matrix[row]![column]!) > Math.abs(matrix[pivot]![column]!)) pivot = row;
    [matrix[column], matrix[pivot]] = [matrix[pivot]!, matrix[column]!];
    [right[column], right[pivot]] = [right[pivot]!, right[column]!];
    for (let row = 0; row < size; row += 1) {
      if (row === column) continue;
      const factor = matrix[row]![column]! / matrix[column]![column]!;
      for (let at = column; at < size; at += 1) matrix[row]![at]! -= factor * matrix[column]![at]!;
      right[row]! -= factor * right[column]!;
    }
  }
  return right.map((value, row) => value / matrix[row]![row]!);
}
