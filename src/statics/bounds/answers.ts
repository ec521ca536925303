/** What the bounds answer for one step. SI; stands in the order of the layout's placements. */

import type { StandId } from "../../plan";
import type { Witness } from "../answers";
import type { BoxTip } from "./boxTips";

/** The extremes that equilibrium alone allows, N. */
export interface StandLimits {
  readonly stand: StandId;
  readonly staticsLeast: number;
  readonly staticsMost: number;
}

export interface StandBounds extends StandLimits {
  /** N, attained: solving at `leastAt` and `mostAt` gives them back. */
  readonly least: number;
  readonly most: number;
  readonly leastAt: Witness;
  readonly mostAt: Witness;
  /** N, each frame's own greatest share, at −legSpacing/2 and +legSpacing/2. */
  readonly legFramesMost: readonly [number, number];
  /** N: nothing in the box goes farther; always valid, the statics limits until more is proved. */
  readonly outer: { readonly least: number; readonly most: number };
  /** The outer bounds once they are within 0.1 % of the weight of what is attained; null until then. */
  readonly certified: { readonly least: number; readonly most: number } | null;
  /** N, the greater distance between an outer bound and what is attained. */
  readonly gap: number;
}

export type StepBounds =
  /** Least and most of every stand. */
  | { readonly status: "bounded"; readonly stands: readonly StandBounds[] }
  /** Stable as weighed, but some combination within the box tips a part: no reactions are given. */
  | { readonly status: "box tips"; readonly edges: readonly BoxTip[]; readonly stands: readonly StandLimits[] }
  /** A part is unstable as weighed. */
  | { readonly status: "unstable" };
