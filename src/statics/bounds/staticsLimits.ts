/**
 * What equilibrium alone allows: contacts push, the loads lie in their box, the heights are whatever they like
 * (docs/mechanics-bounds.md, B16).
 */

import type { Dictionary } from "./dictionary";
import { ascend } from "./moves";
import type { Objective } from "./objectives";
import type { ContactSystem } from "./system";
import { movesHeights } from "./variables";

/** The greatest an objective can be, scaled, and the forces and loads that make it so. */
export interface StaticsLimit {
  readonly value: number;
  readonly dictionary: Dictionary;
}

export function staticsLimits(system: ContactSystem, objectives: readonly Objective[]): readonly StaticsLimit[] {
  const { unknowns, variables, contacts } = system;
  // Forces in balance depend on forces and loads alone: the gaps and what moves them fall out of the dictionary.
  const balance = system.start.without([
    unknowns.parameter,
    ...contacts.map((_, j) => unknowns.gap(j)),
    ...variables.flatMap((variable, k) => (movesHeights(variable) ? [unknowns.variable(k)] : [])),
  ]);
  return objectives.map((objective) => {
    const dictionary = balance.copy();
    dictionary.maximise(objective.reactions, objective.weights);
    ascend(dictionary, null, 50 * (dictionary.rows + dictionary.columns));
    dictionary.refresh();
    return { value: dictionary.objective, dictionary };
  });
}
