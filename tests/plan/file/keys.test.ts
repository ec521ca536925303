/** Which keys there must be, may be and must not be, and of what type: the fine print of the plan format. */

import { describe, expect, it } from "vitest";
import { read } from "../../../src/plan";
import { accepted, refusalOf, refused, spoilt } from "./spoilt";
import { wholePlan } from "./wholePlan";

const under = (object: string, ...keys: readonly string[]) => keys.map((key) => `${object}.${key}`);

const required: readonly string[] = [
  ..."format version title piece standTypes stands layouts steps".split(" "),
  ...under("piece", "name", "outline", "depth", "stiffness", "masses"),
  ...under("piece.ends", "datum", "far"),
  ...under("piece.pose", "x", "y", "heading"),
  ...under("piece.stiffness[0]", "from", "to", "EI", "kGA", "GJ"),
  ...under("piece.underside[1]", "from", "to", "z"),
  ...under("piece.masses[0]", "id", "name", "kind", "from", "to", "massPerLength", "t", "z"),
  ...under("piece.masses[1]", "id", "name", "kind", "s", "t", "z", "mass"),
  ...under("piece.masses[1].centreWithin", "s", "t"),
  ...under("piece.noRestZones[0]", "name", "polygon"),
  ...under("piece.workWindows[0]", "name", "polygon", "clearance"),
  ...under("piece.section[0]", "from", "to"),
  ...under("standTypes[0]", "id", "name", "legs", "height", "top", "legSpacing", "splay", "foot", "selfMass"),
  ...under("standTypes[0].height", "min", "max", "increment"),
  ...under("standTypes[0].top", "length", "width", "material"),
  ...under("standTypes[0].splay", "along", "across"),
  ...under("standTypes[0].foot", "length", "width"),
  ...under("standTypes[0].casters", "retractLoad"),
  ...under("stands[0]", "id", "type", "condition"),
  ...under("layouts[0]", "id", "name", "placements"),
  ...under("layouts[0].placements[1]", "stand", "s", "t", "height"),
  ...under("steps[0]", "id", "name", "layout"),
  ...under("steps[0].loads[0]", "name", "s", "t", "z", "force"),
  ...under("steps[0].readings[0]", "stand", "kind", "value", "tolerance"),
  ...under("bay", "floor", "outline"),
  ...under("bay.floor", "slope"),
  ...under("bay.obstacles[0]", "name", "polygon"),
  ...under("bay.noFootZones[0]", "name", "polygon"),
  ...under("bay.walkways[0]", "name", "from", "to"),
  ...under("bay.slab", "thickness", "compressiveStrength", "subgradeModulus"),
];

/** Optional, and null is the default. */
const mayBeNull: readonly string[] = [
  ...under("display", "length", "force"),
  ...under("piece", "restZones", "section"),
  ...under("piece.masses[0]", "basis"),
  ...under(
    "standTypes[0]",
    "ratedLoad",
    "ratedLoadCentre",
    "designFactor",
    "ratedForWorkUnder",
    "stiffness",
    "casters",
  ),
  ...under("stands[0]", "lastInspected"),
  ...under("bay", "slab"),
  ...under("bay.walkways[0]", "lane"),
  ...under("bay.slab", "joints"),
  ...under("criteria", "sagLimit"),
  "bay",
];
/** Optional, with another default than null. */
const mayNotBeNull: readonly string[] = [
  ...under("display", "units"),
  ...["revision", "notes", "display", "criteria"],
  ...under("piece", "ends", "pose", "underside", "noRestZones", "workWindows"),
  ...under("piece.masses[0]", "uncertainty"),
  ...under("piece.masses[1]", "centreWithin"),
  ...under("piece.section[0]", "depth", "flangeWidth", "fillet", "webs", "yield", "E"),
  ...under("standTypes[0]", "marking", "liftingPoints"),
  ...under("stands[0]", "heightOffset"),
  ...under("layouts[0].placements[0]", "angle", "shim", "levelTolerance"),
  ...under("steps[0]", "loads", "peopleUnder", "setDown", "craneHolds", "chocked", "braced", "readings"),
  ...under("bay", "obstacles", "noFootZones", "walkways"),
  ...under("bay.walkways[0]", "width"),
  ...under("criteria", "levelTolerance", "closeFraction", "require"),
  ...under("criteria", "friction", "bearingPressure"),
  ...under("criteria.friction", "steel"),
];

