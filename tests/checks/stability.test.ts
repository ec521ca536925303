/** Codes of pushing and of one stand gone; numbers by hand from the base plan (base.ts). */

import type { Draft } from "./base";
import { rowsOf } from "./codes";

// H = 0.03·19613.3 = 588.399 N, half of it a stand.

/** The piece may rest at one place of each top only, so its reaction acts outside the leg frames, 0.6 m apart. */
const atTheEdge = (out: number) => (draft: Draft) => {
  const at = (s: number, t: number) =>
    [
      [s - 0.5, t - 0.05],
      [s + 0.5, t - 0.05],
      [s + 0.5, t + 0.05],
      [s - 0.5, t + 0.05],
    ] as [number, number][];
  draft.piece.restZones = [at(2, out), at(8, -out)];
  draft.standTypes[0]!.legSpacing = 0.6;
};

/** Straight legs right under the edges of a top 0.2 m wide: pushed at the edge, only the stand's own weight rights it. */
const straight = (selfMass: number) => (draft: Draft) => {
  const type = draft.standTypes[0]!;
  type.legs = "vertical";
  type.splay = { along: 0, across: 0 };
  type.selfMass = selfMass;
};

rowsOf("stand-tips-over", [
  // Frames: R·(½ − 0.4/0.6) = −1634.4 N
  {
    name: "bearing outside a leg frame",
    change: atTheEdge(0.4),
    verdict: "fails",
    value: -1634.44,
    says: ["qualified person"],
  },
  { name: "bearing just inside", change: atTheEdge(0.25), verdict: "holds" },
  // 100 kg·g·0.1 m ÷ (294.2 N·0.8 m)
  { name: "straight legs and light", change: straight(100), verdict: "fails", value: 0.416667, limit: 1.5 },
  { name: "straight legs, 380 kg", change: straight(380), verdict: "close", value: 1.583333 },
  { name: "straight legs, 410 kg", change: straight(410), verdict: "holds", value: 1.708333 },
  {
    // Half the base (0.1 + 0.8·tan 15°)/0.8
    name: "narrow for its height when set down",
    change: (draft) => {
      draft.steps[0]!.setDown = true;
    },
    verdict: "close",
    value: 0.392949,
    limit: 0.5,
  },
  {
    name: "wide enough when set down",
    change: (draft) => {
      draft.steps[0]!.setDown = true;
      draft.standTypes[0]!.splay = { along: 30, across: 0 };
      draft.standTypes[0]!.legSpacing = 1;
    },
    verdict: "holds",
  },
]);

/** About the line at t = 0.5 m the weight rights with 19613.3·0.5 = 9806.65 N·m and the push overturns with H·z. */
const centreAt = (z: number) => (draft: Draft) => {
  draft.piece.masses[0]!.z = z;
};
rowsOf("rolls-over", [
  {
    name: "a centre of gravity 20 m up",
    change: centreAt(20),
    verdict: "fails",
    value: 0.833333,
    limit: 1.5,
    says: ["qualified person"],
  },
  { name: "10.5 m up", change: centreAt(10.5), verdict: "close", value: 1.587302 },
  { name: "9 m up", change: centreAt(9), verdict: "holds", value: 1.851852 },
  {
    // At z = depth when set down: 588.399·12 = 7060.8 N·m
    name: "pushed at its top when set down",
    change: (draft) => {
      draft.piece.depth = 3.9;
      draft.steps[0]!.setDown = true;
      draft.criteria = { ...draft.criteria, horizontalFraction: 0.09 };
    },
    verdict: "fails",
    // 9806.65 ÷ (0.09·19613.3·3.9)
    value: 1.424501,
  },
  {
    name: "4.1 times as deep as wide",
    change: (draft) => {
      draft.piece.depth = 4.1;
    },
    verdict: "fails",
    value: 4.1,
    limit: 4,
  },
  {
    name: "3.9 times as deep as wide",
    change: (draft) => {
      draft.piece.depth = 3.9;
    },
    verdict: "holds",
  },
  {
    name: "braced",
    change: (draft) => {
      centreAt(20)(draft);
      draft.steps[0]!.braced = true;
    },
    verdict: "not checked",
  },
]);

const pushed = (horizontalFraction: number) => (draft: Draft) => {
  draft.criteria = { ...draft.criteria, horizontalFraction };
};
// On the floor 0.1·(9806.65 + 100·g) = 1078.73 N a stand; on the tops 0.3·19613.3 N.
rowsOf("slides", [
  { name: "6 % of the weight", change: pushed(0.06), verdict: "fails", value: 1.833333, limit: 2 },
  { name: "5 %", change: pushed(0.05), verdict: "close", value: 2.2 },
  { name: "4.5 %", change: pushed(0.045), verdict: "holds", value: 2.444444 },
  {
    // 0.05·19613.3 ÷ 588.4
    name: "plastic tops",
    change: (draft) => {
      draft.standTypes[0]!.top.material = "uhmw-pe";
    },
    verdict: "fails",
    value: 1.666667,
    says: ["tops"],
  },
  {
    // The step's own push adds to it: 588.4 + 500 on the tops.
    name: "plastic tops and a load that pushes",
    change: (draft) => {
      draft.standTypes[0]!.top.material = "uhmw-pe";
      draft.steps[0]!.loads = [{ name: "jack", s: 5, t: 0, z: 0, force: [300, 400, 0] }];
    },
    verdict: "fails",
    value: 980.665 / 1088.399,
  },
  {
    name: "plastic tops, chocked: only the feet count",
    change: (draft) => {
      draft.standTypes[0]!.top.material = "uhmw-pe";
      draft.steps[0]!.chocked = true;
    },
    verdict: "holds",
    value: 1078.7315 / 294.1995,
  },
]);

const four = (peopleUnder: boolean) => (draft: Draft) => {
  draft.steps[0]!.peopleUnder = peopleUnder;
  draft.layouts[0]!.placements = ["A", "B", "C", "D"].map((stand, index) => ({
    stand,
    s: [1, 4.9, 5.1, 9][index],
    t: 0,
    height: 0.8,
  })) as Draft["layouts"][number]["placements"];
};
rowsOf("single-stand-loss", [
  {
    name: "two stands, people under",
    change: (draft) => {
      draft.steps[0]!.peopleUnder = true;
    },
    verdict: "close",
    says: ["A and B", "qualified person"],
  },
  { name: "four stands, people under", change: four(true), verdict: "holds" },
  { name: "four stands, nobody under", change: four(false), verdict: "not listed" },
]);
