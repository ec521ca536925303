/** Codes of tipping, leaning and tipping lines; numbers by hand from the base plan (base.ts). */

import type { Draft } from "./base";
import { rowsOf } from "./codes";

const secondStandAt = (s: number) => (draft: Draft) => {
  draft.layouts[0]!.placements[1]!.s = s;
};

/** 100 kg ± a half at 9.9 m: as weighed the centre lies at (2000·5 + 100·9.9)/2100 = 5.233 m, at most at 5.342 m. */
const endLug = (s: number) => (draft: Draft) => {
  secondStandAt(s)(draft);
  draft.piece.masses.push({
    id: "lug",
    name: "End lug",
    kind: "point",
    s: 9.9,
    t: 0,
    z: 0.3,
    mass: 100,
    uncertainty: 0.5,
  } as Draft["piece"]["masses"][number]);
};

rowsOf("tips", [
  // The load centre at 5 m lies 0.1 m beyond the line at 4.9 m.
  {
    name: "both stands on one side",
    change: secondStandAt(4.9),
    verdict: "fails",
    says: ["100 mm", "qualified person"],
  },
  { name: "just astride", change: secondStandAt(5.1), verdict: "holds" },
  { name: "an end weight that may prove too heavy", change: endLug(5.3), verdict: "fails", says: ["End lug"] },
  { name: "the stand just beyond the farthest centre", change: endLug(5.4), verdict: "holds" },
  {
    name: "a load that may be there",
    change: (draft) => {
      secondStandAt(6)(draft);
      // 5 kN at the far end: (19613.3·5 + 5000·10)/24613.3 = 6.016 m, beyond 6 m; the level case has it too.
      draft.steps[0]!.loads = [{ name: "fitter", s: 10, t: 0, z: 0, force: [0, 0, -5000] }];
    },
    verdict: "fails",
  },
  {
    // Without it the centre lies at 5 m, before the stand at 5.5 m.
    name: "a counterweight that may not be there",
    change: (draft) => {
      draft.layouts[0]!.placements[0]!.s = 5.5;
      draft.layouts[0]!.placements[1]!.s = 9;
      draft.steps[0]!.loads = [{ name: "counterweight", s: 10, t: 0, z: 0, force: [0, 0, -5000] }];
    },
    verdict: "fails",
    says: ["counterweight"],
  },
  {
    name: "tops on one line",
    change: (draft) => {
      draft.layouts[0]!.placements = [
        { stand: "A", s: 5, t: 0, height: 0.8 },
      ] as Draft["layouts"][number]["placements"];
    },
    verdict: "fails",
    says: ["one line"],
  },
  {
    name: "lifted off",
    change: (draft) => {
      draft.steps[0]!.loads = [{ name: "hoist", s: 5, t: 0, z: 0, force: [0, 0, 20000] }];
    },
    verdict: "fails",
    says: ["lifts off"],
  },
]);

const higher = (millimetres: number) => (draft: Draft) => {
  draft.layouts[0]!.placements[1]!.height = 0.8 + millimetres / 1000;
};

// Both stands yield alike, so the piece slopes by the difference in height over 6 m.
rowsOf("tilts", [
  {
    name: "66 mm in 6 m",
    change: higher(66),
    verdict: "fails",
    value: 0.011,
    limit: 0.01,
    says: ["mm/m", "qualified person"],
  },
  { name: "57 mm in 6 m", change: higher(57), verdict: "close", value: 0.0095 },
  { name: "53 mm in 6 m", change: higher(53), verdict: "holds", value: 0.053 / 6 },
  {
    name: "a floor that slopes 0.011",
    change: (draft) => {
      draft.bay!.floor.slope = [0.011, 0];
    },
    verdict: "fails",
    value: 0.011,
  },
  {
    name: "a floor that slopes 0.011 across",
    change: (draft) => {
      draft.bay!.floor.slope = [0, -0.011];
    },
    verdict: "fails",
    value: 0.011,
  },
]);

// About the line at s: righting 200·s·g·s/2, overturning 200·(10 − s)·g·(10 − s)/2 and a person 1334·(10 − s).
rowsOf("tip-reserve", [
  // 29665.1 ÷ (19858.5 + 6003)
  {
    name: "a long overhang",
    change: secondStandAt(5.5),
    verdict: "fails",
    value: 1.14708,
    limit: 1.5,
    says: ["qualified person", "A", "B"],
  },
  // 34137.0 ÷ (16485.0 + 5469.4)
  { name: "a little shorter", change: secondStandAt(5.9), verdict: "close", value: 1.5549 },
  // 35303.9 ÷ (15690.6 + 5336)
  { name: "shorter yet", change: secondStandAt(6), verdict: "holds", value: 1.67901 },
  {
    name: "the same with people under",
    change: (draft) => {
      secondStandAt(6)(draft);
      draft.steps[0]!.peopleUnder = true;
    },
    verdict: "fails",
    limit: 2,
  },
  {
    // 0.04 m from the line, of which 5 % of the breadth 3.04 m is more than 0.05 m.
    name: "the load centre near a line",
    change: (draft) => {
      secondStandAt(5.04)(draft);
      draft.criteria = { ...draft.criteria, tipReserve: 0.1 };
    },
    verdict: "fails",
    value: 0.04,
    limit: 0.152,
  },
]);
