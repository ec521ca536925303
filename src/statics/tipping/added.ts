/** The added-weight map: where how much more weight tips a part (docs/mechanics-tipping.md, T7 and T8). */

import { clipToHalfPlanes } from "../../geometry";
import type { Point } from "../../plan";
import { staticsTolerance } from "../constants";
import { beyond, farthestBeyond, type SupportEdge } from "./polygon";

/** A downward force, N, and where on the piece it acts, m. */
export interface AddedLoad {
  readonly value: number;
  readonly s: number;
  readonly t: number;
}

/** An edge with M_e, its righting less its overturning moment without a person, N·m; null where the part is unstable. */
export interface MarginEdge extends SupportEdge {
  readonly margin: number | null;
}

/**
 * T7: the downward force at (s, t) that tips the part, N: the least, over the edges beyond which the point lies, of
 * M_e ÷ x_e; 0 where one of these has no margin. null: no force there tips it.
 *
 * @param length of the part, m.
 */
export function tippingForceAt(edges: readonly MarginEdge[], s: number, t: number, length: number): number | null {
  let least: number | null = null;
  for (const edge of edges) {
    const x = beyond(edge, s, t);
    if (edge.margin === null || x <= staticsTolerance.inside * length) continue;
    const force = Math.max(0, edge.margin) / x;
    least = least === null ? force : Math.min(least, force);
  }
  return least;
}

/**
 * The least force that tips a part anywhere on its outline. For each edge M_e ÷ x_e falls with x_e, so its least lies at
 * the corner of the outline farthest beyond the edge.
 */
export function leastTippingForce(
  edges: readonly MarginEdge[],
  outline: readonly (readonly Point[])[],
  length: number,
): AddedLoad | null {
  let least: AddedLoad | null = null;
  for (const edge of edges) {
    const { distance, at } = farthestBeyond(edge, outline);
    if (edge.margin === null || distance <= staticsTolerance.inside * length) continue;
    const value = Math.max(0, edge.margin) / distance;
    if (least === null || value < least.value) least = { value, s: at[0], t: at[1] };
  }
  return least;
}

/**
 * T8: where on a part's outline a downward force can stand without tipping it: counter-clockwise rings, m, exact.
 * M_e ÷ x_e ≥ P is x_e ≤ M_e ÷ P, one half-plane an edge, so the line of equal tipping force P is the border of these
 * rings inside the outline.
 *
 * @param force P, N, > 0.
 */
export function standingRegion(
  edges: readonly MarginEdge[],
  outline: readonly (readonly Point[])[],
  force: number,
): Point[][] {
  const halfPlanes = edges
    .filter((edge) => edge.margin !== null)
    .map(({ from, outward, margin }) => ({
      normal: outward,
      offset: outward[0] * from[0] + outward[1] * from[1] + Math.max(0, margin ?? 0) / force,
    }));
  return outline.flatMap((ring) => clipToHalfPlanes(ring, halfPlanes));
}
