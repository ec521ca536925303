/** Where a straight line lies in a polygon, as stretches along it. Metres. */

import type { Point, Polygon } from "../plan";
import { memo } from "../plan";
import { geometryTolerance } from "./tolerances";

/** A closed stretch [from, to] along a line, from < to. */
export type Stretch = readonly [from: number, to: number];

/** The points at + c·along with from ≤ c ≤ to; `along` is of unit length. */
export interface Line {
  readonly at: Point;
  readonly along: Point;
  readonly from: number;
  readonly to: number;
}

/**
 * The stretches of a line that lie in a closed simple polygon, convex or not, either winding: ascending, apart, none of
 * zero length. A line along an edge is in the polygon; where it only touches a corner it is not.
 *
 * Method: the line is moved a hair to its left and to its right, where it meets no corner, and the crossings of each are
 * counted (even and odd); what is inside on either side is inside or on an edge. A corner nearer to the line than
 * `geometryTolerance.touching` counts as on it. O(n) in the corners, O(m log m) in the crossings.
 */
export function stretchesInPolygon(line: Line, polygon: Polygon): readonly Stretch[] {
  const crossings = crossingsOf(line, ringOf(polygon));
  crossings.sort((a, b) => a.c - b.c);
  const stretches: Stretch[] = [];
  let left = false;
  let right = false;
  for (let index = 0; index + 1 < crossings.length; index++) {
    const crossing = crossings[index]!;
    left = left !== crossing.left;
    right = right !== crossing.right;
    const from = Math.max(crossing.c, line.from);
    const to = Math.min(crossings[index + 1]!.c, line.to);
    if ((left || right) && to > from) stretches.push([from, to]);
  }
  return joinTouching(stretches);
}

/** All stretches that lie in any of those given: ascending, what touches or overlaps joined. */
export function joinTouching(stretches: readonly Stretch[]): readonly Stretch[] {
  if (stretches.length < 2) return stretches;
  const joined: Stretch[] = [];
  for (const stretch of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last === undefined || stretch[0] - last[1] > geometryTolerance.touching) joined.push(stretch);
    else if (stretch[1] > last[1]) joined[joined.length - 1] = [last[0], stretch[1]];
  }
  return joined;
}

/** What two lists of stretches, each ascending and apart, have in common. */
export function commonStretches(first: readonly Stretch[], second: readonly Stretch[]): Stretch[] {
  const common: Stretch[] = [];
  for (const a of first) {
    for (const b of second) {
      const [from, to] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
      if (to > from) common.push([from, to]);
    }
  }
  return common;
}

/** The stretches less those to be left out, both ascending and apart. The ends of what is left belong to it. */
export function withoutStretches(stretches: readonly Stretch[], leftOut: readonly Stretch[]): Stretch[] {
  return stretches.flatMap(([from, to]) => {
    const kept: Stretch[] = [];
    let start = from;
    for (const [outFrom, outTo] of leftOut) {
      if (outTo <= start || outFrom >= to) continue;
      if (outFrom > start) kept.push([start, outFrom]);
      start = outTo;
    }
    if (to > start) kept.push([start, to]);
    return kept;
  });
}

/** Where an edge crosses the line moved a hair to its left, or to its right. */
interface Crossing {
  readonly c: number;
  readonly left: boolean;
  readonly right: boolean;
}

/** Coordinates of a ring, p₀ q₀ p₁ q₁ …, for outlines of thousands of points. */
const ringOf = memo((polygon: Polygon) => Float64Array.from(polygon.flat()));

function crossingsOf({ at, along }: Line, ring: Float64Array): Crossing[] {
  const crossings: Crossing[] = [];
  const [p0, q0] = at;
  const [dp, dq] = along;
  const off = (index: number) => onLine(dp * (ring[index + 1]! - q0) - dq * (ring[index]! - p0));
  const alongTo = (index: number) => dp * (ring[index]! - p0) + dq * (ring[index + 1]! - q0);
  let before = ring.length - 2;
  let offBefore = off(before);
  for (let index = 0; index < ring.length; index += 2) {
    const offHere = off(index);
    const left = offHere > 0 !== offBefore > 0;
    const right = offHere < 0 !== offBefore < 0;
    if (left || right) {
      const [c, cBefore] = [alongTo(index), alongTo(before)];
      // An end on the line is the crossing itself, so that edges which share it agree on it.
      const crossing =
        offHere === 0 ? c : offBefore === 0 ? cBefore : c + ((cBefore - c) * offHere) / (offHere - offBefore);
      crossings.push({ c: crossing, left, right });
    }
    before = index;
    offBefore = offHere;
  }
  return crossings;
}

/** A distance from the line, m; 0 where it is near enough to count as on it. */
function onLine(distance: number): number {
  return Math.abs(distance) <= geometryTolerance.touching ? 0 : distance;
}
