/** Where people trip over a stand's legs. */

import { difference, type Frame, farthestFrom, geometryTolerance, grow, regionsArea } from "../geometry";
import type { Criteria, Polygon, StandId, StandType } from "../plan";
import type { TripZone } from "./answers";
import { legFrameHulls } from "./footprint";

/** The part of each leg frame that stands on the floor as an obstacle, before it is grown: frame −, frame +. */
export function tripHulls(
  type: StandType,
  height: number,
  frame: Frame,
  criteria: Pick<Criteria, "tripHeight">,
): readonly [Polygon, Polygon] {
  return legFrameHulls(type, height, frame, criteria.tripHeight);
}

/** Trip zone of one stand: its trip hulls grown by the toe clearance, united, less the piece's outline. */
export function tripZoneOf(
  stand: StandId,
  hulls: readonly [Polygon, Polygon],
  criteria: Pick<Criteria, "toeClearance">,
  outline: Polygon,
): TripZone {
  const grown = hulls.map((hull) => grow(hull, criteria.toeClearance));
  const polygons = difference(grown, [outline]).filter(
    (region) => regionsArea([region]) > geometryTolerance.sharedArea,
  );
  // Under the piece the distance out of it is 0: the grown hulls reach as far as what is left of them.
  const reach = polygons.length === 0 ? 0 : farthestFrom(outline, grown);
  return { stand, polygons, area: regionsArea(polygons), reach };
}
