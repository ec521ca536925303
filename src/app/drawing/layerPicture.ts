/** A layer of a drawing as a small picture: coarse lines, to be recognised and not measured. */

import { boundingBox, polygonArea } from "../../geometry";
import type { DrawingLayer } from "../../panels";
import type { Point } from "../../plan";
import { type Drawing, joinLoops } from "../../sheet";

/** A picture leaves out what is finer than this share of the whole drawing. */
const grain = 1 / 400;

/** A picture has at most so many points: a layer of hatching need not be drawn out. */
const mostPoints = 4000;

/** For the first guess at what is the outline, ends this near each other count as joined, as a share of the whole. */
const closing = 2e-3;

type Layer = Drawing["layers"][number];

/** The layers of a drawing as the import dialog shows them: those with the greatest loops first. */
export function layersOf({ layers }: Drawing): readonly DrawingLayer[] {
  const boxes = layers.map((layer) => boundingBox(layer.paths.flatMap(({ points }) => points)));
  const size = Math.max(
    ...([0, 1] as const).map(
      (axis) => Math.max(...boxes.map(({ most }) => most[axis])) - Math.min(...boxes.map(({ least }) => least[axis])),
    ),
  );
  const read = layers.map((layer, index) => ({
    name: layer.name,
    count: layer.paths.length,
    picture: pictureOf(layer, size * grain),
    least: boxes[index]!.least,
    most: boxes[index]!.most,
    area: greatestLoop(layer, size * closing),
  }));
  return read.sort((a, b) => b.area - a.area || a.name.localeCompare(b.name, "en", { numeric: true }));
}

/** A layer of more lines than this is hatching or text: no outline is guessed from it. */
const mostLines = 5000;

function greatestLoop({ paths }: Layer, tolerance: number): number {
  if (paths.length > mostLines || tolerance <= 0) return 0;
  const [greatest] = joinLoops(paths, tolerance).loops;
  return greatest === undefined ? 0 : polygonArea(greatest);
}

function pictureOf({ paths }: Layer, step: number): string {
  const digits = Math.max(0, 1 - Math.floor(Math.log10(step || 1)));
  const written = ([p, q]: Point): string => `${p.toFixed(digits)} ${q.toFixed(digits)}`;
  let left = mostPoints;
  const parts: string[] = [];
  for (const { points, closed } of paths) {
    if (left <= 0) break;
    const coarse = coarsened(points, step);
    left -= coarse.length;
    parts.push(`M${coarse.map(written).join("L")}${closed ? "Z" : ""}`);
  }
  return parts.join("");
}

/** First and last points, and between them those that lie a step from the one before. */
function coarsened(points: readonly Point[], step: number): readonly Point[] {
  let last = points[0]!;
  return points.filter((point, index) => {
    const stays =
      index === 0 || index === points.length - 1 || Math.hypot(point[0] - last[0], point[1] - last[1]) >= step;
    if (stays) last = point;
    return stays;
  });
}
