/** Everything the floor says about one layout. */

import { geometryTolerance, pieceFrame, polygonToOuter, standFrame } from "../geometry";
import type { Bay, Criteria, Layout, Placement, Plan, Polygon } from "../plan";
import { criteriaOf, standOf, typeOf } from "../plan";
import type { FloorReport, StandOnFloor, StandOverlap } from "./answers";
import { footprintOf, standInBay } from "./footprint";
import { tripHulls, tripZoneOf } from "./tripZone";
import { walkwayWidths } from "./walkways";
import { areaBeyond, areaShared, bodyOf, windowDistance, zonesTaken } from "./zones";

/** Feet, trip zones, walkways and whatever runs into something, of one layout. */
export function floorOf(plan: Plan, layout: Layout): FloorReport {
  const criteria = criteriaOf(plan);
  const { placements } = layout;
  const piece = polygonToOuter(pieceFrame(plan.piece.pose), plan.piece.outline);
  const stands = placements.map((placement) => standOnFloor(plan, placement, piece, criteria));
  return {
    layout: layout.id,
    stands,
    standOverlaps: overlapsOf(stands),
    pieceOutsideBay: plan.bay === null ? 0 : areaBeyond([piece], plan.bay.outline),
    walkways: plan.bay === null ? [] : walkwaysOf(plan, plan.bay, placements, piece, stands, criteria),
  };
}

function standOnFloor(plan: Plan, placement: Placement, piece: Polygon, criteria: Criteria): StandOnFloor {
  const type = typeOf(plan, placement.stand);
  const inBay = standInBay(placement, plan.piece.pose);
  const footprint = footprintOf(type, placement.height, inBay);
  const underPiece = footprintOf(type, placement.height, standFrame(placement));
  const body = bodyOf(footprint);
  const topHeight = placement.height + standOf(plan, placement.stand).heightOffset + placement.shim;
  const { noRestZones, workWindows } = plan.piece;
  return {
    stand: placement.stand,
    footprint,
    tripZone: tripZoneOf(placement.stand, tripHulls(type, placement.height, inBay, criteria), criteria, piece),
    topInTheWay: topHeight < criteria.headroom - geometryTolerance.touching,
    noRestZones: zonesTaken(noRestZones, [underPiece.top]),
    noFootZones: plan.bay === null ? [] : zonesTaken(plan.bay.noFootZones, footprint.plates),
    obstacles: plan.bay === null ? [] : zonesTaken(plan.bay.obstacles, body),
    outsideBay: plan.bay === null ? 0 : areaBeyond(body, plan.bay.outline),
    windows: workWindows.map((window) => windowDistance(window, bodyOf(underPiece))),
  };
}

function overlapsOf(stands: readonly StandOnFloor[]): StandOverlap[] {
  return stands.flatMap((first, index) =>
    stands
      .slice(index + 1)
      .map((second): StandOverlap => {
        const area = areaShared(bodyOf(first.footprint), bodyOf(second.footprint));
        return { stands: [first.stand, second.stand], area };
      })
      .filter(({ area }) => area > 0),
  );
}

function walkwaysOf(
  plan: Plan,
  bay: Bay,
  placements: readonly Placement[],
  piece: Polygon,
  stands: readonly StandOnFloor[],
  criteria: Criteria,
) {
  const hulls = placements.flatMap((placement) =>
    tripHulls(typeOf(plan, placement.stand), placement.height, standInBay(placement, plan.piece.pose), criteria),
  );
  const lowTops = stands.filter(({ topInTheWay }) => topInTheWay).map(({ footprint }) => footprint.top);
  return walkwayWidths(bay, piece, { tripHulls: hulls, lowTops }, stands, criteria);
}
