/** What a step's piece weighs, how certain that is, and how it was come by. */

import { type Mass, type Piece, partsOf, presentMasses, type Step, type WeightBasis } from "../../plan";
import { basisWords } from "../words";

/** kg of a mass that lies on the step's parts: a line mass counts only where a part is, its trapezium cut there. */
export function massPresent(mass: Mass, parts: readonly (readonly [number, number])[]): number {
  switch (mass.kind) {
    case "point":
      return mass.mass;
    case "line":
      return parts.reduce(
        (sum, [from, to]) => sum + trapezium(mass, Math.max(from, mass.from), Math.min(to, mass.to)),
        0,
      );
    default:
      return mass satisfies never;
  }
}

/** kg between two stations: (q(a) + q(b))/2 · (b − a), q linear. */
function trapezium(
  { from, to, massPerLength: [start, end] }: Extract<Mass, { kind: "line" }>,
  a: number,
  b: number,
): number {
  if (b <= a) return 0;
  const at = (s: number) => start + ((end - start) * (s - from)) / (to - from);
  return ((at(a) + at(b)) / 2) * (b - a);
}

/** The whole of a mass, kg. */
export function massOf(mass: Mass): number {
  return mass.kind === "point" ? mass.mass : massPresent(mass, [[mass.from, mass.to]]);
}

export interface WeightAccount {
  /** kg. */
  readonly mass: number;
  /** ± kg if every item errs the same way. */
  readonly within: number;
  /** Shares of the mass by how each is known, greatest first; null = not said. */
  readonly bases: readonly { readonly basis: WeightBasis | null; readonly share: number }[];
}

export function weightAccount(piece: Piece, step: Step): WeightAccount {
  const parts = partsOf(piece, step);
  const byBasis = new Map<WeightBasis | null, number>();
  let mass = 0;
  let within = 0;
  for (const item of presentMasses(piece, step)) {
    const present = massPresent(item, parts);
    mass += present;
    within += present * item.uncertainty;
    byBasis.set(item.basis, (byBasis.get(item.basis) ?? 0) + present);
  }
  const bases = [...byBasis]
    .map(([basis, part]) => ({ basis, share: mass > 0 ? part / mass : 0 }))
    .sort((a, b) => b.share - a.share);
  return { mass, within, bases };
}

/** "93 % by calculation, 7 % by a scale". */
export function basesText({ bases }: Pick<WeightAccount, "bases">): string {
  if (bases.length === 0) return "no weights yet";
  const words = ({ basis }: { basis: WeightBasis | null }) =>
    basis === null ? "not said how" : `by ${basisWords[basis]}`;
  if (bases.length === 1) return words(bases[0]!);
  return bases.map((one) => `${Math.round(one.share * 100)} % ${words(one)}`).join(", ");
}
