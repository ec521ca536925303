/** Plane frames: how (s, t) becomes (x, y), and a stand's own directions become (s, t). Metres, degrees. */

import type { Placement, Point, Polygon, Pose } from "../plan";

/** A turn and a shift: local point p lies at origin + p₀·(cos, sin) + p₁·(−sin, cos). */
export interface Frame {
  readonly origin: Point;
  readonly cos: number;
  readonly sin: number;
}

/**
 * (cos, sin) of an angle in degrees, counter-clockwise from the first axis; exact at whole quarter turns, so that what
 * is drawn square stays square.
 */
export function directionOf(angleDegrees: number): Point {
  const quarter = angleDegrees / 90;
  if (Number.isInteger(quarter)) return quarterTurns[((quarter % 4) + 4) % 4]!;
  const angle = (angleDegrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

const quarterTurns: readonly Point[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];

/** The frame at `origin` turned by an angle in degrees. */
export function frameAt(origin: Point, angleDegrees: number): Frame {
  const [cos, sin] = directionOf(angleDegrees);
  return { origin, cos, sin };
}

/** Piece frame (s, t) in the bay frame (x, y): (x, y) = pose.xy + R(heading)·(s, t). */
export function pieceFrame(pose: Pose): Frame {
  return frameAt([pose.x, pose.y], pose.heading);
}

/**
 * A stand's own frame in the piece frame: the first axis is square to the top, (cos a, sin a), the second runs along
 * it, (−sin a, cos a); the origin is the stand's middle.
 */
export function standFrame(placement: Pick<Placement, "s" | "t" | "angle">): Frame {
  return frameAt([placement.s, placement.t], placement.angle);
}

/** A point given in `frame`, in the frame that `frame` stands in. */
export function toOuter(frame: Frame, [p, q]: Point): Point {
  return [frame.origin[0] + p * frame.cos - q * frame.sin, frame.origin[1] + p * frame.sin + q * frame.cos];
}

/** The inverse of `toOuter`. */
export function toInner(frame: Frame, [x, y]: Point): Point {
  const [dx, dy] = [x - frame.origin[0], y - frame.origin[1]];
  return [dx * frame.cos + dy * frame.sin, dy * frame.cos - dx * frame.sin];
}

/** A frame given inside another, in what the other stands in. */
export function frameWithin(outer: Frame, inner: Frame): Frame {
  return {
    origin: toOuter(outer, inner.origin),
    cos: outer.cos * inner.cos - outer.sin * inner.sin,
    sin: outer.sin * inner.cos + outer.cos * inner.sin,
  };
}

/** A polygon given in `frame`, in the frame that `frame` stands in. */
export function polygonToOuter(frame: Frame, polygon: Polygon): Polygon {
  return polygon.map((point) => toOuter(frame, point));
}

/** A rectangle about a point of `frame`, sides along its axes: `breadth` along the first, `length` along the second, m. */
export function rectangleIn(frame: Frame, middle: Point, breadth: number, length: number): Polygon {
  const [p, q] = middle;
  const corners: Polygon = [
    [p - breadth / 2, q - length / 2],
    [p + breadth / 2, q - length / 2],
    [p + breadth / 2, q + length / 2],
    [p - breadth / 2, q + length / 2],
  ];
  return polygonToOuter(frame, corners);
}
