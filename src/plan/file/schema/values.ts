/** Values that several parts of a plan file share: quantities, ids, dates, points and polygons. */

import type { NamedPolygon, Point, Polygon, TopMaterial } from "../../types";
import { found, type Issue, issue, shown } from "../refusal";
import { above0, any, atLeast0, list, number, object, type Rule, type Shape, text, textWhere } from "../shape";
import { faultIn, mostCorners } from "../simple";

export const metres = number("m", any);
export const positiveMetres = number("m", above0);
export const metresFrom0 = number("m", atLeast0);
export const newtons = number("N", any);
export const positiveNewtons = number("N", above0);
export const positivePascals = number("Pa", above0);
export const degrees = number("degrees", any);
export const topMaterials = ["steel", "hardwood", "uhmw-pe", "rubber"] as const satisfies readonly TopMaterial[];
export const idOf = <Id extends string>(what: string): Shape<Id> =>
  textWhere<Id>(`the id of ${what}, a text that is not empty`, (value) => value !== "");

export const date = textWhere<string>("a date that exists, as YYYY-MM-DD", (value) => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(value);
  if (parts === null) return false;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const midnight = new Date(0);
  midnight.setUTCFullYear(year, month - 1, day);
  return midnight.getUTCMonth() === month - 1 && midnight.getUTCDate() === day;
});

/** No id twice; `pathOfId` leads from an item to its id. */
export const isUnique =
  <Item>(idIn: (item: Item) => string, pathOfId: readonly string[]): Rule<readonly Item[]> =>
  (items) => {
    const seen = new Set<string>();
    for (const [index, item] of items.entries()) {
      const id = idIn(item);
      if (seen.has(id))
        return issue(found(`the id ${shown(id)} a second time in one list`, "an id of its own"), index, ...pathOfId);
      seen.add(id);
    }
    return null;
  };
export const ownIds = isUnique<{ readonly id: string }>((item) => item.id, ["id"]);

export const pair = (item: Shape<number>, unit: string): Shape<readonly [number, number]> =>
  list(`a list of 2 numbers, in ${unit}`, item, { least: 2, most: 2 });
export const stretch = { from: metresFrom0, to: metresFrom0 };

export const point: Shape<Point> = list("a point, a list of 2 numbers in m", metres, { least: 2, most: 2 });

function isSimple(polygon: Polygon): Issue | null {
  const fault = faultIn(polygon);
  if (fault === null) return null;
  const [one, other] = fault.which;
  return fault.of === "corners"
    ? issue(`Found the points ${one} and ${other} (counted from 0) at one place; right would be each point once.`)
    : issue(
        `Found the edges that begin at the points ${one} and ${other} (counted from 0) crossing or touching each other; right would be an outline that encloses one area.`,
      );
}
export const polygon: Shape<Polygon> = list(`a polygon, a list of 3 to ${mostCorners} points`, point, {
  least: 3,
  most: mostCorners,
  rule: isSimple,
});
export const namedPolygon = object<NamedPolygon>("a zone, an object", { name: text, polygon });
