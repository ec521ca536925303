/** Where a stand's four legs are, in the stand's own frame: first square to the top, then along it. */

import type { Point, StandType } from "../plan";

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/**
 * The four legs at a height z over the stand's own floor, m: frame − then +, in a frame the one on the −square side
 * first. At z = 0 these are the middles of the foot plates. Leg thickness and floor slope are left out.
 *
 * (F1) square = top.width/2 + (height − z)·tan(splay.along), along = legSpacing/2 + (height − z)·tan(splay.across)
 */
export function legsAt(
  type: Pick<StandType, "top" | "legSpacing" | "splay">,
  height: number,
  z: number,
): readonly [Point, Point, Point, Point] {
  const square = type.top.width / 2 + (height - z) * tangent(type.splay.along);
  const along = type.legSpacing / 2 + (height - z) * tangent(type.splay.across);
  return [
    [-square, -along],
    [square, -along],
    [-square, along],
    [square, along],
  ];
}

/** Distance of the two leg frames at the floor, along the top, m: legSpacing + 2·height·tan(splay.across). */
export function footSpacing(type: Pick<StandType, "legSpacing" | "splay">, height: number): number {
  return type.legSpacing + 2 * height * tangent(type.splay.across);
}
