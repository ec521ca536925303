/**
 * The units in which quantities are written and shown, by kind of quantity. Every factor is exact by definition:
 * the international yard and pound agreement of 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg) and standard gravity,
 * 9.80665 m/s² (3rd General Conference on Weights and Measures, 1901).
 */

import type { Display } from "../types";

/** Standard gravity, m/s²: the newtons of a kilogram's weight. */
export const gravity = 9.80665;

/** m. */
export const inch = 0.0254;
const foot = 12 * inch;
const pound = 0.45359237;
const poundForce = pound * gravity;

export interface Unit {
  /** As it is shown. */
  readonly name: string;
  /** SI per unit. */
  readonly factor: number;
  /** Whether it is one of the United States, where a comma parts thousands. */
  readonly customary: boolean;
  /** Other ways to write it, in small letters without blanks. */
  readonly spellings: readonly string[];
  /** A computed value is shown with so many figures that count, and with no more decimals than so many. */
  readonly figures: number;
  readonly decimals: number;
}

function unit(customary: boolean, name: string, factor: number, decimals: number, spellings: readonly string[]): Unit {
  return { name, factor, customary, spellings, figures: 4, decimals };
}
const si = (name: string, factor: number, decimals: number, ...spellings: string[]) =>
  unit(false, name, factor, decimals, spellings);
const us = (name: string, factor: number, decimals: number, ...spellings: string[]) =>
  unit(true, name, factor, decimals, spellings);

const lengths = {
  mm: si("mm", 0.001, 2, "millimetre", "millimetres", "millimeter", "millimeters"),
  cm: si("cm", 0.01, 3, "centimetre", "centimetres", "centimeter", "centimeters"),
  m: { ...si("m", 1, 4, "metre", "metres", "meter", "meters"), figures: 6 },
  in: us("in", inch, 3, '"', "''", "inch", "inches"),
  ft: us("ft", foot, 4, "'", "foot", "feet"),
};

/** Units that a weight is written in, as kilograms. */
const masses = {
  kg: si("kg", 1, 0, "kgs", "kgf", "kilo", "kilos", "kilogram", "kilograms"),
  t: si("t", 1000, 3, "te", "tf", "tonne", "tonnes", "metricton", "metrictons"),
  N: si("N", 1 / gravity, 0, "newton", "newtons"),
  kN: si("kN", 1000 / gravity, 2, "kilonewton", "kilonewtons"),
  lb: us("lb", pound, 0, "lbs", "lbf", "lbm", "#", "pound", "pounds"),
  kip: us("kip", 1000 * pound, 2, "kips", "k", "klb", "klbs", "klbf"),
  shortTon: us("short ton", 2000 * pound, 3, "shorttons", "uston", "ustons"),
  longTon: us("long ton", 2240 * pound, 3, "longtons", "ukton", "uktons", "imperialton", "imperialtons"),
};
type WeightUnits = typeof masses;

/** The same units as newtons: a weight and the force of it are written alike. */
const forces = Object.fromEntries(
  Object.entries(masses).map(([key, one]) => [key, { ...one, factor: one.factor * gravity }]),
) as WeightUnits;

export interface Kind {
  /** What it is, in a sentence. */
  readonly name: string;
  /** What it is shown in, and what a bare number is taken to be in, by the plan's display units. */
  readonly metric: Unit;
  readonly us: Unit;
  /** What else it may be written in. */
  readonly others: readonly Unit[];
}

const plain = si("", 1, 3);
const percent = si("%", 0.01, 1, "percent", "pct");

