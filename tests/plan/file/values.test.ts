/** Which values the keys may have, each by itself and with each other: the fine print of the plan format. */

import { describe, expect, it } from "vitest";
import { accepted, type Change, refusalOf, refused, spoilt } from "./spoilt";

const criteria = [
  ..."levelTolerance topTilt straightness tipReserve tipReserveUnder cgMargin tiltLimit personLoad".split(" "),
  ..."horizontalFraction pushLeast slideReserve tripHeight toeClearance headroom walkwayWidth floorFriction".split(" "),
  ..."allowableStressFactor sagLimit slabFactor".split(" "),
].map((key) => `criteria.${key}`);

const sectionKeys =
  "depth flangeWidth flangeThickness webThickness sectionModulus shearArea radiusOfGyrationY webs yield E";

const above0 = [
  "piece.depth",
  ...["EI", "kGA", "GJ"].map((key) => `piece.stiffness[0].${key}`),
  ...sectionKeys.split(" ").map((key) => `piece.section[0].${key}`),
  ...["top.length", "top.width", "legSpacing", "foot.length", "foot.width"].map((key) => `standTypes[0].${key}`),
  ...["ratedLoad", "ratedLoadCentre", "designFactor", "stiffness", "casters.retractLoad"].map(
    (key) => `standTypes[0].${key}`,
  ),
  "standTypes[0].height.min",
  "layouts[0].placements[0].height",
  "bay.walkways[0].width",
  ...["thickness", "compressiveStrength", "subgradeModulus"].map((key) => `bay.slab.${key}`),
  "criteria.setDownFactor",
  "criteria.closeFraction",
];
const from0 = [
  "revision",
  "piece.masses[0].massPerLength[1]",
  "piece.masses[0].uncertainty",
  "piece.masses[1].mass",
  "piece.masses[1].centreWithin.s",
  "piece.masses[1].centreWithin.t",
  "piece.workWindows[0].clearance",
  "piece.section[0].fillet",
  "standTypes[0].height.increment",
  "standTypes[0].splay.along",
  "standTypes[0].splay.across",
  "standTypes[0].selfMass",
  "layouts[0].placements[0].shim",
  "layouts[0].placements[0].levelTolerance",
  "steps[0].bow",
  "steps[0].readings[0].value",
  "steps[0].readings[0].tolerance",
  "steps[0].readings[1].value",
  ...criteria,
  "criteria.friction.uhmw-pe",
  "criteria.bearingPressure.hardwood",
];
const anyNumber = [
  ...["piece.pose.x", "piece.pose.y", "piece.pose.heading", "piece.masses[0].t", "piece.masses[1].z"],
  ...["stands[0].heightOffset", "layouts[0].placements[0].s", "layouts[0].placements[0].t"],
  ...["layouts[0].placements[0].angle", "steps[0].loads[0].t", "steps[0].loads[0].z", "steps[0].loads[0].force[1]"],
  ...["bay.floor.slope[0]", "bay.walkways[0].from[0]", "piece.underside[0].z[0]"],
];

describe("numbers in their ranges", () => {
  it.each(above0)("%s is above 0", (path) => {
    refused(spoilt([path, 0]), path);
    refused(spoilt([path, -1]), path);
  });
  it.each(from0)("%s is 0 or more", (path) => {
    accepted(spoilt([path, 0]));
    refused(spoilt([path, -1e-9]), path);
  });
  it.each(anyNumber)("%s is any number", (path) => {
    accepted(spoilt([path, -123.25]));
    refused(spoilt([path, "1"]), path);
  });
  it.each<[string, number, number]>([
    ["piece.masses[0].uncertainty", 0.999, 1],
    ["standTypes[0].stiffness", 1e10, 1.0001e10],
    ["standTypes[0].splay.along", 59.9, 60],
    ["standTypes[0].legSpacing", 1.524, 1.525],
    ["standTypes[0].height.max", 0.762, 0.761],
    ["criteria.closeFraction", 1, 1.001],
  ])("%s may be %d but not %d", (path, good, bad) => {
    accepted(spoilt([path, good]));
    refused(spoilt([path, bad]), path);
  });
  it("vertical legs have no splay", () => {
    const vertical: Change = ["standTypes[0].legs", "vertical"];
    refused(spoilt(vertical), "standTypes[0].splay.along");
    refused(spoilt(vertical, ["standTypes[0].splay", { along: 0, across: 5 }]), "standTypes[0].splay.across");
    accepted(spoilt(vertical, ["standTypes[0].splay", { along: 0, across: 0 }]));
  });
  it("at most 200 placements", () => {
    const stands = Array.from({ length: 201 }, (_, index) => ({
      id: `X${index}`,
      type: "af-20k",
      condition: "inspect",
    }));
    const placements = stands.map(({ id }) => ({ stand: id, s: 1, t: 0, height: 0.762 }));
    const step: Change = ["steps[0].readings", []];
    accepted(spoilt(["stands", stands], ["layouts[0].placements", placements.slice(1)], step));
    refused(spoilt(["stands", stands], ["layouts[0].placements", placements], step), "layouts[0].placements");
  });
});

