/**
 * The widest disc that gets from one place to another between polygons: exact, without a raster and without bisection.
 * Derivation: docs/mechanics-floor.md, F4 to F8.
 */

import type { Point, Polygon } from "../plan";
import { whereInPolygon } from "./polygon";
import { pointToSegment, segmentToSegment } from "./segments";
import { geometryTolerance } from "./tolerances";

/** What the disc must keep clear of: a ring grown by a radius with round corners, and the side of it that is solid. */
export interface Barrier {
  readonly ring: Polygon;
  readonly solid: "inside" | "outside";
  /** m, ≥ 0. */
  readonly radius: number;
}

export interface WidestPath {
  /** Diameter of the widest disc, m; 0 where none gets through, or the start or the end is not clear. */
  readonly width: number;
  /** Middle of the disc where it fits tightest; null with a width of 0. */
  readonly narrowestAt: Point | null;
}

/**
 * Diameter of the widest disc whose middle can travel from `from` to `to` clear of the barriers, and where it is tightest.
 *
 * Grown by half a diameter D, the barriers part the two places exactly when a closed chain of them runs round one and
 * not the other, each link of it no longer than D. So links are taken from the shortest up; the first that closes such a chain is
 * the pinch. What a chain runs round is told by how far the directions from both places turn along it.
 */
export function widestPath(barriers: readonly Barrier[], from: Point, to: Point): WidestPath {
  const atFrom = clearanceAt(barriers, from);
  const atTo = clearanceAt(barriers, to);
  const tighter = atTo < atFrom ? to : from;
  const standing = 2 * Math.min(atFrom, atTo);
  if (standing <= geometryTolerance.touching) return { width: 0, narrowestAt: null };

  const parting = new Parting(from, to);
  const rings = barriers.map((barrier, index) => turnedRing(barrier, index, parting));
  const pinch = firstParting(rings, linksShorterThan(rings, standing, parting));
  if (pinch === null) return { width: standing, narrowestAt: tighter };
  if (pinch.gap <= geometryTolerance.touching) return { width: 0, narrowestAt: null };
  return { width: pinch.gap, narrowestAt: pinch.middle };
}

/** Distance from a point to the nearest barrier, m; 0 on or in one. */
export function clearanceAt(barriers: readonly Barrier[], point: Point): number {
  let clearance = Number.POSITIVE_INFINITY;
  for (const { ring, solid, radius } of barriers) {
    const where = whereInPolygon(ring, point);
    if (where === solid || where === "boundary") return 0;
    for (let index = 0; index < ring.length; index++) {
      const gap = pointToSegment(point, ring[index]!, ring[(index + 1) % ring.length]!).distance - radius;
      clearance = Math.min(clearance, gap);
    }
  }
  return Math.max(0, clearance);
}

/** How the two places are seen along a way: the turn of the direction from the one less that from the other. */
class Parting {
  private readonly from: Point;
  private readonly to: Point;

  constructor(from: Point, to: Point) {
    this.from = from;
    this.to = to;
  }

  /** Along the straight way a–b, which goes through neither place, rad. */
  turn(a: Point, b: Point): number {
    return turnAbout(this.from, a, b) - turnAbout(this.to, a, b);
  }

  /** Whether the box that holds both runs holds neither place: then all ways within it turn alike. */
  outOf(first: Run, second: Run): boolean {
    const [p0, q0] = [Math.min(first.least0, second.least0), Math.min(first.least1, second.least1)];
    const [p1, q1] = [Math.max(first.most0, second.most0), Math.max(first.most1, second.most1)];
    const within = ([p, q]: Point) => p >= p0 && p <= p1 && q >= q0 && q <= q1;
    return !within(this.from) && !within(this.to);
  }
}

function turnAbout(place: Point, a: Point, b: Point): number {
  const [a0, a1, b0, b1] = [a[0] - place[0], a[1] - place[1], b[0] - place[0], b[1] - place[1]];
  return Math.atan2(a0 * b1 - a1 * b0, a0 * b0 + a1 * b1);
}

