/** Where a force may stand by the level solution, as outlines (docs/mechanics-tipping.md, T16). */

import type { Point } from "../../plan";
import type { LevelForce } from "./levelForce";

/** How the contours are drawn; none of it may be changed by a plan. */
export const contour = {
  /** A contour lies so near to the true one, m. */
  tolerance: 0.005,
  /** Stations along the part that are looked at first, and times that the stretch between two may be halved. */
  stations: 24,
  halvings: 7,
  /** Narrowings of a bracket across the piece: 0.618³⁰ of its breadth. */
  narrowings: 30,
} as const;

/** Where across the piece a force may stand at one station; null: nowhere. */
type Across = readonly [from: number, to: number] | null;

interface Station {
  readonly s: number;
  readonly across: Across;
}

/**
 * T16: the places within a strip along a part where the level solution takes a downward force: rings, counter-clockwise,
 * m, to be cut to the part's outline. Across the piece the greatest force has one top, so at each station the places are
 * one stretch, found by narrowing; between stations its ends are joined by straight lines where that is near enough.
 *
 * @param takes the least force that the level solution does not take at a point, N; null = any.
 * @param force N, > 0.
 * @param strip the part's ends and its outline's extent in t, m.
 */
export function levelRegion(
  takes: LevelForce,
  force: number,
  strip: { readonly from: number; readonly to: number; readonly least: number; readonly most: number },
): Point[][] {
  const look = (s: number): Station => ({ s, across: stretchAt((t) => takes(s, t), force, strip.least, strip.most) });
  const stations: Station[] = [];
  const refine = (before: Station, after: Station, depth: number): void => {
    // Between two stations without places one look is enough: a smaller island than that is left out.
    const nowhere = before.across === null && after.across === null;
    if (depth === contour.halvings || (nowhere && depth > 0)) return;
    const middle = look((before.s + after.s) / 2);
    if (straight(before.across, middle.across, after.across)) return;
    refine(before, middle, depth + 1);
    stations.push(middle);
    refine(middle, after, depth + 1);
  };
  let last = look(strip.from);
  stations.push(last);
  for (let i = 1; i <= contour.stations; i++) {
    const next = look(strip.from + ((strip.to - strip.from) * i) / contour.stations);
    refine(last, next, 0);
    stations.push(next);
    last = next;
  }
  return ringsOf(stations);
}

/** The middle one lies on the straight lines between the ends of the outer two, near enough. */
function straight(before: Across, middle: Across, after: Across): boolean {
  if (before === null || middle === null || after === null) return before === after && middle === null;
  return [0, 1].every((end) => Math.abs(middle[end]! - (before[end]! + after[end]!) / 2) <= contour.tolerance / 2);
}

function stretchAt(takes: (t: number) => number | null, force: number, least: number, most: number): Across {
  // What is asked for in share of what is taken: 1 at the contour, 0 where any force is taken.
  const share = (t: number): number => {
    const taken = takes(t);
    return taken === null ? 0 : force / taken;
  };
  const best = leastOf(share, least, most, contour.narrowings);
  if (share(best) > 1) return null;
  return [border(share, best, least), border(share, best, most)];
}

/** The farthest t towards `end` at which the share is still at most 1. */
function border(share: (t: number) => number, inside: number, end: number): number {
  if (share(end) <= 1) return end;
  let [good, bad] = [inside, end];
  while (Math.abs(bad - good) > contour.tolerance / 10) {
    const middle = (good + bad) / 2;
    if (share(middle) <= 1) good = middle;
    else bad = middle;
  }
  return good;
}

/** Golden-section search for the least of a function with one bottom. */
function leastOf(f: (t: number) => number, from: number, to: number, narrowings: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let i = 0; i < narrowings; i++) {
    if (fc <= fd) {
      [b, d, fd] = [d, c, fc];
      c = b - golden * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + golden * (b - a);
      fd = f(d);
    }
  }
  return (a + b) / 2;
}

/** One ring for each run of stations that has places. */
function ringsOf(stations: readonly Station[]): Point[][] {
  const rings: Point[][] = [];
  let right: Point[] = [];
  let left: Point[] = [];
  const close = (): void => {
    if (right.length >= 2) rings.push([...right, ...left.reverse()]);
    [right, left] = [[], []];
  };
  for (const { s, across } of stations) {
    if (across === null) close();
    else {
      right.push([s, across[0]]);
      left.push([s, across[1]]);
    }
  }
  close();
  return rings;
}
