/** Least and most of every reaction over the box of what is not known, for one step (docs/mechanics-bounds.md). */

import type { Plan, Step } from "../../plan";
import type { Witness } from "../answers";
import { assembleStep } from "../assemble";
import type { StepModel } from "../model";
import type { StandBounds, StandLimits, StepBounds } from "./answers";
import { boxTipsOf, stableAsWeighed } from "./boxTips";
import { answersOf, type Case, casesOf, type Group, groupsOf, limitsOf, prove } from "./group";
import { ended, type Pausing } from "./pauses";
import { type BoxVariable, boxOf } from "./variables";

/**
 * Least and most of every stand, attained, with the statics limits. Nothing is proved yet: `certified` is null unless
 * statics already allows no more.
 */
export function boundsOf(plan: Plan, step: Step): StepBounds {
  return ended(boundsSearch(plan, step));
}

/** The same with proved outer bounds; the proof may find better values than `boundsOf`. */
export function certifiedBoundsOf(plan: Plan, step: Step): StepBounds {
  return ended(certifiedBoundsSearch(plan, step));
}

/** `boundsOf`, pausing after every climb. */
export function* boundsSearch(plan: Plan, step: Step): Pausing<StepBounds> {
  const model = assembleStep(plan, step);
  return yield* searchOf(plan, model, boxOf(plan, step, model), false);
}

/** `certifiedBoundsOf`, pausing after every climb and every branch of a proof, then with what is known. */
export function* certifiedBoundsSearch(plan: Plan, step: Step): Pausing<StepBounds> {
  const model = assembleStep(plan, step);
  return yield* searchOf(plan, model, boxOf(plan, step, model), true);
}

/**
 * Bounds of an assembled step over a box.
 *
 * @param plan gives the masses their names.
 * @param proving false = only what is attained.
 */
export function* searchOf(
  plan: Pick<Plan, "piece">,
  model: StepModel,
  box: readonly BoxVariable[],
  proving: boolean,
): Pausing<StepBounds> {
  if (!stableAsWeighed(model)) return { status: "unstable" };
  const edges = boxTipsOf(model, box);
  const groups = groupsOf(model);
  if (edges.length > 0) {
    const stands = inOrder(model, groups, (group) => limitsOf(model, box, group), noLimits(model));
    return { status: "box tips", edges, stands };
  }
  const cases = new Map<Group, readonly Case[]>();
  for (const group of groups) cases.set(group, yield* casesOf(model, box, group));
  const soFar = (): StepBounds => ({
    status: "bounded",
    stands: inOrder(model, groups, (group) => answersOf(plan, model, group, cases.get(group)!), noBounds(model)),
  });
  if (proving) for (const _ of prove([...cases.values()])) yield soFar;
  return soFar();
}

/** One answer a stand: those of its group, or that of a stand without contact. */
function inOrder<Answer>(
  model: StepModel,
  groups: readonly Group[],
  answersOf: (group: Group) => readonly Answer[],
  without: (stand: number) => Answer,
): readonly Answer[] {
  const answers: Answer[] = model.stands.map((_, stand) => without(stand));
  for (const group of groups) {
    const own = answersOf(group);
    group.stands.forEach((stand, index) => {
      answers[stand] = own[index]!;
    });
  }
  return answers;
}

const noLimits =
  (model: StepModel) =>
  (stand: number): StandLimits => ({ stand: model.stands[stand]!.stand, staticsLeast: 0, staticsMost: 0 });

const nowhere: Witness = { heights: {}, tilts: {}, bows: {}, masses: {}, centres: {}, loads: {}, stiffness: 1 };

const noBounds =
  (model: StepModel) =>
  (stand: number): StandBounds => ({
    ...noLimits(model)(stand),
    least: 0,
    most: 0,
    leastAt: nowhere,
    mostAt: nowhere,
    legFramesMost: [0, 0],
    outer: { least: 0, most: 0 },
    certified: { least: 0, most: 0 },
    gap: 0,
  });