export const kinds = {
  length: { name: "length", metric: lengths.mm, us: lengths.in, others: Object.values(lengths) },
  mass: { name: "weight", metric: masses.kg, us: masses.lb, others: Object.values(masses) },
  force: { name: "force", metric: forces.kN, us: forces.lb, others: Object.values(forces) },
  massPerLength: {
    name: "weight per length",
    metric: si("kg/m", 1, 1),
    us: us("lb/ft", pound / foot, 1, "lbs/ft", "plf", "#/ft", "lb/'"),
    others: [
      si("t/m", 1000, 3),
      si("kN/m", 1000 / gravity, 3),
      us("lb/in", pound / inch, 2, "lbs/in", "pli"),
      us("kip/ft", (1000 * pound) / foot, 3, "kips/ft", "klf", "k/ft"),
    ],
  },
  angle: {
    name: "angle",
    metric: si("°", 1, 2, "deg", "degs", "degree", "degrees"),
    us: si("°", 1, 2, "deg", "degs", "degree", "degrees"),
    others: [si("rad", 180 / Math.PI, 4, "radian", "radians")],
  },
  ratio: { name: "ratio", metric: plain, us: plain, others: [percent] },
  fraction: { name: "share", metric: percent, us: percent, others: [] },
  slope: {
    name: "slope",
    metric: si("mm/m", 0.001, 2),
    us: us("in/ft", 1 / 12, 3, "inches/foot", '"/ft', "\"/'"),
    others: [si("m/m", 1, 5), percent],
  },
  stiffness: {
    name: "stiffness",
    metric: si("kN/mm", 1e6, 2, "MN/m"),
    us: us("kip/in", (1000 * poundForce) / inch, 1, "kips/in", "k/in"),
    others: [si("N/m", 1, 0), si("N/mm", 1000, 0), si("kN/m", 1000, 0), us("lb/in", poundForce / inch, 0, "lbs/in")],
  },
  pressure: {
    name: "pressure or stress",
    metric: si("MPa", 1e6, 3, "N/mm2"),
    us: us("psi", poundForce / inch ** 2, 1, "lb/in2", "lbf/in2", "lb/sqin"),
    others: [
      si("Pa", 1, 0, "N/m2"),
      si("kPa", 1000, 2, "kN/m2"),
      si("GPa", 1e9, 3, "kN/mm2"),
      si("bar", 1e5, 3),
      us("ksi", (1000 * poundForce) / inch ** 2, 3, "kip/in2"),
      us("psf", poundForce / foot ** 2, 1, "lb/ft2"),
      us("ksf", (1000 * poundForce) / foot ** 2, 3, "kip/ft2"),
    ],
  },
  pressurePerLength: {
    name: "subgrade modulus",
    metric: si("MPa/m", 1e6, 2, "MN/m3"),
    us: us("pci", poundForce / inch ** 3, 1, "psi/in", "lb/in3"),
    others: [si("Pa/m", 1, 0, "N/m3"), si("kPa/m", 1000, 0, "kN/m3")],
  },
  density: {
    name: "density",
    metric: si("kg/m³", 1, 0),
    us: us("lb/ft³", pound / foot ** 3, 1, "pcf"),
    others: [
      si("t/m³", 1000, 3),
      si("g/cm³", 1000, 3, "kg/dm3", "kg/l"),
      si("kN/m³", 1000 / gravity, 2),
      us("lb/in³", pound / inch ** 3, 4, "pci"),
    ],
  },
  moment: {
    name: "moment",
    metric: si("kN·m", 1000, 2),
    us: us("kip·ft", 1000 * poundForce * foot, 2, "kft", "ftkip", "ftkips", "kipft", "kipsft"),
    others: [
      si("N·m", 1, 0),
      us("lb·ft", poundForce * foot, 0, "ftlb", "ftlbs", "lbsft"),
      us("kip·in", 1000 * poundForce * inch, 1, "inkip", "inkips"),
    ],
  },
  bendingStiffness: {
    name: "bending or torsion stiffness",
    metric: si("kN·m²", 1000, 1),
    us: us("kip·in²", 1000 * poundForce * inch ** 2, 0),
    others: [
      si("N·m²", 1, 0),
      si("MN·m²", 1e6, 3),
      us("lb·in²", poundForce * inch ** 2, 0),
      us("kip·ft²", 1000 * poundForce * foot ** 2, 1),
    ],
  },
  area: {
    name: "area",
    metric: si("cm²", 1e-4, 2),
    us: us("in²", inch ** 2, 3, "sqin"),
    others: [si("mm²", 1e-6, 0), si("m²", 1, 4), us("ft²", foot ** 2, 3, "sqft")],
  },
  sectionModulus: {
    name: "section modulus",
    metric: si("cm³", 1e-6, 1),
    us: us("in³", inch ** 3, 2),
    others: [si("mm³", 1e-9, 0), si("m³", 1, 6)],
  },
  secondMoment: {
    name: "second moment of area",
    metric: si("cm⁴", 1e-8, 1),
    us: us("in⁴", inch ** 4, 2),
    others: [si("mm⁴", 1e-12, 0), si("m⁴", 1, 8)],
  },
} as const satisfies Readonly<Record<string, Kind>>;

/** length m, mass kg, force N, massPerLength kg/m, angle degrees, slope m/m, ratio and fraction 1, the rest SI. */
export type QuantityKind = keyof typeof kinds;

/**
 * The unit in which a quantity is shown and a bare number is read; "ft-in" stands for feet, inches and sixteenths,
 * "in" for inches and sixteenths.
 */
export function shownIn(kind: QuantityKind, display: Display): Unit | "ft-in" | "in" {
  switch (kind) {
    case "length": {
      const chosen = display.length ?? (display.units === "us" ? "ft-in" : "mm");
      return chosen === "ft-in" || chosen === "in" ? chosen : lengths[chosen];
    }
    case "force":
      return display.force === null ? kinds.force[display.units] : forces[display.force];
    case "mass":
      // A mass has no newtons: it stays in the kilograms or pounds that go with them.
      return display.force === null || display.force === "N" || display.force === "kN"
        ? kinds.mass[display.units]
        : masses[display.force];
    default:
      return kinds[kind][display.units];
  }
}

/** The unit of a kind that a text names; undefined if it names none. */
export function unitCalled(text: string, kind: QuantityKind): Unit | undefined {
  return spelled[kind].get(spelling(text));
}

/** The units of a kind, as they are shown. */
export function unitNames(kind: QuantityKind): readonly string[] {
  return [...new Set([...spelled[kind].values()].map(({ name }) => name))].filter((name) => name !== "");
}

function spelling(text: string): string {
  return text
    .toLowerCase()
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replaceAll("⁴", "4")
    .replace(/\bper\b/g, "/")
    .replace(/[\s.·⋅*^-]/g, "");
}

const spelled = Object.fromEntries(
  Object.entries<Kind>(kinds).map(([kind, { metric, us: customary, others }]) => {
    const units = [metric, customary, ...others];
    return [kind, new Map(units.flatMap((one) => [one.name, ...one.spellings].map((name) => [spelling(name), one])))];
  }),
) as unknown as { readonly [Name in QuantityKind]: ReadonlyMap<string, Unit> };
