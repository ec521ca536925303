/** Distances between points and segments, each with the two places it lies between. Metres. */

import type { Point } from "../plan";

/** The shortest way between two sets: how long, and its two ends. */
export interface Gap {
  readonly distance: number;
  readonly from: Point;
  readonly to: Point;
}

/** Distance of two points, m. */
export function distanceBetween(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** From a point to the segment a–b (a = b allowed). */
export function pointToSegment(point: Point, a: Point, b: Point): Gap {
  const [d0, d1] = [b[0] - a[0], b[1] - a[1]];
  const squared = d0 * d0 + d1 * d1;
  const along = squared > 0 ? ((point[0] - a[0]) * d0 + (point[1] - a[1]) * d1) / squared : 0;
  const foot: Point = along <= 0 ? a : along >= 1 ? b : [a[0] + along * d0, a[1] + along * d1];
  return { distance: distanceBetween(point, foot), from: point, to: foot };
}

/** Distance from a point to the segment a–b, m, where the foot of it is not asked for. */
export function distanceToSegment(point: Point, a: Point, b: Point): number {
  const [d0, d1] = [b[0] - a[0], b[1] - a[1]];
  const [p0, p1] = [point[0] - a[0], point[1] - a[1]];
  const squared = d0 * d0 + d1 * d1;
  const along = squared > 0 ? Math.min(1, Math.max(0, (p0 * d0 + p1 * d1) / squared)) : 0;
  const [q0, q1] = [p0 - along * d0, p1 - along * d1];
  return Math.sqrt(q0 * q0 + q1 * q1);
}

/** From the segment a–b to the segment c–d; where they cross 0, with the crossing as both ends. */
export function segmentToSegment(a: Point, b: Point, c: Point, d: Point): Gap {
  const crossing = crossingOf(a, b, c, d);
  if (crossing) return { distance: 0, from: crossing, to: crossing };
  return nearest([
    pointToSegment(a, c, d),
    pointToSegment(b, c, d),
    reversed(pointToSegment(c, a, b)),
    reversed(pointToSegment(d, a, b)),
  ]);
}

/** Where two segments cross, each other's ends lying strictly on either side; null else. */
function crossingOf(a: Point, b: Point, c: Point, d: Point): Point | null {
  const sideC = turn(a, b, c);
  const sideD = turn(a, b, d);
  if (sideC > 0 === sideD > 0 || sideC === sideD) return null;
  const sideA = turn(c, d, a);
  const sideB = turn(c, d, b);
  if (sideA > 0 === sideB > 0 || sideA === sideB) return null;
  const along = sideA / (sideA - sideB);
  return [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])];
}

/** Twice the signed area of the triangle a, b, c, m²; positive where they turn counter-clockwise. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function reversed(gap: Gap): Gap {
  return { distance: gap.distance, from: gap.to, to: gap.from };
}

function nearest(gaps: readonly [Gap, ...Gap[]]): Gap {
  return gaps.reduce((best, gap) => (gap.distance < best.distance ? gap : best));
}
