/**
 * The report parts, computed. Each is remembered by the identity of what it reads, so that an edit recomputes only
 * what it touches: a change of title, of the selection or of another layout recomputes nothing.
 */

import type { Layout, Plan, Step } from "../plan";
import type { StepLevel } from "../statics";
import type {
  Answers,
  GoodUpTo,
  LayoutFloor,
  LayoutSlab,
  Part,
  StepBounds,
  StepCertificates,
  StepDiagrams,
  StepStrength,
  StepTipping,
} from "./parts";
import { pending } from "./parts";

/** Reactions as planned, stability, residuals. Fast enough for every pointer move. */
export function levelPart(_plan: Plan, _step: Step): Part<StepLevel> {
  return pending();
}

/** Tipping lines, reserves and pushing; while `bounds` is not known, the tipping lines of all contacts. */
export function tippingPart(_plan: Plan, _step: Step, _bounds: Part<StepBounds>): Part<StepTipping> {
  return pending();
}

/** Moment, shear, torque, deflection and twist of the level case. */
export function diagramsPart(_plan: Plan, _step: Step): Part<StepDiagrams> {
  return pending();
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

/** Trip zones, walkways and overlaps of a layout. */
export function floorPart(_plan: Plan, _layout: Layout): Part<LayoutFloor> {
  return pending();
}

/** Stresses of the slab under a layout's feet, the worst of its steps. */
export function slabPart(_plan: Plan, _layout: Layout): Part<LayoutSlab> {
  return pending();
}

/** Everything but the margins, computed at once. */
export const computed: Answers = {
  bounds: boundsPart,
  certificates: certificatesPart,
  strength: strengthPart,
  margins: () => pending(),
  floor: floorPart,
  slab: slabPart,
};
