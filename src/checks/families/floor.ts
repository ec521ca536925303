/** Walkways, trip zones, zones and clearances of one layout. */

import type { FloorReport, StandOnFloor, WalkwayWidth } from "../../floor";
import { geometryTolerance } from "../../geometry";
import type { Criteria, Plan } from "../../plan";
import { criteriaOf } from "../../plan";
import { lower, useOfLower } from "../compare";
import type { Fact, FactOf } from "../facts";
import type { Part } from "../parts";
import type { Verdict } from "../report";
import { byText, condition, type LeftOut, nowhere, type Outcome, worstFact } from "./fact";

/** These need a bay; overlapping stands and blocked work windows show without one. */
const bayCodes = ["walkway-narrow", "trip-zone-in-walkway", "foot-on-no-foot-zone", "outside-bay"] as const;

export function floorChecks(plan: Plan, part: Part<FloorReport>): Outcome {
  const leftOut: LeftOut[] =
    plan.bay === null ? bayCodes.map((code): LeftOut => ({ code, why: "the plan gives no bay" })) : [];
  if (part.status !== "known") {
    const verdict = part.status === "pending" ? "pending" : "unknown";
    return { facts: codesThatApply(plan).map((code) => waiting(code, verdict)), leftOut };
  }
  const criteria = criteriaOf(plan);
  const floor = part.value;
  const applies = new Set(codesThatApply(plan));
  const facts = [
    walkwayNarrow(floor, criteria),
    applies.has("trip-zone-in-walkway") ? tripZoneInWalkway(floor) : null,
    applies.has("foot-on-no-foot-zone") ? footOnZone(floor) : null,
    standsOverlap(floor),
    applies.has("outside-bay") ? outsideBay(floor) : null,
    windowBlocked(floor, criteria),
  ];
  return { facts: facts.filter((fact) => fact !== null), leftOut };
}

type FloorCode = (typeof bayCodes)[number] | "stands-overlap" | "work-window-blocked";

function codesThatApply({ bay, piece }: Plan): FloorCode[] {
  const codes: FloorCode[] = ["stands-overlap"];
  if (piece.workWindows.length > 0) codes.push("work-window-blocked");
  if (bay === null) return codes;
  codes.push("outside-bay");
  if (bay.walkways.length > 0) codes.push("walkway-narrow", "trip-zone-in-walkway");
  if (bay.noFootZones.length > 0) codes.push("foot-on-no-foot-zone");
  return codes;
}

function waiting(code: FloorCode, verdict: "pending" | "unknown"): Fact {
  const common = { ...condition, ...nowhere, verdict, basis: byText("the floor is not computed yet") } as const;
  switch (code) {
    case "walkway-narrow":
      return { ...common, code, details: { walkway: "" } };
    case "trip-zone-in-walkway":
      return { ...common, code, details: { walkway: "", why: "clear", stands: [] } };
    case "foot-on-no-foot-zone":
      return { ...common, code, details: { stands: [], zones: [] } };
    case "outside-bay":
      return { ...common, code, details: { stands: [], piece: false } };
    case "stands-overlap":
      return { ...common, code, details: { pairs: [] } };
    case "work-window-blocked":
      return { ...common, code, details: { window: "", stands: [] } };
  }
}

function walkwayNarrow(floor: FloorReport, { closeFraction }: Criteria): FactOf<"walkway-narrow"> | null {
  return worstFact(
    floor.walkways.map(
      ({ name, clearWidth, required }): FactOf<"walkway-narrow"> => ({
        code: "walkway-narrow",
        verdict: walkwayVerdict({ clearWidth, required }, { closeFraction }),
        value: clearWidth,
        limit: required,
        unit: "m",
        use: useOfLower(clearWidth, required),
        ...nowhere,
        basis: { kind: "text", text: `width that the walkway ${name} needs`, changedBy: "walkwayWidth" },
        details: { walkway: name },
      }),
    ),
  );
}

