/** A stand as its legs, splay and height make it: outlines in m, two views to one scale, floor at y = 0, up positive. */

import type { Point, StandType } from "../../plan";

export interface StandView {
  /** Least and greatest x, m. */
  readonly from: number;
  readonly to: number;
  readonly top: readonly [Point, Point, Point, Point];
  /** Middle lines of the legs, from the top down to the floor. */
  readonly legs: readonly (readonly [Point, Point])[];
  readonly feet: readonly (readonly [Point, Point])[];
  readonly braces: readonly (readonly [Point, Point])[];
}

export interface StandViews {
  readonly height: number;
  /** Looking square to the top: its length, the two leg frames. */
  readonly front: StandView;
  /** Looking along the top: its width, the splay of one frame. */
  readonly side: StandView;
}

const radians = Math.PI / 180;
/** Share of the height that the drawn beam of the top takes: only so that it can be seen. */
const topDepthShare = 0.08;
/** Height of the drawn brace, as a share of the height. */
const braceShare = 0.35;

/**
 * Front: frames at ±legSpacing/2, feet at legSpacing/2 + height·tan(across). Side: legs leave at ±width/2 and reach
 * the floor at width/2 + height·tan(along).
 */
export function standViews(type: StandType, height: number): StandViews {
  const { top, legSpacing, splay, foot } = type;
  return {
    height,
    front: view(top.length / 2, legSpacing / 2, height * Math.tan(splay.across * radians), foot.width / 2, height),
    side: view(top.width / 2, top.width / 2, height * Math.tan(splay.along * radians), foot.length / 2, height),
  };
}

/** A view: half the top's extent, where the legs leave it, how far they run out, half a foot plate. */
function view(halfTop: number, leave: number, run: number, halfFoot: number, height: number): StandView {
  const under = height * (1 - topDepthShare);
  const reach = Math.max(halfTop, leave + run + halfFoot);
  const legs = [-1, 1].map((side) => [
    [side * leave, under] as const,
    [side * (leave + run), 0] as const,
  ]) as unknown as readonly (readonly [Point, Point])[];
  const across = height * braceShare;
  const at = leave + run * (1 - across / under);
  return {
    from: -reach,
    to: reach,
    top: [
      [-halfTop, under],
      [halfTop, under],
      [halfTop, height],
      [-halfTop, height],
    ],
    legs,
    feet: [-1, 1].map((side): readonly [Point, Point] => [
      [side * (leave + run) - halfFoot, 0],
      [side * (leave + run) + halfFoot, 0],
    ]),
    braces: [
      [
        [-at, across],
        [at, across],
      ],
    ],
  };
}
