/** Making facts, and taking the worst of several. */

import type { CriterionKey, FindingCode, TopMaterial } from "../../plan";
import type { Basis, Fact, FactOf } from "../facts";
import { rankOf } from "../report";

/** A fact of a condition: no numbers compared. */
export const condition = { value: null, limit: null, unit: null, use: 0 } as const;

/** A fact that speaks of the whole step or layout. */
export const nowhere = { stand: null, at: null } as const;

export const byCriterion = (key: CriterionKey, material?: TopMaterial): Basis =>
  material === undefined ? { kind: "criterion", key } : { kind: "criterion", key, material };

export const byText = (text: string): Basis => ({ kind: "text", text });

/** The worst by verdict, then by how much of its limit it uses; null of none. The first of equals. */
export function worstFact<Code extends FindingCode>(facts: readonly FactOf<Code>[]): FactOf<Code> | null {
  let worst: FactOf<Code> | null = null;
  for (const fact of facts) if (worst === null || compareFacts(fact as Fact, worst as Fact) < 0) worst = fact;
  return worst;
}

/** Worst first. */
export function compareFacts(one: Pick<Fact, "verdict" | "use">, two: Pick<Fact, "verdict" | "use">): number {
  const byVerdict = rankOf(one.verdict) - rankOf(two.verdict);
  if (byVerdict !== 0) return byVerdict;
  return one.use === two.use ? 0 : two.use - one.use;
}

/** A check left out because optional data is null. */
export interface LeftOut {
  readonly code: FindingCode;
  readonly why: string;
}

/** What a family of checks says of one step or layout. */
export interface Outcome {
  readonly facts: readonly Fact[];
  readonly leftOut: readonly LeftOut[];
}

export const nothingFound: Outcome = { facts: [], leftOut: [] };
