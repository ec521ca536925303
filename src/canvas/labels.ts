/** Where labels go so that none lies on another: each takes the first of its places that is free, or is left out. */

import type { Point } from "../plan";

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface LabelWish {
  readonly text: string;
  readonly width: number;
  readonly height: number;
  /** Middles to try, best first, px. */
  readonly places: readonly Point[];
  /** Written at its first place where none is free, in place of being left out. */
  readonly must: boolean;
}

/**
 * A middle for each wish, in the order of importance given; null where it is left out.
 *
 * @param taken what no label may cover.
 * @param within the paper: labels that would stick out are shifted in.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  taken: readonly Box[],
  within: Box,
): readonly (Point | null)[] {
  const boxes = [...taken];
  return wishes.map((wish) => {
    const tries = wish.places.map((place) => keptIn(place, wish, within));
    const free = tries.find((place) => !boxes.some((box) => meets(box, boxAt(place, wish))));
    const chosen = free ?? (wish.must ? tries[0] : undefined);
    if (chosen === undefined) return null;
    boxes.push(boxAt(chosen, wish));
    return chosen;
  });
}

/** Space left clear round a label, px. */
const clear = { across: 4, above: 1 } as const;

function boxAt([x, y]: Point, { width, height }: Pick<LabelWish, "width" | "height">): Box {
  return {
    left: x - width / 2 - clear.across,
    right: x + width / 2 + clear.across,
    top: y - height / 2 - clear.above,
    bottom: y + height / 2 + clear.above,
  };
}

function keptIn([x, y]: Point, { width, height }: LabelWish, within: Box): Point {
  const inside = (value: number, half: number, least: number, most: number): number =>
    Math.max(least + half, Math.min(most - half, value));
  // What lies wholly off the paper stays there: its thing is not in sight.
  if (x < within.left - width || x > within.right + width || y < within.top - height || y > within.bottom + height)
    return [x, y];
  return [inside(x, width / 2, within.left, within.right), inside(y, height / 2, within.top, within.bottom)];
}

const meets = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
