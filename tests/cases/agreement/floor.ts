/** Rows of the table that speak of the floor. */

import { footprintOf, standInBay, tripHulls } from "../../../src/floor";
import { pieceFrame, pointToPolygon, pointToSegment, polygonToOuter } from "../../../src/geometry";
import type { LayoutId, Plan, Point } from "../../../src/plan";
import { criteriaOf, layoutOf, standOf, typeOf } from "../../../src/plan";
import type { Agreement } from "./agreement";
import type { Expected, ResultJson } from "./types";

type Ring = readonly (readonly [number, number])[];

export function compareFloor(a: Agreement, plan: Plan, got: ResultJson, expected: Expected): void {
  const layouts = Object.entries(expected.floor);
  a.same(
    "floor layouts",
    got.floor.map(({ layout }) => layout),
    layouts.map(([layout]) => layout),
  );
  for (const [layout, floor] of layouts) {
    const answer = got.floor.find((one) => one.layout === layout);
    if (answer === undefined) continue;
    a.same(
      `floor ${layout} stands`,
      answer.tripZones.map(({ stand }) => stand),
      Object.keys(floor.tripZones),
    );
    for (const zone of answer.tripZones) {
      const wanted = floor.tripZones[zone.stand];
      if (wanted === undefined) continue;
      const name = `floor ${layout} trip zone of ${zone.stand}`;
      const areaTolerance = 5e-3 * wanted.area + 1e-4;
      a.near(`${name} area`, zone.area, wanted.area, areaTolerance);
      a.near(`${name} reach`, zone.reach, wanted.reach, 2e-3);
      const drawn = zone.polygons.reduce(
        (sum, { outer, holes }) => sum + area(outer) - holes.reduce((inner, hole) => inner + area(hole), 0),
        0,
      );
      a.near(`${name} area of its polygons`, drawn, wanted.area, areaTolerance);
      for (const ring of zone.polygons.flatMap(({ outer, holes }) => [outer, ...holes])) {
        a.holds(`${name}: rings are not closed`, JSON.stringify(ring[0]) !== JSON.stringify(ring.at(-1)));
      }
    }
    a.same(
      `floor ${layout} walkways`,
      answer.walkways.map(({ name }) => name),
      Object.keys(floor.walkways),
    );
    for (const walkway of answer.walkways) {
      const wanted = floor.walkways[walkway.name];
      if (wanted === undefined) continue;
      const name = `floor ${layout} walkway ${walkway.name}`;
      a.near(`${name} clearWidth`, walkway.clearWidth, wanted.clearWidth, 2.2e-3);
      a.near(`${name} withoutLegs`, walkway.withoutLegs, wanted.withoutLegs, 2.2e-3);
      a.near(`${name} required`, walkway.required, wanted.required, 0);
      if (wanted.clearWidth === 0) {
        a.same(`${name} blocked`, [walkway.clearWidth, walkway.narrowestAt], [0, null]);
      } else {
        a.both(`${name} narrowestAt`, walkway.narrowestAt, true, (at) => {
          a.near(`${name} clearance at narrowestAt`, clearanceAt(plan, layout, at), walkway.clearWidth, 6e-3);
        });
      }
    }
  }
}

/** Shoelace. */
function area(ring: Ring): number {
  const twice = ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** The clearance at a point: twice the distance to the nearest of everything that stands in the way. */
function clearanceAt(plan: Plan, layout: string, at: Point): number {
  const bay = plan.bay!;
  const criteria = criteriaOf(plan);
  const toBorder = bay.outline.map((from, index) => {
    return pointToSegment(at, from, bay.outline[(index + 1) % bay.outline.length]!).distance;
  });
  const piece = polygonToOuter(pieceFrame(plan.piece.pose), plan.piece.outline);
  const solid = [...bay.obstacles.map(({ polygon }) => polygon), piece].map(
    (ring) => pointToPolygon(at, ring).distance,
  );
  const stands = layoutOf(plan, layout as LayoutId).placements.flatMap((placement) => {
    const type = typeOf(plan, placement.stand);
    const frame = standInBay(placement, plan.piece.pose);
    const top = placement.height + placement.shim + standOf(plan, placement.stand).heightOffset;
    const low = top < criteria.headroom ? [footprintOf(type, placement.height, frame).top] : [];
    return [
      ...low.map((ring) => pointToPolygon(at, ring).distance),
      ...tripHulls(type, placement.height, frame, criteria).map(
        (hull) => pointToPolygon(at, hull).distance - criteria.toeClearance,
      ),
    ];
  });
  return 2 * Math.min(...toBorder, ...solid, ...stands);
}
