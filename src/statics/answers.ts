/** What the level statics answers for one step. SI, piece frame, reactions and deflection upward positive. */

import type { StandId } from "../plan";

/** Relative residuals of engine.md section 3, each ≤ 1e-9 in a good answer. */
export interface Residual {
  readonly force: number;
  readonly momentS: number;
  readonly momentT: number;
  readonly complementarity: number;
}

export interface StandLevel {
  readonly stand: StandId;
  readonly s: number;
  readonly t: number;
  /** N, ≥ 0; null in an unstable step. */
  readonly reaction: number | null;
  /** Where the reaction acts; null when it is 0 or unknown. */
  readonly centre: { readonly s: number; readonly t: number } | null;
  /** N on the frames at −legSpacing/2 and +legSpacing/2. */
  readonly legFrames: readonly [number, number] | null;
  /** Where the top can bear, m from its middle along (−sin a, cos a). */
  readonly contact: readonly (readonly [number, number])[];
  /** m, greatest press-down of its contacts; 0 where clear. */
  readonly settlement: number | null;
  /** m, least distance between top and underside; 0 where it bears. */
  readonly gap: number | null;
  /** Pa, greatest over its contacts. */
  readonly bearingPressure: number | null;
  readonly estimated: boolean;
}

export interface Extreme {
  readonly value: number;
  readonly s: number;
}
export interface Extremes {
  readonly most: Extreme;
  readonly least: Extreme;
}

/** Curves for drawing, all on the same stations (a jump has its s twice). Deflection is null without two bearing stands. */
export interface Curves {
  readonly s: readonly number[];
  readonly moment: readonly number[];
  readonly shear: readonly number[];
  readonly torque: readonly number[];
  /** Height of the datum plane over z = 0 at t = 0, m. */
  readonly v: readonly number[];
  /** Rotation about s, rad. */
  readonly theta: readonly number[];
  readonly deflection: readonly number[] | null;
}

/**
 * A stretch of a part between two places where something begins, ends or acts. All curves are polynomials in x = s − from,
 * coefficients ascending: N, N·m, N·m, rad, m, rad.
 */
export interface DiagramCell {
  readonly from: number;
  readonly to: number;
  readonly shear: readonly number[];
  readonly moment: readonly number[];
  readonly torque: readonly number[];
  /** Rotation of the section about t. */
  readonly psi: readonly number[];
  /** Height of the datum plane over z = 0 at t = 0. */
  readonly v: readonly number[];
  /** Rotation about s. */
  readonly theta: readonly number[];
}

export interface PartLevel {
  readonly from: number;
  readonly to: number;
  readonly stable: boolean;
  /** N, masses only. */
  readonly weight: number;
  /** Downward, masses and loads; s and t null where the force is not positive. */
  readonly resultant: { readonly force: number; readonly s: number | null; readonly t: number | null };
  readonly moment: Extremes | null;
  readonly shear: Extremes | null;
  readonly torque: Extremes | null;
  readonly deflection: Extremes | null;
  readonly droop: readonly [number, number] | null;
  /** Degrees. */
  readonly twist: Extremes | null;
  readonly curves: Curves | null;
  /** What the diagrams are made of, ascending; `diagramAt` reads values off it. */
  readonly cells: readonly DiagramCell[] | null;
}

export interface StepLevel {
  /** N, masses that are there. */
  readonly weight: number;
  /** Of these masses; null without any. */
  readonly cg: { readonly s: number; readonly t: number; readonly z: number } | null;
  readonly stable: boolean;
  readonly estimated: readonly StandId[];
  readonly residual: Residual | null;
  readonly stands: readonly StandLevel[];
  readonly parts: readonly PartLevel[];
}

/** Errors, weights and loads that bring an extreme about; left out = 0, or 1 for factors. Keys as the result file has them. */
export interface Witness {
  /** d_i, m, by stand. */
  readonly heights: Readonly<Record<string, number>>;
  /** ε_i, m/m, by stand. */
  readonly tilts: Readonly<Record<string, number>>;
  /** β, m, by the part's index. */
  readonly bows: Readonly<Record<string, number>>;
  /** Factor by mass. */
  readonly masses: Readonly<Record<string, number>>;
  /** [δs, δt], m, by mass; the couple is this × mass·(1 + uncertainty)·g. */
  readonly centres: Readonly<Record<string, readonly [number, number]>>;
  /** Factor by the load's index. */
  readonly loads: Readonly<Record<string, number>>;
  /** 1, or ⅓ or 3 where estimated stands are so much softer or stiffer. */
  readonly stiffness: number;
}