/** A stretch of consecutive edges of one ring, with its box; more than one edge are parted in two halves. */
interface Run {
  readonly ring: TurnedRing;
  /** Of the first edge. */
  readonly edge: number;
  readonly count: number;
  readonly least0: number;
  readonly least1: number;
  readonly most0: number;
  readonly most1: number;
  readonly halves: readonly [Run, Run] | null;
}

interface TurnedRing {
  readonly index: number;
  readonly points: Polygon;
  readonly radius: number;
  /** Turn of the direction from corner 0 along the ring to each corner, rad. */
  readonly turns: readonly number[];
  readonly whole: Run;
}

/** A straight way between two rings (or two stretches of one). */
interface Link {
  /** What is left of it between the grown rings, m. */
  readonly gap: number;
  readonly first: number;
  readonly second: number;
  /** By how much the turn counted along the second ring is behind that along the first, rad: a multiple of 2π off where they are the same ring. */
  readonly offset: number;
  /** Half way between the grown rings. */
  readonly middle: Point;
}

function turnedRing({ ring, radius }: Barrier, index: number, parting: Parting): TurnedRing {
  const turns = [0];
  for (let corner = 1; corner < ring.length; corner++) {
    turns.push(turns[corner - 1]! + parting.turn(ring[corner - 1]!, ring[corner]!));
  }
  const turned: Omit<TurnedRing, "whole"> & { whole?: Run } = { index, points: ring, radius, turns };
  turned.whole = runOf(turned as TurnedRing, 0, ring.length);
  return turned as TurnedRing;
}

function runOf(ring: TurnedRing, edge: number, count: number): Run {
  if (count === 1) {
    const [a, b] = edgeEnds(ring, edge);
    const [least0, most0] = a[0] < b[0] ? [a[0], b[0]] : [b[0], a[0]];
    const [least1, most1] = a[1] < b[1] ? [a[1], b[1]] : [b[1], a[1]];
    return { ring, edge, count, least0, least1, most0, most1, halves: null };
  }
  const half = count >> 1;
  const first = runOf(ring, edge, half);
  const second = runOf(ring, edge + half, count - half);
  return {
    ring,
    edge,
    count,
    least0: Math.min(first.least0, second.least0),
    least1: Math.min(first.least1, second.least1),
    most0: Math.max(first.most0, second.most0),
    most1: Math.max(first.most1, second.most1),
    halves: [first, second],
  };
}

function edgeEnds(ring: TurnedRing, edge: number): readonly [Point, Point] {
  return [ring.points[edge]!, ring.points[(edge + 1) % ring.points.length]!];
}

/** Every link that can part the places and is shorter than `limit`, m: of links that turn alike only the shortest. */
function linksShorterThan(rings: readonly TurnedRing[], limit: number, parting: Parting): Link[] {
  const links: Link[] = [];

  const between = (first: Run, second: Run): void => {
    if (boxGap(first, second) - radii(first, second) >= limit) return;
    if ((first.halves === null && second.halves === null) || parting.outOf(first, second)) {
      const link = shortestLink(first, second, limit, parting);
      if (link !== null) links.push(link);
    } else if (second.halves === null || (first.halves !== null && first.count >= second.count)) {
      for (const half of first.halves!) between(half, second);
    } else {
      for (const half of second.halves) between(first, half);
    }
  };
  const within = (run: Run): void => {
    if (run.halves === null || parting.outOf(run, run)) return;
    const [first, second] = run.halves;
    within(first);
    within(second);
    between(first, second);
  };

  rings.forEach((ring, index) => {
    within(ring.whole);
    for (const other of rings.slice(index + 1)) between(ring.whole, other.whole);
  });
  return links;
}

