/** Feet, plates, top and leg frames of a stand, and what its feet carry. */

import {
  convexHull,
  type Frame,
  footSpacing,
  frameWithin,
  legsAt,
  pieceFrame,
  polygonToOuter,
  rectangleIn,
  standFrame,
  toOuter,
} from "../geometry";
import type { Placement, Point, Polygon, Pose, StandType } from "../plan";
import type { Footprint } from "./answers";

/** A stand's own frame in the bay. */
export function standInBay(placement: Placement, pose: Pose): Frame {
  return frameWithin(pieceFrame(pose), standFrame(placement));
}

/** The stand seen from above, in whatever frame `frame` stands in: `standInBay`, or `standFrame` for the piece frame. */
export function footprintOf(type: StandType, height: number, frame: Frame): Footprint {
  const feet = legsAt(type, height, 0);
  const plate = (foot: Point) => rectangleIn(frame, foot, type.foot.length, type.foot.width);
  const inFrame = (point: Point) => toOuter(frame, point);
  return {
    feet: [inFrame(feet[0]), inFrame(feet[1]), inFrame(feet[2]), inFrame(feet[3])],
    plates: [plate(feet[0]), plate(feet[1]), plate(feet[2]), plate(feet[3])],
    top: rectangleIn(frame, [0, 0], type.top.width, type.top.length),
    legHulls: legFrameHulls(type, height, frame, height),
  };
}

/** Convex hull of each leg frame's foot plates and of its legs up to `upTo` over the floor: frame −, frame +. */
export function legFrameHulls(
  type: StandType,
  height: number,
  frame: Frame,
  upTo: number,
): readonly [Polygon, Polygon] {
  const feet = legsAt(type, height, 0);
  const upper = legsAt(type, height, Math.min(height, upTo));
  const own: Frame = { origin: [0, 0], cos: 1, sin: 0 };
  const hullOf = (first: 0 | 2): Polygon => {
    const pair = [first, first + 1] as const;
    const plates = pair.flatMap((leg) => rectangleIn(own, feet[leg]!, type.foot.length, type.foot.width));
    return polygonToOuter(frame, convexHull([...plates, ...pair.map((leg) => upper[leg]!)]));
  };
  return [hullOf(0), hullOf(2)];
}

/**
 * What each foot carries, N, in the order of `Footprint.feet`, of a reaction (N) that acts at `centre` along the top
 * from the stand's middle (m): the lever rule between the two leg frames at the floor, halved between the two legs of each.
 *
 * (F2) F∓ = ½·R·(½ ∓ c/(legSpacing + 2·height·tan(splay.across)))
 */
export function feetForces(
  type: StandType,
  height: number,
  reaction: number,
  centre: number,
): readonly [number, number, number, number] {
  const share = centre / footSpacing(type, height);
  const minus = (reaction * (0.5 - share)) / 2;
  const plus = (reaction * (0.5 + share)) / 2;
  return [minus, minus, plus, plus];
}
