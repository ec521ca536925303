/** How far a region reaches from a polygon. */

import type { Point, Polygon } from "../plan";
import { pointToBoundary, pointToPolygon } from "./distance";
import { boundingBox, isConvex, polygonHolds } from "./polygon";
import type { Region } from "./regions";

/** The search below stops where no point can lie farther out by more than this, m. */
const reachPrecision = 5e-4;

/**
 * Greatest distance of a point of the regions from the closed polygon, m; 0 without regions.
 *
 * The distance from a convex polygon is a convex function, greatest at a corner: exact. From one that is not convex
 * (a stand in the mouth of a U) it may be greatest inside: found by branch and bound over squares, a square being given
 * up where distance at its middle + half its diagonal promises no more than reachPrecision over the best so far.
 */
export function farthestFrom(polygon: Polygon, regions: readonly Region[]): number {
  const corners = regions.flatMap(({ outer }) => outer);
  const atCorners = corners.reduce((most, corner) => Math.max(most, pointToPolygon(corner, polygon).distance), 0);
  if (isConvex(polygon)) return atCorners;
  return regions.reduce((most, region) => farthestInside(polygon, region, most), atCorners);
}

function farthestInside(polygon: Polygon, region: Region, atLeast: number): number {
  const { least, most } = boundingBox(region.outer);
  const side = Math.max(most[0] - least[0], most[1] - least[1]);
  let best = atLeast;
  const waiting: { readonly middle: Point; readonly half: number }[] = [
    { middle: [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2], half: side / 2 },
  ];
  for (let square = waiting.pop(); square; square = waiting.pop()) {
    const { middle, half } = square;
    const diagonal = half * Math.SQRT2;
    const distance = pointToPolygon(middle, polygon).distance;
    if (distance + diagonal <= best + reachPrecision) continue;
    const inside = holds(region, middle);
    if (!inside && boundaryDistance(region, middle) > diagonal) continue;
    if (inside) best = Math.max(best, distance);
    const quarter = half / 2;
    for (const [p, q] of quadrants)
      waiting.push({ middle: [middle[0] + p * quarter, middle[1] + q * quarter], half: quarter });
  }
  return best;
}

const quadrants = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

function holds({ outer, holes }: Region, point: Point): boolean {
  return polygonHolds(outer, point) && !holes.some((hole) => polygonHolds(hole, point));
}

function boundaryDistance({ outer, holes }: Region, point: Point): number {
  return [outer, ...holes].reduce((least, ring) => Math.min(least, pointToBoundary(point, ring).distance), Infinity);
}
