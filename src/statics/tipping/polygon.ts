/** The support polygon of a part, and what is left of it without one stand (docs/mechanics-tipping.md, T1 and T9). */

import { convexHull } from "../../geometry";
import type { Point, StandId } from "../../plan";
import type { PartLevel, StepLevel } from "../answers";
import { staticsTolerance } from "../constants";
import type { PartModel, StepModel } from "../model";

/** A stand whose greatest reaction is under this share of the weight on it never bears (no unit; not to be changed). */
export const neverBears = 1e-6;

/** One edge of a support polygon, m, piece frame. The polygon lies on its left. */
export interface SupportEdge {
  readonly from: Point;
  readonly to: Point;
  /** Unit vector square to the edge, away from the polygon. */
  readonly outward: Point;
}

/**
 * T1: the convex hull of the contact points of those stands of a part that may bear, counter-clockwise, m. Empty where
 * the contacts lie on one line or there are none.
 *
 * @param bears by the index of the stand in the step's model.
 */
export function supportPolygon(part: PartModel, bears: readonly boolean[]): Point[] {
  const points = part.contacts
    .filter((contact) => bears[contact.stand])
    .map((contact): Point => [contact.s, contact.t]);
  const hull = convexHull(points);
  return hull.length < 3 ? [] : hull;
}

/**
 * Which stands count for the support polygons: those with `most` of at least a millionth of the weight on their parts,
 * all of them where `most` is not known (null).
 *
 * @param most greatest reaction over what is not known, N, in the order of the model's stands.
 */
export function bearingStands(model: StepModel, level: StepLevel, most: readonly (number | null)[] | null): boolean[] {
  return model.stands.map((stand, index) => {
    const greatest = most?.[index] ?? null;
    if (greatest === null) return true;
    const parts = new Set(stand.intervals.map((interval) => interval.part));
    const weight = [...parts].reduce((sum, part) => sum + (level.parts[part]?.resultant.force ?? 0), 0);
    return greatest >= neverBears * weight;
  });
}

export function edgesOf(polygon: readonly Point[]): SupportEdge[] {
  return polygon.map((from, i) => {
    const to = polygon[(i + 1) % polygon.length]!;
    const [ds, dt] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(ds, dt);
    return { from, to, outward: [dt / length, -ds / length] };
  });
}

/** T2: distance of a point beyond the line of an edge, m; negative inside. */
export function beyond({ from, outward }: SupportEdge, s: number, t: number): number {
  // x = n · (p − p₀)
  return outward[0] * (s - from[0]) + outward[1] * (t - from[1]);
}

/** The point of an outline farthest beyond an edge, and how far, m. */
export function farthestBeyond(
  edge: SupportEdge,
  outline: readonly (readonly Point[])[],
): { readonly distance: number; readonly at: Point } {
  let farthest = { distance: -Infinity, at: edge.from };
  for (const ring of outline)
    for (const at of ring) {
      const distance = beyond(edge, at[0], at[1]);
      if (distance > farthest.distance) farthest = { distance, at };
    }
  return farthest;
}

/**
 * T9: the stands without which some part would tip as planned: its load centre is not strictly inside the hull of the
 * other stands' contact points. A part that is unstable with all of them is left out: it has a finding of its own.
 */
export function standsNotToLose(model: StepModel, level: StepLevel): StandId[] {
  return model.stands
    .filter((_, lost) =>
      model.parts.some((part, index) => {
        const answer = level.parts[index]!;
        if (!answer.stable || !part.contacts.some((contact) => contact.stand === lost)) return false;
        const others = model.stands.map((_, stand) => stand !== lost);
        return !holdsWithin(supportPolygon(part, others), answer);
      }),
    )
    .map((stand) => stand.stand);
}

function holdsWithin(polygon: readonly Point[], { resultant, from, to }: PartLevel): boolean {
  const { s, t } = resultant;
  if (s === null || t === null || polygon.length === 0) return false;
  return edgesOf(polygon).every((edge) => beyond(edge, s, t) < -staticsTolerance.inside * (to - from));
}
