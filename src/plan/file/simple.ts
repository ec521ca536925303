/**
 * Whether a polygon is simple: no corner comes twice, and no two edges cross or touch, but for neighbours in the
 * corner they share.
 *
 * The sweep of Shamos and Hoey ("Geometric intersection problems", 17th Symposium on Foundations of Computer Science,
 * 1976): the corners are passed from left to right, at one x from below upwards; the edges that lie over and under the
 * running corner are kept in their order, and two of them are compared when they become neighbours in it. Up to the
 * first fault that order is right, and the first fault lies between neighbours. O(n log n) comparisons.
 */

import type { Polygon } from "../types";

/** Nearer to each other than this fraction of the polygon's extent, edges touch: some ten thousand roundings. */
const touching = 1e-12;

/** Two equal corners, or two edges that cross or touch, each by the index of the corner where it begins. */
export interface Fault {
  readonly of: "corners" | "edges";
  readonly which: readonly [number, number];
}

/** The greatest number of corners that a polygon may have. */
export const mostCorners = 10_000;

export function faultIn(polygon: Polygon): Fault | null {
  return sweep.over(polygon);
}

class Sweep {
  private count = 0;
  private readonly x = new Float64Array(mostCorners);
  private readonly y = new Float64Array(mostCorners);
  /** Edge i runs between the corners i and i + 1; these are its ends as the sweep goes. */
  private readonly left = new Uint16Array(mostCorners);
  private readonly right = new Uint16Array(mostCorners);
  /** Within this of its line, twice the area of the triangle that a corner makes with the edge, a corner is on it. */
  private readonly hair = new Float64Array(mostCorners);
  private near = 0;
  /** The edges over and under the running corner, from below upwards. */
  private readonly edges = new Uint16Array(mostCorners);
  private height = 0;

  over(polygon: Polygon): Fault | null {
    this.take(polygon);
    const order = this.cornersInOrder();
    for (let index = 1; index < this.count; index += 1)
      if (this.before(order[index - 1]!, order[index]!) === 0)
        return fault("corners", order[index - 1]!, order[index]!);
    this.takeEdges();
    for (const corner of order) {
      const wrong = this.pass(corner);
      if (wrong !== null) return wrong;
    }
    return null;
  }

