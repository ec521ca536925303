/** Codes of ratings, service and heights; numbers by hand from the base plan (base.ts). */

import type { Draft } from "./base";
import { rowsOf } from "./codes";

const rated =
  (ratedLoad: number | null, setDown = false) =>
  (draft: Draft) => {
    draft.standTypes[0]!.ratedLoad = ratedLoad;
    draft.standTypes[0]!.ratedLoadCentre = null;
    draft.steps[0]!.setDown = setDown;
  };
rowsOf("stand-over-rating", [
  { name: "9.8 kN", change: rated(9800), verdict: "fails", value: 9806.65, limit: 9800, says: ["9.8"] },
  { name: "10 kN", change: rated(10000), verdict: "close" },
  { name: "11 kN", change: rated(11000), verdict: "holds" },
  // × 1.25 when set down: 12258.3
  { name: "12 kN when set down", change: rated(12000, true), verdict: "fails", value: 12258.3125 },
  {
    // 0.1 m off the middle: the one frame takes R·(½ + 0.1/0.8) = 6129.16 N, and twice that is 12 258.3 N.
    name: "one leg frame",
    change: (draft) => {
      rated(12000)(draft);
      draft.piece.masses[0]!.t = 0.1;
    },
    verdict: "fails",
    value: 12258.3125,
    says: ["One leg frame of stand", "6.13 kN", "stood evenly on both", "Bring the load to the middle of its top"],
  },
  { name: "no rating", change: rated(null), verdict: "unknown", value: 9806.65, says: ["must be good for"] },
]);

/** The piece bears on 0.4 m of a top whose leg frames stand 0.8 m apart: q = ½, 1/P = ½/P_c + ½/ratedLoad. */
const centre = (ratedLoad: number | null, ratedLoadCentre: number | null) => (draft: Draft) => {
  draft.piece.outline = [
    [0, -0.2],
    [10, -0.2],
    [10, 0.2],
    [0, 0.2],
  ];
  draft.standTypes[0]!.ratedLoad = ratedLoad;
  draft.standTypes[0]!.ratedLoadCentre = ratedLoadCentre;
};
rowsOf("rating-centre", [
  {
    name: "6 kN at the middle, 20 kN spread",
    change: centre(20000, 6000),
    verdict: "fails",
    value: 9806.65,
    limit: 9230.77,
  },
  { name: "6.8 kN at the middle", change: centre(20000, 6800), verdict: "close", limit: 10149.25 },
  { name: "8 kN at the middle", change: centre(20000, 8000), verdict: "holds", limit: 11428.57 },
  // With 7 kN at the middle P would be 9333.33 N.
  { name: "not known, and half of 14 kN would not do", change: centre(14000, null), verdict: "unknown" },
  { name: "not known, and half of 20 kN would do", change: centre(20000, null), verdict: "holds" },
  { name: "no rating at all", change: centre(null, null), verdict: "not checked" },
]);

const condition = (state: "in-service" | "inspect" | "out-of-service") => (draft: Draft) => {
  draft.stands[1]!.condition = state;
};
rowsOf("stand-not-in-service", [
  { name: "out of service", change: condition("out-of-service"), verdict: "fails", stand: "B" },
  { name: "to be inspected", change: condition("inspect"), verdict: "unknown", stand: "B" },
  { name: "in service", change: condition("in-service"), verdict: "holds" },
]);

const under =
  (rating: boolean | null, people = true) =>
  (draft: Draft) => {
    draft.standTypes[0]!.ratedForWorkUnder = rating;
    draft.steps[0]!.peopleUnder = people;
  };
rowsOf("stand-not-rated-under", [
  { name: "not rated for it", change: under(false), verdict: "fails", says: ["qualified person"] },
  { name: "rated for it", change: under(true), verdict: "holds" },
  { name: "not known", change: under(null), verdict: "unknown", says: ["qualified person"] },
  { name: "nobody under", change: under(false, false), verdict: "not listed" },
]);

const crane = (craneHolds: boolean, peopleUnder: boolean) => (draft: Draft) => {
  draft.steps[0]!.craneHolds = craneHolds;
  draft.steps[0]!.peopleUnder = peopleUnder;
};
rowsOf("crane-holds", [
  {
    name: "people under a piece in the hooks",
    change: crane(true, true),
    verdict: "fails",
    says: ["qualified person"],
  },
  { name: "nobody under it", change: crane(true, false), verdict: "holds" },
  { name: "the crane let go", change: crane(false, true), verdict: "not listed" },
]);

const height = (value: number, increment: number) => (draft: Draft) => {
  draft.standTypes[0]!.height = { min: 0.5, max: 1.2, increment };
  for (const placement of draft.layouts[0]!.placements) placement.height = value;
};
rowsOf("heights-mismatch", [
  { name: "too low", change: height(0.49, 0), verdict: "fails", says: ["500 mm"] },
  { name: "too high", change: height(1.201, 0), verdict: "fails" },
  { name: "between two holes", change: height(0.78, 0.05), verdict: "fails", says: ["50 mm"] },
  { name: "on a hole", change: height(0.8, 0.05), verdict: "holds" },
  { name: "on a hole but for half a micrometre", change: height(0.8 + 5e-7, 0.05), verdict: "holds" },
  { name: "at the end of its range", change: height(1.2, 0), verdict: "holds" },
]);