const objects: readonly string[] = [
  "",
  "display.",
  ...under("piece", "", "ends.", "pose.", "stiffness[0].", "underside[0].", "masses[0].", "masses[1].centreWithin."),
  ...under("piece", "noRestZones[0].", "workWindows[0].", "section[0]."),
  ...under("standTypes[0]", "", "height.", "top.", "splay.", "foot.", "casters."),
  ...["stands[0].", "layouts[0].", "layouts[0].placements[0]."],
  ...under("steps[0]", "", "loads[0].", "readings[0]."),
  ...under("bay", "", "floor.", "obstacles[0].", "noFootZones[0].", "walkways[0].", "slab."),
  ...["criteria.", "criteria.friction.", "criteria.bearingPressure."],
];

const neverNull = (path: string) => !/\.(kGA|GJ)$/.test(path);

describe("a key that must be there", () => {
  it.each(required)("%s is refused where it is missing", (path) => refused(spoilt([path, undefined]), path));
  it.each(required.filter(neverNull))("%s is refused where it is null", (path) => refused(spoilt([path, null]), path));
});

describe("a key that may be left out", () => {
  it.each([...mayBeNull, ...mayNotBeNull])("%s", (path) => accepted(spoilt([path, undefined])));
  it.each([...mayBeNull, "piece.stiffness[0].kGA", "piece.stiffness[0].GJ"])("%s may be null", (path) =>
    accepted(spoilt([path, null])),
  );
  it.each(mayNotBeNull)("%s may not be null, as that is not its default", (path) =>
    refused(spoilt([path, null]), path),
  );
  it("bow, parts and absent of a step", () => {
    accepted(spoilt(["steps[0].bow", undefined], ["steps[0].parts", undefined], ["steps[0].absent", undefined]));
    accepted(spoilt(["steps[0].bow", null], ["steps[0].parts", null]));
    refused(spoilt(["steps[0].absent", null]), "steps[0].absent");
  });
  it("but the uncertainty of a guess is required", () => {
    accepted(spoilt(["piece.masses[0].basis", "guess"]));
    refused(
      spoilt(["piece.masses[0].basis", "guess"], ["piece.masses[0].uncertainty", undefined]),
      "piece.masses[0].uncertainty",
    );
  });
});

