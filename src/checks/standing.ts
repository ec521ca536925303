/** Where a person may stand on the piece in one step, for the page: contours of useful forces, and what a place takes. */

import { polygonHolds } from "../geometry";
import type { Plan, Step } from "../plan";
import { criteriaOf, layoutOf, setDownFactorOf, typeOf } from "../plan";
import { assembleStep, type StandingMap, type StepLevel, standingMap } from "../statics";
import { boundsPart, levelPart, tippingPart } from "./engine";
import { memoByIdentity } from "./memo";
import { known, knownValue, type Part, type PartStanding, pending, type StepStanding, type StepTipping } from "./parts";

/** The contours that are drawn: so many persons with tools. */
const persons = [1, 2, 5] as const;

/** The forces of the contours, N, ascending: a person with tools, two, and five. */
export function standingForces(plan: Pick<Plan, "criteria">): readonly number[] {
  const { personLoad } = criteriaOf(plan);
  return persons.map((count) => count * personLoad);
}

/** What each stand may carry without the set-down factor's share, N; null where the plate says nothing. */
function limitsOf(plan: Plan, step: Step): readonly (number | null)[] {
  const factor = setDownFactorOf(plan, step);
  return layoutOf(plan, step).placements.map(({ stand }) => {
    const { ratedLoad } = typeOf(plan, stand);
    return ratedLoad === null ? null : ratedLoad / factor;
  });
}

/** Works out the map of a step, pausing after each contour of each part. */
export function* standingSearch(plan: Plan, step: Step): Generator<void, Part<StepStanding>> {
  const level = knownValue(levelPart(plan, step));
  const tipping = knownValue(tippingPart(plan, step, boundsPart(plan, step)));
  if (level === null || tipping === null) return pending();
  const model = assembleStep(plan, step);
  const limits = limitsOf(plan, step);
  const parts: (PartStanding | null)[] = [];
  for (const [part, edges] of tipping.entries()) {
    if (!level.parts[part]!.stable) {
      parts.push(null);
      continue;
    }
    const contours: PartStanding["contours"][number][] = [];
    for (const force of standingForces(plan)) {
      yield;
      contours.push(...standingMap(model, level, part, edges, limits, [force]).contours);
    }
    parts.push({ contours });
  }
  return known(parts);
}

/** What one place of the piece takes, downward. */
export interface PlaceTakes {
  /** The part it lies on tips already. */
  readonly tips: boolean;
  /** The force that tips the part there, N; null = none does. */
  readonly tipping: number | null;
  /** The force at which a stand passes its rating or goes light, or that tips the part if that is less, N; null = none. */
  readonly level: number | null;
}

const mapOf = memoByIdentity(
  (plan: Plan, step: Step, level: StepLevel, tipping: StepTipping, part: number) => [
    level,
    tipping,
    part,
    plan.stands,
    plan.standTypes,
    setDownFactorOf(plan, step),
  ],
  (plan: Plan, step: Step, level: StepLevel, tipping: StepTipping, part: number): StandingMap =>
    standingMap(assembleStep(plan, step), level, part, tipping[part]!, limitsOf(plan, step), []),
);

/** What the piece takes at (s, t), m; null where no part of it is. Some tenths of a millisecond. */
export function standingAt(
  plan: Plan,
  step: Step,
  level: StepLevel,
  tipping: StepTipping,
  [s, t]: readonly [number, number],
): PlaceTakes | null {
  const part = tipping.findIndex(({ outline }) => outline.some((ring) => polygonHolds(ring, [s, t])));
  if (part < 0) return null;
  if (!level.parts[part]!.stable) return { tips: true, tipping: 0, level: 0 };
  return { tips: false, ...mapOf(plan, step, level, tipping, part).at(s, t) };
}
