/**
 * Codes of the floor; numbers by hand from the base plan (base.ts). In the bay the piece covers x from 4 to 14 m and y from
 * 4.5 to 5.5 m; the feet of stand A stand at x = 6 ± 0.314 m, y = 5 ± 0.4 m, so no leg reaches out from under the piece
 * but by the toe clearance of 0.05 m round foot plates that end 0.45 m from its middle.
 */

import type { Draft } from "./base";
import { rowsOf } from "./codes";

type Ring = [number, number][];
const box = (left: number, bottom: number, right: number, top: number): Ring => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** Between the piece, at 5.5 m, and a store along the wall; a second store closes the other side. */
const walkway =
  (storeTo: number, width: number | null = 0.8) =>
  (draft: Draft) => {
    const middle = (5.5 + storeTo) / 2;
    draft.bay!.obstacles = [
      { name: "store", polygon: box(0, storeTo, 18, 10) },
      { name: "bench", polygon: box(0, 0, 18, 4.5) },
    ];
    draft.bay!.walkways = [
      { name: "aisle", from: [1, middle], to: [17, middle], ...(width === null ? {} : { width }) },
    ];
  };
rowsOf("walkway-narrow", [
  { name: "0.7 m beside the piece", change: walkway(6.2), verdict: "fails", value: 0.7, limit: 0.8, says: ["aisle"] },
  { name: "0.85 m beside the piece", change: walkway(6.35), verdict: "close", value: 0.85 },
  { name: "0.9 m beside the piece", change: walkway(6.4), verdict: "holds", value: 0.9 },
  { name: "0.7 m where the criterion asks for 0.7112 m", change: walkway(6.2, null), verdict: "fails", limit: 0.7112 },
  { name: "no walkways", change: () => {}, verdict: "not listed" },
  {
    name: "no bay",
    change: (draft) => {
      draft.bay = null;
    },
    verdict: "not checked",
  },
]);

/** Legs that splay across reach out by 0.8·tan 30° = 0.46 m further. */
const splayed = (draft: Draft) => {
  draft.standTypes[0]!.splay = { along: 15, across: 30 };
};
const lane = (from: number) => (draft: Draft) => {
  draft.bay!.walkways = [{ name: "aisle", from: [1, 8], to: [17, 8], width: 0.8, lane: box(0, from, 18, from + 1) }];
};
rowsOf("trip-zone-in-walkway", [
  {
    // 0.9 m beside the piece, less the legs that reach 0.412 m + 0.05 m out from under it.
    name: "splayed legs in a walkway that is wide enough without them",
    change: (draft) => {
      walkway(6.4)(draft);
      splayed(draft);
    },
    verdict: "fails",
    says: ["straight legs"],
  },
  { name: "straight legs under the piece", change: walkway(6.4), verdict: "holds" },
  { name: "too narrow without legs too", change: walkway(6.2), verdict: "holds" },
  {
    // Feet reach to y = 5 + 0.4 + 0.462 + 0.05 = 5.912 m, the trip zone 0.05 m further.
    name: "splayed legs in a painted lane from 5.93 m",
    change: (draft) => {
      lane(5.93)(draft);
      splayed(draft);
    },
    verdict: "fails",
    says: ["A and B", "lane"],
  },
  {
    name: "a painted lane from 5.97 m",
    change: (draft) => {
      lane(5.97)(draft);
      splayed(draft);
    },
    verdict: "holds",
  },
  { name: "no walkway", change: splayed, verdict: "not listed" },
  {
    name: "no bay",
    change: (draft) => {
      draft.bay = null;
    },
    verdict: "not checked",
  },
]);

const noFoot = (from: number) => (draft: Draft) => {
  draft.bay!.noFootZones = [{ name: "trench cover", polygon: box(from, 0, from + 1, 10) }];
};
// The plates of stand A end at x = 6.3144 + 0.075 m.
rowsOf("foot-on-no-foot-zone", [
  { name: "a zone from 6.38 m", change: noFoot(6.38), verdict: "fails", says: ["stand A", "trench cover"] },
  { name: "a zone from 6.39 m", change: noFoot(6.39), verdict: "holds" },
  { name: "no zones", change: () => {}, verdict: "not listed" },
  {
    name: "no bay",
    change: (draft) => {
      draft.bay = null;
    },
    verdict: "not checked",
  },
]);

const beside = (s: number) => (draft: Draft) => {
  draft.layouts[0]!.placements.push({ stand: "C", s, t: 0, height: 0.8 } as never);
};
// Plates reach 0.38936 m out, so two stands need 0.7787 m from middle to middle.
rowsOf("stands-overlap", [
  { name: "0.77 m apart", change: beside(2.77), verdict: "fails", says: ["A", "C"] },
  { name: "0.78 m apart", change: beside(2.78), verdict: "holds" },
  {
    name: "a column among the legs",
    change: (draft) => {
      draft.bay!.obstacles = [{ name: "column B3", polygon: box(6.2, 4.8, 6.4, 5.5) }];
    },
    verdict: "fails",
    says: ["column B3"],
  },
]);

rowsOf("outside-bay", [
  {
    name: "the piece through the wall",
    change: (draft) => {
      draft.piece.pose!.x = 8.1;
    },
    verdict: "fails",
    says: ["The piece"],
  },
  {
    name: "the piece through the wall and no stands",
    change: (draft) => {
      draft.piece.pose!.x = 8.1;
      draft.layouts[0]!.placements = [];
    },
    verdict: "fails",
  },
  {
    name: "the piece along the wall",
    change: (draft) => {
      draft.piece.pose!.x = 8;
    },
    verdict: "holds",
  },
  {
    name: "no bay",
    change: (draft) => {
      draft.bay = null;
    },
    verdict: "not checked",
  },
]);

/** The frames of stand A end at s = 2.38936 m. */
const window = (from: number, clearance: number) => (draft: Draft) => {
  draft.piece.workWindows = [{ name: "splice weld", polygon: box(from, -0.5, from + 1, 0.5), clearance }];
};
rowsOf("work-window-blocked", [
  {
    name: "0.2 m away of 0.3 m",
    change: window(2.58936, 0.3),
    verdict: "fails",
    value: 0.2,
    limit: 0.3,
    says: ["splice weld"],
  },
  { name: "0.32 m away of 0.3 m", change: window(2.70936, 0.3), verdict: "close", value: 0.32 },
  { name: "0.34 m away of 0.3 m", change: window(2.72936, 0.3), verdict: "holds", value: 0.34 },
  { name: "the stand in it, no clearance asked for", change: window(2, 0), verdict: "fails" },
  { name: "beside it, no clearance asked for", change: window(2.4, 0), verdict: "holds" },
  { name: "no windows", change: () => {}, verdict: "not listed" },
]);
