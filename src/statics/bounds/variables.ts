/**
 * The box: everything about a set-down that is not known, as independent variables that enter heights or loads linearly
 * (docs/mechanics-bounds.md, B1).
 */

import type { Plan, Step } from "../../plan";
import { criteriaOf, layoutOf } from "../../plan";
import { gravity } from "../constants";
import type { StepModel } from "../model";

/** One unknown of the box, between `from` and `to`; `nominal` is its value in the level case. */
export type BoxVariable = { readonly from: number; readonly to: number; readonly nominal: number } & (
  | /** d, m: height of a stand's top (index in `StepModel.stands`). */ {
      readonly kind: "height";
      readonly stand: number;
    }
  | /** ε, m/m: a top out of level along itself. */ { readonly kind: "tilt"; readonly stand: number }
  | /** β, m: bow of a part. */ { readonly kind: "bow"; readonly part: number }
  | /** Factor on a mass (index in `piece.masses`). */ { readonly kind: "mass"; readonly mass: number }
  | /** δ, m: the centre of a point mass off along `axis`, with the force, N, that makes δ a couple. */ {
      readonly kind: "centre";
      readonly mass: number;
      readonly axis: "s" | "t";
      readonly force: number;
    }
  | /** Factor on a load of the step (its index). */ { readonly kind: "load"; readonly load: number }
);

/** The variables of a step's box that have a range and can move something. */
export function boxOf(plan: Plan, step: Step, model: StepModel): readonly BoxVariable[] {
  return [...heights(plan, step, model), ...bows(plan, step, model), ...weights(plan, step, model)].filter(
    (variable) => variable.to > variable.from,
  );
}

function heights(plan: Plan, step: Step, model: StepModel): BoxVariable[] {
  const { levelTolerance, topTilt } = criteriaOf(plan);
  const bearing = new Set(model.parts.flatMap((part) => part.contacts.map((contact) => contact.stand)));
  return layoutOf(plan, step).placements.flatMap((placement, stand): BoxVariable[] => {
    if (!bearing.has(stand)) return [];
    return [
      { kind: "height", stand, ...around(0, placement.levelTolerance ?? levelTolerance) },
      { kind: "tilt", stand, ...around(0, topTilt) },
    ];
  });
}

function bows(plan: Plan, step: Step, model: StepModel): BoxVariable[] {
  const { straightness } = criteriaOf(plan);
  return model.parts.map((part, index) => ({
    kind: "bow",
    part: index,
    ...around(0, step.bow ?? straightness * (part.to - part.from)),
  }));
}

/** Weights, centres and loads of whatever lies on a part. */
function weights(plan: Plan, step: Step, model: StepModel): BoxVariable[] {
  const sources = model.parts.flatMap((part) => part.loads.map((load) => load.source));
  const massesThere = new Set(sources.flatMap((source) => (source.kind === "mass" ? [source.index] : [])));
  const loadsThere = new Set(sources.flatMap((source) => (source.kind === "load" ? [source.index] : [])));
  const masses = plan.piece.masses.flatMap((mass, index): BoxVariable[] => {
    if (!massesThere.has(index)) return [];
    const factor: BoxVariable = { kind: "mass", mass: index, ...around(1, mass.uncertainty) };
    if (mass.kind === "line") return [factor];
    const force = mass.mass * (1 + mass.uncertainty) * gravity;
    if (force === 0) return [];
    return [
      factor,
      { kind: "centre", mass: index, axis: "s", force, ...around(0, mass.centreWithin.s) },
      { kind: "centre", mass: index, axis: "t", force, ...around(0, mass.centreWithin.t) },
    ];
  });
  const loads = step.loads.flatMap((_, index): BoxVariable[] =>
    loadsThere.has(index) ? [{ kind: "load", load: index, from: 0, to: 1, nominal: 1 }] : [],
  );
  return [...masses, ...loads];
}

function around(nominal: number, half: number) {
  return { from: nominal - half, to: nominal + half, nominal };
}

/** Whether a variable moves heights, not loads. */
export function movesHeights({ kind }: BoxVariable): boolean {
  return kind === "height" || kind === "tilt" || kind === "bow";
}
