/** Plans of our own to look at first. Both are invented; no shop, piece or stand is meant. */

import type {
  LayoutId,
  MassId,
  PlacementDocument,
  PlanDocument,
  Point,
  StandDocument,
  StandId,
  StandTypeId,
  StepId,
} from "../plan";
import { poundForce } from "./materials";

const rectangle = (from: Point, to: Point): readonly Point[] => [from, [to[0], from[1]], to, [from[0], to[1]]];

const inService = (id: string, type: StandTypeId): StandDocument => ({
  id: id as StandId,
  type,
  condition: "in-service",
  lastInspected: "2026-09-30",
});

const placed = (stand: string, s: number, t: number, height: number, shim: number): PlacementDocument => ({
  stand: stand as StandId,
  s,
  t,
  angle: 0,
  height,
  shim,
});

const horse = "horse-10k" as StandTypeId;

/** 1/8 in. */
const oneShim = 0.003175;

/**
 * A lifting beam on four horses, shimmed until they touch, with 1/8 in too much under the third. The beam is built up of
 * two 500 × 34 mm flanges and a 223 × 35 mm web, 291 mm deep: area 0.0418 m² (328 kg/m), second moment 6.0e-4 m⁴, so
 * with E = 200 GPa EI = 1.2e8 N·m²; J = Σbt³/3 = 1.63e-5 m⁴, so GJ = 1.25e6 N·m². Shear is left out.
 */
export const demoBeam: PlanDocument = {
  format: "trestleboard-plan",
  version: 1,
  title: "12,700 lb beam on four 10,000 lb horses",
  revision: 1,
  notes: "An example. The beam and the horses are invented.",
  display: { units: "us", length: null, force: null },
  piece: {
    name: "Lifting beam",
    ends: { datum: "end A", far: "end B" },
    pose: { x: 3, y: 4, heading: 0 },
    outline: rectangle([0, -0.25], [12, 0.25]),
    depth: 0.291,
    stiffness: [{ from: 0, to: 12, EI: 1.2e8, kGA: null, GJ: 1.25e6 }],
    masses: [
      {
        id: "beam" as MassId,
        name: "Beam",
        kind: "line",
        from: 0,
        to: 12,
        massPerLength: [330, 330],
        t: 0,
        z: 0.1455,
        uncertainty: 0.05,
        basis: "model",
      },
      ...(
        [
          ["lug-a", "Lug, end A", 0.4, 450],
          ["lug", "Lug, middle", 6, 900],
          ["lug-b", "Lug, end B", 11.6, 450],
        ] as const
      ).map(([id, name, s, mass]) => ({
        id: id as MassId,
        name,
        kind: "point" as const,
        s,
        t: 0,
        z: 0.3,
        mass,
        uncertainty: 0.1,
        basis: "calculated" as const,
      })),
    ],
    section: {
      depth: 0.291,
      flangeWidth: 0.5,
      flangeThickness: 0.034,
      webThickness: 0.035,
      fillet: 0.01,
      sectionModulus: 4.1e-3,
      shearArea: 0.0102,
      radiusOfGyrationY: 0.13,
      webs: 1,
      yield: 250e6,
      E: 200e9,
    },
  },
  standTypes: [
    {
      id: horse,
      name: "Horse, 10,000 lb",
      legs: "a-frame",
      height: { min: 0.762, max: 0.762, increment: 0 },
      top: { length: 1.524, width: 0.203, material: "hardwood" },
      legSpacing: 1.219,
      splay: { along: 22, across: 0 },
      foot: { length: 0.15, width: 0.1 },
      ratedLoad: 10_000 * poundForce,
      ratedLoadCentre: 10_000 * poundForce,
      designFactor: 3,
      ratedForWorkUnder: false,
      marking: "CAPACITY 10,000 LB PER HORSE, ANYWHERE ON THE TOP",
      stiffness: 4.4e7,
      selfMass: 90,
      casters: null,
      liftingPoints: true,
    },
  ],
  stands: ["H-01", "H-02", "H-03", "H-04"].map((id) => inService(id, horse)),
  layouts: [
    {
      id: "A" as LayoutId,
      name: "Four horses",
      placements: [
        placed("H-01", 1.4, 0, 0.762, 0),
        placed("H-02", 4.4, 0, 0.762, 0),
        placed("H-03", 7.6, 0, 0.762, oneShim),
        placed("H-04", 10.6, 0, 0.762, 0),
      ],
    },
  ],
  steps: [{ id: "set-down" as StepId, name: "Set down", layout: "A" as LayoutId, setDown: true }],
  bay: {
    floor: { slope: [0, 0] },
    outline: rectangle([0, 0], [18, 8]),
    obstacles: [{ name: "column B3", polygon: rectangle([8.8, 6.4], [9.2, 6.8]) }],
    noFootZones: [],
    walkways: [{ name: "exit route", from: [0.8, 1.2], to: [17.2, 1.2], width: 0.7112, lane: null }],
    slab: null,
  },
  criteria: { levelTolerance: 0.0005 },
};

