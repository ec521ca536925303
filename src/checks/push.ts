/** The sideways push on a step: where it acts and what slides under it. */

import { footprintOf } from "../floor";
import { standFrame } from "../geometry";
import { centreHeight, gravity, pushForce, type Sliding, type StandOnFeet, sliding } from "../statics";
import type { StandContext, StepContext } from "./context";

/** Rise per metre of the bay's floor in x and y; 0 without a bay. */
export const slopeOf = ({ plan }: StepContext): readonly [number, number] => plan.bay?.floor.slope ?? [0, 0];

/** Height at which a part is pushed, m: its top while it hangs or is set down, else its centre of gravity. */
export function pushHeight({ model, plan, step }: StepContext, part: number): number {
  if (step.setDown || step.craneHolds) return plan.piece.depth;
  return centreHeight(model.parts[part]!, plan.piece.masses) ?? 0;
}

/** Sliding of the piece on its tops and of each stand on the floor, all parts together. */
export function slidingOf(context: StepContext): Sliding {
  const { criteria, stands, step } = context;
  const push = pushForce(context.weight, slopeOf(context), criteria);
  const horizontal: [number, number] = [0, 0];
  for (const { force } of step.loads) {
    horizontal[0] += force[0];
    horizontal[1] += force[1];
  }
  const sliders = stands.map((stand) => ({
    reaction: stand.level.reaction ?? 0,
    friction: criteria.friction[stand.type.top.material],
    selfWeight: stand.type.selfMass * gravity,
  }));
  return sliding(sliders, push, horizontal, criteria.floorFriction);
}

/** A stand on its feet as planned, in the piece frame. */
export function standOnFeet({ placement, type, level }: StandContext): StandOnFeet {
  const frame = standFrame(placement);
  return {
    feet: footprintOf(type, placement.height, frame).feet,
    middle: frame.origin,
    centre: level.centre === null ? frame.origin : [level.centre.s, level.centre.t],
    square: [frame.cos, frame.sin],
    topWidth: type.top.width,
    height: placement.height + placement.shim,
    reaction: level.reaction ?? 0,
    selfWeight: type.selfMass * gravity,
  };
}
