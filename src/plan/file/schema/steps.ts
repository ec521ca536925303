/** The shapes of layouts and of the steps that use them. */

import type { LayoutDocument, PlacementDocument, StepDocument } from "../../document";
import type { Load, MassId, Reading } from "../../types";
import { found, issue, shown } from "../refusal";
import { any, atLeast0, list, number, object, oneOf, optional, orNull, type Rule, text, truth } from "../shape";
import { degrees, idOf, isUnique, metres, metresFrom0, newtons, pair, positiveMetres } from "./values";

/** Greatest number of stands in one layout. */
const mostPlacements = 200;

const placement = object<PlacementDocument>("a placement, an object", {
  stand: idOf("a stand"),
  s: metres,
  t: metres,
  angle: optional(degrees),
  height: positiveMetres,
  shim: optional(metresFrom0),
  levelTolerance: optional(metresFrom0),
});

export const layout = object<LayoutDocument>("a layout, an object", {
  id: idOf("a layout"),
  name: text,
  placements: list<readonly PlacementDocument[]>(
    `a list of at most ${mostPlacements} placements, each of another stand`,
    placement,
    {
      most: mostPlacements,
      rule: isUnique((item) => item.stand, ["stand"]),
    },
  ),
});

const load = object<Load>("a load, an object", {
  name: text,
  s: metresFrom0,
  t: metres,
  z: metres,
  force: list("a list of 3 numbers, in N along s, t and z", newtons, { least: 3, most: 3 }),
});

const readingRule: Rule<Reading> = ({ stand, kind, value }) => {
  if (kind === "weight" && stand !== null)
    return issue(found(shown(stand), "null, as a weight is that of the whole piece"), "stand");
  if (kind !== "weight" && stand === null)
    return issue(found("null", `the id of the stand where the ${kind} was read`), "stand");
  if (kind !== "height" && value < 0) return issue(found(shown(value), `a ${kind} of 0 or more`), "value");
  return null;
};
const reading = object<Reading>(
  "a reading, an object",
  {
    stand: orNull(idOf("a stand")),
    kind: oneOf("gap", "reaction", "height", "weight"),
    value: number("m or N", any),
    tolerance: number("m or N", atLeast0),
  },
  readingRule,
);

export const step = object<StepDocument>("a step, an object", {
  id: idOf("a step"),
  name: text,
  layout: idOf("a layout"),
  absent: optional(
    list<readonly MassId[]>("a list of ids of masses", idOf("a mass"), { rule: isUnique((id) => id, []) }),
  ),
  parts: optional(
    orNull(
      list<readonly (readonly [number, number])[]>("a list of at least one part", pair(metresFrom0, "m"), { least: 1 }),
    ),
  ),
  bow: optional(orNull(metresFrom0)),
  loads: optional(list<readonly Load[]>("a list of loads", load)),
  peopleUnder: optional(truth),
  setDown: optional(truth),
  craneHolds: optional(truth),
  chocked: optional(truth),
  braced: optional(truth),
  readings: optional(list<readonly Reading[]>("a list of readings", reading)),
});
