/** Fewer corners for a ring that has more than it needs. Metres. */

import type { Point, Polygon } from "../plan";
import { distanceToSegment } from "./segments";

export interface Thinned {
  readonly ring: Polygon;
  /** No corner that was left out lies farther than this from the thinned ring, m; 0 where none was. */
  readonly within: number;
}

/**
 * A ring of at most `most` corners, the least telling ones left out first (Douglas and Peucker, "Algorithms for the
 * reduction of the number of points required to represent a digitized line", The Canadian Cartographer 10, 1973): a
 * corner tells by its distance from the chord that stands in for it, and never more than the corner that split that
 * chord. Corners that tell as much as the last one left out go with it. The first corner and the one farthest from it
 * always stay.
 */
export function thinned(ring: Polygon, most: number): Thinned {
  if (ring.length <= most) return { ring, within: 0 };
  const tells = tellingOf(ring);
  const within = Float64Array.from(tells).sort()[ring.length - most - 1]!;
  return { ring: ring.filter((_, index) => tells[index]! > within), within };
}

/** How much each corner tells, m; Infinity for the two that always stay. */
function tellingOf(ring: Polygon): Float64Array {
  const count = ring.length;
  const tells = new Float64Array(count);
  const opposite = farthestFrom(ring, ring[0]!);
  tells[0] = Infinity;
  tells[opposite] = Infinity;
  // Index `count` is the first corner again.
  const stretches: [from: number, to: number, atMost: number][] = [
    [0, opposite, Infinity],
    [opposite, count, Infinity],
  ];
  for (let stretch = stretches.pop(); stretch !== undefined; stretch = stretches.pop()) {
    const [from, to, atMost] = stretch;
    const [a, b] = [ring[from]!, ring[to % count]!];
    let worst = -1;
    let distance = -1;
    for (let index = from + 1; index < to; index += 1) {
      const here = distanceToSegment(ring[index]!, a, b);
      if (here > distance) [worst, distance] = [index, here];
    }
    if (worst < 0) continue;
    const telling = Math.min(distance, atMost);
    tells[worst] = telling;
    stretches.push([from, worst, telling], [worst, to, telling]);
  }
  return tells;
}

function farthestFrom(ring: Polygon, [p, q]: Point): number {
  let best = 0;
  let most = -1;
  for (const [index, [x, y]] of ring.entries()) {
    const distance = (x - p) ** 2 + (y - q) ** 2;
    if (distance > most) [best, most] = [index, distance];
  }
  return best;
}
