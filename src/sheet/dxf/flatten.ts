/** The entities of a drawing, blocks within blocks included, as paths of points in the drawing's own plane. */

import type { Point } from "../../plan";
import { arcPoints, polylinePoints, splinePoints, sweepBetween } from "./curves";
import type { DrawingBlock, DrawingEntity } from "./entities";

/** A run of points on one layer, in drawing units; closed where the last point is the first again. */
export interface DrawingPath {
  readonly layer: string;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** x' = a·x + c·y + e, y' = b·x + d·y + f. */
type Transform = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const identity: Transform = [1, 0, 0, 1, 0, 0];
/** Blocks may stand in blocks so deep; a block that holds itself ends here. */
const deepestBlock = 24;
/** More points than this are not an outline that anybody wants. */
export const mostPoints = 2_000_000;
/** An insert's rows and columns are read up to so many. */
const mostRows = 1_000;

/** outer ∘ inner. */
function compose([a, b, c, d, e, f]: Transform, [g, h, i, j, k, l]: Transform): Transform {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function apply([a, b, c, d, e, f]: Transform, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** What was drawn from below (extrusion 0, 0, −1) has its x axis turned round (DXF reference, "Object coordinate systems"). */
function sideOf(entity: DrawingEntity): Transform {
  const z = entity.extrusionDirection?.z ?? entity.extrusionDirectionZ ?? 1;
  return z < 0 ? [-1, 0, 0, 1, 0, 0] : identity;
}

export interface Flattened {
  readonly paths: readonly DrawingPath[];
  /** Kinds of entities that carry no outline here, or names of blocks that are not in the file. */
  readonly leftOut: readonly string[];
}

/** Flattens what stands in model space. Entities of a block on layer 0 take the layer of the insert. */
export function flatten(entities: readonly DrawingEntity[], blocks: Readonly<Record<string, DrawingBlock>>): Flattened {
  const paths: DrawingPath[] = [];
  const leftOut = new Set<string>();
  let points = 0;

  function visit(list: readonly DrawingEntity[], at: Transform, layerOfInsert: string | null, depth: number): void {
    for (const entity of list) {
      if (entity.inPaperSpace === true || entity.visible === false || points > mostPoints) continue;
      const own = entity.layer ?? "0";
      const layer = own === "0" && layerOfInsert !== null ? layerOfInsert : own;
      if (entity.type === "INSERT") {
        const block = blocks[entity.name];
        if (block === undefined || depth >= deepestBlock) leftOut.add(`block ${entity.name}`);
        else
          for (const place of placesOf(entity, block))
            visit(block.entities ?? [], compose(at, place), layer, depth + 1);
        continue;
      }
      const drawn = pointsOf(entity);
      if (drawn === null) {
        leftOut.add((entity as { type: string }).type);
        continue;
      }
      const transform = compose(at, drawn.inWorld ? identity : sideOf(entity));
      points += drawn.points.length;
      if (drawn.points.length > 1)
        paths.push({ layer, points: drawn.points.map((point) => apply(transform, point)), closed: drawn.closed });
    }
  }

  visit(entities, identity, null, 0);
  return { paths, leftOut: [...leftOut].sort() };
}

/** Where an insert puts its block: once, or as an array of rows and columns. */
function placesOf(insert: DrawingEntity & { readonly type: "INSERT" }, block: DrawingBlock): Transform[] {
  const turn = ((insert.rotation ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [x, y] = [insert.xScale ?? 1, insert.yScale ?? 1];
  const base = block.position ?? { x: 0, y: 0 };
  const places: Transform[] = [];
  for (let row = 0; row < countOf(insert.rowCount); row += 1)
    for (let column = 0; column < countOf(insert.columnCount); column += 1) {
      const [right, up] = [column * (insert.columnSpacing ?? 0), row * (insert.rowSpacing ?? 0)];
      const rotated: Transform = [cos, sin, -sin, cos, insert.position.x, insert.position.y];
      const scaled: Transform = [x, 0, 0, y, right - x * base.x, up - y * base.y];
      places.push(compose(sideOf(insert), compose(rotated, scaled)));
    }
  return places;
}

function countOf(count = 1): number {
  return Math.min(mostRows, Math.max(1, count));
}

/** Points of an entity; `inWorld` where the format gives them in world coordinates whatever its extrusion. */
function pointsOf(
  entity: DrawingEntity,
): { readonly points: Point[]; readonly closed: boolean; readonly inWorld: boolean } | null {
  switch (entity.type) {
    case "LINE":
      return { points: polylinePoints(entity.vertices, false), closed: false, inWorld: true };
    case "LWPOLYLINE":
    case "POLYLINE": {
      const closed = entity.shape === true;
      return { points: polylinePoints(entity.vertices, closed), closed, inWorld: false };
    }
    case "CIRCLE":
    case "ARC": {
      const { center, radius } = entity;
      const [start, sweep] =
        entity.type === "CIRCLE"
          ? [0, 2 * Math.PI]
          : [entity.startAngle, sweepBetween(entity.startAngle, entity.endAngle)];
      const points = arcPoints([center.x, center.y], [radius, 0], [0, radius], start, sweep);
      return { points, closed: entity.type === "CIRCLE", inWorld: false };
    }
    case "ELLIPSE": {
      const { center, majorAxisEndPoint: major, axisRatio, startAngle = 0, endAngle = 2 * Math.PI } = entity;
      // The minor axis is the extrusion direction × the major axis.
      const hand = (entity.extrusionDirection?.z ?? entity.extrusionDirectionZ ?? 1) < 0 ? -axisRatio : axisRatio;
      const sweep = sweepBetween(startAngle, endAngle);
      const minor: Point = [-hand * major.y, hand * major.x];
      const points = arcPoints([center.x, center.y], [major.x, major.y], minor, startAngle, sweep);
      return { points, closed: sweep > 2 * Math.PI - 1e-9, inWorld: true };
    }
    case "SPLINE": {
      const at = ({ x, y }: { readonly x: number; readonly y: number }): Point => [x, y];
      const control = (entity.controlPoints ?? []).map(at);
      const points =
        control.length > 0
          ? splinePoints(entity.degreeOfSplineCurve, entity.knotValues ?? [], control)
          : (entity.fitPoints ?? []).map(at);
      return { points, closed: entity.closed === true, inWorld: true };
    }
    default:
      return null;
  }
}
