/** A plan to edit, and an editor without an engine. */

import { awaited, type Report, reportOf } from "../../src/checks";
import type { LayoutId, PlanDocument, StandId, StandTypeId, StepId } from "../../src/plan";
import { createEditor, type Editor, type EditorOptions } from "../../src/store";

export const layoutA = "A" as LayoutId;
export const stepOne = "set-down" as StepId;
export const [h1, h2, h3, spare] = ["H-1", "H-2", "H-3", "H-4"] as unknown as [StandId, StandId, StandId, StandId];

export const beam: PlanDocument = {
  format: "trestleboard-plan",
  version: 1,
  title: "Beam on three",
  piece: {
    name: "Beam",
    outline: [
      [0, -0.2],
      [12, -0.2],
      [12, 0.2],
      [0, 0.2],
    ],
    depth: 0.6,
    stiffness: "rigid",
    masses: [
      { id: "beam" as never, name: "Beam", kind: "line", from: 0, to: 12, massPerLength: [100, 100], t: 0, z: 0.3 },
      { id: "lug" as never, name: "Lug", kind: "point", s: 6, t: 0, z: 0.6, mass: 300 },
    ],
  },
  standTypes: [
    {
      id: "horse" as StandTypeId,
      name: "Horse",
      legs: "a-frame",
      height: { min: 0.6, max: 0.9, increment: 0 },
      top: { length: 1.5, width: 0.2, material: "hardwood" },
      legSpacing: 1.2,
      splay: { along: 15, across: 0 },
      foot: { length: 0.15, width: 0.1 },
      ratedLoad: 20000,
      stiffness: 1e8,
      selfMass: 80,
    },
  ],
  stands: [h1, h2, h3, spare].map((id) => ({ id, type: "horse" as StandTypeId, condition: "in-service" as const })),
  layouts: [
    {
      id: layoutA,
      name: "As set",
      placements: [
        { stand: h1, s: 1, t: 0, height: 0.762 },
        { stand: h2, s: 6, t: 0, height: 0.762 },
        { stand: h3, s: 11, t: 0, height: 0.762 },
      ],
    },
  ],
  steps: [
    { id: stepOne, name: "Set down", layout: layoutA, absent: ["lug" as never] },
    { id: "weld" as StepId, name: "Weld", layout: layoutA },
  ],
};

/** Counts the reports that an editor asks for. */
export function countingReport(): { readonly report: EditorOptions["report"]; readonly count: () => number } {
  let calls = 0;
  return {
    report: (plan): Report => {
      calls += 1;
      return reportOf(plan, awaited);
    },
    count: () => calls,
  };
}

export function editorOn(document: PlanDocument = beam, options: Partial<EditorOptions> = {}): Editor {
  return createEditor({ document, report: (plan) => reportOf(plan, awaited), ...options });
}
