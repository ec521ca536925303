/**
 * One step of a plan as the mechanics sees it: parts of beam, contact points, loads. Plain numbers, piece frame, SI.
 * Everything that `least` and `most` may vary (engine.md section 4) enters heights or loads linearly, so a model also
 * says how each contact's height and each load answers to the variables of the box.
 */

import type { StandId } from "../plan";

/** A stretch of beam with constant stiffness. EI in N·m², kGA in N, GJ in N·m²; `Infinity` = rigid in that way. */
export interface BeamSegment {
  readonly from: number;
  readonly to: number;
  readonly EI: number;
  readonly kGA: number;
  readonly GJ: number;
}

/** One Gauss–Lobatto point of a stand's bearing interval on one part. */
export interface ContactPoint {
  /** Index of the stand in `StepModel.stands`. */
  readonly stand: number;
  /** Index of the bearing interval within its stand, across all parts. */
  readonly interval: number;
  readonly s: number;
  readonly t: number;
  /** Along the top from its middle, m: d(height)/d(ε). */
  readonly c: number;
  /** N/m; over all contacts of a stand these add up to the stand's k. */
  readonly stiffness: number;
  /** h_j of the level case, m (engine.md section 1). */
  readonly height: number;
  /** −d(height)/d(β) = 4σ(1 − σ). */
  readonly bow: number;
}

/** What a load item stands for: its factor in the box is that of the mass or of the step's load it comes from. */
export type LoadSource =
  | { readonly kind: "mass"; readonly index: number }
  | { readonly kind: "load"; readonly index: number };

/** A downward line load on [from, to], N/m, linear, at the distance t from the axis. */
export interface LineLoad {
  readonly kind: "line";
  readonly source: LoadSource;
  readonly from: number;
  readonly to: number;
  readonly intensity: readonly [number, number];
  readonly t: number;
}

/** Forces and couples at one section s. */
export interface PointLoad {
  readonly kind: "point";
  readonly source: LoadSource;
  readonly s: number;
  /** N, downward positive. */
  readonly down: number;
  /** Σ F_s·z, N·m: moves the resultant by this ÷ W in s (generalised force on ψ is minus this). */
  readonly momentS: number;
  /** Σ down·t + Σ F_t·z, N·m: moves the resultant by this ÷ W in t (generalised force on θ is minus this). */
  readonly momentT: number;
}

export type LoadItem = LineLoad | PointLoad;

export interface PartModel {
  readonly from: number;
  readonly to: number;
  /** Ascending, covering [from, to]; one segment with all Infinity for a rigid piece. */
  readonly segments: readonly BeamSegment[];
  /** Ascending in s; the same s keeps the order of stands. */
  readonly contacts: readonly ContactPoint[];
  /** Masses present and the step's loads, nominal. */
  readonly loads: readonly LoadItem[];
}

export interface StandModel {
  readonly stand: StandId;
  readonly s: number;
  readonly t: number;
  /** Unit vector along the top, (−sin a, cos a). */
  readonly along: readonly [number, number];
  readonly stiffness: number;
  /** True where the type gives no stiffness and the rule of engine.md section 1 was taken. */
  readonly estimated: boolean;
  readonly topWidth: number;
  readonly legSpacing: number;
  /** Bearing intervals along the top from its middle, m, as the result file lists them. */
  readonly intervals: readonly { readonly from: number; readonly to: number; readonly part: number }[];
}

export interface StepModel {
  readonly parts: readonly PartModel[];
  readonly stands: readonly StandModel[];
}
