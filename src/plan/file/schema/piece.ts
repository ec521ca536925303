/** The shape of the piece: outline, stiffness, masses, zones, section. */

import type { MassDocument, PieceDocument } from "../../document";
import type {
  MassId,
  NamedPolygon,
  Polygon,
  SectionSegment,
  SectionStrength,
  StiffnessSegment,
  UndersideSegment,
  WeightBasis,
  WorkWindow,
} from "../../types";
import { found, issue } from "../refusal";
import {
  above0,
  atLeast0,
  either,
  type Fields,
  list,
  number,
  object,
  oneOf,
  optional,
  orNull,
  type Rule,
  type Shape,
  text,
} from "../shape";
import {
  degrees,
  idOf,
  metres,
  metresFrom0,
  namedPolygon,
  ownIds,
  pair,
  polygon,
  positiveMetres,
  positiveNewtons,
  positivePascals,
  stretch,
} from "./values";

/** Both kinds of mass in one: which of the keys belong to which is the rule's matter. */
interface EitherMass {
  readonly id: MassId;
  readonly name: string;
  readonly kind: MassDocument["kind"];
  readonly from?: number;
  readonly to?: number;
  readonly massPerLength?: readonly [number, number];
  readonly s?: number;
  readonly t: number;
  readonly z: number;
  readonly mass?: number;
  readonly uncertainty?: number;
  readonly basis?: WeightBasis | null;
  readonly centreWithin?: { readonly s: number; readonly t: number };
}
const keysOfLine = ["from", "to", "massPerLength"] as const;
const keysOfPoint = ["s", "mass"] as const;

const massFields: Fields<EitherMass> = {
  id: idOf("a mass"),
  name: text,
  kind: oneOf("line", "point"),
  from: optional(metresFrom0),
  to: optional(metresFrom0),
  massPerLength: optional(pair(number("kg/m", atLeast0), "kg/m")),
  s: optional(metresFrom0),
  t: metres,
  z: metres,
  mass: optional(number("kg", atLeast0)),
  uncertainty: optional(number("", { words: " of 0 or more and below 1", holds: (value) => value >= 0 && value < 1 })),
  basis: optional(orNull(oneOf("scale", "hook", "maker", "model", "calculated", "guess"))),
  centreWithin: optional(object("an object with s and t", { s: metresFrom0, t: metresFrom0 })),
};

const massRule: Rule<EitherMass> = (mass) => {
  const [own, foreign] = mass.kind === "line" ? [keysOfLine, keysOfPoint] : [keysOfPoint, keysOfLine];
  for (const key of own)
    if (mass[key] === undefined) return issue(found("no such key", `it, as every ${mass.kind} mass has it`), key);
  for (const key of mass.kind === "line" ? [...foreign, "centreWithin" as const] : foreign)
    if (mass[key] !== undefined)
      return issue(found(`the unknown key "${key}"`, `none, as a ${mass.kind} mass has no such key`), key);
  if (mass.basis === "guess" && mass.uncertainty === undefined)
    return issue(found("no such key", "an uncertainty, as the weight is a guess"), "uncertainty");
  return null;
};

const stiffnessSegment = object<StiffnessSegment>("a segment, an object", {
  ...stretch,
  EI: number("N·m²", above0),
  kGA: orNull(positiveNewtons),
  GJ: orNull(number("N·m²", above0)),
});

const sectionFields: Fields<SectionStrength> = {
  depth: optional(positiveMetres),
  flangeWidth: optional(positiveMetres),
  flangeThickness: optional(positiveMetres),
  webThickness: optional(positiveMetres),
  fillet: optional(metresFrom0),
  sectionModulus: optional(number("m³", above0)),
  shearArea: optional(number("m²", above0)),
  radiusOfGyrationY: optional(positiveMetres),
  webs: optional(number("", above0)),
  yield: optional(positivePascals),
  E: optional(positivePascals),
};
const section = object<SectionStrength>("a section, an object", sectionFields);
const sectionSegment = object<SectionSegment>("a section, an object", { ...stretch, ...sectionFields });

export const piece = object<PieceDocument>("the piece, an object", {
  name: text,
  ends: optional(object("an object with datum and far", { datum: text, far: text })),
  pose: optional(object("an object with x, y and heading", { x: metres, y: metres, heading: degrees })),
  outline: polygon,
  depth: positiveMetres,
  stiffness: either(oneOf("rigid"), list<readonly StiffnessSegment[]>("a list of segments", stiffnessSegment)),
  underside: optional(
    list<readonly UndersideSegment[]>(
      "a list of segments",
      object("a segment, an object", { ...stretch, z: pair(metres, "m") }),
    ),
  ),
  masses: list<readonly MassDocument[]>(
    "a list of masses",
    object("a mass, an object", massFields, massRule) as Shape<MassDocument>,
    {
      rule: ownIds,
    },
  ),
  restZones: optional(orNull(list<readonly Polygon[]>("a list of at least one polygon", polygon, { least: 1 }))),
  noRestZones: optional(list<readonly NamedPolygon[]>("a list of zones", namedPolygon)),
  workWindows: optional(
    list<readonly WorkWindow[]>(
      "a list of windows",
      object("a window, an object", { name: text, polygon, clearance: metresFrom0 }),
    ),
  ),
  section: optional(orNull(either(section, list<readonly SectionSegment[]>("a list of sections", sectionSegment)))),
});