describe("places along the piece, 12 m long", () => {
  it.each<[string, readonly Change[], string]>([
    ["an outline that begins beyond 0", [["piece.outline", rectangle(0.1, 12)]], "piece.outline"],
    ["an outline that begins before 0", [["piece.outline", rectangle(-0.1, 12)]], "piece.outline"],
    ["a line mass turned round", [["piece.masses[0].from", 12]], "piece.masses[0].to"],
    [
      "a line mass of no length",
      [
        ["piece.masses[0].from", 5],
        ["piece.masses[0].to", 5],
      ],
      "piece.masses[0].to",
    ],
    ["a line mass from before 0", [["piece.masses[0].from", -1]], "piece.masses[0].from"],
    ["a line mass beyond the far end", [["piece.masses[0].to", 12.001]], "piece.masses[0].to"],
    ["a point mass beyond the far end", [["piece.masses[1].s", 12.001]], "piece.masses[1].s"],
    ["a point mass before 0", [["piece.masses[1].s", -0.001]], "piece.masses[1].s"],
    ["a load beyond the far end", [["steps[0].loads[0].s", 12.5]], "steps[0].loads[0].s"],
    ["a load before 0", [["steps[0].loads[0].s", -0.5]], "steps[0].loads[0].s"],
  ])("%s", (_, changes, path) => refused(spoilt(...changes), path));

  const segment = (from: number, to: number) => ({ from, to, EI: 1e8, kGA: null, GJ: null, z: [0, 0] });
  const stiffness = ({ z, ...rest }: ReturnType<typeof segment>) => rest;
  const underside = ({ from, to, z }: ReturnType<typeof segment>) => ({ from, to, z });
  const section = ({ from, to }: ReturnType<typeof segment>) => ({ from, to });

  it.each<[string, readonly (readonly [number, number])[], string]>([
    ["begins after 0", [[1, 12]], ""],
    ["ends before the far end", [[0, 11]], ""],
    [
      "leaves a gap",
      [
        [0, 5],
        [6, 12],
      ],
      "",
    ],
    [
      "overlaps",
      [
        [0, 6],
        [5, 12],
      ],
      "",
    ],
    [
      "does not ascend",
      [
        [6, 12],
        [0, 6],
      ],
      "",
    ],
    ["begins before 0", [[-1, 12]], "[0].from"],
    ["ends beyond the far end", [[0, 13]], "[0].to"],
    [
      "is turned round",
      [
        [0, 6],
        [12, 6],
      ],
      "[1].to",
    ],
    [
      "has no length",
      [
        [0, 0],
        [0, 12],
      ],
      "[0].to",
    ],
  ])("stiffness that %s", (_, ends, at) => {
    const list = ends.map(([from, to]) => stiffness(segment(from, to)));
    refused(spoilt(["piece.stiffness", list]), `piece.stiffness${at}`);
  });

  it.each<[string, string, (of: ReturnType<typeof segment>) => object]>([
    ["underside", "piece.underside", underside],
    ["section", "piece.section", section],
  ])("%s may leave stretches out, but nothing else of that", (_, path, only) => {
    const list = (...ends: readonly (readonly [number, number])[]) =>
      spoilt([path, ends.map(([from, to]) => only(segment(from, to)))]);
    accepted(list([1, 3], [3, 4], [6, 11]));
    refused(list([0, 6], [5, 12]), path);
    refused(list([6, 12], [0, 6]), path);
    refused(list([0, 6], [7, 7]), `${path}[1].to`);
    refused(list([-1, 6]), `${path}[0].from`);
    refused(list([0, 6], [7, 12.5]), `${path}[1].to`);
  });

  const parts = (...list: readonly (readonly [number, number])[]): Change => ["steps[0].parts", list];
  it("parts may leave stretches out", () => {
    accepted(spoilt(parts([0, 3], [3, 4], [11, 12])));
    accepted(spoilt(parts([11.5, 11.5000001])));
  });
  it.each<[string, readonly Change[], string]>([
    ["overlap", [parts([0, 6], [5, 12])], ""],
    ["do not ascend", [parts([6, 12], [0, 6])], ""],
    ["turned round", [parts([0, 6], [12, 6])], "[1][1]"],
    ["of no length", [parts([0, 0], [0, 12])], "[0][1]"],
    ["before 0", [parts([-1, 12])], "[0][0]"],
    ["beyond the far end", [parts([0, 13])], "[0][1]"],
  ])("parts that %s", (_, changes, at) => refused(spoilt(...changes), `steps[0].parts${at}`));

  it("a point mass off every part, unless it is absent", () => {
    const near = parts([0, 6], [11, 11.55]);
    accepted(spoilt(near));
    refused(spoilt(near, ["steps[0].absent", []]), "steps[0].parts");
    accepted(spoilt(near, ["steps[0].absent", []], ["piece.masses[1].s", 11.55]));
    accepted(spoilt(near, ["steps[0].absent", []], ["piece.masses[1].s", 11]));
  });
  it("a load off every part", () => {
    refused(spoilt(parts([0, 6], [11.6, 12])), "steps[0].loads[0].s");
    accepted(spoilt(parts([0, 6], [11.5, 12])));
  });
});

