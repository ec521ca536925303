/**
 * The widest disc that gets from one place to another between barriers: exact, without a raster and without bisection.
 * Derivation: docs/mechanics-floor.md, F5 to F9.
 */

import type { Point } from "../plan";
import { type Barrier, clearanceAt } from "./barriers";
import { type Link, linksShorterThan } from "./links";
import { geometryTolerance } from "./tolerances";

export interface WidestPath {
  /** Diameter of the widest disc, m; 0 where none gets through, or the start or the end is not clear. */
  readonly width: number;
  /** Middle of the disc where it fits tightest; null with a width of 0. */
  readonly narrowestAt: Point | null;
  /** Unit vector from one side of the pinch to the other; null where the start or the end is what is narrow. */
  readonly across: Point | null;
}

/**
 * Diameter of the widest disc whose middle can travel from `from` to `to` clear of the barriers, and where it is tightest.
 *
 * Grown by half a diameter D the barriers part the two places exactly when a closed chain of them, each link no longer
 * than D, runs round one place and not round the other. So links are taken from the shortest up: the first that closes
 * such a chain is the pinch.
 */
export function widestPath(barriers: readonly Barrier[], from: Point, to: Point): WidestPath {
  const atFrom = clearanceAt(barriers, from);
  const atTo = clearanceAt(barriers, to);
  const standing = 2 * Math.min(atFrom, atTo);
  if (standing <= geometryTolerance.touching) return blocked;

  const links = linksShorterThan(barriers, standing, [from, to]);
  const pinch = firstParting(barriers.length, links);
  if (pinch === null) return { width: standing, narrowestAt: atTo < atFrom ? to : from, across: null };
  if (pinch.gap <= geometryTolerance.touching) return blocked;
  return { width: pinch.gap, narrowestAt: pinch.middle, across: pinch.across };
}

const blocked: WidestPath = { width: 0, narrowestAt: null, across: null };

/** The first link, from the shortest up, that closes a chain round one place and not the other; null without one. */
function firstParting(count: number, links: readonly Link[]): Link | null {
  const chains = new Chains(count);
  const shortestFirst = [...links].sort((one, other) => one.gap - other.gap);
  return shortestFirst.find((link) => !chains.join(link)) ?? null;
}

/** Barriers joined into chains, each with its turn against the first of its chain: union-find with offsets. */
class Chains {
  private readonly parent: number[];
  /** Against the parent, rad. */
  private readonly offset: number[];

  constructor(count: number) {
    this.parent = Array.from({ length: count }, (_, index) => index);
    this.offset = new Array<number>(count).fill(0);
  }

  /**
   * Joins the two barriers of a link; false where a chain joins them already along which the directions turn otherwise:
   * by a whole turn or more, since both ways end in the same place.
   */
  join({ first, second, offset }: Link): boolean {
    const one = this.headOf(first);
    const other = this.headOf(second);
    const turn = one.offset + offset - other.offset;
    if (one.head === other.head) return Math.abs(turn) < Math.PI;
    this.parent[other.head] = one.head;
    this.offset[other.head] = turn;
    return true;
  }

  private headOf(barrier: number): { readonly head: number; readonly offset: number } {
    let [head, offset] = [barrier, 0];
    while (this.parent[head] !== head) {
      offset += this.offset[head]!;
      head = this.parent[head]!;
    }
    return { head, offset };
  }
}
