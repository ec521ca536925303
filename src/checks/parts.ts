/**
 * Report parts: what the engine answers for one step or one layout. Each is known, pending or failed, so that the
 * editor can show the level answer while the bounds are still being computed. Pending never counts as `holds`.
 */

import type { FloorReport, SlabStress } from "../floor";
import type { Layout, LayoutId, Plan, StandId, Step } from "../plan";
import type {
  BoxTip,
  Governing,
  PartLevel,
  PartTipping,
  StandingContour,
  StepLevel,
  StrengthAnswer,
  Witness,
} from "../statics";

export type Part<Value> =
  /** Computed for exactly this plan. */
  | { readonly status: "known"; readonly value: Value }
  /** Asked for, not answered yet; `last` is the answer to an earlier plan, for showing dimmed only. */
  | { readonly status: "pending"; readonly last: Value | null }
  /** It could not be computed; `why` is one plain sentence. */
  | { readonly status: "failed"; readonly why: string };

export const known = <Value>(value: Value): Part<Value> => ({ status: "known", value });
const nothingYet = { status: "pending", last: null } as const;
/** The same object whenever there is no earlier answer, so that what rests on it is remembered. */
export const pending = <Value>(last: Value | null = null): Part<Value> =>
  last === null ? nothingYet : { status: "pending", last };
export const failed = <Value>(why: string): Part<Value> => ({ status: "failed", why });
/** The value of a known part; null while pending or failed. */
export const knownValue = <Value>(part: Part<Value>): Value | null => (part.status === "known" ? part.value : null);

/** What one stand may carry over the box of engine.md section 4, N. */
export interface StandBounds {
  readonly stand: StandId;
  /** What equilibrium alone allows, whatever the heights. */
  readonly staticsLeast: number;
  readonly staticsMost: number;
  /** null where the box tips. */
  readonly over: {
    readonly least: number;
    readonly most: number;
    readonly leastAt: Witness;
    readonly mostAt: Witness;
    readonly legFramesMost: readonly [number, number];
  } | null;
}

export interface StepBounds {
  /** Edges over which some combination within the box tips the piece; if there are any, there is no `over`. */
  readonly boxTips: readonly BoxTip[];
  /** As the layout's placements; null in an unstable step. */
  readonly stands: readonly StandBounds[] | null;
}

/** What is proved of the bounds. */
export interface StepCertificates {
  /** The bounds again: the proof may have found values farther out, never nearer. */
  readonly bounds: StepBounds;
  /** As the layout's placements; null where there are no bounds. */
  readonly stands:
    | readonly {
        readonly stand: StandId;
        /** Nothing within the box goes farther, N: within 0.1 % of the weight of the bounds; null = not reached. */
        readonly certified: { readonly least: number; readonly most: number } | null;
        /** What is proved anyhow, N. */
        readonly outer: { readonly least: number; readonly most: number };
        /** The greater distance from what is attained to what is proved, N. */
        readonly gap: number;
      }[]
    | null;
}

/** Curves and extremes along the piece, one entry a part. */
export type StepDiagrams = readonly PartLevel[];

/** Tipping lines of every part, as the step's parts. */
export type StepTipping = readonly PartTipping[];

/** The strength of the piece and of the tops in one step: the worst of the level solution and of all witnesses. */
export interface StepStrength {
  readonly bending: StrengthAnswer;
  readonly shear: StrengthAnswer;
  readonly lateralBuckling: StrengthAnswer;
  /** m; null without a sagLimit, or where nothing spans. */
  readonly sag: Governing | null;
  /** As the layout's placements. */
  readonly stands: readonly {
    readonly stand: StandId;
    readonly webYielding: StrengthAnswer;
    readonly webCrippling: StrengthAnswer;
    /** Pa, at the stand's greatest reaction, × set-down factor; null without contact. */
    readonly pressure: number | null;
  }[];
}

/** Stress of the slab under the feet, as the layout's placements. */
export interface StepSlab {
  /** Allowed, Pa. */
  readonly allowed: number;
  readonly stands: readonly {
    readonly stand: StandId;
    /** Under its four feet, in the order of the footprint. */
    readonly feet: readonly SlabStress[];
  }[];
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

/** Where a person may stand on one part. */
export interface PartStanding {
  /** One a force. */
  readonly contours: readonly StandingContour[];
}

export interface StepStanding {
  /** The forces of the contours, N, ascending; the first is a person with tools. */
  readonly forces: readonly number[];
  /** As the step's parts; null where one tips. */
  readonly parts: readonly (PartStanding | null)[];
}

export interface StepParts {
  readonly level: Part<StepLevel>;
  readonly tipping: Part<StepTipping>;
  readonly diagrams: Part<StepDiagrams>;
  readonly bounds: Part<StepBounds>;
  readonly certificates: Part<StepCertificates>;
  /** null where there are no reactions. */
  readonly strength: Part<StepStrength | null>;
  /** null where the bay gives no slab. */
  readonly slab: Part<StepSlab | null>;
  readonly margins: Part<GoodUpTo>;
  /** A drawing, no check rests on it: the page asks for it when it is to be seen. */
  readonly standing: Part<StepStanding>;
}

export interface LayoutParts {
  readonly layout: LayoutId;
  readonly floor: Part<FloorReport>;
}

/**
 * Where the parts come from that take longer than a frame: the command line and the worker compute them (`computed`),
 * the page hands in what the worker has answered so far (`awaited` before anything has come).
 */
export interface Answers {
  readonly bounds: (plan: Plan, step: Step) => Part<StepBounds>;
  readonly certificates: (plan: Plan, step: Step) => Part<StepCertificates>;
  readonly strength: (plan: Plan, step: Step) => Part<StepStrength | null>;
  readonly margins: (plan: Plan, step: Step) => Part<GoodUpTo>;
  readonly standing: (plan: Plan, step: Step) => Part<StepStanding>;
  readonly floor: (plan: Plan, layout: Layout) => Part<FloorReport>;
}

/** Nothing has been answered yet. */
export const awaited: Answers = {
  bounds: () => pending(),
  certificates: () => pending(),
  strength: () => pending(),
  margins: () => pending(),
  standing: () => pending(),
  floor: () => pending(),
};
