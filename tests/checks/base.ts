/**
 * The small plan that the tests of single checks change: a rigid piece 10 m long and 1 m wide, 200 kg/m, on two stands
 * at 2 m and 8 m, with nothing unknown. W = 2000 kg · 9.80665 m/s² = 19 613.3 N, and by symmetry each stand carries
 * R = 9 806.65 N, whatever the stiffness.
 */

import type { Finding, NotChecked, VerdictSoFar } from "../../src/checks";
import { reportOf } from "../../src/checks";
import type { FindingCode, Plan, PlanDocument } from "../../src/plan";
import { complete } from "../../src/plan";

type Mutable<Value> = Value extends string | number | boolean | null | undefined
  ? Value
  : { -readonly [Key in keyof Value]: Mutable<Value[Key]> };
export type Draft = Mutable<PlanDocument>;

const document = {
  format: "trestleboard-plan",
  version: 1,
  title: "base",
  piece: {
    name: "Slab",
    pose: { x: 4, y: 5, heading: 0 },
    outline: [
      [0, -0.5],
      [10, -0.5],
      [10, 0.5],
      [0, 0.5],
    ],
    depth: 0.6,
    stiffness: "rigid",
    masses: [{ id: "plates", name: "Plates", kind: "line", from: 0, to: 10, massPerLength: [200, 200], t: 0, z: 0.3 }],
  },
  standTypes: [
    {
      id: "horse",
      name: "Horse",
      legs: "a-frame",
      height: { min: 0.5, max: 1.2, increment: 0 },
      top: { length: 1, width: 0.2, material: "hardwood" },
      legSpacing: 0.8,
      splay: { along: 15, across: 0 },
      foot: { length: 0.15, width: 0.1 },
      ratedLoad: 50000,
      ratedLoadCentre: 50000,
      ratedForWorkUnder: true,
      stiffness: 1e8,
      selfMass: 100,
    },
  ],
  stands: ["A", "B", "C", "D"].map((id) => ({ id, type: "horse", condition: "in-service" })),
  layouts: [
    {
      id: "L",
      name: "Layout",
      placements: [
        { stand: "A", s: 2, t: 0, height: 0.8 },
        { stand: "B", s: 8, t: 0, height: 0.8 },
      ],
    },
  ],
  steps: [{ id: "only", name: "Only", layout: "L" }],
  bay: {
    floor: { slope: [0, 0] },
    outline: [
      [0, 0],
      [18, 0],
      [18, 10],
      [0, 10],
    ],
  },
  criteria: { levelTolerance: 0, topTilt: 0 },
} as unknown as Draft;

/** The base plan with a change. */
export function planWith(change: (draft: Draft) => void): Plan {
  const draft = structuredClone(document);
  change(draft);
  return complete(draft as PlanDocument);
}

/** A third stand in the middle. */
export function thirdStand(draft: Draft, more: Partial<Draft["layouts"][number]["placements"][number]> = {}): void {
  const placement = { stand: "C", s: 5, t: 0, height: 0.8, ...more };
  draft.layouts[0]!.placements.push(placement as Draft["layouts"][number]["placements"][number]);
}

export interface Row {
  readonly name: string;
  readonly change: (draft: Draft) => void;
  /** What the worst finding of the code says; "not checked", or "not listed" where it cannot apply. */
  readonly verdict: VerdictSoFar | "not checked" | "not listed";
  /** The two numbers compared, by hand. */
  readonly value?: number;
  readonly limit?: number;
  /** Said in the sentence. */
  readonly says?: readonly string[];
  readonly stand?: string;
}

export interface Found {
  readonly verdict: Row["verdict"];
  readonly finding: Finding | null;
  readonly notChecked: NotChecked | null;
}

/** What the report of a plan says by one code. */
export function foundBy(code: FindingCode, plan: Plan): Found {
  const report = reportOf(plan);
  const finding = report.findings.find((one) => one.code === code) ?? null;
  const notChecked = report.notChecked.find((one) => one.check === code) ?? null;
  const verdict = finding?.verdict ?? (notChecked === null ? "not listed" : "not checked");
  return { verdict, finding, notChecked };
}
