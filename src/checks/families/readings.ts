/** What was found when the piece came down. */

import type { StepContext } from "../context";
import { nothingFound, type Outcome } from "./fact";

/** Readings do not narrow the bounds yet, and a plan that has some is told so. */
export function readingChecks({ step }: StepContext): Outcome {
  if (step.readings.length === 0) return nothingFound;
  const why = `the readings of step ${step.id} are not taken into account`;
  return { facts: [], leftOut: [{ code: "readings-disagree", why }] };
}
