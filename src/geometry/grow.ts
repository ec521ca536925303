/** A convex polygon grown by a radius, with round corners. */

import type { Point, Polygon } from "../plan";
import { counterClockwise } from "./polygon";
import { geometryTolerance } from "./tolerances";

/**
 * All points within `radius` (m) of a convex polygon of area > 0, counter-clockwise. Round corners are chords between
 * points of the arc, no farther from it than the sagitta tolerance: the area (F3) falls short by under 0.01 %.
 */
export function grow(convex: Polygon, radius: number): Polygon {
  if (radius <= 0) return convex;
  const ring = counterClockwise(convex);
  // sagitta = radius·(1 − cos(step/2))
  const step = 2 * Math.acos(Math.max(0, 1 - geometryTolerance.arcSagitta / radius));
  return ring.flatMap((corner, index) => {
    const before = outward(ring[(index + ring.length - 1) % ring.length]!, corner);
    const after = outward(corner, ring[(index + 1) % ring.length]!);
    const turn = Math.atan2(before[0] * after[1] - before[1] * after[0], before[0] * after[0] + before[1] * after[1]);
    const count = Math.max(1, Math.ceil(turn / step));
    const start = Math.atan2(before[1], before[0]);
    return Array.from({ length: count + 1 }, (_, part): Point => {
      if (part === 0) return shifted(corner, before, radius);
      if (part === count) return shifted(corner, after, radius);
      const angle = start + (turn * part) / count;
      return shifted(corner, [Math.cos(angle), Math.sin(angle)], radius);
    });
  });
}

/** Unit vector square to the edge a–b of a counter-clockwise ring, pointing out of it. */
function outward(a: Point, b: Point): Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
}

function shifted(point: Point, direction: Point, by: number): Point {
  return [point[0] + direction[0] * by, point[1] + direction[1] * by];
}
