/** How far convex regions reach out of a polygon. */

import type { Point, Polygon } from "../plan";
import { pointToPolygon } from "./distance";
import { clipToHalfPlane } from "./halfplane";
import { boundingBox, edgesOf, isConvex, polygonHolds } from "./polygon";
import { distanceBetween, distanceToSegment } from "./segments";

/** The search below stops where no point can lie farther out by more than this, m. */
const reachPrecision = 2e-4;

type Edge = readonly [Point, Point];

/** A convex piece of a region and the polygon's edges that may be nearest to some point of it. */
interface Cell {
  readonly ring: Polygon;
  readonly edges: readonly Edge[];
}

/**
 * Greatest distance of a point of the convex regions from the closed polygon, m; 0 where all of them lie in it. Exact for
 * a convex polygon, else at most reachPrecision too small (and never too great).
 *
 * The distance from anything convex is a convex function, greatest at a corner of the region. From a polygon that is
 * not convex it is the least of the distances from its edges, so over a convex cell it is at most
 *
 *   least over edges of the greatest over corners of the distance   (F4)
 *
 * (branch and bound: a cell that may hold more than the best so far is cut across its longer side; it shrinks by half
 * in two cuts, and its bound comes within its size of the truth).
 */
export function farthestFrom(polygon: Polygon, regions: readonly Polygon[]): number {
  const corners = regions.flat();
  if (isConvex(polygon)) {
    return corners.reduce((most, corner) => Math.max(most, pointToPolygon(corner, polygon).distance), 0);
  }
  let best = 0;
  const edges = edgesOf(polygon);
  const waiting: Cell[] = regions.map((ring) => ({ ring, edges }));
  for (let cell = waiting.pop(); cell; cell = waiting.pop()) {
    const near = nearOf(polygon, cell);
    if (near === null) continue;
    const bound = boundOf(cell.ring, near);
    if (bound <= best + reachPrecision) continue;
    best = cell.ring.reduce((most, corner) => Math.max(most, distanceOut(polygon, near, corner, most)), best);
    if (bound <= best + reachPrecision) continue;
    waiting.push(...cut(cell.ring).map((ring) => ({ ring, edges: near })));
  }
  return best;
}

/**
 * The edges that may be nearest to a point of the cell: none farther from its middle than the nearest by more than its
 * size. null where the cell lies all within the polygon.
 */
function nearOf(polygon: Polygon, { ring, edges }: Cell): readonly Edge[] | null {
  const { least, most } = boundingBox(ring);
  const size = distanceBetween(least, most);
  const middle: Point = [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2];
  const distances = edges.map(([a, b]) => distanceToSegment(middle, a, b));
  const nearest = distances.reduce((least, distance) => Math.min(least, distance));
  if (nearest > size / 2 && polygonHolds(polygon, middle)) return null;
  return edges.filter((_, index) => distances[index]! <= nearest + size);
}

function boundOf(ring: Polygon, edges: readonly Edge[]): number {
  let bound = Number.POSITIVE_INFINITY;
  for (const [a, b] of edges) {
    let most = 0;
    for (const corner of ring) {
      most = Math.max(most, distanceToSegment(corner, a, b));
      if (most >= bound) break;
    }
    bound = Math.min(bound, most);
  }
  return bound;
}

/** Distance of a point out of the polygon; `atLeast` where it is no more than that. */
function distanceOut(polygon: Polygon, edges: readonly Edge[], point: Point, atLeast: number): number {
  let distance = Number.POSITIVE_INFINITY;
  for (const [a, b] of edges) {
    distance = Math.min(distance, distanceToSegment(point, a, b));
    if (distance <= atLeast) return atLeast;
  }
  return polygonHolds(polygon, point) ? atLeast : distance;
}

/** The two halves of a convex ring on either side of the middle of its longer side. */
function cut(ring: Polygon): Polygon[] {
  const { least, most } = boundingBox(ring);
  const axis = most[0] - least[0] >= most[1] - least[1] ? 0 : 1;
  const middle = (least[axis] + most[axis]) / 2;
  const normal: Point = axis === 0 ? [1, 0] : [0, 1];
  const opposite: Point = axis === 0 ? [-1, 0] : [0, -1];
  return [
    ...clipToHalfPlane(ring, { normal, offset: middle }),
    ...clipToHalfPlane(ring, { normal: opposite, offset: -middle }),
  ];
}
