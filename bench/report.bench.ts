/**
 * The whole report of a five-stand, three-step plan with ten masses, a floor with two walkways and a section: every part
 * but certificates and margins is to take under 80 ms. Writes reports/report.json.
 */

import { forFindings, reportOf, withoutMargins } from "../src/checks";
import { complete, type Plan, type PlanDocument } from "../src/plan";
import { median, writeReport } from "./measure";

const limit = 80;

/** Every call gives new objects, so that nothing is remembered from the call before. */
function planOf(): Plan {
  const length = 18;
  const document = {
    format: "trestleboard-plan",
    version: 1,
    title: "report",
    piece: {
      name: "girder",
      pose: { x: 3, y: 6, heading: 0 },
      outline: [
        [0, -0.3],
        [length, -0.3],
        [length, 0.3],
        [0, 0.3],
      ],
      depth: 0.9,
      stiffness: [{ from: 0, to: length, EI: 2e8, kGA: 4e8, GJ: 2e6 }],
      masses: [
        {
          id: "plates",
          name: "",
          kind: "line",
          from: 0,
          to: length,
          massPerLength: [300, 300],
          t: 0,
          z: 0.45,
          uncertainty: 0.05,
        },
        ...Array.from({ length: 9 }, (_, k) => ({
          id: `m${k}`,
          name: "",
          kind: "point",
          s: 1 + 2 * k,
          t: k % 2 === 0 ? 0.1 : -0.1,
          z: 0.5,
          mass: 200 + 50 * k,
          uncertainty: 0.1,
          centreWithin: { s: 0.1, t: 0 },
        })),
      ],
      section: {
        depth: 0.9,
        flangeWidth: 0.3,
        flangeThickness: 0.025,
        webThickness: 0.014,
        fillet: 0,
        sectionModulus: 0.008,
        shearArea: 0.012,
        radiusOfGyrationY: 0.07,
        yield: 250e6,
        E: 200e9,
      },
    },
    standTypes: [
      {
        id: "horse",
        name: "",
        legs: "a-frame",
        height: { min: 0.5, max: 1.2, increment: 0 },
        top: { length: 1.2, width: 0.2, material: "hardwood" },
        legSpacing: 1,
        splay: { along: 15, across: 8 },
        foot: { length: 0.15, width: 0.12 },
        ratedLoad: 90000,
        ratedLoadCentre: 60000,
        ratedForWorkUnder: true,
        stiffness: 1e8,
        selfMass: 150,
      },
    ],
    stands: ["1", "2", "3", "4", "5"].map((id) => ({ id, type: "horse", condition: "in-service" })),
    layouts: [
      {
        id: "L",
        name: "",
        placements: ["1", "2", "3", "4", "5"].map((stand, k) => ({ stand, s: 1.5 + 3.75 * k, t: 0, height: 0.8 })),
      },
    ],
    steps: [
      { id: "set", name: "", layout: "L", setDown: true },
      {
        id: "tack",
        name: "",
        layout: "L",
        absent: ["m8"],
        parts: [
          [0, 9],
          [9, length],
        ],
      },
      { id: "weld", name: "", layout: "L", loads: [{ name: "welder", s: 9, t: 0, z: 0.9, force: [0, 0, -1100] }] },
    ],
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [0, 0],
        [24, 0],
        [24, 12],
        [0, 12],
      ],
      obstacles: [
        {
          name: "column",
          polygon: [
            [8, 2],
            [8.4, 2],
            [8.4, 2.4],
            [8, 2.4],
          ],
        },
        {
          name: "rack",
          polygon: [
            [12, 9],
            [15, 9],
            [15, 10],
            [12, 10],
          ],
        },
      ],
      walkways: [
        { name: "north", from: [1, 11], to: [23, 11] },
        { name: "south", from: [1, 1], to: [23, 1] },
      ],
      slab: {
        thickness: 0.2,
        compressiveStrength: 25e6,
        subgradeModulus: 5e7,
        joints: [
          [
            [0, 4],
            [24, 4],
          ],
        ],
      },
    },
  };
  return complete(document as unknown as PlanDocument);
}

const began = performance.now();
reportOf(planOf(), forFindings);
const first = performance.now() - began;
const report = median(() => reportOf(planOf(), forFindings), 4000);
const proved = median(() => reportOf(planOf(), withoutMargins), 4000);
const withinLimit = report < limit;

console.log("five stands, three steps, ten masses, two walkways, a slab, a section");
console.log(
  `  every part but certificates and margins: ${report.toFixed(1)} ms (${first.toFixed(1)} ms the first time)`,
);
console.log(`  with certificates: ${proved.toFixed(0)} ms`);
console.log(`  ${withinLimit ? "under" : "OVER"} the ${limit} ms that are allowed`);
writeReport("report", { limit, milliseconds: { report, first, withCertificates: proved } });
process.exitCode = withinLimit ? 0 : 1;
