/** The shape of the criteria that a plan changes. */

import { type CriterionKey, criteriaTable } from "../../criteria";
import { type CriteriaChanges, type FindingCode, findingCodes, type TopMaterial } from "../../types";
import {
  above0,
  atLeast0,
  list,
  number,
  type Optional,
  object,
  optional,
  orNull,
  type Shape,
  textWhere,
} from "../shape";
import { metresFrom0 } from "./values";

type ByMaterial = Partial<Readonly<Record<TopMaterial, number>>>;

const byMaterial = (unit: string): Shape<ByMaterial> => {
  const each = optional(number(unit, atLeast0));
  return object<ByMaterial>("an object with numbers by material", {
    steel: each,
    hardwood: each,
    "uhmw-pe": each,
    rubber: each,
  });
};

const codes: ReadonlySet<string> = new Set(findingCodes);
const findingCode = textWhere<FindingCode>(`the code of a check, such as "slab" or "sag"`, (value) => codes.has(value));

/** The shape of a criterion whose value is a single number, in the unit that the table gives. */
const criterion = (key: CriterionKey, range = atLeast0): Optional<number> =>
  optional(number(criteriaTable[key].unit, range));

export const criteria = object<CriteriaChanges>("an object with the criteria that differ from their defaults", {
  levelTolerance: criterion("levelTolerance"),
  topTilt: criterion("topTilt"),
  straightness: criterion("straightness"),
  setDownFactor: criterion("setDownFactor", above0),
  tipReserve: criterion("tipReserve"),
  tipReserveUnder: criterion("tipReserveUnder"),
  cgMargin: criterion("cgMargin"),
  tiltLimit: criterion("tiltLimit"),
  personLoad: criterion("personLoad"),
  horizontalFraction: criterion("horizontalFraction"),
  pushLeast: criterion("pushLeast"),
  slideReserve: criterion("slideReserve"),
  closeFraction: criterion("closeFraction", {
    words: " above 0 and not over 1",
    holds: (value) => value > 0 && value <= 1,
  }),
  tripHeight: criterion("tripHeight"),
  toeClearance: criterion("toeClearance"),
  headroom: criterion("headroom"),
  walkwayWidth: criterion("walkwayWidth"),
  friction: optional(byMaterial("")),
  floorFriction: criterion("floorFriction"),
  bearingPressure: optional(byMaterial("Pa")),
  allowableStressFactor: criterion("allowableStressFactor"),
  sagLimit: optional(orNull(metresFrom0)),
  slabFactor: criterion("slabFactor"),
  require: optional(list<readonly FindingCode[]>("a list of codes of checks", findingCode)),
});
