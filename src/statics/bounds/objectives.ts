/** What is sought over the box: the most or the least of a stand's reaction, the most of one of its leg frames. */

import type { StandModel } from "../model";
import type { ContactSystem } from "./system";

/** To be made as great as can be: Σ weight·r over contacts of one stand. */
export interface Objective {
  readonly kind: "most" | "least" | "frame";
  /** Index of the stand in the model. */
  readonly stand: number;
  /** Unknowns (reactions; a reaction has the number of its contact) and their weights. */
  readonly reactions: readonly number[];
  readonly weights: readonly number[];
}

/** Least, most and the two leg frames of one stand, in this order. */
export function objectivesOf(system: ContactSystem, stand: number, model: StandModel): readonly Objective[] {
  const own = system.contacts.flatMap((contact, j) => (contact.stand === stand ? [j] : []));
  const reactions = own.map((j) => system.unknowns.reaction(j));
  const weighed = (kind: Objective["kind"], weight: (c: number) => number): Objective => ({
    kind,
    stand,
    reactions,
    weights: own.map((j) => weight(system.contacts[j]!.c)),
  });
  // Lever rule between the frames at ±legSpacing/2: R·(½ ∓ c/legSpacing)
  return [
    weighed("least", () => -1),
    weighed("most", () => 1),
    weighed("frame", (c) => 0.5 - c / model.legSpacing),
    weighed("frame", (c) => 0.5 + c / model.legSpacing),
  ];
}

/** An objective's value where the contacts carry `reactions`, scaled. */
export function valueIn(reactions: Float64Array, { reactions: contacts, weights }: Objective): number {
  let sum = 0;
  for (let i = 0; i < contacts.length; i++) sum += weights[i]! * reactions[contacts[i]!]!;
  return sum;
}
