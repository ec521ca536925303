/** A name on the plan view: its words, where it may stand, and its ink. */

import type { Point } from "../../plan";
import { typeSize } from "../../ui";
import type { PlanMap, Size } from "../camera";
import type { LabelWish } from "../labels";
import { widthOf } from "../sketch";
import { dimensionStrip } from "./Dimensions";

export interface Name extends LabelWish {
  readonly colour: string;
  readonly strong: boolean;
  /** A thin line goes from here to the label; null = none. */
  readonly from: Point | null;
}

const textHeight = 14;

export function named(
  text: string,
  places: readonly Point[],
  colour: string,
  more: { readonly strong?: boolean; readonly must?: boolean; readonly from?: Point } = {},
): Name {
  const strong = more.strong ?? false;
  return {
    text,
    places,
    colour,
    strong,
    must: more.must ?? false,
    from: more.from ?? null,
    width: widthOf(text, { size: typeSize.small, strong }),
    height: textHeight,
  };
}

/** Rows under and over a box, at x: those that lie on the paper, nearest first, px. */
export function besideRing(
  x: number,
  { top, bottom }: { readonly top: number; readonly bottom: number },
  { size }: Pick<PlanMap, "size">,
): readonly Point[] {
  const rows = [0, 1, 2, 3].flatMap((row): Point[] => [
    [x, bottom + 12 + row * 15],
    [x, top - 12 - row * 15],
  ]);
  return rows.filter(([, y]) => y > 8 && y < size.height - dimensionStrip - 8);
}

/** Places over a line, along what of it lies on the paper, px. */
export function along(from: Point, to: Point, { width, height }: Size): readonly Point[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [first, last] = [0, 1];
  // The line is from + share·d; each edge of the paper leaves of it what lies on its inner side.
  for (const [start, run, least, most] of [
    [from[0], dx, 8, width - 8],
    [from[1], dy, 18, height - dimensionStrip],
  ] as const) {
    if (run === 0) {
      if (start < least || start > most) return [];
      continue;
    }
    const [enter, leave] = [(least - start) / run, (most - start) / run];
    first = Math.max(first, Math.min(enter, leave));
    last = Math.min(last, Math.max(enter, leave));
  }
  if (first >= last) return [];
  return [0.5, 0.25, 0.75, 0.1, 0.9].map((share): Point => {
    const at = first + (last - first) * share;
    return [from[0] + dx * at, from[1] + dy * at - 10];
  });
}