describe("ids", () => {
  const second = (list: string, key = "id"): readonly [string, readonly Change[]] => {
    const plan = JSON.parse(spoilt());
    const keys = list.replaceAll("[", ".").replaceAll("]", "").split(".");
    const items = keys.reduce((at, name) => at[name], plan);
    return [`${list}[${items.length}].${key}`, [[list, [...items, structuredClone(items[0])]]]];
  };
  it.each([
    second("piece.masses"),
    second("standTypes"),
    second("stands"),
    second("layouts"),
    second("steps"),
    second("layouts[0].placements", "stand"),
  ])("of two that are equal the second is refused: %s", (path, changes) => {
    refused(spoilt(...changes), path);
  });
  it("a mass twice in absent", () => {
    refused(spoilt(["steps[0].absent", ["carriage", "girder", "carriage"]]), "steps[0].absent[2]");
  });
  it.each([
    ["stands[1].type", "nothing"],
    ["layouts[0].placements[1].stand", "H-99"],
    ["steps[0].layout", "B"],
    ["steps[0].absent[0]", "crane"],
    ["steps[0].readings[0].stand", "H-09"],
    ["steps[0].layout", "__proto__"],
    ["stands[1].type", "constructor"],
  ])("%s that is that of nothing: %j", (path, id) => {
    expect(refusalOf(spoilt([path, id]), path)).toContain(JSON.stringify(id));
  });
  it("a reading at a stand that is in the register but not in the step's layout", () => {
    const only = [{ stand: "H-08", s: 9.5, t: 0, height: 0.762 }];
    refused(spoilt(["layouts[0].placements", only]), "steps[0].readings[0].stand");
  });
  it("a weight is read at no stand, and everything else at one", () => {
    refused(spoilt(["steps[0].readings[1].stand", "H-07"]), "steps[0].readings[1].stand");
    refused(spoilt(["steps[0].readings[0].stand", null]), "steps[0].readings[0].stand");
  });
  it("a height is read above or below, the others are not", () => {
    accepted(spoilt(["steps[0].readings[0].kind", "height"], ["steps[0].readings[0].value", -0.002]));
    refused(
      spoilt(["steps[0].readings[0].kind", "reaction"], ["steps[0].readings[0].value", -1]),
      "steps[0].readings[0].value",
    );
  });
});

describe("polygons", () => {
  const bad: readonly (readonly [string, readonly (readonly [number, number])[]])[] = [
    [
      "with its first point repeated at the end",
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 0],
      ],
    ],
    [
      "with a point twice",
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [1, 1],
        [0, 2],
        [1, 1],
      ],
    ],
    [
      "that crosses itself",
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
    ],
    [
      "that crosses itself about an area",
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [1, -1],
      ],
    ],
    [
      "on one line",
      [
        [0, 0],
        [1, 1],
        [2, 2],
      ],
    ],
    [
      "that goes back on itself",
      [
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 2],
      ],
    ],
    [
      "with a corner on another edge",
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 0],
        [0, 2],
      ],
    ],
    [
      "with edges that lie on each other",
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [3, 2],
        [3, 0],
        [1, 0],
        [1, 2],
        [0, 2],
      ],
    ],
  ];
  const places = [
    "piece.noRestZones[0].polygon",
    "piece.restZones[0]",
    "piece.workWindows[0].polygon",
    "bay.outline",
    "bay.obstacles[0].polygon",
    "bay.noFootZones[0].polygon",
    "bay.walkways[0].lane",
  ];
  it.each(bad)("%s", (_, polygon) => {
    for (const path of places) refused(spoilt([path, polygon]), path);
    const beside = polygon.map(([s, t]) => [3 * s, t]);
    refused(spoilt(["piece.outline", beside]), "piece.outline");
  });
  it("of either winding, with points along a straight edge", () => {
    const along = [
      [0, -0.2],
      [5, -0.2],
      [12, -0.2],
      [12, 0.2],
      [0, 0.2],
    ];
    accepted(spoilt(["piece.outline", along]));
    accepted(spoilt(["piece.outline", along.toReversed()]));
  });
  it("of at most 10 000 points", () => {
    const round = (count: number) =>
      Array.from({ length: count }, (_, index) => {
        const angle = (2 * Math.PI * index) / count;
        return [Math.cos(angle), Math.sin(angle)];
      });
    accepted(spoilt(["bay.outline", round(10_000)]));
    expect(refusalOf(spoilt(["bay.outline", round(10_001)]), "bay.outline")).toContain("10000");
  });
});

function rectangle(from: number, to: number) {
  return [
    [from, -0.2],
    [to, -0.2],
    [to, 0.2],
    [from, 0.2],
  ];
}
