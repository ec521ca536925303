/** What a disc on its way must keep clear of. */

import type { Point, Polygon } from "../plan";
import { whereInPolygon } from "./polygon";
import { distanceToSegment } from "./segments";

/**
 * A ring grown by a radius with round corners, and the side of it that is solid. A ring of a single point grown by a
 * radius is a disc.
 */
export interface Barrier {
  readonly ring: Polygon;
  readonly solid: "inside" | "outside";
  /** m, ≥ 0. */
  readonly radius: number;
}

/** Distance from a point to the nearest barrier, m; 0 on or in one. */
export function clearanceAt(barriers: readonly Barrier[], point: Point): number {
  let clearance = Number.POSITIVE_INFINITY;
  for (const { ring, solid, radius } of barriers) {
    const where = whereInPolygon(ring, point);
    if (where === solid || where === "boundary") return 0;
    for (let index = 0; index < ring.length; index++) {
      const gap = distanceToSegment(point, ring[index]!, ring[(index + 1) % ring.length]!) - radius;
      clearance = Math.min(clearance, gap);
    }
  }
  return Math.max(0, clearance);
}