/** The shortest link between two runs; null where none is shorter than `limit`. */
function shortestLink(first: Run, second: Run, limit: number, parting: Parting): Link | null {
  const grown = radii(first, second);
  let best: {
    readonly distance: number;
    readonly a: Point;
    readonly b: Point;
    readonly edges: readonly [number, number];
  } | null = null;
  let least = limit + grown;
  const search = (one: Run, other: Run): void => {
    if (boxGap(one, other) >= least) return;
    if (one.halves === null && other.halves === null) {
      const { distance, from, to } = segmentToSegment(
        ...edgeEnds(one.ring, one.edge),
        ...edgeEnds(other.ring, other.edge),
      );
      if (distance < least) {
        least = distance;
        best = { distance, a: from, b: to, edges: [one.edge, other.edge] };
      }
    } else if (other.halves === null || (one.halves !== null && one.count >= other.count)) {
      const [near, far] = nearerFirst(one.halves!, other);
      search(near, other);
      search(far, other);
    } else {
      const [near, far] = nearerFirst(other.halves, one);
      search(one, near);
      search(one, far);
    }
  };
  search(first, second);
  return best === null ? null : linkOf(first.ring, second.ring, best, parting);
}

function linkOf(
  first: TurnedRing,
  second: TurnedRing,
  way: { readonly distance: number; readonly a: Point; readonly b: Point; readonly edges: readonly [number, number] },
  parting: Parting,
): Link {
  const { distance, a, b, edges } = way;
  const turnTo = (ring: TurnedRing, edge: number, point: Point) =>
    ring.turns[edge]! + parting.turn(ring.points[edge]!, point);
  const gap = distance - first.radius - second.radius;
  const share = distance > 0 ? (first.radius + gap / 2) / distance : 0;
  return {
    gap,
    first: first.index,
    second: second.index,
    offset: turnTo(first, edges[0], a) + parting.turn(a, b) - turnTo(second, edges[1], b),
    middle: [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])],
  };
}

/** The first link, from the shortest up, that closes a chain round one place and not the other; null without one. */
function firstParting(rings: readonly TurnedRing[], links: readonly Link[]): Link | null {
  const chains = new Chains(rings.length);
  const shortestFirst = [...links].sort((one, other) => one.gap - other.gap);
  return shortestFirst.find(({ first, second, offset }) => !chains.join(first, second, offset)) ?? null;
}

/** Rings joined into chains, each with its turn against the first of its chain: union-find with offsets. */
class Chains {
  private readonly parent: number[];
  /** Against the parent, rad. */
  private readonly offset: number[];

  constructor(count: number) {
    this.parent = Array.from({ length: count }, (_, index) => index);
    this.offset = new Array<number>(count).fill(0);
  }

  /** Joins two rings; false where they are joined already by a chain that turns otherwise, by 2π or more. */
  join(first: number, second: number, offset: number): boolean {
    const one = this.head(first);
    const other = this.head(second);
    const wanted = one.offset + offset - other.offset;
    if (one.ring === other.ring) return Math.abs(wanted) < Math.PI;
    this.parent[other.ring] = one.ring;
    this.offset[other.ring] = wanted;
    return true;
  }

  private head(ring: number): { readonly ring: number; readonly offset: number } {
    let [at, offset] = [ring, 0];
    while (this.parent[at] !== at) {
      offset += this.offset[at]!;
      at = this.parent[at]!;
    }
    return { ring: at, offset };
  }
}

function radii(first: Run, second: Run): number {
  return first.ring.radius + second.ring.radius;
}

/** Distance of the boxes of two runs, m; never more than that of the runs. */
function boxGap(first: Run, second: Run): number {
  const gap0 = Math.max(0, first.least0 - second.most0, second.least0 - first.most0);
  const gap1 = Math.max(0, first.least1 - second.most1, second.least1 - first.most1);
  return Math.hypot(gap0, gap1);
}

function nearerFirst(halves: readonly [Run, Run], other: Run): readonly [Run, Run] {
  return boxGap(halves[1], other) < boxGap(halves[0], other) ? [halves[1], halves[0]] : halves;
}
