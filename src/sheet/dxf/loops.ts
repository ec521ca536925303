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
    const points = withoutRepeats(path.points);
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
    for (const point of next.end === 0 ? points.slice(1) : points.slice(0, -1).reverse()) chain.push(point);
  }
}

interface PathEnd {
  readonly path: number;
  readonly end: 0 | 1;
  readonly at: Point;
}

/** The ends of open paths: those within the tolerance by a grid of its squares, the nearest by their order along x. */
class EndIndex {
  private readonly squares = new Map<string, PathEnd[]>();
  private readonly alongX: readonly PathEnd[];
  private readonly tolerance: number;

  constructor(open: readonly Point[][], tolerance: number) {
    this.tolerance = tolerance;
    const all: PathEnd[] = [];
    for (const [path, points] of open.entries())
      for (const end of [0, 1] as const) {
        const found = { path, end, at: end === 0 ? points[0]! : points.at(-1)! };
        const key = this.square(found.at, 0, 0);
        const there = this.squares.get(key);
        if (there === undefined) this.squares.set(key, [found]);
        else there.push(found);
        all.push(found);
      }
    this.alongX = all.sort((a, b) => a.at[0] - b.at[0]);
  }

  within(a: Point, b: Point): boolean {
    return distance(a, b) <= this.tolerance;
  }

  /** The ends within the tolerance of a place, the nearest first. */
  meeting(at: Point): readonly PathEnd[] {
    const found = [-1, 0, 1].flatMap((i) => [-1, 0, 1].flatMap((j) => this.squares.get(this.square(at, i, j)) ?? []));
    return found
      .filter((candidate) => this.within(at, candidate.at))
      .sort((a, b) => distance(at, a.at) - distance(at, b.at));
  }

  /** Distance of the nearest end that is not this very one; null where there is none. */
  nearestOther(at: Point): number | null {
    let best = Infinity;
    const here = this.firstFrom(at[0]);
    for (let index = here; index < this.alongX.length; index += 1) {
      const other = this.alongX[index]!.at;
      if (other[0] - at[0] > best) break;
      if (other !== at) best = Math.min(best, distance(at, other));
    }
    for (let index = here - 1; index >= 0; index -= 1) {
      const other = this.alongX[index]!.at;
      if (at[0] - other[0] > best) break;
      if (other !== at) best = Math.min(best, distance(at, other));
    }
    return best === Infinity ? null : best;
  }

  /** Index of the first end that lies at x or to its right. */
  private firstFrom(x: number): number {
    let [low, high] = [0, this.alongX.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.alongX[middle]!.at[0] < x) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private square([x, y]: Point, i: number, j: number): string {
    return `${Math.floor(x / this.tolerance) + i} ${Math.floor(y / this.tolerance) + j}`;
  }
}

/** Points that follow each other in one place are one. Points of a fine curve stay, however near: they are no ends. */
function withoutRepeats(points: readonly Point[]): Point[] {
  return points.filter((point, i) => {
    const before = points[i - 1];
    return before === undefined || point[0] !== before[0] || point[1] !== before[1];
  });
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
