/** The slab under the feet of one step: forces of the feet from the greatest shares of their leg frames. */

import { allowableSlabStress, footprintOf, type LoadedFoot, slabFootForce, slabStresses, standInBay } from "../floor";
import type { Plan, Slab, Step } from "../plan";
import { criteriaOf, layoutOf, setDownFactorOf, typeOf } from "../plan";
import { gravity } from "../statics";
import type { StepBounds, StepSlab } from "./parts";

/** null where the step has no greatest reactions. All feet of the layout stand on the slab at once. */
export function slabUnder(plan: Plan, step: Step, slab: Slab, { stands }: StepBounds): StepSlab | null {
  const { placements } = layoutOf(plan, step);
  const feet: LoadedFoot[] = [];
  for (const [index, placement] of placements.entries()) {
    const frames = stands?.[index]?.over?.legFramesMost;
    if (frames === undefined) return null;
    const type = typeOf(plan, placement.stand);
    const { feet: middles } = footprintOf(type, placement.height, standInBay(placement, plan.piece.pose));
    for (const [foot, at] of middles.entries()) {
      // Frame − then +, two feet each.
      const share = frames[foot < 2 ? 0 : 1];
      const force = slabFootForce(share, setDownFactorOf(plan, step), type.selfMass * gravity);
      feet.push({ at, force, plateArea: type.foot.length * type.foot.width });
    }
  }
  const stresses = slabStresses(slab, feet);
  return {
    allowed: allowableSlabStress(slab, criteriaOf(plan)),
    stands: placements.map(({ stand }, index) => ({ stand, feet: stresses.slice(4 * index, 4 * index + 4) })),
  };
}
