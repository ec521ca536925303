/** A name on the plan view: its words, where it may stand, and its ink. */

import type { Point } from "../../plan";
import { typeSize } from "../../ui";
import type { PlanMap } from "../camera";
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
