/** Whether a stand is over its rating because its shim is too thick. */

import type { Plan, StandId, Step } from "../plan";
import { layoutOf, setDownFactorOf, typeOf } from "../plan";
import { boundsPart, levelPart } from "./engine";
import { sameThickness, shopShims } from "./mends/shopShims";
import { knownValue } from "./parts";
import { withPlacement } from "./variations";

/**
 * How much too thick the shim under a stand is, m: without so much of it no stand of the step is over its rating. All of
 * it first, then as little as a shop thickness. null where no such change of this one shim does it.
 *
 * @param asPlanned whether to look at the level solution alone, as long as the bounds are not there.
 */
export function shimTooThick(plan: Plan, step: Step, stand: StandId, asPlanned: boolean): number | null {
  const shim = layoutOf(plan, step).placements.find((placement) => placement.stand === stand)?.shim ?? 0;
  if (shim < sameThickness) return null;
  const parts = shopShims.filter((thickness) => thickness < shim - sameThickness);
  const enough = (less: number) => {
    const thinner = withPlacement(plan, step.layout, stand, { shim: Math.max(0, shim - less) });
    return withinRatings(thinner, step, levelShares) && (asPlanned || withinRatings(thinner, step, greatestShares));
  };
  return [shim, ...parts].find(enough) ?? null;
}

type Shares = (plan: Plan, step: Step) => readonly (number | null)[];

/** Every stand that has a rating is within it. */
function withinRatings(plan: Plan, step: Step, sharesOf: Shares): boolean {
  const shares = sharesOf(plan, step);
  const factor = setDownFactorOf(plan, step);
  return layoutOf(plan, step).placements.every(({ stand }, index) => {
    const { ratedLoad } = typeOf(plan, stand);
    const share = shares[index] ?? null;
    return share !== null && (ratedLoad === null || share * factor <= ratedLoad);
  });
}

const levelShares: Shares = (plan, step) =>
  (knownValue(levelPart(plan, step))?.stands ?? []).map(({ reaction }) => reaction);

const greatestShares: Shares = (plan, step) =>
  (knownValue(boundsPart(plan, step))?.stands ?? []).map(({ over }) =>
    over === null ? null : Math.max(over.most, 2 * Math.max(...over.legFramesMost)),
  );
