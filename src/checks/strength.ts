/** The strength checks of one step: over the level solution and the solutions at every witness. */

import type { Plan, Step } from "../plan";
import { criteriaOf, layoutOf, setDownFactorOf, typeOf } from "../plan";
import {
  assembleStep,
  bending,
  lateralBuckling,
  levelAt,
  perturb,
  type StepLevel,
  sag,
  sectionsOf,
  shear,
  topPressure,
  type WebForce,
  type Witness,
  webCripplingOver,
  webYieldingOver,
} from "../statics";

import type { StepContext } from "./context";
import type { StepBounds, StepStrength } from "./parts";

/** null where the step has no greatest reactions. */
export function strengthOf(
  plan: Plan,
  step: Step,
  level: StepLevel | null,
  bounds: StepBounds | null,
): StepStrength | null {
  const ranges = bounds?.stands?.flatMap(({ over }) => (over === null ? [] : [over])) ?? [];
  const { placements } = layoutOf(plan, step);
  if (level === null || bounds === null || bounds.stands === null || ranges.length < placements.length) return null;
  const model = assembleStep(plan, step);
  const at = (witness: Witness): StepLevel => levelAt(perturb(model, plan, witness), plan.piece.masses);
  const sections = sectionsOf(plan.piece);
  const factor = setDownFactorOf(plan, step);
  const { sagLimit, ...criteria } = criteriaOf(plan);
  const heaviest = ranges.map(({ mostAt }) => at(mostAt));
  // The pressure on the tops looks at the heaviest alone.
  const lightest = sections.length > 0 || sagLimit !== null ? ranges.map(({ leastAt }) => at(leastAt)) : [];
  const levels = [level, ...heaviest, ...lightest];
  return {
    bending: bending(sections, levels, factor, criteria),
    shear: shear(sections, levels, factor),
    lateralBuckling: lateralBuckling(sections, model, levels),
    sag: sagLimit === null ? null : sag(levels, factor, sagLimit),
    stands: placements.map(({ stand, s }, index) => {
      const parts = [...new Set(model.stands[index]!.intervals.map(({ part }) => part))];
      const force: WebForce = {
        s,
        parts: parts.map((part) => model.parts[part]!),
        topWidth: typeOf(plan, stand).top.width,
        force: ranges[index]!.most * factor,
      };
      return {
        stand,
        webYielding: webYieldingOver(sections, force),
        webCrippling: webCripplingOver(sections, force),
        pressure: topPressure(heaviest[index]!, stand, factor),
      };
    }),
  };
}

/** The solutions that the strength checks of a step look at: as planned and at every witness; none where there are none. */
export function levelsLookedAt({ level, model, plan, range }: StepContext): readonly StepLevel[] {
  const ranges = range.kind === "known" ? range.stands.flatMap(({ over }) => (over === null ? [] : [over])) : [];
  if (!level.stable || ranges.length === 0) return [];
  const witnesses = [...ranges.map(({ mostAt }) => mostAt), ...ranges.map(({ leastAt }) => leastAt)];
  return [level, ...witnesses.map((witness) => levelAt(perturb(model, plan, witness), plan.piece.masses))];
}
