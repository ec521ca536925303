/** The area two polygons share, exact to rounding: no grid, so what only touches shares nothing. */

import type { Point, Polygon } from "../plan";
import { signedArea } from "./halfplane";
import { boundingBox, counterClockwise, polygonArea } from "./polygon";
import { geometryTolerance } from "./tolerances";

/**
 * Shared area of two simple polygons, convex or not, either winding, m².
 *
 * The first is taken as the signed sum of the triangles between its first corner and its edges; the second is cut down
 * to each of them (I. E. Sutherland, G. W. Hodgman, Communications of the ACM 17 (1974) 32–42; cutting by a convex window is right for any
 * subject, and the double edges it leaves enclose nothing).
 */
export function sharedArea(first: Polygon, second: Polygon): number {
  if (apart(first, second)) return 0;
  const ring = counterClockwise(first);
  const subject = counterClockwise(second);
  let area = 0;
  for (let index = 1; index + 1 < ring.length; index++) {
    const triangle: Polygon = [ring[0]!, ring[index]!, ring[index + 1]!];
    const winding = signedArea(triangle);
    if (winding === 0 || apart(triangle, subject)) continue;
    area += Math.sign(winding) * signedArea(cutTo(counterClockwise(triangle), subject));
  }
  return Math.max(0, area);
}

/** The area of the first polygon that lies outside the second, m². */
export function areaOutside(first: Polygon, second: Polygon): number {
  return Math.max(0, polygonArea(first) - sharedArea(second, first));
}

/** Whether two polygons overlap by more than touching (a square millimetre). */
export function overlap(first: Polygon, second: Polygon): boolean {
  return sharedArea(first, second) > geometryTolerance.sharedArea;
}

function apart(first: Polygon, second: Polygon): boolean {
  const [a, b] = [boundingBox(first), boundingBox(second)];
  return a.most[0] <= b.least[0] || b.most[0] <= a.least[0] || a.most[1] <= b.least[1] || b.most[1] <= a.least[1];
}

/** The subject cut by each edge of a convex counter-clockwise window in turn. */
function cutTo(window: Polygon, subject: Polygon): Polygon {
  let ring: Polygon = subject;
  for (let index = 0; index < window.length && ring.length > 0; index++) {
    ring = cutByLine(window[index]!, window[(index + 1) % window.length]!, ring);
  }
  return ring;
}

/** What of a ring lies left of the line a–b. */
function cutByLine(a: Point, b: Point, ring: Polygon): Polygon {
  const side = ([p, q]: Point) => (b[0] - a[0]) * (q - a[1]) - (b[1] - a[1]) * (p - a[0]);
  const kept: Point[] = [];
  let before = ring.at(-1)!;
  let sideBefore = side(before);
  for (const point of ring) {
    const sideHere = side(point);
    if (sideBefore >= 0 !== sideHere >= 0) {
      const along = sideBefore / (sideBefore - sideHere);
      kept.push([before[0] + along * (point[0] - before[0]), before[1] + along * (point[1] - before[1])]);
    }
    if (sideHere >= 0) kept.push(point);
    [before, sideBefore] = [point, sideHere];
  }
  return kept;
}
