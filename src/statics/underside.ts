/** The bearing surface under the piece: its height, and where it steps. Piece frame, m. */

import type { UndersideSegment } from "../plan";
import { staticsTolerance } from "./constants";

/** Which side of a place is meant: −1 just before it, +1 just after. */
export type Side = -1 | 1;

/** Height of the underside over the datum plane just before or just after s; 0 where no segment covers it. */
export function undersideBeside(underside: readonly UndersideSegment[], s: number, side: Side): number {
  const near = staticsTolerance.place;
  for (const { from, to, z } of underside) {
    const covers = side > 0 ? from - near <= s && s < to - near : from + near < s && s <= to + near;
    if (!covers) continue;
    const share = Math.min(1, Math.max(0, (s - from) / (to - from)));
    return z[0] + share * (z[1] - z[0]);
  }
  return 0;
}

/** Where the heights just before and just after differ, ascending. The ends of the piece are no steps. */
export function undersideSteps(underside: readonly UndersideSegment[]): number[] {
  const places = new Set(underside.flatMap(({ from, to }) => [from, to]));
  return [...places]
    .filter((s) => undersideBeside(underside, s, -1) !== undersideBeside(underside, s, 1))
    .sort((a, b) => a - b);
}