describe("a key that no one knows", () => {
  it.each(objects)("in %j", (object) => {
    const path = `${object.replace(/\.\.$/, ".")}colour`;
    expect(refusalOf(spoilt([path, "red"]), path)).toContain('"colour"');
  });
  it.each(["constructor", "toString", "hasOwnProperty"])("by the name of one that every object inherits: %s", (key) => {
    refused(spoilt([key, 1]), key);
    refused(spoilt([`criteria.${key}`, 1]), `criteria.${key}`);
  });
  it("__proto__, and it changes nothing", () => {
    refused(wholePlan.replace('"title"', '"__proto__": { "polluted": 1 }, "title"'), "__proto__");
    refused(wholePlan.replace('"datum"', '"\\u005f_proto__": null, "datum"'), "piece.ends.__proto__");
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
  it("is shown in quotation marks in the path where it is no plain word", () => {
    refused(spoilt(["a b", 1]), '["a b"]');
  });
  it("belongs to the other kind of mass", () => {
    refused(spoilt(["piece.masses[0].s", 1]), "piece.masses[0].s");
    refused(spoilt(["piece.masses[0].mass", 1]), "piece.masses[0].mass");
    refused(spoilt(["piece.masses[0].centreWithin", { s: 0, t: 0 }]), "piece.masses[0].centreWithin");
    refused(spoilt(["piece.masses[1].from", 1]), "piece.masses[1].from");
    refused(spoilt(["piece.masses[1].massPerLength", [1, 1]]), "piece.masses[1].massPerLength");
  });
});

describe("a value of the wrong type", () => {
  it.each([
    ["title", 1],
    ["notes", ["a"]],
    ["revision", "1"],
    ["revision", 1.5],
    ["display", "us"],
    ["display.units", "imperial"],
    ["display.length", "cm"],
    ["display.force", "lbf"],
    ["piece", []],
    ["piece.depth", "0.9"],
    ["piece.outline", {}],
    ["piece.outline[1]", { s: 1, t: 1 }],
    ["piece.outline[1][0]", "12"],
    ["piece.stiffness", "stiff"],
    ["piece.stiffness", { from: 0, to: 12 }],
    ["piece.masses", {}],
    ["piece.masses[0].kind", "block"],
    ["piece.masses[0].basis", "weighed"],
    ["piece.restZones", "anywhere"],
    ["piece.section", "W18x50"],
    ["piece.section[0]", []],
    ["standTypes[0].legs", "splayed"],
    ["standTypes[0].top.material", "oak"],
    ["standTypes[0].ratedForWorkUnder", 0],
    ["standTypes[0].casters", false],
    ["standTypes[0].liftingPoints", "yes"],
    ["stands[0].condition", "ok"],
    ["stands[0].lastInspected", "30.09.2026"],
    ["stands[0].id", ""],
    ["stands[0].id", 7],
    ["layouts[0].placements", null],
    ["steps[0].absent", "carriage"],
    ["steps[0].absent[0]", 1],
    ["steps[0].setDown", "true"],
    ["steps[0].readings[0].kind", "load"],
    ["bay.walkways[0].from", "here"],
    ["criteria", []],
    ["criteria.levelTolerance", "3 mm"],
    ["criteria.friction", 0.3],
    ["criteria.friction.steel", null],
    ["criteria.require", "slab"],
    ["criteria.require[0]", "everything"],
  ] as const)("%s = %j", (path, value) => refused(spoilt([path, value]), path));

  it.each([
    ["piece.outline[1]", [12]],
    ["piece.outline[1]", [12, 0, 0]],
    [
      "piece.outline",
      [
        [0, 0],
        [1, 0],
      ],
    ],
    ["piece.stiffness", []],
    ["piece.underside[0].z", [0]],
    ["piece.masses[0].massPerLength", [1, 2, 3]],
    ["piece.restZones", []],
    ["steps", []],
    ["steps[0].parts", []],
    ["steps[0].parts[0]", [0, 3, 6]],
    ["steps[0].loads[0].force", [0, 0]],
    ["bay.floor.slope", [0]],
    ["bay.walkways[0].to", [1, 2, 3]],
    ["bay.slab.joints[0]", [[0, 0]]],
  ])("%s with too few or too many items: %j", (path, value) => refused(spoilt([path, value]), path));

  it("empty where a list may be so", () => {
    accepted(spoilt(["piece.masses", []], ["steps[0].absent", []]));
    accepted(spoilt(["steps[0].loads", []], ["steps[0].readings", []], ["layouts[0].placements", []]));
    accepted(
      spoilt(["piece.noRestZones", []], ["piece.section", []], ["piece.underside", []], ["bay.slab.joints", []]),
    );
  });

  it.each(["2026-02-30", "2026-13-01", "2026-00-10", "2025-02-29", "1900-02-29", "2026-9-30", "2026-09-30T00:00", ""])(
    "%j is no date",
    (date) => refused(spoilt(["stands[0].lastInspected", date]), "stands[0].lastInspected"),
  );
  it.each(["2024-02-29", "2000-02-29", "0001-01-01", "2026-12-31"])("%s is one", (date) =>
    accepted(spoilt(["stands[0].lastInspected", date])),
  );
});

describe("format and version", () => {
  it("another format", () => refused(spoilt(["format", "floor-plan"]), "format"));
  it.each([0, -1, 1.5, "1", true, [1]])("version %j", (version) => refused(spoilt(["version", version]), "version"));
  it("a newer version is refused by name, whatever else it holds", () => {
    const message = refusalOf(spoilt(["version", 7], ["piece", undefined], ["parts", {}]), "version");
    expect(message).toContain("version 7");
    expect(message).toContain("newer");
  });
  it("a whole number may be written as a fraction", () => {
    expect(read(wholePlan.replace('"version": 1', '"version": 1.0'))).toMatchObject({ ok: true });
    expect(read(wholePlan.replace('"version": 1', '"version": 1e0'))).toMatchObject({ ok: true });
  });
});
