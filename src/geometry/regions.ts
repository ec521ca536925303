/**
 * Union, difference and intersection of polygons. The one file that knows the clipping library.
 *
 * The library works on whole numbers: coordinates are taken about the middle of what is clipped and rounded to the
 * clipping grid. All rings go in counter-clockwise, because non-zero filling is wrong on rings of mixed winding.
 */

import { Clipper64, ClipType, FillRule, type Path64, type PolyPath64, PolyTree64 } from "clipper2-ts";
import type { Point, Polygon } from "../plan";
import { clipToHalfPlanes, type HalfPlane } from "./halfplane";
import { boundingBox, counterClockwise, polygonArea } from "./polygon";
import { geometryTolerance } from "./tolerances";

/** A connected piece of the plane: its outer ring counter-clockwise, the rings of its holes clockwise, none closed. */
export interface Region {
  readonly outer: Polygon;
  readonly holes: readonly Polygon[];
}

/** m². */
export function regionsArea(regions: readonly Region[]): number {
  let area = 0;
  for (const { outer, holes } of regions) {
    area += polygonArea(outer) - holes.reduce((sum, hole) => sum + polygonArea(hole), 0);
  }
  return area;
}

/** All that lies in any of the polygons. */
export function union(polygons: readonly Polygon[]): Region[] {
  return clip(ClipType.Union, polygons, []);
}

/** What lies in any of the first and in none of the second. */
export function difference(first: readonly Polygon[], second: readonly Polygon[]): Region[] {
  const near = boxOf(first);
  return clip(
    ClipType.Difference,
    first,
    second.flatMap((polygon) => clipToHalfPlanes(polygon, near)),
  );
}

/** Half-planes of the box about the polygons, a little to spare: of long outlines only what is near is clipped. */
function boxOf(polygons: readonly Polygon[]): HalfPlane[] {
  const { least, most } = boundingBox(polygons.flat());
  const spare = (most[0] - least[0] + most[1] - least[1]) / 10;
  return [
    { normal: [-1, 0], offset: spare - least[0] },
    { normal: [1, 0], offset: spare + most[0] },
    { normal: [0, -1], offset: spare - least[1] },
    { normal: [0, 1], offset: spare + most[1] },
  ];
}

/** What lies in any of the first and in any of the second. */
export function intersection(first: readonly Polygon[], second: readonly Polygon[]): Region[] {
  return clip(ClipType.Intersection, first, second);
}

function clip(type: ClipType, subjects: readonly Polygon[], clips: readonly Polygon[]): Region[] {
  const { least, most } = boundingBox(subjects.flat());
  if (!(most[0] >= least[0])) return [];
  const middle: Point = [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2];
  const clipper = new Clipper64();
  clipper.addSubject(subjects.map((polygon) => toGrid(middle, polygon)));
  clipper.addClip(clips.map((polygon) => toGrid(middle, polygon)));
  const tree = new PolyTree64();
  clipper.execute(type, FillRule.NonZero, tree);
  return regionsIn(middle, tree);
}

function toGrid(middle: Point, polygon: Polygon): Path64 {
  return counterClockwise(polygon).map(([p, q]) => ({
    x: Math.round((p - middle[0]) / geometryTolerance.clippingGrid),
    y: Math.round((q - middle[1]) / geometryTolerance.clippingGrid),
  }));
}

function fromGrid(middle: Point, path: Path64): Polygon {
  return path.map(({ x, y }) => [
    middle[0] + x * geometryTolerance.clippingGrid,
    middle[1] + y * geometryTolerance.clippingGrid,
  ]);
}

/** The children of a hole are regions again. */
function regionsIn(middle: Point, parent: PolyPath64): Region[] {
  return children(parent).flatMap((outer) => [
    {
      outer: counterClockwise(fromGrid(middle, outer.poly ?? [])),
      holes: children(outer).map((hole) => [...counterClockwise(fromGrid(middle, hole.poly ?? []))].reverse()),
    },
    ...children(outer).flatMap((hole) => regionsIn(middle, hole)),
  ]);
}

function children(path: PolyPath64): PolyPath64[] {
  return Array.from({ length: path.count }, (_, index) => path.child(index));
}
