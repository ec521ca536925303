/** The shapes of stand types, and of the stands of the register. */

import type { StandDocument, StandTypeDocument } from "../../document";
import { found, issue, shown } from "../refusal";
import { above0, atLeast0, number, object, oneOf, optional, orNull, type Rule, text, truth } from "../shape";
import { date, idOf, metres, metresFrom0, positiveMetres, positiveNewtons, topMaterials } from "./values";

/** Greatest stiffness of a stand, N/m. */
const stiffest = 1e10;
/** Degrees; a leg splays by less. */
const widestSplay = 60;

const standTypeRule: Rule<StandTypeDocument> = ({ height, legSpacing, top, legs, splay }) => {
  if (height.max < height.min)
    return issue(found(shown(height.max), `at least height.min, ${height.min} m`), "height", "max");
  if (legSpacing > top.length)
    return issue(found(shown(legSpacing), `at most top.length, ${top.length} m`), "legSpacing");
  for (const way of ["along", "across"] as const)
    if (legs === "vertical" && splay[way] !== 0)
      return issue(found(shown(splay[way]), "0, as the legs are vertical"), "splay", way);
  return null;
};

const splay = number("degrees", {
  words: ` of 0 or more and below ${widestSplay}`,
  holds: (value) => value >= 0 && value < widestSplay,
});

export const standType = object<StandTypeDocument>(
  "a stand type, an object",
  {
    id: idOf("a stand type"),
    name: text,
    legs: oneOf("a-frame", "vertical"),
    height: object("an object with min, max and increment", {
      min: positiveMetres,
      max: positiveMetres,
      increment: metresFrom0,
    }),
    top: object("an object with length, width and material", {
      length: positiveMetres,
      width: positiveMetres,
      material: oneOf(...topMaterials),
    }),
    legSpacing: positiveMetres,
    splay: object("an object with along and across", { along: splay, across: splay }),
    foot: object("an object with length and width", { length: positiveMetres, width: positiveMetres }),
    ratedLoad: optional(orNull(positiveNewtons)),
    ratedLoadCentre: optional(orNull(positiveNewtons)),
    designFactor: optional(orNull(number("", above0))),
    ratedForWorkUnder: optional(orNull(truth)),
    marking: optional(text),
    stiffness: optional(
      orNull(
        number("N/m", {
          words: ` above 0 and not over ${stiffest}`,
          holds: (value) => value > 0 && value <= stiffest,
        }),
      ),
    ),
    selfMass: number("kg", atLeast0),
    casters: optional(orNull(object("an object with retractLoad", { retractLoad: positiveNewtons }))),
    liftingPoints: optional(truth),
  },
  standTypeRule,
);

export const stand = object<StandDocument>("a stand, an object", {
  id: idOf("a stand"),
  type: idOf("a stand type"),
  condition: oneOf("in-service", "inspect", "out-of-service"),
  lastInspected: optional(orNull(date)),
  heightOffset: optional(metres),
});
