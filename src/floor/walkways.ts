/** How wide a walkway is between everything that stands in it. */

import { type Barrier, sharedArea, widestPath } from "../geometry";
import type { Bay, Criteria, Polygon, Walkway } from "../plan";
import type { LaneOverlap, StandOnFloor, WalkwayWidth } from "./answers";

/** What the layout's stands put in the way: trip hulls not yet grown, and the tops below headroom. */
export interface StandBarriers {
  readonly tripHulls: readonly Polygon[];
  readonly lowTops: readonly Polygon[];
}

/**
 * Every walkway of the bay. Nobody walks under the piece, however high; `piece` is its outline in the bay.
 */
export function walkwayWidths(
  bay: Bay,
  piece: Polygon,
  { tripHulls, lowTops }: StandBarriers,
  stands: readonly StandOnFloor[],
  criteria: Pick<Criteria, "toeClearance" | "walkwayWidth">,
): WalkwayWidth[] {
  const solid = (ring: Polygon, radius = 0): Barrier => ({ ring, solid: "inside", radius });
  const withoutLegs: readonly Barrier[] = [
    { ring: bay.outline, solid: "outside", radius: 0 },
    ...bay.obstacles.map(({ polygon }) => solid(polygon)),
    solid(piece),
    ...lowTops.map((top) => solid(top)),
  ];
  const all = [...withoutLegs, ...tripHulls.map((hull) => solid(hull, criteria.toeClearance))];
  return bay.walkways.map((walkway) => {
    const clear = widestPath(all, walkway.from, walkway.to);
    return {
      name: walkway.name,
      clearWidth: clear.width,
      withoutLegs: widestPath(withoutLegs, walkway.from, walkway.to).width,
      required: walkway.width ?? criteria.walkwayWidth,
      narrowestAt: clear.narrowestAt,
      across: clear.across,
      lane: laneOverlaps(walkway, stands),
    };
  });
}

function laneOverlaps({ lane }: Walkway, stands: readonly StandOnFloor[]): LaneOverlap[] {
  if (lane === null) return [];
  return stands.map(({ stand, footprint, tripZone }) => ({
    stand,
    feet: footprint.plates.reduce((area, plate) => area + sharedArea(plate, lane), 0),
    tripZone: tripZone.polygons.reduce(
      (area, { outer, holes }) =>
        area + sharedArea(outer, lane) - holes.reduce((sum, hole) => sum + sharedArea(hole, lane), 0),
      0,
    ),
  }));
}
