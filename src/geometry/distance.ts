/** Distances of polygons, each with the two places it lies between. Metres. */

import type { Point, Polygon } from "../plan";
import { polygonHolds } from "./polygon";
import { type Gap, pointToSegment, segmentToSegment } from "./segments";

/** From a point to a closed polygon: 0 where it lies inside. */
export function pointToPolygon(point: Point, polygon: Polygon): Gap {
  if (polygonHolds(polygon, point)) return { distance: 0, from: point, to: point };
  return pointToBoundary(point, polygon);
}

/** From a point to the ring of a polygon, from inside or outside. */
export function pointToBoundary(point: Point, polygon: Polygon): Gap {
  let best: Gap = { distance: Infinity, from: point, to: point };
  for (let index = 0; index < polygon.length; index++) {
    const gap = pointToSegment(point, polygon[index]!, polygon[(index + 1) % polygon.length]!);
    if (gap.distance < best.distance) best = gap;
  }
  return best;
}

/** Between two closed polygons, convex or not: 0 where they touch, overlap or one lies inside the other. */
export function polygonToPolygon(first: Polygon, second: Polygon): Gap {
  if (polygonHolds(second, first[0]!)) return { distance: 0, from: first[0]!, to: first[0]! };
  if (polygonHolds(first, second[0]!)) return { distance: 0, from: second[0]!, to: second[0]! };
  let best: Gap = { distance: Infinity, from: first[0]!, to: second[0]! };
  for (let i = 0; i < first.length; i++) {
    const [a, b] = [first[i]!, first[(i + 1) % first.length]!];
    for (let j = 0; j < second.length; j++) {
      const gap = segmentToSegment(a, b, second[j]!, second[(j + 1) % second.length]!);
      if (gap.distance < best.distance) best = gap;
    }
  }
  return best;
}