/** What the clear width of one walkway is worth. */
export function walkwayVerdict(
  { clearWidth, required }: Pick<WalkwayWidth, "clearWidth" | "required">,
  { closeFraction }: Pick<Criteria, "closeFraction">,
): Verdict {
  return lower(clearWidth, required, closeFraction);
}

function tripZoneInWalkway(floor: FloorReport): FactOf<"trip-zone-in-walkway"> | null {
  const facts = floor.walkways.map(
    ({ name, clearWidth, withoutLegs, required, lane }): FactOf<"trip-zone-in-walkway"> => {
      const inLane = lane
        .filter(({ feet, tripZone }) => Math.max(feet, tripZone) > geometryTolerance.sharedArea)
        .map(({ stand }) => stand);
      const legsAlone = clearWidth < required && withoutLegs >= required;
      const why = inLane.length > 0 ? "lane" : legsAlone ? "legs" : "clear";
      return {
        code: "trip-zone-in-walkway",
        verdict: why === "clear" ? "holds" : "fails",
        ...condition,
        ...nowhere,
        basis: byText("nobody is to trip over a stand's legs"),
        details: { walkway: name, why, stands: inLane },
      };
    },
  );
  return worstFact(facts);
}

function footOnZone(floor: FloorReport): FactOf<"foot-on-no-foot-zone"> {
  const standing = floor.stands.filter(({ noFootZones }) => noFootZones.length > 0);
  const zones = new Set(standing.flatMap(({ noFootZones }) => noFootZones.map(({ name }) => name)));
  return {
    code: "foot-on-no-foot-zone",
    verdict: standing.length > 0 ? "fails" : "holds",
    ...condition,
    ...nowhere,
    basis: byText("the plan's no-foot zones"),
    details: { stands: standing.map(({ stand }) => stand), zones: [...zones] },
  };
}

function standsOverlap(floor: FloorReport): FactOf<"stands-overlap"> {
  const pairs = [
    ...floor.standOverlaps.map(({ stands }) => ({ stand: stands[0], other: stands[1] as string, isStand: true })),
    ...floor.stands.flatMap(({ stand, obstacles }) =>
      obstacles.map(({ name }) => ({ stand, other: name, isStand: false })),
    ),
  ];
  return {
    code: "stands-overlap",
    verdict: pairs.length > 0 ? "fails" : "holds",
    ...condition,
    ...nowhere,
    basis: byText("two things cannot stand in one place"),
    details: { pairs },
  };
}

function outsideBay(floor: FloorReport): FactOf<"outside-bay"> {
  const stands = floor.stands.filter(({ outsideBay }) => outsideBay > 0).map(({ stand }) => stand);
  const piece = floor.pieceOutsideBay > 0;
  return {
    code: "outside-bay",
    verdict: piece || stands.length > 0 ? "fails" : "holds",
    ...condition,
    ...nowhere,
    basis: byText("the plan's bay"),
    details: { stands, piece },
  };
}

/** Distance from each window to the nearest stand; a shared area fails whatever the clearance. */
function windowBlocked(floor: FloorReport, { closeFraction }: Criteria): FactOf<"work-window-blocked"> | null {
  const nearest = (index: number, stands: readonly StandOnFloor[]) =>
    stands.flatMap((stand): FactOf<"work-window-blocked">[] => {
      const window = stand.windows[index]!;
      const { name, distance, clearance, area } = window;
      return [
        {
          code: "work-window-blocked",
          verdict: area > 0 ? "fails" : lower(distance, clearance, closeFraction),
          value: distance,
          limit: clearance,
          unit: "m",
          use: area > 0 ? Number.POSITIVE_INFINITY : useOfLower(distance, clearance),
          ...nowhere,
          basis: byText(`clearance of the work window ${name}`),
          details: { window: name, stands: [stand.stand] },
        },
      ];
    });
  const windows = floor.stands[0]?.windows ?? [];
  return worstFact(windows.flatMap((_, index) => nearest(index, floor.stands)));
}
