/** A name on the plan view: its words, where it may stand, and its ink. */

import type { Point } from "../../plan";
import { typeSize } from "../../ui";
import type { LabelWish } from "../labels";
import { widthOf } from "../sketch";

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
