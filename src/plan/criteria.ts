/** The criteria: default, unit and basis of each, in the order of the specification, and what a plan makes of them. */

import { memo } from "./memo";
import type { Criteria, CriteriaChanges, Plan, TopMaterial } from "./types";

/** m, N, Pa; "m/m" a slope; "1" a ratio; "" for a list. */
export type CriterionUnit = "m" | "m/m" | "N" | "Pa" | "1" | "";

export interface Criterion<Value> {
  readonly default: Value;
  readonly unit: CriterionUnit;
  /** Where the default comes from. */
  readonly basis: string;
  /** What it is called on the screen and on the sheet. */
  readonly label: string;
}

export type CriterionKey = keyof Criteria;

export const criteriaTable: { readonly [Key in CriterionKey]: Criterion<Criteria[Key]> } = {
  levelTolerance: {
    default: 0.003,
    unit: "m",
    basis:
      "common practice for tops set by laser; 0.5 mm where shimmed until a feeler shows they touch, 6 mm where set by tape",
    label: "How the tops are set: height within ±",
  },
  topTilt: { default: 0.001, unit: "m/m", basis: "common practice", label: "Top out of level along itself, ±" },
  straightness: {
    default: 0,
    unit: "m/m",
    basis: "within the height tolerance where shimmed to the piece; else about 0.001 (mill tolerance)",
    label: "Bow of the piece over its length, ±",
  },
  setDownFactor: {
    default: 1.25,
    unit: "1",
    basis: "common practice; steps without a set-down always have 1",
    label: "Set-down factor",
  },
  tipReserve: { default: 1.5, unit: "1", basis: "customary overturning factor", label: "Reserve against tipping" },
  tipReserveUnder: {
    default: 2,
    unit: "1",
    basis: "customary overturning factor, with people under",
    label: "Reserve against tipping, people under",
  },
  cgMargin: {
    default: 0.05,
    unit: "m",
    basis: "this tool",
    label: "Load centre inside the tipping lines by at least",
  },
  tiltLimit: { default: 0.01, unit: "m/m", basis: "this tool", label: "Piece out of level, at most" },
  personLoad: {
    default: 1334,
    unit: "N",
    basis: "300 lbf: a person (250 lbf) with tools",
    label: "A person with tools",
  },
  horizontalFraction: {
    default: 0.03,
    unit: "1",
    basis: "temporary-works custom",
    label: "Push, as a share of the weight",
  },
  pushLeast: { default: 500, unit: "N", basis: "temporary-works custom", label: "Push, at least" },
  slideReserve: { default: 2, unit: "1", basis: "temporary-works custom", label: "Reserve against sliding" },
  closeFraction: { default: 0.9, unit: "1", basis: "this tool", label: "Close to a limit from this share of it" },
  tripHeight: {
    default: 0.6858,
    unit: "m",
    basis: "27 in, ADA 307.2: what stands lower is an obstacle on the floor, what stands higher protrudes",
    label: "Legs are a trip hazard up to",
  },
  toeClearance: { default: 0.05, unit: "m", basis: "this tool", label: "Toe clearance round legs and feet" },
  headroom: { default: 2.032, unit: "m", basis: "80 in, 29 CFR 1910.36(g)(1), ADA 307.4", label: "Headroom" },
  walkwayWidth: {
    default: 0.7112,
    unit: "m",
    basis: "28 in, 29 CFR 1910.36(g)(2), least width of exit access",
    label: "Clear width of a walkway",
  },
  friction: {
    default: { steel: 0.1, hardwood: 0.3, "uhmw-pe": 0.05, rubber: 0.3 },
    unit: "1",
    basis: "low side of published ranges",
    label: "Friction between top and piece",
  },
  floorFriction: {
    default: 0.1,
    unit: "1",
    basis: "low side, steel foot on a dirty floor",
    label: "Friction between foot and floor",
  },
  bearingPressure: {
    default: { steel: 165e6, hardwood: 5.5e6, "uhmw-pe": 7e6, rubber: 2e6 },
    unit: "Pa",
    basis: "low side of published ranges",
    label: "Bearing pressure on a top, at most",
  },
  allowableStressFactor: {
    default: 0.6,
    unit: "1",
    basis: "allowable-stress custom",
    label: "Bending stress, as a share of yield",
  },
  sagLimit: { default: null, unit: "m", basis: "the job's own", label: "Sag between outermost stands, at most" },
  slabFactor: {
    default: 2,
    unit: "1",
    basis: "customary for few repetitions",
    label: "Reserve of the slab against cracking",
  },
  require: { default: [], unit: "", basis: "the shop's own", label: "Checks that must not be left out" },
};

export const criterionKeys = Object.keys(criteriaTable) as readonly CriterionKey[];

const defaults = Object.fromEntries(
  criterionKeys.map((key) => [key, criteriaTable[key].default]),
) as unknown as Criteria;

const withDefaults = memo(
  (changes: CriteriaChanges): Criteria => ({
    ...defaults,
    ...changes,
    friction: { ...defaults.friction, ...changes.friction },
    bearingPressure: { ...defaults.bearingPressure, ...changes.bearingPressure },
  }),
);

/** Every criterion of the plan with its value. The same object as long as `plan.criteria` is the same. */
export function criteriaOf(plan: Pick<Plan, "criteria">): Criteria {
  return withDefaults(plan.criteria);
}

/**
 * Whether the plan's value of a criterion differs from the default (a change back to the default is no change).
 * For `friction` and `bearingPressure`, of the given material, or of any where none is given.
 */
export function isChanged(plan: Pick<Plan, "criteria">, key: CriterionKey, material?: TopMaterial): boolean {
  const value = criteriaOf(plan)[key];
  const standard = criteriaTable[key].default;
  if (Array.isArray(value)) return value.length > 0;
  if (typeof value !== "object" || value === null) return value !== standard;
  const ofMaterials = value as Readonly<Record<TopMaterial, number>>;
  const standards = standard as Readonly<Record<TopMaterial, number>>;
  const materials = material === undefined ? (Object.keys(standards) as TopMaterial[]) : [material];
  return materials.some((one) => ofMaterials[one] !== standards[one]);
}
