/** What a stand takes of zones, obstacles and other stands, and how near it comes to the work. */

import {
  areaOutside,
  difference,
  geometryTolerance,
  intersection,
  overlap,
  polygonToPolygon,
  regionsArea,
  sharedArea,
} from "../geometry";
import type { NamedPolygon, Polygon, WorkWindow } from "../plan";
import type { Footprint, SharedZone, WindowDistance } from "./answers";

/** Top and full-height leg frames: what of a stand takes room. */
export function bodyOf({ top, legHulls }: Footprint): readonly Polygon[] {
  return [top, ...legHulls];
}

/** Area that two sets of polygons share, m²; 0 where they only touch. */
export function areaShared(first: readonly Polygon[], second: readonly Polygon[]): number {
  const theyOverlap = first.some((one) => second.some((other) => overlap(one, other)));
  if (!theyOverlap) return 0;
  // Where a single pair is concerned the exact area is at hand; more than one must not be counted twice.
  if (first.length === 1 && second.length === 1) return sharedArea(first[0]!, second[0]!);
  return regionsArea(intersection(first, second));
}

/** Area of polygons that lies outside an outline, m²; 0 where they only touch it from inside. */
export function areaBeyond(polygons: readonly Polygon[], outline: Polygon): number {
  const outside = polygons.some((polygon) => areaOutside(polygon, outline) > geometryTolerance.sharedArea);
  return outside ? regionsArea(difference(polygons, [outline])) : 0;
}

/** The named zones of which the polygons take some area. */
export function zonesTaken(zones: readonly NamedPolygon[], polygons: readonly Polygon[]): SharedZone[] {
  return zones
    .map(({ name, polygon }) => ({ name, area: areaShared(polygons, [polygon]) }))
    .filter(({ area }) => area > 0);
}

/** Distance from a work window to a stand's body, both in the same frame. */
export function windowDistance(window: WorkWindow, body: readonly Polygon[]): WindowDistance {
  const distances = body.map((polygon) => polygonToPolygon(window.polygon, polygon).distance);
  return {
    name: window.name,
    distance: Math.min(...distances),
    clearance: window.clearance,
    area: areaShared(body, [window.polygon]),
  };
}
