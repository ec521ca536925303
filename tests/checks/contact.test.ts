/** Codes of touching and bearing; numbers by hand from the base plan (base.ts). */

import type { Draft } from "./base";
import { thirdStand } from "./base";
import { rowsOf } from "./codes";

/** A third stand in the middle, so much lower, with tops known within so much. */
const lowerMiddle = (lower: number, levelTolerance: number) => (draft: Draft) => {
  thirdStand(draft, { height: 0.8 - lower });
  draft.criteria = { topTilt: 0, levelTolerance };
};

// On two stands the piece settles by 9806.65/1e8 = 0.098 mm.
rowsOf("stand-never-bears", [
  { name: "20 mm too low, tops within 3 mm", change: lowerMiddle(0.02, 0.003), verdict: "fails", stand: "C" },
  { name: "5 mm too low, tops within 3 mm", change: lowerMiddle(0.005, 0.003), verdict: "holds" },
]);

rowsOf("stand-lifts-off", [
  {
    name: "1 mm too low",
    change: lowerMiddle(0.001, 0),
    verdict: "fails",
    stand: "C",
    value: 0,
    // 1 mm less the settlement.
    says: ["0.90 mm", "qualified person"],
  },
  { name: "level, tops within 3 mm", change: lowerMiddle(0, 0.003), verdict: "close", says: ["go light"] },
  // Three equal springs share 19613.3 N.
  { name: "level, tops exact", change: lowerMiddle(0, 0), verdict: "holds", value: 19613.3 / 3 },
]);

const shimmedMiddle = (levelTolerance: number) => (draft: Draft) => {
  thirdStand(draft, { height: 0.799, shim: 0.001 });
  draft.criteria = { topTilt: 0, levelTolerance };
};
rowsOf("shim-loose", [
  { name: "a shim under a stand that may go light", change: shimmedMiddle(0.003), verdict: "close", stand: "C" },
  { name: "a shim that stays pressed", change: shimmedMiddle(0), verdict: "holds" },
  { name: "no shim", change: lowerMiddle(0, 0.003), verdict: "not listed" },
]);

/** Each stand carries between 0.9 and 1.1 of 9806.65 N. */
const casters = (retractLoad: number | null) => (draft: Draft) => {
  draft.standTypes[0]!.casters = retractLoad === null ? null : { retractLoad };
  draft.piece.masses[0]!.uncertainty = 0.1;
};
rowsOf("casters-still-down", [
  {
    name: "retract above the planned load",
    change: casters(10000),
    verdict: "fails",
    value: 9806.65,
    says: ["casters are clear", "qualified person"],
  },
  { name: "retract above the lightest load", change: casters(9000), verdict: "close", value: 8825.985 },
  { name: "retract below it", change: casters(8000), verdict: "holds", says: ["casters are clear"] },
  { name: "no casters", change: casters(null), verdict: "not listed" },
]);

rowsOf("not-under-piece", [
  { name: "a stand 5 m off", change: (draft) => thirdStand(draft, { t: 5 }), verdict: "fails", stand: "C" },
  {
    name: "a stand 0.9 m off, its top reaching in by 0.1 m",
    change: (draft) => thirdStand(draft, { t: 0.9 }),
    verdict: "holds",
  },
]);

const keepOff = (from: number) => (draft: Draft) => {
  const to = from + 0.5;
  draft.piece.noRestZones = [
    {
      name: "machined pad",
      polygon: [
        [from, -0.5],
        [to, -0.5],
        [to, 0.5],
        [from, 0.5],
      ],
    },
  ];
};
rowsOf("no-rest-overlap", [
  // The top of stand A reaches from 1.9 to 2.1 m.
  { name: "a zone from 2.09 m", change: keepOff(2.09), verdict: "fails", stand: "A", says: ["machined pad"] },
  { name: "a zone from 2.1 m", change: keepOff(2.1), verdict: "holds" },
  { name: "no zones", change: () => {}, verdict: "not listed" },
]);
