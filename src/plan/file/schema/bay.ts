/** The shape of the bay: floor, obstacles, walkways, slab. */

import type { BayDocument, SlabDocument, WalkwayDocument } from "../../document";
import type { NamedPolygon, Point } from "../../types";
import { above0, any, list, number, object, optional, orNull, type Shape, text } from "../shape";
import { namedPolygon, point, polygon, positiveMetres, positivePascals } from "./values";

const walkway = object<WalkwayDocument>("a walkway, an object", {
  name: text,
  from: point,
  to: point,
  width: optional(positiveMetres),
  lane: optional(orNull(polygon)),
});

const joint: Shape<readonly [Point, Point]> = list("a joint, a list of 2 points", point, { least: 2, most: 2 });
const slab = object<SlabDocument>("a slab, an object", {
  thickness: positiveMetres,
  compressiveStrength: positivePascals,
  subgradeModulus: number("Pa/m", above0),
  joints: optional(orNull(list<readonly (readonly [Point, Point])[]>("a list of joints", joint))),
});

export const bay = object<BayDocument>("a bay, an object", {
  floor: object("an object with slope", {
    slope: list<readonly [number, number]>("a list of 2 numbers, the rise per metre in x and y", number("m/m", any), {
      least: 2,
      most: 2,
    }),
  }),
  outline: polygon,
  obstacles: optional(list<readonly NamedPolygon[]>("a list of obstacles", namedPolygon)),
  noFootZones: optional(list<readonly NamedPolygon[]>("a list of zones", namedPolygon)),
  walkways: optional(list<readonly WalkwayDocument[]>("a list of walkways", walkway)),
  slab: optional(orNull(slab)),
});
