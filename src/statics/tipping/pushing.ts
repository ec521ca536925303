/** A sideways push: rolling over, sliding, and a stand about its own feet (docs/mechanics-tipping.md, T10 to T14). */

import { convexHull } from "../../geometry";
import type { Criteria, Mass, Point } from "../../plan";
import type { LineLoad, PartModel, PointLoad } from "../model";
import { beyond, edgesOf } from "./polygon";
import type { TippingEdge } from "./tipping";

/**
 * T10: the sideways push that a set-down must take, N: H = max(f·W, pushLeast) + W·|slope of the bay|.
 *
 * @param weight W, the nominal resultant force of a part, or of all of them, N.
 * @param slope rise per metre of the bay's floor in x and in y.
 */
export function pushForce(
  weight: number,
  slope: readonly [number, number],
  { horizontalFraction, pushLeast }: Pick<Criteria, "horizontalFraction" | "pushLeast">,
): number {
  return Math.max(horizontalFraction * weight, pushLeast) + weight * Math.hypot(slope[0], slope[1]);
}

/** Height of a part's centre of gravity over the datum plane, m; null where nothing has weight. */
export function centreHeight(part: PartModel, masses: readonly Mass[]): number | null {
  let weight = 0;
  let moment = 0;
  for (const load of part.loads) {
    if (load.source.kind !== "mass") continue;
    const down = weightOf(load);
    weight += down;
    moment += down * masses[load.source.index]!.z;
  }
  return weight > 0 ? moment / weight : null;
}

function weightOf(load: LineLoad | PointLoad): number {
  // A linear intensity: W = ½(q₀ + q₁)·l
  return load.kind === "point" ? load.down : 0.5 * (load.intensity[0] + load.intensity[1]) * (load.to - load.from);
}

/** Reserve against rolling over about one edge. */
export interface RollOver {
  readonly from: Point;
  readonly to: Point;
  /** null: next to nothing overturns. */
  readonly reserve: number | null;
}

/**
 * T11: reserve of each edge against tipping and the push together: righting ÷ (overturning with the person + H·|z|).
 * Below the datum plane a push the other way does the harm, so the height counts without its sign.
 *
 * @param push H of the part, N.
 * @param z height at which it acts, m.
 */
export function rollOvers(edges: readonly TippingEdge[], push: number, z: number): RollOver[] {
  return edges.map(({ from, to, righting, overturning, person }) => ({
    from,
    to,
    reserve: quotient(righting, overturning + person + push * Math.abs(z)),
  }));
}

/** Extent of a support polygon across the piece, m; 0 where there is none. */
export function extentAcross(edges: readonly { readonly from: Point }[]): number {
  const across = edges.map((edge) => edge.from[1]);
  return across.length === 0 ? 0 : Math.max(...across) - Math.min(...across);
}

/** A stand as sliding sees it. */
export interface SlidingStand {
  /** R_i of the level solution, N. */
  readonly reaction: number;
  /** μ_i of its top's material. */
  readonly friction: number;
  /** Its own weight, N. */
  readonly selfWeight: number;
}

export interface Sliding {
  /** H⁺, N: the push and the step's own horizontal loads. */
  readonly push: number;
  /** H_i, N, as the stands. */
  readonly shares: readonly number[];
  /** Σ μ_i·R_i ÷ H⁺: the piece on its tops; null without a push. */
  readonly onTops: number | null;
  /** floorFriction·(R_i + own weight) ÷ H_i: each stand on the floor; null where it takes no share. */
  readonly onFloor: readonly (number | null)[];
}

/**
 * T12 and T13: sliding between tops and piece, and under each stand.
 *
 * @param push H of all parts together, N.
 * @param horizontal Σ F_s and Σ F_t of the step's loads, N.
 */
export function sliding(
  stands: readonly SlidingStand[],
  push: number,
  horizontal: readonly [number, number],
  floorFriction: number,
): Sliding {
  // H⁺ = H + |(ΣF_s, ΣF_t)|, H_i = H⁺·R_i ÷ ΣR
  const all = push + Math.hypot(horizontal[0], horizontal[1]);
  const carried = stands.reduce((sum, { reaction }) => sum + reaction, 0);
  const shares = stands.map(({ reaction }) => (carried > 0 ? (all * reaction) / carried : 0));
  const held = stands.reduce((sum, { reaction, friction }) => sum + friction * reaction, 0);
  return {
    push: all,
    shares,
    onTops: quotient(held, all),
    onFloor: stands.map(({ reaction, selfWeight }, i) => quotient(floorFriction * (reaction + selfWeight), shares[i]!)),
  };
}

/** A stand on its feet; all points in one plane frame, m. */
export interface StandOnFeet {
  /** Centres of its foot plates. */
  readonly feet: readonly Point[];
  /** The middle of the stand. */
  readonly middle: Point;
  /** Where its reaction acts. */
  readonly centre: Point;
  /** Unit vector square to its top. */
  readonly square: Point;
  readonly topWidth: number;
  /** Floor to top of the shim, m. */
  readonly height: number;
  /** R_i of the level solution, N. */
  readonly reaction: number;
  /** Its own weight, N. */
  readonly selfWeight: number;
}

/**
 * T14: the least reserve of a stand against tipping over about its own feet, under its share of the push; null without
 * one. The reaction may act anywhere over the width of the top, so it is taken at both long sides of it.
 *
 * @param push H_i, N.
 */
export function standReserve(stand: StandOnFeet, push: number): number | null {
  const { feet, middle, centre, square, topWidth, height, reaction, selfWeight } = stand;
  const hull = convexHull(feet);
  if (hull.length < 3) return 0;
  const places = [-0.5, 0.5].map(
    (side): Point => [centre[0] + side * topWidth * square[0], centre[1] + side * topWidth * square[1]],
  );
  let least: number | null = null;
  for (const edge of edgesOf(hull))
    for (const place of places) {
      // (R_i·b + G·b₀) ÷ (H_i·(height + shim))
      const righting = -reaction * beyond(edge, place[0], place[1]) - selfWeight * beyond(edge, middle[0], middle[1]);
      const reserve = quotient(righting, push * height);
      if (reserve !== null) least = least === null ? reserve : Math.min(least, reserve);
    }
  return least;
}

/** The lesser breadth of a stand's base: the least distance between parallel lines that hold its feet, m. */
export function lesserBreadth(feet: readonly Point[]): number {
  const hull = convexHull(feet);
  if (hull.length < 3) return 0;
  return Math.min(...edgesOf(hull).map((edge) => Math.max(...hull.map(([s, t]) => -beyond(edge, s, t)))));
}

function quotient(righting: number, overturning: number): number | null {
  return overturning > 0 ? righting / overturning : null;
}
