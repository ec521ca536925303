/** Rings of a drawing laid out as a plan wants them: which lie in which, turned, to scale, shifted. Metres. */

import type { Point, Polygon } from "../plan";
import { directionOf } from "./frames";
import { boundingBox, whereInPolygon } from "./polygon";

/** The rings that lie inside `outer` and inside no other of them: its holes. Rings that cross it count as outside. */
export function holesOf(outer: Polygon, rings: readonly Polygon[]): Polygon[] {
  const inner = rings.filter((ring) => ring !== outer && liesIn(ring, outer));
  return inner.filter((ring) => !inner.some((other) => other !== ring && liesIn(ring, other)));
}

/** Whether every corner of a ring lies inside another or on it, one of them well inside. */
function liesIn(ring: Polygon, outer: Polygon): boolean {
  const [own, around] = [boundingBox(ring), boundingBox(outer)];
  const outside = ([0, 1] as const).some(
    (axis) => own.least[axis] < around.least[axis] || own.most[axis] > around.most[axis],
  );
  if (outside) return false;
  let inside = false;
  for (const corner of ring) {
    const where = whereInPolygon(outer, corner);
    if (where === "outside") return false;
    if (where === "inside") inside = true;
  }
  return inside;
}

/** How a drawing is laid: m to one of its units, mirrored (as seen from below) before it is turned by quarter turns. */
export interface Laying {
  readonly metresAUnit: number;
  readonly mirrored: boolean;
  /** Counter-clockwise, 0 to 3. */
  readonly quarterTurns: number;
}

/** Coordinates are kept to this, m: what a drawing's own unit makes of a round number is one again. */
const grain = 1e-6;

/** A point of a drawing laid out, not shifted yet. */
export function laidPoint([p, q]: Point, { metresAUnit, mirrored, quarterTurns }: Laying): Point {
  const [cos, sin] = directionOf(90 * quarterTurns);
  const [x, y] = [p * metresAUnit, (mirrored ? -q : q) * metresAUnit];
  return [x * cos - y * sin, x * sin + y * cos];
}

/** Rings of a drawing laid out in the frame of `origin`, which comes to lie at (0, 0). Corners that fall together are one. */
export function laidOut(ring: Polygon, laying: Laying, origin: Point): Polygon {
  const laid = ring.map((point): Point => {
    const [p, q] = laidPoint(point, laying);
    return [rounded(p - origin[0]), rounded(q - origin[1])];
  });
  const same = ([p, q]: Point, other: Point | undefined): boolean => p === other?.[0] && q === other[1];
  const apart = laid.filter((point, index) => !same(point, laid[index - 1]));
  return apart.length > 1 && same(apart.at(-1)!, apart[0]) ? apart.slice(0, -1) : apart;
}

function rounded(metres: number): number {
  return Math.round(metres / grain) / Math.round(1 / grain) + 0;
}

/** Where a piece's (0, 0) lies in its drawing laid out: at its least s, and halfway across it. */
export function datumOf(outer: Polygon, laying: Laying): Point {
  const { least, most } = boundingBox(outer.map((point) => laidPoint(point, laying)));
  return [least[0], rounded((least[1] + most[1]) / 2)];
}

/** Where a bay's (0, 0) lies in its drawing laid out: its least corner. */
export function cornerOf(outer: Polygon, laying: Laying): Point {
  return boundingBox(outer.map((point) => laidPoint(point, laying))).least;
}

/** The quarter turns that lay the longer side of a ring along the first axis: 0, or 1 for one that stands upright. */
export function turnsAlong(outer: Polygon): 0 | 1 {
  const { least, most } = boundingBox(outer);
  return most[1] - least[1] > most[0] - least[0] ? 1 : 0;
}