  /** The corners in units of a power of two, so that nothing overflows and nothing is rounded. */
  private take(polygon: Polygon): void {
    this.count = polygon.length;
    this.height = 0;
    let largest = 0;
    for (const [x, y] of polygon) largest = Math.max(largest, Math.abs(x), Math.abs(y));
    const scale = 2 ** Math.min(1000, -Math.ceil(Math.log2(largest)));
    let [left, right, low, high] = [2, -2, 2, -2];
    for (let corner = 0; corner < this.count; corner += 1) {
      const x = polygon[corner]![0] * scale;
      const y = polygon[corner]![1] * scale;
      this.x[corner] = x;
      this.y[corner] = y;
      left = Math.min(left, x);
      right = Math.max(right, x);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    this.near = touching * Math.max(right - left, high - low);
  }

  private cornersInOrder(): number[] {
    const order: number[] = [];
    for (let corner = 0; corner < this.count; corner += 1) order.push(corner);
    return order.sort((one, other) => this.before(one, other));
  }

  private before(one: number, other: number): number {
    return this.x[one]! - this.x[other]! || this.y[one]! - this.y[other]!;
  }

  private takeEdges(): void {
    for (let edge = 0; edge < this.count; edge += 1) {
      const next = edge + 1 === this.count ? 0 : edge + 1;
      const forwards = this.before(edge, next) < 0;
      this.left[edge] = forwards ? edge : next;
      this.right[edge] = forwards ? next : edge;
      const dx = this.x[next]! - this.x[edge]!;
      const dy = this.y[next]! - this.y[edge]!;
      this.hair[edge] = this.near * Math.sqrt(dx * dx + dy * dy);
    }
  }

  /** Takes the edges of a corner in or out, and compares those that become neighbours. */
  private pass(corner: number): Fault | null {
    const one = corner;
    const other = corner === 0 ? this.count - 1 : corner - 1;
    const { edges } = this;

    // How many edges lie below the corner.
    let below = 0;
    for (let above = this.height; below < above; ) {
      const middle = (below + above) >> 1;
      const edge = edges[middle]!;
      const where = edge === one || edge === other ? -1 : this.side(edge, corner);
      if (where === 0) return fault("edges", edge, one);
      if (where > 0) below = middle + 1;
      else above = middle;
    }

    const oneEnds = this.right[one] === corner;
    const otherEnds = this.right[other] === corner;
    if (!oneEnds && !otherEnds) {
      const apart = this.side(one, this.right[other]!);
      if (apart === 0) return fault("edges", one, other);
      edges.copyWithin(below + 2, below, this.height);
      edges[below] = apart > 0 ? one : other;
      edges[below + 1] = apart > 0 ? other : one;
      this.height += 2;
      return this.compare(below - 1) ?? this.compare(below + 1);
    }

    // Only roundings can have lost the order: the edges there are too near to be told apart.
    const ending = oneEnds ? one : other;
    const lost = oneEnds && otherEnds ? edges[below]! + edges[below + 1]! !== one + other : edges[below] !== ending;
    if (lost) return fault("edges", ending, edges[below]!);

    if (oneEnds && otherEnds) {
      edges.copyWithin(below, below + 2, this.height);
      this.height -= 2;
      return this.compare(below - 1);
    }
    edges[below] = oneEnds ? other : one;
    return this.compare(below - 1) ?? this.compare(below);
  }

  /** Compares an edge with the one above it. */
  private compare(lower: number): Fault | null {
    if (lower < 0 || lower + 1 >= this.height) return null;
    const one = this.edges[lower]!;
    const other = this.edges[lower + 1]!;
    return this.meet(one, other) ? fault("edges", one, other) : null;
  }

  private meet(one: number, other: number): boolean {
    const oneLeft = this.side(other, this.left[one]!);
    const oneRight = this.side(other, this.right[one]!);
    const otherLeft = this.side(one, this.left[other]!);
    const otherRight = this.side(one, this.right[other]!);
    if (oneLeft * oneRight < 0 && otherLeft * otherRight < 0) return true;
    return (
      (oneLeft === 0 && this.touches(other, this.left[one]!)) ||
      (oneRight === 0 && this.touches(other, this.right[one]!)) ||
      (otherLeft === 0 && this.touches(one, this.left[other]!)) ||
      (otherRight === 0 && this.touches(one, this.right[other]!))
    );
  }

  /** 1 where the corner lies above the line of the edge, −1 below, 0 on it. */
  private side(edge: number, corner: number): number {
    const { x, y } = this;
    const from = this.left[edge]!;
    const to = this.right[edge]!;
    const area = (x[to]! - x[from]!) * (y[corner]! - y[from]!) - (y[to]! - y[from]!) * (x[corner]! - x[from]!);
    if (area > this.hair[edge]!) return 1;
    return area < -this.hair[edge]! ? -1 : 0;
  }

  /** Whether a corner on the line of an edge, and not at its end, lies between its ends. */
  private touches(edge: number, corner: number): boolean {
    const { x, y, near } = this;
    const from = this.left[edge]!;
    const to = this.right[edge]!;
    if (corner === from || corner === to) return false;
    if (x[corner]! < x[from]! - near || x[corner]! > x[to]! + near) return false;
    return y[corner]! >= Math.min(y[from]!, y[to]!) - near && y[corner]! <= Math.max(y[from]!, y[to]!) + near;
  }
}

function fault(of: Fault["of"], one: number, other: number): Fault {
  return { of, which: one < other ? [one, other] : [other, one] };
}

/** One for all polygons: a file can hold some hundred thousand small ones. */
const sweep = new Sweep();
