/** Plans for the browser tests, simple enough to be solved by hand. */

import type { PlanDocument } from "../../src/plan";

/** Standard gravity, m/s². */
export const g = 9.80665;

const horse = {
  id: "horse",
  name: "Horse",
  legs: "a-frame",
  height: { min: 0.6, max: 0.9, increment: 0 },
  top: { length: 1.5, width: 0.2, material: "steel" },
  legSpacing: 1.2,
  splay: { along: 22, across: 0 },
  foot: { length: 0.15, width: 0.1 },
  ratedLoad: 12_000,
  ratedLoadCentre: 12_000,
  ratedForWorkUnder: true,
  stiffness: 1e8,
  selfMass: 80,
} as const;

/**
 * A rigid beam, 10 m of 200 kg/m, on two stands at 1 m and 9 m, a third one to spare. Its weight is 2000 kg × g =
 * 19 613.3 N and acts at 5 m; nothing about it is uncertain, so lightest and heaviest are as planned, and the stands at a and b carry W·(b − 5)/(b − a) and W·(5 − a)/(b − a).
 */
export const twoStands = {
  format: "trestleboard-plan",
  version: 1,
  title: "Two stands",
  display: { units: "metric", length: "mm", force: "N" },
  piece: {
    name: "Beam",
    outline: [
      [0, -0.2],
      [10, -0.2],
      [10, 0.2],
      [0, 0.2],
    ],
    depth: 0.4,
    stiffness: "rigid",
    masses: [{ id: "beam", name: "Beam", kind: "line", from: 0, to: 10, massPerLength: [200, 200], t: 0, z: 0.2 }],
  },
  standTypes: [horse],
  stands: ["A", "B", "C"].map((id) => ({ id, type: "horse", condition: "in-service" })),
  layouts: [
    {
      id: "L",
      name: "As set",
      placements: [
        { stand: "A", s: 1, t: 0, height: 0.762 },
        { stand: "B", s: 9, t: 0, height: 0.762 },
      ],
    },
  ],
  steps: [{ id: "only", name: "Set down", layout: "L" }],
  criteria: { levelTolerance: 0, topTilt: 0 },
} as unknown as PlanDocument;
