/** What fails, without a word said: "good up to" and the mends ask this of hundreds of changed plans. */

import type { Layout, Plan, Step } from "../plan";
import { stepContextOf, stepPartsOf } from "./assemble";
import type { FactOf } from "./facts";
import type { Outcome } from "./families/fact";
import { floorOutcomes, stepOutcomes } from "./findings";
import type { Answers } from "./parts";

/** The checks of a step that fail, without those of its layout's floor. */
export function failingInStep(plan: Plan, step: Step, answers: Answers): readonly string[] {
  const context = stepContextOf(plan, step, stepPartsOf(plan, step, answers));
  return context === null ? [] : failingOf(stepOutcomes(context));
}

/** The checks of a layout's floor that fail. */
export function failingOnFloor(plan: Plan, layout: Layout, answers: Answers): readonly string[] {
  return failingOf(floorOutcomes(plan, { floor: answers.floor(plan, layout) }));
}

const failingOf = (outcomes: readonly Outcome[]): readonly string[] =>
  outcomes.flatMap(({ facts }) => facts.filter(({ verdict }) => verdict === "fails").map(checkOf));

/** What makes a check the same check in a changed plan: its code, and its stand where the code speaks of one. */
export function checkOf({ code, stand }: Pick<FactOf<"tips">, "stand"> & { readonly code: string }): string {
  return codesOfOneStep.has(code) || stand === null ? code : `${code} ${stand}`;
}

/** One finding a step, whichever stand governs. */
const codesOfOneStep: ReadonlySet<string> = new Set(["tilts", "slides", "slab"]);
