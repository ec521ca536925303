/** Rows of the table that speak of tipping lines and of the least force that tips. */

import { sharedArea } from "../../../src/geometry";
import type { Polygon } from "../../../src/plan";
import type { Agreement } from "./agreement";
import type { ExpectedPart, ResultPart } from "./types";

export function compareTipping(a: Agreement, name: string, got: ResultPart, expected: ExpectedPart): void {
  const wanted = expected.tipping.edges;
  const edges = got.tipping.edges;
  const l = expected.to - expected.from;
  if (wanted.length === 0) {
    a.same(`${name} edges`, edges, []);
    return;
  }
  const polygon = (of: readonly { readonly from: readonly [number, number] }[]): Polygon => of.map((edge) => edge.from);
  if (edges.length < 3) {
    a.same(`${name} edges`, edges.length, wanted.length);
    return;
  }
  const shared = sharedArea(polygon(edges), polygon(wanted));
  const apart = area(polygon(edges)) + area(polygon(wanted)) - 2 * shared;
  a.holds(`${name} support polygon differs by ${apart} m²`, apart <= 1e-6);
  a.holds(`${name} support polygon is counter-clockwise`, signedArea(polygon(edges)) > 0);
  for (const edge of wanted) {
    const same = edges.find((one) => near(one.from, edge.from) && near(one.to, edge.to));
    const label = `${name} edge from (${edge.from}) to (${edge.to})`;
    if (same === undefined) {
      a.holds(`${label}: missing`, false);
      continue;
    }
    a.near(`${label} distance`, same.distance, edge.distance, 1e-6 * l);
    a.near(`${label} reserve`, same.reserve, edge.reserve, 1e-5 * Math.abs(edge.reserve ?? 0));
    a.near(`${label} margin`, same.margin, edge.margin, 1e-6 * ((edge.righting ?? 0) + (edge.overturning ?? 0)));
  }
  const least = expected.tipping.addedLoad;
  a.near(`${name} addedLoad`, got.tipping.addedLoad?.value ?? null, least?.value ?? null, 1e-5 * (least?.value ?? 0));
}

const near = (one: readonly [number, number], two: readonly [number, number]) =>
  Math.hypot(one[0] - two[0], one[1] - two[1]) < 1e-6;

/** Shoelace. */
function signedArea(ring: Polygon): number {
  return ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}
const area = (ring: Polygon) => Math.abs(signedArea(ring));
