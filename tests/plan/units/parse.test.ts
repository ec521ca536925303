import { describe, expect, it } from "vitest";
import { type Display, parseQuantity, type QuantityError, type QuantityKind } from "../../../src/plan";

const us: Display = { units: "us", length: null, force: null };
const metric: Display = { units: "metric", length: null, force: null };

const value = (text: string, kind: QuantityKind, display: Display): number => {
  const read = parseQuantity(text, kind, display);
  if (!read.ok) throw new Error(`${text}: ${read.message}`);
  return read.value;
};

/** 1 lb = 0.45359237 kg and 1 in = 25.4 mm exactly (international agreement of 1959); g = 9.80665 m/s² (CGPM 1901). */
const pound = 0.45359237;
const g = 9.80665;

describe("what people write", () => {
  const sixAndAHalf = 12 * 0.3048 + 6.5 * 0.0254;
  it.each<[string, QuantityKind, number]>([
    [`12' 6-1/2"`, "length", sixAndAHalf],
    [`12'6-1/2"`, "length", sixAndAHalf],
    [`12'-6 1/2"`, "length", sixAndAHalf],
    [`12' 6½"`, "length", sixAndAHalf],
    ["12’ 6½″", "length", sixAndAHalf],
    ["12 ft 6 1/2 in", "length", sixAndAHalf],
    ["12 ft. 6 1/2 in.", "length", sixAndAHalf],
    ["12 FEET - 6.5 inches", "length", sixAndAHalf],
    ["12' 6 - 1 / 2", "length", sixAndAHalf],
    [`-1' 6"`, "length", -0.4572],
    [`− 6"`, "length", -0.1524],
    [`6½"`, "length", 0.1651],
    [`½"`, "length", 0.0127],
    [`3/16"`, "length", 0.0047625],
    ["12'", "length", 3.6576],
    ["0", "length", 0],
    ["3.2 m", "length", 3.2],
    ["3,2 m", "length", 3.2],
    ["0,250 m", "length", 0.25],
    ["1 250 mm", "length", 1.25],
    ["2,500 lb", "mass", 2500 * pound],
    ["2,500.5 lb", "mass", 2500.5 * pound],
    ["2500#", "mass", 2500 * pound],
    ["4 t", "mass", 4000],
    ["4 tonnes", "mass", 4000],
    ["1/2 t", "mass", 500],
    ["2 short tons", "mass", 4000 * pound],
    ["1.250,5 kg", "mass", 1250.5],
    ["2 500,5 kg", "mass", 2500.5],
    ["1.250.000 kg", "mass", 1250000],
    ["98.0665 kN", "mass", 10000],
    ["4 t", "force", 4000 * g],
    ["12 kip", "force", 12000 * pound * g],
    ["10k lb", "force", 10000 * pound * g],
    ["2,500 lb", "force", 2500 * pound * g],
    ["1.5e3 N", "force", 1500],
    ["13.4kN", "force", 13400],
    ["500 plf", "massPerLength", (500 * pound) / 0.3048],
    ["500 lb per ft", "massPerLength", (500 * pound) / 0.3048],
    ["330 kg/m", "massPerLength", 330],
    ["15 deg", "angle", 15],
    ["15°", "angle", 15],
    ["3 %", "fraction", 0.03],
    ["3", "fraction", 0.03],
    ["1.5", "ratio", 1.5],
    ["150 %", "ratio", 1.5],
    ["10 mm/m", "slope", 0.01],
    ["44 kN/mm", "stiffness", 4.4e7],
    ["1 kip/in", "stiffness", (1000 * pound * g) / 0.0254],
    ["5.5 N/mm²", "pressure", 5.5e6],
    ["1 ksi", "pressure", (1000 * pound * g) / 0.0254 ** 2],
    ["120 MN·m²", "bendingStiffness", 1.2e8],
    ["7850 kg/m3", "density", 7850],
    ["2 kip-ft", "moment", 2000 * pound * g * 0.3048],
  ])("%s is a %s", (text, kind, expected) => {
    for (const display of [us, metric]) {
      const read = value(text, kind, display);
      expect(Math.abs(read - expected)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(expected)));
    }
  });

  it("takes a bare number in the display units", () => {
    expect(value("250", "length", metric)).toBe(0.25);
    expect(value("2.5", "length", { ...metric, length: "m" })).toBe(2.5);
    expect(value("6 1/2", "length", { ...us, length: "in" })).toBe(0.1651);
    expect(value("2,500", "mass", us)).toBeCloseTo(2500 * pound, 9);
    expect(value("10k", "force", us)).toBeCloseTo(10000 * pound * g, 8);
    expect(value("3", "force", { ...metric, force: "t" })).toBeCloseTo(3000 * g, 9);
    expect(value("3", "mass", { ...metric, force: "kN" })).toBe(3);
  });

  it("never answers a zero with a sign", () => {
    expect(Object.is(value("-0", "length", metric), 0)).toBe(true);
    expect(Object.is(value("-0.0 kN", "force", metric), 0)).toBe(true);
  });
});

describe("what is asked or refused", () => {
  it.each<[string, QuantityKind, Display, QuantityError, string]>([
    ["", "length", us, "empty", "length"],
    ["  ", "mass", us, "empty", "weight"],
    ["abc", "length", us, "no-number", '"abc"'],
    ["12 3", "length", metric, "unknown-unit", '"3"'],
    ["1/0 in", "length", us, "no-number", "1/0"],
    ["1e400 m", "length", metric, "no-number", "1e400"],
    ["1,25,3 m", "length", metric, "no-number", "1,25,3"],
    ["1.250,50,1 m", "length", metric, "no-number", "1.250,50,1"],
    ["12", "length", us, "which-unit", `12' or 12"`],
    ["20 ton", "mass", us, "which-unit", "short ton, long ton or t"],
    ["20 tons", "force", metric, "which-unit", "short ton, long ton or t"],
    ["20 T", "mass", us, "which-unit", "short ton, long ton or t"],
    ["10k", "force", metric, "unknown-unit", "kN"],
    ["12 kN", "length", metric, "unknown-unit", "mm"],
    ["12 m", "force", metric, "unknown-unit", "kN"],
    ["2,500 kg", "mass", metric, "which-number", "2500 or 2.500"],
    ["2,500 t", "mass", metric, "which-number", "2500 or 2.500"],
  ])("%j as a %s", (text, kind, display, error, words) => {
    const read = parseQuantity(text, kind, display);
    expect(read).toMatchObject({ ok: false, error });
    if (read.ok) return;
    expect(read.message).toContain(words);
    expect(read.message).toMatch(/^[^\n]+; right would be [^\n]+\.$/);
  });

  it("in few words, however much is written, and at once", () => {
    for (const text of ["1".repeat(1e5), "1,".repeat(5e4), "1 111 ".repeat(2e4), "1'".repeat(5e4), "1/".repeat(5e4)]) {
      const read = parseQuantity(text, "length", us);
      expect(read.ok).toBe(false);
      if (!read.ok) expect(read.message.length).toBeLessThan(300);
    }
  });
});
