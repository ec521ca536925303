/** The sideways push and what holds against it. */

import { gravity, pushForce } from "../../statics";
import { pushHeight, slidingOf, slopeOf } from "../push";
import type { Entry } from "./entry";
import { sum } from "./text";

export const pushingEntries = {
  push: {
    label: "push",
    formula: "H = max(share × W, least push) + W × slope of the floor",
    source: "temporary-works custom",
    unit: "N",
    of: ({ context }, put) => {
      const { criteria, plan, weight } = context;
      const slope = plan.bay?.floor.slope ?? [0, 0];
      return {
        value: pushForce(weight, slope, criteria),
        text: `max(${put(criteria.horizontalFraction)} * ${put(weight)}, ${put(criteria.pushLeast)}) + ${put(weight)} * hypot(${put(slope[0])}, ${put(slope[1])})`,
      };
    },
  },

  "reserve against rolling over": {
    label: "reserve against rolling over",
    formula: "righting ÷ (overturning + a person at the farthest point beyond the line + H·z)",
    source: "customary overturning factor; push: temporary-works custom",
    unit: "1",
    of: ({ context, edge, part = 0 }, put) => {
      const { criteria, level } = context;
      if (edge === undefined || !level.stable) return null;
      const force = level.parts[part]!.resultant.force;
      const z = Math.abs(pushHeight(context, part));
      const H = pushForce(force, slopeOf(context), criteria);
      const { righting, overturning, person } = edge;
      if (overturning + person + H * z <= 0) return null;
      return {
        value: righting / (overturning + person + H * z),
        text: `${put(righting)} / (${put(overturning)} + ${put(person)} + ${put(H)} * ${put(z)})`,
      };
    },
  },

  "reserve against sliding on the tops": {
    label: "reserve against sliding on the tops",
    formula: "Σ μ·R ÷ H⁺, H⁺ the push and the step's own horizontal loads",
    source: "friction: low side of published ranges; push: temporary-works custom",
    unit: "1",
    of: ({ context }, put) => {
      const { onTops, push } = slidingOf(context);
      if (onTops === null || context.noReactions) return null;
      const { friction } = context.criteria;
      const held = context.stands.map(({ type, level }) => {
        const reaction = level.reaction ?? 0;
        const mu = friction[type.top.material];
        return { text: `${put(mu)} * ${put(reaction)}`, value: mu * reaction };
      });
      return { value: onTops, text: `(${sum(held, put)}) / ${put(push)}` };
    },
  },

  "reserve against sliding on the floor": {
    label: "reserve against sliding on the floor",
    formula: "floor friction × (R + the stand's own weight) ÷ its share of the push, H⁺·R ÷ ΣR",
    source: "friction: low side of published ranges; push: temporary-works custom",
    unit: "1",
    of: ({ context, stand }, put) => {
      if (stand === undefined || context.noReactions) return null;
      const { onFloor, push } = slidingOf(context);
      const value = onFloor[stand.index] ?? null;
      const reaction = stand.level.reaction ?? 0;
      if (value === null) return null;
      const all = context.stands.map(({ level }) => ({ text: put(level.reaction ?? 0), value: level.reaction ?? 0 }));
      const held = `${put(context.criteria.floorFriction)} * (${put(reaction)} + ${put(stand.type.selfMass)} * ${put(gravity)})`;
      return { value, text: `${held} / (${put(push)} * ${put(reaction)} / (${sum(all, put)}))` };
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;