const dieStand = "die-stand-250" as StandTypeId;

/**
 * A die of two halves on three stands, two under one end and one under the other, so that each load follows from the
 * weights alone; opened in the second step. Kept clear: a machined pad on its underside and the keyway to work on.
 */
export const demoDie: PlanDocument = {
  format: "trestleboard-plan",
  version: 1,
  title: "20 t die on three stands",
  revision: 1,
  notes: "An example. The die and the stands are invented.",
  display: { units: "metric", length: null, force: null },
  piece: {
    name: "Die",
    ends: { datum: "end with the number plate", far: "far end" },
    pose: { x: 4.5, y: 4.2, heading: 0 },
    outline: rectangle([0, -0.85], [3, 0.85]),
    depth: 0.75,
    stiffness: "rigid",
    masses: [
      {
        id: "lower" as MassId,
        name: "Lower half",
        kind: "point",
        s: 1.48,
        t: 0,
        z: 0.22,
        mass: 11_200,
        uncertainty: 0.02,
        basis: "hook",
        centreWithin: { s: 0.05, t: 0.03 },
      },
      {
        id: "upper" as MassId,
        name: "Upper half",
        kind: "point",
        s: 1.55,
        t: 0.02,
        z: 0.55,
        mass: 8_800,
        uncertainty: 0.02,
        basis: "hook",
        centreWithin: { s: 0.05, t: 0.03 },
      },
    ],
    noRestZones: [{ name: "machined pad", polygon: rectangle([1.2, -0.85], [1.9, -0.55]) }],
    workWindows: [{ name: "keyway", polygon: rectangle([1.45, -0.25], [1.85, 0.25]), clearance: 0.25 }],
  },
  standTypes: [
    {
      id: dieStand,
      name: "Die stand, 250 kN",
      legs: "a-frame",
      height: { min: 0.457, max: 0.457, increment: 0 },
      top: { length: 0.6, width: 0.305, material: "hardwood" },
      legSpacing: 0.5,
      splay: { along: 20, across: 0 },
      foot: { length: 0.15, width: 0.15 },
      ratedLoad: 250_000,
      designFactor: 3,
      ratedForWorkUnder: false,
      marking: "250 kN PER STAND, SPREAD OVER THE TOP",
      stiffness: 1e8,
      selfMass: 140,
      liftingPoints: true,
    },
  ],
  stands: ["D-1", "D-2", "D-3"].map((id) => inService(id, dieStand)),
  layouts: [
    {
      id: "A" as LayoutId,
      name: "Two and one",
      placements: [
        placed("D-1", 0.65, -0.5, 0.457, 0),
        placed("D-2", 0.65, 0.5, 0.457, 0),
        placed("D-3", 2.65, 0, 0.457, 0),
      ],
    },
  ],
  steps: [
    { id: "set-down" as StepId, name: "Set down closed", layout: "A" as LayoutId, setDown: true },
    { id: "open" as StepId, name: "Upper half off", layout: "A" as LayoutId, absent: ["upper" as MassId] },
  ],
  bay: {
    floor: { slope: [0, 0] },
    outline: rectangle([0, 0], [12, 9]),
    obstacles: [{ name: "column C2", polygon: rectangle([5.6, 1.5], [6, 1.9]) }],
    walkways: [{ name: "exit route", from: [0.6, 0.7], to: [11.4, 0.7] }],
  },
};
