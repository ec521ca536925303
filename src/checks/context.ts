/** What the checks of one step read: the plan's objects looked up once, and the engine's answers beside them. */

import type { Criteria, Layout, Placement, Plan, Stand, StandType, Step } from "../plan";
import { criteriaOf, layoutOf, setDownFactorOf, standOf, typeOf } from "../plan";
import type { BoxTip, StandLevel, StepLevel, StepModel } from "../statics";
import { staticsTolerance } from "../statics";
import { noReaction } from "./compare";
import type { GoodUpTo, Part, StandBounds, StepBounds, StepSlab, StepStrength, StepTipping } from "./parts";

/** What is known of the reactions over the box. */
export type Range =
  | { readonly kind: "known"; readonly stands: readonly StandBounds[] }
  /** Some combination within the box tips the piece. */
  | { readonly kind: "tips"; readonly tip: BoxTip }
  | { readonly kind: "pending" }
  | { readonly kind: "failed"; readonly why: string };

export interface StandContext {
  readonly index: number;
  readonly placement: Placement;
  readonly stand: Stand;
  readonly type: StandType;
  readonly level: StandLevel;
  /** Nominal resultant force of the part or parts it can bear on, N; of all of them where it bears on none. */
  readonly weight: number;
  /** Under this it carries nothing, N. */
  readonly nothing: number;
  readonly at: { readonly s: number; readonly t: number };
}

export interface StepContext {
  readonly plan: Plan;
  readonly step: Step;
  readonly layout: Layout;
  readonly criteria: Criteria;
  readonly setDownFactor: number;
  readonly model: StepModel;
  readonly level: StepLevel;
  readonly tipping: StepTipping;
  readonly range: Range;
  readonly strength: Part<StepStrength | null>;
  readonly slab: Part<StepSlab | null>;
  readonly margins: Part<GoodUpTo>;
  readonly stands: readonly StandContext[];
  /** Nominal resultant force of all parts together, N. */
  readonly weight: number;
  /** A part is unstable or the box tips: only checks that need no reactions are made. */
  readonly noReactions: boolean;
}

export function stepContext(
  plan: Plan,
  step: Step,
  answers: {
    readonly model: StepModel;
    readonly level: StepLevel;
    readonly tipping: StepTipping;
    readonly bounds: Part<StepBounds>;
    readonly strength: Part<StepStrength | null>;
    readonly slab: Part<StepSlab | null>;
    readonly margins: Part<GoodUpTo>;
  },
): StepContext {
  const { model, level, tipping, strength, slab, margins } = answers;
  const layout = layoutOf(plan, step);
  const weight = level.parts.reduce((sum, part) => sum + part.resultant.force, 0);
  const range = rangeOf(answers.bounds);
  return {
    plan,
    step,
    layout,
    criteria: criteriaOf(plan),
    setDownFactor: setDownFactorOf(plan, step),
    model,
    level,
    tipping,
    range,
    strength,
    slab,
    margins,
    weight,
    noReactions: !level.stable || range.kind === "tips",
    stands: layout.placements.map((placement, index) => {
      const parts = new Set(model.stands[index]!.intervals.map((interval) => interval.part));
      const onParts = [...parts].reduce((sum, part) => sum + level.parts[part]!.resultant.force, 0);
      const own = parts.size > 0 ? onParts : weight;
      return {
        index,
        placement,
        stand: standOf(plan, placement.stand),
        type: typeOf(plan, placement.stand),
        level: level.stands[index]!,
        weight: own,
        nothing: noReaction * own,
        at: { s: placement.s, t: placement.t },
      };
    }),
  };
}

function rangeOf(bounds: Part<StepBounds>): Range {
  switch (bounds.status) {
    case "pending":
      return { kind: "pending" };
    case "failed":
      return { kind: "failed", why: bounds.why };
    case "known":
      return rangeKnown(bounds.value);
  }
}

function rangeKnown({ boxTips, stands }: StepBounds): Range {
  const [tip] = boxTips;
  return tip === undefined ? { kind: "known", stands: stands ?? [] } : { kind: "tips", tip };
}

/** Least and most of a stand over the box; null while pending, failed or where the box tips. */
export function boundsOf({ range }: StepContext, index: number): NonNullable<StandBounds["over"]> | null {
  return range.kind === "known" ? (range.stands[index]?.over ?? null) : null;
}

/** Whether a stand bears as planned: a reaction under a billionth of the weight is rounding (engine.md section 3). */
export function bears({ level, weight }: StandContext): boolean {
  return (level.reaction ?? 0) > staticsTolerance.bears * weight;
}
