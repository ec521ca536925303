/**
 * The report parts, computed. Each is remembered by the identity of what it reads, so that an edit recomputes only
 * what it touches: a change of title, of the selection or of another layout recomputes nothing.
 */

import type { FloorReport } from "../floor";
import { floorOf } from "../floor";
import type { Layout, Plan, Step } from "../plan";
import { criteriaOf, layoutOf } from "../plan";
import { assembleStep, type StepLevel, type StepModel, solveStep, tippingOf } from "../statics";
import { memoByIdentity } from "./memo";
import {
  type Answers,
  type GoodUpTo,
  known,
  knownValue,
  type Part,
  pending,
  type StepBounds,
  type StepCertificates,
  type StepDiagrams,
  type StepSlab,
  type StepStrength,
  type StepTipping,
} from "./parts";

/** What the level solution of a step reads. */
const levelKeys = (plan: Plan, step: Step): readonly [object, ...unknown[]] => [
  plan.piece,
  layoutOf(plan, step).placements,
  plan.stands,
  plan.standTypes,
  plan.bay?.floor ?? null,
  step.loads,
  step.absent,
  step.parts,
];

/** What the box of a step reads besides. */
const _boundsKeys = (plan: Plan, step: Step): readonly [object, ...unknown[]] => [
  ...levelKeys(plan, step),
  plan.criteria,
  step.bow,
  step.readings,
];

/** The mechanics of a step. */
export const modelOf: (plan: Plan, step: Step) => StepModel = memoByIdentity(levelKeys, assembleStep);

/** Reactions as planned, stability, residuals. Fast enough for every pointer move. */
export const levelPart: (plan: Plan, step: Step) => Part<StepLevel> = memoByIdentity(levelKeys, (plan, step) =>
  known(solveStep(modelOf(plan, step), plan.piece)),
);

/** Tipping lines and reserves; the tipping lines of all contacts while the bounds are not known. */
export const tippingPart: (plan: Plan, step: Step, bounds: Part<StepBounds>) => Part<StepTipping> = memoByIdentity(
  (plan: Plan, step: Step, bounds: Part<StepBounds>) => [
    ...levelKeys(plan, step),
    plan.criteria,
    knownValue(bounds)?.stands ?? null,
  ],
  (plan, step, bounds) => {
    const level = knownValue(levelPart(plan, step));
    if (level === null) return pending();
    const most = knownValue(bounds)?.stands?.map((stand) => stand.over?.most ?? null) ?? null;
    return known(tippingOf(modelOf(plan, step), level, plan.piece, most, criteriaOf(plan).personLoad));
  },
);

/** Trip zones, walkways and overlaps of a layout. */
export const floorPart: (plan: Plan, layout: Layout) => Part<FloorReport> = memoByIdentity(
  (plan: Plan, layout: Layout) => [
    plan.piece,
    layout.placements,
    plan.stands,
    plan.standTypes,
    plan.bay,
    plan.criteria,
    layout.id,
  ],
  (plan, layout) => known(floorOf(plan, layout)),
);

/** Moment, shear, torque, deflection and twist of the level case. */
export function diagramsPart(plan: Plan, step: Step): Part<StepDiagrams> {
  const level = levelPart(plan, step);
  return level.status === "known" ? known(level.value.parts) : pending();
}

/** Least and most of each reaction over the box, with witnesses, and the statics limits. */
export function boundsPart(_plan: Plan, _step: Step): Part<StepBounds> {
  return pending();
}

/** Proved outer bounds; up to a quarter of a second. */
export function certificatesPart(_plan: Plan, _step: Step): Part<StepCertificates> {
  return pending();
}

/** The piece's own strength and the pressure on the tops. */
export function strengthPart(_plan: Plan, _step: Step): Part<StepStrength> {
  return pending();
}

/** What the plan still takes (engine.md section 13). Seconds of work: computed only when asked for. */
export function marginsPart(_plan: Plan, _step: Step): Part<GoodUpTo> {
  return pending();
}

/** Stresses of the slab under the feet of a step. */
export function slabPart(_plan: Plan, _step: Step, _bounds: Part<StepBounds>): Part<StepSlab | null> {
  return pending();
}

/** Everything, computed when asked for. */
export const computed: Answers = {
  bounds: boundsPart,
  certificates: certificatesPart,
  strength: strengthPart,
  margins: marginsPart,
  floor: floorPart,
};

/** Everything but the margins, which take seconds. */
export const withoutMargins: Answers = { ...computed, margins: () => pending() };
