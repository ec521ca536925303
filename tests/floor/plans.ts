/** A small plan for the floor's tests: one piece on stands in a bay. */

import { type BayDocument, complete, type Plan, type PlanDocument, type StandType } from "../../src/plan";

export const aFrame = {
  id: "af",
  name: "A-frame",
  legs: "a-frame",
  height: { min: 0.8, max: 0.8, increment: 0 },
  top: { length: 1, width: 0.2, material: "hardwood" },
  legSpacing: 0.8,
  splay: { along: 15, across: 10 },
  foot: { length: 0.15, width: 0.1 },
  selfMass: 100,
} as unknown as StandType;

/** Straight legs of no splay: plates 0.2 × 0.1 under the top's edges. */
export const straight = {
  ...aFrame,
  id: "straight",
  legs: "vertical",
  splay: { along: 0, across: 0 },
  foot: { length: 0.2, width: 0.1 },
} as StandType;

export const bay: BayDocument = {
  floor: { slope: [0, 0] },
  outline: [
    [0, 0],
    [20, 0],
    [20, 8],
    [0, 8],
  ],
};

export interface Setting {
  readonly types?: readonly object[];
  /** Type of each stand, in order; they are called S1, S2 and so on. */
  readonly stands?: readonly { readonly type?: string; readonly heightOffset?: number }[];
  readonly placements: readonly object[];
  readonly piece?: object;
  readonly bay?: BayDocument | null;
  readonly criteria?: object;
}

/** A plan with one layout, whose placements are of S1, S2, … in order; the piece is 10 × 0.4 m at (5, 4). */
export function planWith({ types, stands, placements, piece, bay: own, criteria }: Setting): Plan {
  const listed = stands ?? placements.map(() => ({}));
  return complete({
    format: "trestleboard-plan",
    version: 1,
    title: "floor test",
    piece: {
      name: "bar",
      pose: { x: 5, y: 4, heading: 0 },
      outline: [
        [0, -0.2],
        [10, -0.2],
        [10, 0.2],
        [0, 0.2],
      ],
      depth: 0.5,
      stiffness: "rigid",
      masses: [],
      ...piece,
    },
    standTypes: types ?? [aFrame, straight],
    stands: listed.map((stand, index) => ({ id: `S${index + 1}`, type: "af", condition: "in-service", ...stand })),
    layouts: [
      {
        id: "A",
        name: "A",
        placements: placements.map((placement, index) => ({
          stand: `S${index + 1}`,
          t: 0,
          angle: 0,
          height: 0.8,
          shim: 0,
          ...placement,
        })),
      },
    ],
    steps: [{ id: "only", name: "only", layout: "A" }],
    bay: own === undefined ? bay : own,
    criteria: criteria ?? {},
  } as unknown as PlanDocument);
}
