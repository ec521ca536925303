/** Corners of a ring moved, put in and taken out, and the chain of a ring that is still being drawn. Metres. */

import type { Point, Polygon } from "../plan";
import { segmentToSegment } from "./segments";
import { geometryTolerance } from "./tolerances";

/** The ring with a corner at another place. */
export function withCornerAt(ring: Polygon, index: number, point: Point): Polygon {
  return ring.map((old, at) => (at === index ? point : old));
}

/** The ring with a further corner on the edge that begins at corner `index`. */
export function withCornerAfter(ring: Polygon, index: number, point: Point): Polygon {
  return [...ring.slice(0, index + 1), point, ...ring.slice(index + 1)];
}

/** The ring without a corner. */
export function withoutCorner(ring: Polygon, index: number): Polygon {
  return ring.filter((_, at) => at !== index);
}

/** The ring shifted as a whole. */
export function shifted(ring: Polygon, [by0, by1]: Point): Polygon {
  return ring.map(([p, q]) => [p + by0, q + by1] as const);
}

/** The rectangle along the axes that two opposite corners span, counter-clockwise from the least. */
export function rectangleBetween(a: Point, b: Point): Polygon {
  const [least0, most0] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const [least1, most1] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  return [
    [least0, least1],
    [most0, least1],
    [most0, most1],
    [least0, most1],
  ];
}

/**
 * The edge of an open chain that a further corner's edge would cross or touch: the index of the corner where it begins;
 * null where the way is free. At the chain's last corner the two edges may meet, but not fold back on each other.
 */
export function edgeInTheWay(chain: readonly Point[], to: Point): number | null {
  const last = chain.at(-1);
  if (last === undefined) return null;
  for (let index = 0; index + 1 < chain.length; index += 1) {
    const [a, b] = [chain[index]!, chain[index + 1]!];
    const meets =
      index + 2 === chain.length
        ? foldsBack(a, last, to)
        : segmentToSegment(a, b, last, to).distance <= geometryTolerance.touching;
    if (meets) return index;
  }
  return null;
}

/** Whether the edge from b to c lies on the edge from a to b. */
function foldsBack(a: Point, b: Point, c: Point): boolean {
  const [back, on] = [
    [a[0] - b[0], a[1] - b[1]],
    [c[0] - b[0], c[1] - b[1]],
  ] as const;
  const turn = back[0] * on[1] - back[1] * on[0];
  const along = back[0] * on[0] + back[1] * on[1];
  const shorter = Math.min(Math.hypot(...back), Math.hypot(...on));
  const longer = Math.max(Math.hypot(...back), Math.hypot(...on));
  // The end of the shorter edge lies |turn| ÷ longer off the other.
  return shorter <= geometryTolerance.touching || (along > 0 && Math.abs(turn) <= geometryTolerance.touching * longer);
}
