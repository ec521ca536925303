/**
 * The complete plan: every optional key that the document leaves out gets its default (plan-format, fine print).
 *
 * Every object and list is completed once: as long as a part of the document stays the same object, so does the part
 * of the plan made from it, and what is remembered about that part stays valid. What leaves nothing out is kept as is.
 */

import type { BayDocument, MassDocument, PieceDocument, PlanDocument } from "./document";
import { memo } from "./memo";
import type { Bay, Display, Mass, Piece, Plan, PointMass, Slab, StandType, Step, Walkway } from "./types";

const none: readonly never[] = Object.freeze([]);

type Optional<Whole extends object, Keys extends keyof Whole> = Omit<Whole, Keys> & {
  readonly [Key in Keys]?: Whole[Key];
};

/** Fills in the defaults of the keys that an object leaves out; memoised. */
function filling<Whole extends object, Keys extends keyof Whole>(
  defaults: Readonly<Pick<Whole, Keys>>,
): (source: Optional<Whole, Keys>) => Whole {
  const keys = Object.keys(defaults);
  return memo((source: object) =>
    keys.every((key) => Object.hasOwn(source, key)) ? source : { ...defaults, ...source },
  ) as (source: Optional<Whole, Keys>) => Whole;
}

/** Completes every item of a list; memoised, and the list itself where no item changes. */
function each<From, To>(completeItem: (item: From) => To): (list: readonly From[]) => readonly To[] {
  return memo((list: readonly From[]) => {
    const completed = list.map(completeItem);
    return completed.every((item, index) => (item as unknown) === list[index])
      ? (list as unknown as readonly To[])
      : completed;
  });
}

/** The object with some keys replaced; the object itself where all of them are already so. */
function replacing<Source extends object, Changes extends object>(source: Source, changes: Changes): Source & Changes {
  const current = source as Record<string, unknown>;
  const same = Object.entries(changes).every(([key, value]) => Object.hasOwn(source, key) && current[key] === value);
  return same ? (source as Source & Changes) : { ...source, ...changes };
}

const nowhere = Object.freeze({ s: 0, t: 0 });
const massCommon = { uncertainty: 0, basis: null } as const;
const completeLineMass = filling<Extract<Mass, { kind: "line" }>, keyof typeof massCommon>(massCommon);
const completePointMass = filling<PointMass, keyof typeof massCommon | "centreWithin">({
  ...massCommon,
  centreWithin: nowhere,
});
const completeMasses = each<MassDocument, Mass>((mass) =>
  mass.kind === "line" ? completeLineMass(mass) : completePointMass(mass),
);

const fillPiece = filling<
  Omit<Piece, "masses"> & Pick<PieceDocument, "masses">,
  "ends" | "pose" | "underside" | "restZones" | "noRestZones" | "workWindows" | "section"
>({
  ends: Object.freeze({ datum: "datum end", far: "far end" }),
  pose: Object.freeze({ x: 0, y: 0, heading: 0 }),
  underside: none,
  restZones: null,
  noRestZones: none,
  workWindows: none,
  section: null,
});
const completePiece = memo((piece: PieceDocument): Piece => {
  const filled = fillPiece(piece);
  return replacing(filled, { masses: completeMasses(filled.masses) });
});

const completeStandTypes = each(
  filling<
    StandType,
    | "ratedLoad"
    | "ratedLoadCentre"
    | "designFactor"
    | "ratedForWorkUnder"
    | "marking"
    | "stiffness"
    | "casters"
    | "liftingPoints"
  >({
    ratedLoad: null,
    ratedLoadCentre: null,
    designFactor: null,
    ratedForWorkUnder: null,
    marking: "",
    stiffness: null,
    casters: null,
    liftingPoints: false,
  }),
);

const completeStands = each(
  filling<Plan["stands"][number], "lastInspected" | "heightOffset">({ lastInspected: null, heightOffset: 0 }),
);

const completePlacements = each(
  filling<Plan["layouts"][number]["placements"][number], "angle" | "shim">({ angle: 0, shim: 0 }),
);
const completeLayouts = each(
  memo((layout: PlanDocument["layouts"][number]) =>
    replacing(layout, { placements: completePlacements(layout.placements) }),
  ),
);

const completeSteps = each(
  filling<
    Step,
    "absent" | "parts" | "bow" | "loads" | "peopleUnder" | "setDown" | "craneHolds" | "chocked" | "braced" | "readings"
  >({
    absent: none,
    parts: null,
    bow: null,
    loads: none,
    peopleUnder: false,
    setDown: false,
    craneHolds: false,
    chocked: false,
    braced: false,
    readings: none,
  }),
);

const completeWalkways = each(filling<Walkway, "lane">({ lane: null }));
const completeSlab = filling<Slab, "joints">({ joints: null });
const fillBay = filling<
  Omit<Bay, "walkways" | "slab"> & Required<Pick<BayDocument, "walkways" | "slab">>,
  "obstacles" | "noFootZones" | "walkways" | "slab"
>({ obstacles: none, noFootZones: none, walkways: none, slab: null });
const completeBay = memo((bay: BayDocument): Bay => {
  const filled = fillBay(bay);
  return replacing(filled, {
    walkways: completeWalkways(filled.walkways),
    slab: filled.slab === null ? null : completeSlab(filled.slab),
  });
});

const completeDisplay = filling<Display, "units" | "length" | "force">({ units: "metric", length: null, force: null });
const fillPlan = filling<
  Omit<Plan, "display" | "piece" | "standTypes" | "stands" | "layouts" | "steps" | "bay"> &
    Required<Pick<PlanDocument, "display" | "piece" | "standTypes" | "stands" | "layouts" | "steps" | "bay">>,
  "revision" | "notes" | "criteria" | "display" | "bay"
>({ revision: 1, notes: "", criteria: Object.freeze({}), display: Object.freeze({}), bay: null });

/** The plan with every optional key filled in. Remembered by identity, for the whole and for every object in it. */
export const complete: (document: PlanDocument) => Plan = memo((document) => {
  const filled = fillPlan(document);
  return replacing(filled, {
    display: completeDisplay(filled.display),
    piece: completePiece(filled.piece),
    standTypes: completeStandTypes(filled.standTypes),
    stands: completeStands(filled.stands),
    layouts: completeLayouts(filled.layouts),
    steps: completeSteps(filled.steps),
    bay: filled.bay === null ? null : completeBay(filled.bay),
  });
});
