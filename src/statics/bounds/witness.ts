import type { Plan } from "../../plan";
import type { Witness } from "../answers";
import type { StepModel } from "../model";
import type { ContactSystem } from "./system";
import type { BoxVariable } from "./variables";

/** How far a scaled value may be off a bound and be that bound (no unit). */
const atBound = 1e-12;

/** A point of the box as the result file names it; what is at its nominal value is left out. */
export function witnessAt(
  system: ContactSystem,
  model: StepModel,
  plan: Pick<Plan, "piece">,
  x: ArrayLike<number>,
  stiffness: number,
): Witness {
  const heights: Record<string, number> = {};
  const tilts: Record<string, number> = {};
  const bows: Record<string, number> = {};
  const masses: Record<string, number> = {};
  const centres: Record<string, [number, number]> = {};
  const loads: Record<string, number> = {};
  system.variables.forEach((variable, k) => {
    const value = valueAt(variable, system.half[k]!, x[k]!);
    if (value === variable.nominal) return;
    switch (variable.kind) {
      case "height":
        heights[model.stands[variable.stand]!.stand] = value;
        return;
      case "tilt":
        tilts[model.stands[variable.stand]!.stand] = value;
        return;
      case "bow":
        bows[variable.part] = value;
        return;
      case "mass":
        masses[plan.piece.masses[variable.mass]!.id] = value;
        return;
      case "centre": {
        const { id } = plan.piece.masses[variable.mass]!;
        centres[id] ??= [0, 0];
        centres[id][variable.axis === "s" ? 0 : 1] = value;
        return;
      }
      case "load":
        loads[variable.load] = value;
        return;
      default:
        variable satisfies never;
    }
  });
  return { heights, tilts, bows, masses, centres, loads, stiffness };
}

/** The variable's value at a scaled x, exactly on its bound where x is. */
function valueAt(variable: BoxVariable, half: number, x: number): number {
  const value = variable.nominal + x * half;
  if (Math.abs(value - variable.to) <= atBound * half) return variable.to;
  if (Math.abs(value - variable.from) <= atBound * half) return variable.from;
  return value;
}
