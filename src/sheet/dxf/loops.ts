/** Joins the paths of a drawing into closed loops, and says where they do not close. */

import { polygonArea } from "../../geometry";
import type { Point } from "../../plan";
import type { DrawingPath } from "./flatten";

/** An end of a path that meets no other: where, and how far off the nearest other end is; null where there is none. */
export interface OpenEnd {
  readonly at: Point;
  readonly distance: number | null;
}

export interface Loops {
  /** Closed loops, the greatest area first, the first point not repeated. */
  readonly loops: readonly (readonly Point[])[];
  readonly gaps: readonly OpenEnd[];
}

/** Joins ends that lie within `tolerance` of each other (drawing units). A loop's end that meets is closed exactly. */
export function joinLoops(paths: readonly DrawingPath[], tolerance: number): Loops {
  const loops: Point[][] = [];
  const open: Point[][] = [];
  for (const path of paths) {
    const points = withoutRepeats(path.points, tolerance);
    const meets = points.length > 2 && distance(points[0]!, points.at(-1)!) <= tolerance;
    if (meets) loops.push(points.slice(0, -1));
    else if (path.closed && points.length > 2) loops.push(points);
    else if (points.length > 1) open.push(points);
  }
  const ends = new EndIndex(open, tolerance);
  const used = new Set<number>();
  const gaps: OpenEnd[] = [];
  for (let first = 0; first < open.length; first += 1) {
    if (used.has(first)) continue;
    used.add(first);
    const chain = [...open[first]!];
    extend(chain, open, ends, used);
    if (chain.length > 3 && distance(chain[0]!, chain.at(-1)!) <= tolerance) {
      loops.push(chain.slice(0, -1));
      continue;
    }
    chain.reverse();
    extend(chain, open, ends, used);
    if (chain.length > 3 && distance(chain[0]!, chain.at(-1)!) <= tolerance) loops.push(chain.slice(0, -1));
    else for (const at of [chain[0]!, chain.at(-1)!]) gaps.push({ at, distance: ends.nearestOther(at) });
  }
  loops.sort((a, b) => polygonArea(b) - polygonArea(a));
  return { loops: loops.filter((loop) => polygonArea(loop) > tolerance * tolerance), gaps };
}

/** Adds the paths that meet the end of a chain, one after the other, until none is left or it closes. */
function extend(chain: Point[], open: readonly Point[][], ends: EndIndex, used: Set<number>): void {
  for (;;) {
    if (chain.length > 3 && ends.within(chain[0]!, chain.at(-1)!)) return;
    const next = ends.meeting(chain.at(-1)!).find(({ path }) => !used.has(path));
    if (next === undefined) return;
    used.add(next.path);
    const points = open[next.path]!;
    chain.push(...(next.end === 0 ? points.slice(1) : points.slice(0, -1).reverse()));
  }
}

/** The ends of open paths, found by place in a grid of squares of the tolerance. */
class EndIndex {
  private readonly squares = new Map<string, { readonly path: number; readonly end: 0 | 1; readonly at: Point }[]>();
  private readonly all: Point[] = [];
  private readonly tolerance: number;

  constructor(open: readonly Point[][], tolerance: number) {
    this.tolerance = tolerance;
    for (const [path, points] of open.entries())
      for (const end of [0, 1] as const) {
        const at = end === 0 ? points[0]! : points.at(-1)!;
        const key = this.square(at, 0, 0);
        this.squares.set(key, [...(this.squares.get(key) ?? []), { path, end, at }]);
        this.all.push(at);
      }
  }

  within(a: Point, b: Point): boolean {
    return distance(a, b) <= this.tolerance;
  }

  /** The ends within the tolerance of a place, the nearest first. */
  meeting(at: Point): readonly { readonly path: number; readonly end: 0 | 1; readonly at: Point }[] {
    const found = [-1, 0, 1].flatMap((i) => [-1, 0, 1].flatMap((j) => this.squares.get(this.square(at, i, j)) ?? []));
    return found
      .filter((candidate) => this.within(at, candidate.at))
      .sort((a, b) => distance(at, a.at) - distance(at, b.at));
  }

  /** Distance of the nearest end that is not this very one; null where there is none. */
  nearestOther(at: Point): number | null {
    const others = this.all.filter((other) => other !== at);
    return others.length === 0 ? null : Math.min(...others.map((other) => distance(at, other)));
  }

  private square([x, y]: Point, i: number, j: number): string {
    return `${Math.floor(x / this.tolerance) + i} ${Math.floor(y / this.tolerance) + j}`;
  }
}

function withoutRepeats(points: readonly Point[], tolerance: number): Point[] {
  return points.filter((point, i) => {
    const before = points[i - 1];
    return before === undefined || i === points.length - 1 || distance(before, point) > tolerance;
  });
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
