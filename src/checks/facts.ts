/**
 * What a check found, before it is put into words: a verdict, the two numbers compared, and what the sentence needs.
 * SI throughout; `words` alone turns facts into sentences.
 */

import type { CriterionKey, FindingCode, SectionStrength, StandId, TopMaterial } from "../plan";
import type { FindingUnit, VerdictSoFar } from "./report";

/** Where a limit comes from. */
export type Basis =
  | { readonly kind: "criterion"; readonly key: CriterionKey; readonly material?: TopMaterial }
  /** `changedBy`: a criterion that scales the limit, whose change is to be marked. */
  | { readonly kind: "text"; readonly text: string; readonly changedBy?: CriterionKey };

/** What a check says beyond its verdict and two numbers, by code. */
export interface Details {
  tips: {
    readonly why:
      | "stands"
      | "not-computed"
      /** The load centre lies outside the tipping lines. */
      | "outside"
      /** The contacts lie on one line, or there are none. */
      | "on-a-line"
      /** Nothing presses it down. */
      | "no-weight"
      /** As weighed it stands; within what is not known about weights, centres and loads it tips. */
      | "box";
    /** The part it speaks of, m; null where the piece is one. */
    readonly part: readonly [number, number] | null;
    /** How far the load centre lies beyond the tipping line, m. */
    readonly beyond: number | null;
    /** Names of what it takes together. */
    readonly weights: readonly string[];
    readonly centres: readonly string[];
    readonly loads: readonly string[];
  };
  tilts: { readonly of: "length" | "width" };
  "tip-reserve": {
    readonly of: "reserve" | "distance";
    /** The stands at the ends of the tipping line. */
    readonly line: readonly StandId[];
    readonly peopleUnder: boolean;
    /** Whether the distance limit is the share of the breadth, not the criterion. */
    readonly byBreadth: boolean;
  };
  "stand-never-bears": null;
  "stand-lifts-off": { readonly level: number; readonly gap: number | null };
  "stand-over-rating": {
    readonly ratedLoad: number | null;
    /** Greatest reaction without the set-down factor, N; as planned while the bounds are pending. */
    readonly most: number;
    readonly level: number;
    readonly asPlanned: boolean;
    readonly setDownFactor: number;
    /** Twice the greater leg frame counts, not the whole reaction. */
    readonly byLegFrame: boolean;
    /** level ÷ weight. */
    readonly share: number;
    /** Whatever the floor does, this is the most it can carry, N; null while pending. */
    readonly staticsMost: number | null;
    /** How level the tops must be kept for this to hold, m. */
    readonly levelWithin: number;
    /** How much too thick its shim is, m: without that nothing would be over its rating. Looked for when it is told. */
    readonly shimTooThick: () => number | null;
  };
  "rating-centre": {
    readonly ratedLoadCentre: number | null;
    readonly ratedLoad: number;
    /** Share of the leg spacing over which the piece bears. */
    readonly spread: number;
    readonly setDownFactor: number;
  };
  "casters-still-down": { readonly level: number; readonly least: number | null };
  "shim-loose": { readonly shim: number };
  "stand-tips-over": {
    readonly why: "frame" | "reserve" | "slender";
    readonly peopleUnder: boolean;
    /** Half the lesser breadth of the base ÷ (height + shim). */
    readonly slenderness: number;
    readonly reserve: number | null;
  };
  "rolls-over": { readonly why: "reserve" | "slender"; readonly push: number; readonly peopleUnder: boolean };
  slides: { readonly where: "tops" | "floor"; readonly stand: StandId | null; readonly push: number };
  "single-stand-loss": { readonly stands: readonly StandId[] };
  "stand-not-in-service": { readonly condition: "in-service" | "inspect" | "out-of-service" };
  "stand-not-rated-under": { readonly rated: boolean | null };
  "crane-holds": { readonly peopleUnder: boolean };
  "not-under-piece": null;
  "no-rest-overlap": { readonly zones: readonly string[] };
  "heights-mismatch": {
    readonly why: "fits" | "range" | "increment";
    readonly min: number;
    readonly max: number;
    readonly increment: number;
    readonly height: number;
  };
  "bearing-pressure": { readonly material: TopMaterial };
  bending: StrengthDetails;
  shear: StrengthDetails;
  "web-yielding": StrengthDetails;
  "web-crippling": StrengthDetails;
  "lateral-buckling": StrengthDetails;
  sag: null;
  slab: { readonly place: "interior" | "edge" | "corner" | null; readonly jointsKnown: boolean };
  "walkway-narrow": { readonly walkway: string };
  "trip-zone-in-walkway": {
    readonly walkway: string;
    /** The legs alone make it too narrow; or feet or trip zones lie in its painted lane. */
    readonly why: "legs" | "lane" | "clear";
    readonly stands: readonly StandId[];
  };
  "foot-on-no-foot-zone": { readonly stands: readonly StandId[]; readonly zones: readonly string[] };
  "stands-overlap": {
    /** A stand, and what it runs into: a stand or an obstacle. */
    readonly pairs: readonly { readonly stand: StandId; readonly other: string; readonly isStand: boolean }[];
  };
  "outside-bay": { readonly stands: readonly StandId[]; readonly piece: boolean };
  "work-window-blocked": { readonly window: string; readonly stands: readonly StandId[] };
  "readings-disagree": { readonly readings: readonly string[] };
}

export interface StrengthDetails {
  /** Section values that the check needs and the plan leaves out. */
  readonly missing: readonly (keyof SectionStrength)[];
}

export interface FactOf<Code extends FindingCode> {
  readonly code: Code;
  readonly verdict: VerdictSoFar;
  readonly stand: StandId | null;
  readonly at: { readonly s: number; readonly t: number } | null;
  /** The two numbers compared; both null for a condition. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: FindingUnit | null;
  /** How much of the limit is used (compare.ts), for finding the worst; 0 for a condition. */
  readonly use: number;
  readonly basis: Basis;
  readonly details: Details[Code];
}

export type Fact = { [Code in FindingCode]: FactOf<Code> }[FindingCode];
