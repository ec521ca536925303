/** The map of where how much more weight may stand on a part: by tipping, and by the level solution too. */

import { intersection, type Region } from "../../geometry";
import type { Point } from "../../plan";
import type { StepLevel } from "../answers";
import type { StepModel } from "../model";
import { standingRegion, tippingForceAt } from "./added";
import { type LevelGives, levelGives } from "./levelForce";
import { levelRegion } from "./levelRegion";
import type { PartTipping } from "./tipping";

/** Where one downward force may stand. Piece frame, m. */
export interface StandingContour {
  /** N. */
  readonly force: number;
  /** Without tipping the part; exact. */
  readonly tipping: readonly (readonly Point[])[];
  /** Without tipping it, passing a stand's limit or relieving a stand to zero; to `contour.tolerance`. */
  readonly level: readonly Region[];
}

export interface StandingMap {
  readonly contours: readonly StandingContour[];
  /**
   * At one point of the outline, N: the force that tips the part there, and the least force by the level solution; null
   * where no force does. With it the stand that gives then, where one does before the part tips.
   */
  readonly at: (
    s: number,
    t: number,
  ) => { readonly tipping: number | null; readonly level: number | null; readonly gives: LevelGives | null };
}

/**
 * @param part its index; it has to be stable.
 * @param limits ratedLoad ÷ set-down factor of each stand, N, in the order of the model's stands; null = not known.
 * @param forces N, > 0, for a contour each.
 */
export function standingMap(
  model: StepModel,
  level: StepLevel,
  part: number,
  tipping: PartTipping,
  limits: readonly (number | null)[],
  forces: readonly number[],
): StandingMap {
  const { from, to } = model.parts[part]!;
  const givesAt = levelGives(model, level, part, limits);
  const takes = (s: number, t: number) => givesAt(s, t)?.force ?? null;
  const across = tipping.outline.flat().map((point) => point[1]);
  const strip = { from, to, least: Math.min(...across), most: Math.max(...across) };
  return {
    contours: forces.map((force) => {
      const byTipping = standingRegion(tipping.edges, tipping.outline, force);
      return { force, tipping: byTipping, level: intersection(byTipping, levelRegion(takes, force, strip)) };
    }),
    at: (s, t) => {
      const tips = tippingForceAt(tipping.edges, s, t, to - from);
      const gives = givesAt(s, t);
      if (gives === null || (tips !== null && tips < gives.force)) return { tipping: tips, level: tips, gives: null };
      return { tipping: tips, level: gives.force, gives };
    },
  };
}
