/**
 * Straight links between barriers, and how the directions from two places turn along them. The widest path rests on it;
 * derivation: docs/mechanics-floor.md, F6 to F8.
 */

import type { Point, Polygon } from "../plan";
import type { Barrier } from "./barriers";
import { type Box, boundingBox, boxAbout, boxGap, boxHolds } from "./polygon";
import { segmentToSegment } from "./segments";

/** The two places that a chain of links may part. */
export type Places = readonly [Point, Point];

/** A straight way between two grown rings, or two stretches of one. */
export interface Link {
  /** What is left of it between them, m; negative where they overlap. */
  readonly gap: number;
  /** Indices of the barriers. */
  readonly first: number;
  readonly second: number;
  /** Turn counted along the first ring and the link, less that counted along the second ring, rad. */
  readonly offset: number;
  /** Half way across the gap. */
  readonly middle: Point;
  /** Unit vector across the gap; null where the rings touch. */
  readonly across: Point | null;
}

/** A barrier's ring, with the turn from its first corner to each. */
interface TurnedRing {
  readonly index: number;
  readonly points: Polygon;
  readonly radius: number;
  /** rad. */
  readonly turns: readonly number[];
}

/** Consecutive edges of one ring and their box; more than one edge are parted in two halves. */
interface Run {
  readonly ring: TurnedRing;
  /** The first edge. */
  readonly edge: number;
  readonly count: number;
  readonly box: Box;
  readonly halves: readonly [Run, Run] | null;
}

/**
 * Enough links shorter than `limit`, m, to find the shortest chain that parts the places: of two runs whose common box
 * holds neither place all links turn alike, and the shortest stands for them; other runs are halved down to edges.
 * Where the places do not touch rings of n edges in all, runs meet in some n·log n pairs.
 */
export function linksShorterThan(barriers: readonly Barrier[], limit: number, places: Places): Link[] {
  const links: Link[] = [];
  const turnAlike = (first: Run, second: Run): boolean => {
    const box = boxAbout(first.box, second.box);
    return !boxHolds(box, places[0]) && !boxHolds(box, places[1]);
  };
  const between = (first: Run, second: Run): void => {
    if (gapOf(first, second) >= limit) return;
    const pairs = turnAlike(first, second) ? null : halved(first, second);
    if (pairs === null) {
      const link = shortestLink(first, second, limit, places);
      if (link !== null) links.push(link);
    } else {
      for (const [one, other] of pairs) between(one, other);
    }
  };
  const within = (run: Run): void => {
    if (run.halves === null || turnAlike(run, run)) return;
    const [first, second] = run.halves;
    within(first);
    within(second);
    between(first, second);
  };

  const wholes = barriers.map((barrier, index) => wholeRun(barrier, index, places));
  wholes.forEach((whole, index) => {
    within(whole);
    for (const other of wholes.slice(index + 1)) between(whole, other);
  });
  return links;
}

/** Turn of the direction from the first place along the straight way a–b, less that from the second, rad. Through neither place. */
function turnAlong([first, second]: Places, a: Point, b: Point): number {
  return turnAbout(first, a, b) - turnAbout(second, a, b);
}

function turnAbout(place: Point, a: Point, b: Point): number {
  const [a0, a1, b0, b1] = [a[0] - place[0], a[1] - place[1], b[0] - place[0], b[1] - place[1]];
  return Math.atan2(a0 * b1 - a1 * b0, a0 * b0 + a1 * b1);
}

function wholeRun({ ring, radius }: Barrier, index: number, places: Places): Run {
  const turns = [0];
  for (let corner = 1; corner < ring.length; corner++) {
    turns.push(turns[corner - 1]! + turnAlong(places, ring[corner - 1]!, ring[corner]!));
  }
  return runOf({ index, points: ring, radius, turns }, 0, ring.length);
}

function runOf(ring: TurnedRing, edge: number, count: number): Run {
  if (count === 1) return { ring, edge, count, box: boundingBox(edgeOf(ring, edge)), halves: null };
  const half = count >> 1;
  const halves = [runOf(ring, edge, half), runOf(ring, edge + half, count - half)] as const;
  return { ring, edge, count, box: boxAbout(halves[0].box, halves[1].box), halves };
}

function edgeOf({ points }: TurnedRing, edge: number): readonly [Point, Point] {
  return [points[edge]!, points[(edge + 1) % points.length]!];
}

/** The pairs that two runs fall into when the longer one is halved, the nearer pair first; null for two edges. */
function halved(first: Run, second: Run): readonly (readonly [Run, Run])[] | null {
  const cutFirst = second.halves === null || (first.halves !== null && first.count >= second.count);
  const halves = cutFirst ? first.halves : second.halves;
  if (halves === null) return null;
  const [one, other] = cutFirst
    ? halves.map((half) => [half, second] as const)
    : halves.map((half) => [first, half] as const);
  return gapOf(...one!) <= gapOf(...other!) ? [one!, other!] : [other!, one!];
}

/** Gap of the grown boxes of two runs, m; never more than that of the runs. */
function gapOf(first: Run, second: Run): number {
  return boxGap(first.box, second.box) - first.ring.radius - second.ring.radius;
}

/** The shortest link between two runs, by branch and bound on their boxes; null where none is shorter than `limit`. */
function shortestLink(first: Run, second: Run, limit: number, places: Places): Link | null {
  let best: Link | null = null;
  let least = limit;
  const search = (one: Run, other: Run): void => {
    if (gapOf(one, other) >= least) return;
    const pairs = halved(one, other);
    if (pairs === null) {
      const { distance, from, to } = segmentToSegment(...edgeOf(one.ring, one.edge), ...edgeOf(other.ring, other.edge));
      const gap = distance - one.ring.radius - other.ring.radius;
      if (gap >= least) return;
      least = gap;
      best = linkBetween({ run: one, end: from }, { run: other, end: to }, gap, places);
    } else {
      for (const pair of pairs) search(...pair);
    }
  };
  search(first, second);
  return best;
}

interface LinkEnd {
  readonly run: Run;
  readonly end: Point;
}

function linkBetween(a: LinkEnd, b: LinkEnd, gap: number, places: Places): Link {
  const turnTo = ({ run: { ring, edge }, end }: LinkEnd) =>
    ring.turns[edge]! + turnAlong(places, ring.points[edge]!, end);
  const distance = gap + a.run.ring.radius + b.run.ring.radius;
  const share = distance > 0 ? (a.run.ring.radius + gap / 2) / distance : 0;
  const way: Point = [b.end[0] - a.end[0], b.end[1] - a.end[1]];
  return {
    gap,
    first: a.run.ring.index,
    second: b.run.ring.index,
    offset: turnTo(a) + turnAlong(places, a.end, b.end) - turnTo(b),
    middle: [a.end[0] + share * way[0], a.end[1] + share * way[1]],
    across: distance > 0 ? [way[0] / distance, way[1] / distance] : null,
  };
}
