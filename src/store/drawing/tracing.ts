/** A picture under the plan view to draw after: where it lies, and how two points and a length scale it. Bay frame, m. */

import { frameAt, toInner, toOuter } from "../../geometry";
import type { Point } from "../../plan";

/** How a picture lies in the bay. */
export interface PicturePlace {
  /** Where its lower left corner lies. */
  readonly x: number;
  readonly y: number;
  /** Degrees, counter-clockwise. */
  readonly angle: number;
  readonly metresAPixel: number;
}

/** A help for drawing: kept beside the plan on this device, never in the plan file. */
export interface TracedPicture extends PicturePlace {
  /** The file it came from. */
  readonly name: string;
  /** What is drawn. */
  readonly image: CanvasImageSource;
  /** Black lines on white turned round, for the dark theme; null where it is a photograph. */
  readonly negative: CanvasImageSource | null;
  readonly width: number;
  readonly height: number;
  /** 0 = not to be seen, 1 = as it is. */
  readonly strength: number;
  readonly shown: boolean;
  /** Whether somebody has given a length: before that its size is a guess. */
  readonly scaled: boolean;
}

/** A picture's own point (px from its lower left corner, y up) in the bay. */
export function pictureToBay({ x, y, angle, metresAPixel }: PicturePlace, [i, j]: Point): Point {
  return toOuter(frameAt([x, y], angle), [i * metresAPixel, j * metresAPixel]);
}

/** The inverse of `pictureToBay`. */
export function bayToPicture({ x, y, angle, metresAPixel }: PicturePlace, point: Point): Point {
  const [p, q] = toInner(frameAt([x, y], angle), point);
  return [p / metresAPixel, q / metresAPixel];
}

/** The line between the two points is laid along an axis of the bay, or left as it lies. */
export type LineUp = "as it lies" | "along x" | "along y";

/**
 * The place that makes the distance of two points of the bay, as the picture lies, `length`. The first point stays
 * where it is.
 */
export function scaledPlace<Place extends PicturePlace>(
  picture: Place,
  [first, second]: readonly [Point, Point],
  length: number,
  lineUp: LineUp = "as it lies",
): Place {
  const [d0, d1] = [second[0] - first[0], second[1] - first[1]];
  const factor = length / Math.hypot(d0, d1);
  const lies = (Math.atan2(d1, d0) * 180) / Math.PI;
  const turn = lineUp === "as it lies" ? 0 : nearestTurn(lies, lineUp === "along x" ? 0 : 90);
  const [x, y] = toOuter(frameAt(first, turn), [(picture.x - first[0]) * factor, (picture.y - first[1]) * factor]);
  return { ...picture, x, y, angle: picture.angle + turn, metresAPixel: picture.metresAPixel * factor };
}

/** The least turn, degrees, that lays a line at angle `lies` along an axis at angle `axis`, whichever way round. */
function nearestTurn(lies: number, axis: number): number {
  const off = axis - lies;
  return off - 180 * Math.round(off / 180);
}

/** Turns a picture by quarter turns about its middle. */
export function turnedPlace(picture: TracedPicture, quarterTurns: number): TracedPicture {
  const middle: Point = [picture.width / 2, picture.height / 2];
  const before = pictureToBay(picture, middle);
  const turned = { ...picture, angle: picture.angle + 90 * quarterTurns };
  const after = pictureToBay(turned, middle);
  return { ...turned, x: picture.x + before[0] - after[0], y: picture.y + before[1] - after[1] };
}
