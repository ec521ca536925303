/** Simple polygons: area, winding, box, where a point lies. Metres; either winding unless said. */

import type { Point, Polygon } from "../plan";
import { signedArea } from "./halfplane";
import { distanceToSegment } from "./segments";
import { geometryTolerance } from "./tolerances";

/** Least and greatest coordinates, m. */
export interface Box {
  readonly least: Point;
  readonly most: Point;
}

/** The smallest box about the points; least > most where there are none. */
export function boundingBox(points: readonly Point[]): Box {
  let [least0, least1, most0, most1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [p, q] of points) {
    least0 = Math.min(least0, p);
    least1 = Math.min(least1, q);
    most0 = Math.max(most0, p);
    most1 = Math.max(most1, q);
  }
  return { least: [least0, least1], most: [most0, most1] };
}

/** The smallest box about two. */
export function boxAbout(first: Box, second: Box): Box {
  return {
    least: [Math.min(first.least[0], second.least[0]), Math.min(first.least[1], second.least[1])],
    most: [Math.max(first.most[0], second.most[0]), Math.max(first.most[1], second.most[1])],
  };
}

/** Whether the closed box holds the point. */
export function boxHolds({ least, most }: Box, [p, q]: Point): boolean {
  return p >= least[0] && p <= most[0] && q >= least[1] && q <= most[1];
}

/** Distance of two boxes, m; 0 where they touch or overlap. */
export function boxGap(first: Box, second: Box): number {
  const gap0 = Math.max(0, first.least[0] - second.most[0], second.least[0] - first.most[0]);
  const gap1 = Math.max(0, first.least[1] - second.most[1], second.least[1] - first.most[1]);
  return Math.sqrt(gap0 * gap0 + gap1 * gap1);
}

/** m². */
export function polygonArea(polygon: Polygon): number {
  return Math.abs(signedArea(polygon));
}

/** The same ring, turned counter-clockwise. */
export function counterClockwise(polygon: Polygon): Polygon {
  return signedArea(polygon) < 0 ? [...polygon].reverse() : polygon;
}

/** The edges of the ring, [from, to], the closing one last. */
export function edgesOf(polygon: Polygon): (readonly [Point, Point])[] {
  return polygon.map((point, index) => [point, polygon[(index + 1) % polygon.length]!] as const);
}

/** True where no corner of the ring turns the other way; either winding. */
export function isConvex(polygon: Polygon): boolean {
  const ring = counterClockwise(polygon);
  const count = ring.length;
  return ring.every((b, index) => {
    const [a, c] = [ring[(index + count - 1) % count]!, ring[(index + 1) % count]!];
    const turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return turn >= -geometryTolerance.touching * Math.hypot(c[0] - a[0], c[1] - a[1]);
  });
}

/** Where a point lies: within the touching tolerance of an edge is `boundary`. */
export function whereInPolygon(polygon: Polygon, point: Point): "inside" | "boundary" | "outside" {
  let inside = false;
  for (let index = 0; index < polygon.length; index++) {
    const [a, b] = [polygon[index]!, polygon[(index + 1) % polygon.length]!];
    if (distanceToSegment(point, a, b) <= geometryTolerance.touching) return "boundary";
    // An edge counts where the ray toward +first axis crosses it, its lower end included, its upper end not.
    if (a[1] > point[1] === b[1] > point[1]) continue;
    const crossing = a[0] + ((point[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
    if (crossing > point[0]) inside = !inside;
  }
  return inside ? "inside" : "outside";
}

/** Whether the closed polygon holds the point. */
export function polygonHolds(polygon: Polygon, point: Point): boolean {
  return whereInPolygon(polygon, point) !== "outside";
}
