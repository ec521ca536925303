/**
 * Report parts: what the engine answers for one step or one layout. Each is known, pending or failed, so that the
 * editor can show the level answer while the bounds are still being computed. Pending never counts as `holds`.
 */

import type { Layout, LayoutId, MassId, Plan, Point, StandId, Step } from "../plan";
import type { PartLevel, StepLevel } from "../statics";

export type Part<Value> =
  /** Computed for exactly this plan. */
  | { readonly status: "known"; readonly value: Value }
  /** Asked for, not answered yet; `last` is the answer to an earlier plan, for showing dimmed only. */
  | { readonly status: "pending"; readonly last: Value | null }
  /** It could not be computed; `why` is one plain sentence. */
  | { readonly status: "failed"; readonly why: string };

export const known = <Value>(value: Value): Part<Value> => ({ status: "known", value });
export const pending = <Value>(last: Value | null = null): Part<Value> => ({ status: "pending", last });
export const failed = <Value>(why: string): Part<Value> => ({ status: "failed", why });
/** The value of a known part; null while pending or failed. */
export const knownValue = <Value>(part: Part<Value>): Value | null => (part.status === "known" ? part.value : null);

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
  /** [δs, δt], m, by mass. */
  readonly centres: Readonly<Record<string, readonly [number, number]>>;
  /** Factor by the load's index. */
  readonly loads: Readonly<Record<string, number>>;
  /** 1, or ⅓ or 3 where estimated stands are so much softer or stiffer. */
  readonly stiffness: number;
}

/** What one stand may carry over the box of engine.md section 4, N. */
export interface StandBounds {
  readonly stand: StandId;
  readonly least: number;
  readonly most: number;
  readonly leastAt: Witness;
  readonly mostAt: Witness;
  readonly staticsLeast: number;
  readonly staticsMost: number;
  readonly legFramesMost: readonly [number, number];
}

/** One combination within the box that tips a part: every weight, centre and load without which it would not. */
export interface BoxTip {
  readonly part: number;
  readonly masses: readonly MassId[];
  /** Masses whose place, not weight, is needed. */
  readonly centres: readonly MassId[];
  /** Indices into the step's loads. */
  readonly loads: readonly number[];
}

export interface StepBounds {
  /** Not null: some combination within the box tips the piece, and there are no bounds. */
  readonly boxTips: BoxTip | null;
  /** As the layout's placements; null where the step is unstable or the box tips. */
  readonly stands: readonly StandBounds[] | null;
}

/** Proved outer bounds, N, as the layout's placements; null = not proved. */
export type StepCertificates = readonly ({ readonly least: number; readonly most: number } | null)[];

/** Curves and extremes along the piece, one entry a part. */
export type StepDiagrams = readonly PartLevel[];

export interface TippingEdge {
  readonly from: Point;
  readonly to: Point;
  /** Of the load centre inside the edge, m; null where there is no downward resultant. */
  readonly distance: number | null;
  /** Righting ÷ overturning; null if nothing overturns. */
  readonly reserve: number | null;
  /** Righting − overturning, the person left out, N·m. */
  readonly margin: number | null;
}

export interface PartTipping {
  /** Support polygon, counter-clockwise in (s, t). */
  readonly edges: readonly TippingEdge[];
  readonly addedLoad: { readonly value: number; readonly s: number; readonly t: number } | null;
}

export interface StepTipping {
  readonly parts: readonly PartTipping[];
}

export interface TripZone {
  readonly stand: StandId;
  readonly polygons: readonly { readonly outer: readonly Point[]; readonly holes: readonly (readonly Point[])[] }[];
  readonly area: number;
  readonly reach: number;
}

export interface WalkwayAnswer {
  readonly name: string;
  readonly clearWidth: number;
  readonly withoutLegs: number;
  readonly required: number;
  readonly narrowestAt: Point | null;
}

/** Bay frame; null parts of the plan (no bay) give an empty answer. */
export interface LayoutFloor {
  readonly tripZones: readonly TripZone[];
  readonly walkways: readonly WalkwayAnswer[];
}

/** Stress under the worst foot of a stand in one step, Pa. */
export interface FootStress {
  readonly stand: StandId;
  readonly stress: number;
}
export type LayoutSlab = readonly FootStress[];

/** The strength of the piece and of the tops in one step. Filled in with the strength checks. */
export interface StepStrength {
  readonly bearingPressure: readonly { readonly stand: StandId; readonly value: number }[];
}

/** What the plan still takes before something new fails (engine.md section 13). */
export interface GoodUpTo {
  readonly weight: number;
  readonly level: number;
  readonly along: number;
  readonly across: number;
  readonly push: number;
  readonly addedLoad: readonly { readonly s: number; readonly t: number; readonly value: number }[];
  readonly without: readonly {
    readonly stand: StandId;
    readonly verdict: "fails" | "unknown" | "close" | "holds";
    readonly utilisation: number | null;
  }[];
  readonly turned: { readonly verdict: "fails" | "unknown" | "close" | "holds" };
}

export interface StepParts {
  readonly level: Part<StepLevel>;
  readonly tipping: Part<StepTipping>;
  readonly diagrams: Part<StepDiagrams>;
  readonly bounds: Part<StepBounds>;
  readonly certificates: Part<StepCertificates>;
  readonly strength: Part<StepStrength>;
  readonly margins: Part<GoodUpTo>;
}

export interface LayoutParts {
  readonly layout: LayoutId;
  readonly floor: Part<LayoutFloor>;
  readonly slab: Part<LayoutSlab>;
}

/**
 * Where the parts come from that take longer than a frame: the command line and the worker compute them (`computed`),
 * the page hands in what the worker has answered so far (`awaited` before anything has come).
 */
export interface Answers {
  readonly bounds: (plan: Plan, step: Step) => Part<StepBounds>;
  readonly certificates: (plan: Plan, step: Step) => Part<StepCertificates>;
  readonly strength: (plan: Plan, step: Step) => Part<StepStrength>;
  readonly margins: (plan: Plan, step: Step) => Part<GoodUpTo>;
  readonly floor: (plan: Plan, layout: Layout) => Part<LayoutFloor>;
  readonly slab: (plan: Plan, layout: Layout) => Part<LayoutSlab>;
}

/** Nothing has been answered yet. */
export const awaited: Answers = {
  bounds: () => pending(),
  certificates: () => pending(),
  strength: () => pending(),
  margins: () => pending(),
  floor: () => pending(),
  slab: () => pending(),
};
