/** What of a drawn shape lies under the hand: a corner, the middle of an edge, an edge, its inside. Pixels. */

import { distanceBetween, pointToSegment, polygonHolds } from "../../geometry";
import type { Point } from "../../plan";

export type ShapeTarget =
  | { readonly kind: "corner"; readonly index: number }
  /** The middle of the edge that begins at corner `index`: dragged, it makes a further corner. */
  | { readonly kind: "middle"; readonly index: number }
  | { readonly kind: "edge" }
  | { readonly kind: "inside" };

/** Handles of corners that would stand nearer than this to one before are not shown, and not taken. */
const leastApart = 20;

/** An edge shorter than this has no handle in its middle. */
const leastEdge = 44;

/** The corners that have a handle: all, or of a fine outline those that stand apart. Indices. */
export function cornerHandles(points: readonly Point[]): readonly number[] {
  const handles: number[] = [];
  let last: Point | null = null;
  for (const [index, point] of points.entries()) {
    if (last !== null && distanceBetween(last, point) < leastApart) continue;
    handles.push(index);
    last = point;
  }
  return handles;
}

/** The edges that have a handle in their middle, by the corner where they begin. */
export function middleHandles(points: readonly Point[], closed: boolean): readonly { index: number; at: Point }[] {
  if (!closed) return [];
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length]!;
    if (distanceBetween(from, to) < leastEdge) return [];
    return [{ index, at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const }];
  });
}

/** What lies within reach of a place, px; handles before edges before the inside. */
export function hitShape(points: readonly Point[], closed: boolean, at: Point, reach: number): ShapeTarget | null {
  let corner: { readonly index: number; readonly off: number } | null = null;
  for (const index of cornerHandles(points)) {
    const off = distanceBetween(points[index]!, at);
    if (off <= reach && (corner === null || off < corner.off)) corner = { index, off };
  }
  if (corner !== null) return { kind: "corner", index: corner.index };
  const middle = middleHandles(points, closed).find((handle) => distanceBetween(handle.at, at) <= reach);
  if (middle !== undefined) return { kind: "middle", index: middle.index };
  const edges = closed ? points.length : points.length - 1;
  for (let index = 0; index < edges; index += 1) {
    const [from, to] = [points[index]!, points[(index + 1) % points.length]!];
    if (pointToSegment(at, from, to).distance <= reach / 2) return { kind: "edge" };
  }
  return closed && polygonHolds(points, at) ? { kind: "inside" } : null;
}
