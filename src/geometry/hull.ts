import type { Point } from "../plan";

/**
 * How far off the line through its neighbours a point may lie and still count as on it, as a fraction of the extent of
 * the points (no unit). Far over the rounding of a computed contact point (some 1e-15), far under anything built.
 */
export const collinearTolerance = 1e-11;

/**
 * Convex hull of points in a plane, m: counter-clockwise, collinear points dropped, starting at the point with the least
 * first coordinate (of these the least second).
 *
 * Fewer than three points come back where there is no area: none for no points, one where all coincide, the two ends
 * where all lie on one line. Points must be finite.
 *
 * Source: monotone chain, A. M. Andrew, Information Processing Letters 9 (1979) 216–219. O(n log n).
 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const extent = extentOf(sorted);
  const first = sorted[0];
  if (first === undefined) return [];
  if (extent === 0) return [first];
  const chain = [...halfHull(sorted), ...halfHull(sorted.reverse())];
  return withoutCollinear(chain, collinearTolerance * extent);
}

/** Twice the signed area of the triangle a, b, c, m²; positive where they turn counter-clockwise. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** The hull of sorted points on the right-hand side of the way, without its last point. */
function halfHull(sorted: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const point of sorted) {
    while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
    chain.push(point);
  }
  chain.pop();
  return chain;
}

function extentOf(points: readonly Point[]): number {
  let [least0, most0, least1, most1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [p, q] of points) {
    least0 = Math.min(least0, p);
    most0 = Math.max(most0, p);
    least1 = Math.min(least1, q);
    most1 = Math.max(most1, q);
  }
  return points.length === 0 ? 0 : Math.hypot(most0 - least0, most1 - least1);
}

/** Drops what lies within `tolerance` (m) of the line between the neighbours that stay. */
function withoutCollinear(ring: readonly Point[], tolerance: number): Point[] {
  const kept: Point[] = [];
  for (const point of ring) {
    while (kept.length >= 2 && offSegment(kept.at(-2)!, kept.at(-1)!, point) <= tolerance) kept.pop();
    kept.push(point);
  }
  // The ring closes: its last points, then its first, against their neighbours round the corner.
  while (kept.length >= 3 && offSegment(kept.at(-2)!, kept.at(-1)!, kept[0]!) <= tolerance) kept.pop();
  while (kept.length >= 3 && offSegment(kept.at(-1)!, kept[0]!, kept[1]!) <= tolerance) kept.shift();
  return kept;
}

/** Distance of b from the segment a–c (not from its line: the far end of points on one line must stay), m. */
function offSegment(a: Point, b: Point, c: Point): number {
  const chord = distance(a, c);
  const along = ((b[0] - a[0]) * (c[0] - a[0]) + (b[1] - a[1]) * (c[1] - a[1])) / (chord * chord || 1);
  if (along <= 0) return distance(a, b);
  if (along >= 1) return distance(b, c);
  return Math.abs(turn(a, b, c)) / chord;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
