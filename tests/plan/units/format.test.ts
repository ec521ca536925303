import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Display, editQuantity, formatQuantity, parseQuantity, type QuantityKind } from "../../../src/plan";

const us: Display = { units: "us", length: null, force: null };
const metric: Display = { units: "metric", length: null, force: null };

describe("what is shown", () => {
  it.each<[number, QuantityKind, Display, string]>([
    [3.8227, "length", us, `12' 6-1/2"`],
    [3.6576, "length", us, "12'"],
    [0.1524, "length", us, `6"`],
    [0.0127, "length", us, `1/2"`],
    [0.003175, "length", us, `1/8"`],
    [0.0005, "length", us, `0.020"`],
    [0, "length", us, `0"`],
    [-0.4572, "length", us, `−1' 6"`],
    [12 * 0.3048 - 0.0001, "length", us, "12'"],
    [0.762, "length", { ...us, length: "in" }, `30"`],
    [3.8227, "length", { ...us, length: "in" }, `150-1/2"`],
    [12, "length", metric, "12\u202f000 mm"],
    [0.762, "length", metric, "762 mm"],
    [0.0005, "length", metric, "0.5 mm"],
    [2.51234, "length", metric, "2512 mm"],
    [2.51234, "length", { ...metric, length: "m" }, "2.5123 m"],
    [44482.216152605, "force", us, "10,000 lb"],
    [14880.3, "force", us, "3,345 lb"],
    [14880.3, "force", metric, "14.88 kN"],
    [14880.3, "force", { ...us, force: "kip" }, "3.35 kip"],
    [196133, "force", { ...metric, force: "t" }, "20 t"],
    [20000, "mass", metric, "20\u202f000 kg"],
    [-0.2, "force", us, "0 lb"],
    [0.05, "fraction", us, "5 %"],
    [0.0333333, "fraction", us, "3.3 %"],
    [1.5, "ratio", metric, "1.5"],
    [1.2345678, "ratio", metric, "1.235"],
    [15, "angle", us, "15°"],
    [4.4e7, "stiffness", metric, "44 kN/mm"],
    [5.5e6, "pressure", metric, "5.5 MPa"],
    [0.01, "slope", metric, "10 mm/m"],
  ])("%d as a %s", (value, kind, display, text) => {
    expect(formatQuantity(value, kind, display)).toBe(text);
  });
});

const run = { seed: 20261125, numRuns: 2000 };
const number = (text: string, kind: QuantityKind, display: Display): number => {
  const read = parseQuantity(text, kind, display);
  if (!read.ok) throw new Error(`${text}: ${read.message}`);
  return read.value;
};

describe("what was typed reads back the same", () => {
  it("in feet, inches and sixteenths", () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (sixteenths) => {
        const metres = number(`${sixteenths}/16"`.replace(/^-/, "- "), "length", us);
        const shown = editQuantity(metres, "length", us);
        expect(shown).toMatch(/^-?(?:\d+'|(?:\d+' )?(?:\d+|\d+-\d+\/\d+|\d+\/\d+)")$/);
        expect(number(shown, "length", us)).toBe(metres);
        expect(number(formatQuantity(metres, "length", us), "length", us)).toBe(metres);
      }),
      run,
    );
  });

  const displays: readonly Display[] = [
    us,
    metric,
    { ...us, length: "in", force: "kip" },
    { ...metric, length: "m", force: "t" },
    { ...metric, force: "kg" },
    { ...metric, force: "N" },
  ];
  const kinds: readonly QuantityKind[] = [
    "length",
    "mass",
    "force",
    "massPerLength",
    "angle",
    "ratio",
    "fraction",
    "slope",
    "stiffness",
    "pressure",
    "pressurePerLength",
    "density",
    "moment",
    "bendingStiffness",
    "area",
    "sectionModulus",
    "secondMoment",
  ];

  it("in any unit, to six decimals", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...displays),
        fc.constantFrom(...kinds),
        fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }),
        fc.integer({ min: 0, max: 6 }),
        (display, kind, digits, decimals) => {
          const typed = digits / 10 ** decimals;
          const inches = kind === "length" && display.units === "us";
          const text = inches ? `${typed.toFixed(decimals)}"` : typed.toFixed(decimals);
          const value = number(text, kind, display);
          const shown = editQuantity(value, kind, display);
          const back = number(shown, kind, display);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value));
          // Inches may show the same length as a fraction or in feet; every other unit shows the very digits.
          if (!inches) expect(Number.parseFloat(shown)).toBe(typed === 0 ? 0 : typed);
          expect(editQuantity(back, kind, display)).toBe(shown);
        },
      ),
      run,
    );
  });

  it("and what is only looked at is right to its last digit", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...displays),
        fc.constantFrom<QuantityKind>("length", "mass", "force", "stiffness", "pressure"),
        fc.double({ min: 0.01, max: 1e8, noNaN: true }),
        (display, kind, value) => {
          const shown = formatQuantity(value, kind, display);
          const back = number(shown.replaceAll(/[\u202f,]/g, ""), kind, display);
          const coarsest = kind === "length" ? 0.0254 / 32 : 0;
          expect(Math.abs(back - value)).toBeLessThanOrEqual(
            Math.max(coarsest, lastDigit(shown, kind, display) / 2) * 1.000001,
          );
        },
      ),
      run,
    );
  });
});

/** What one in the last digit shown is, in SI. */
function lastDigit(shown: string, kind: QuantityKind, display: Display): number {
  const [digits = ""] = /[\d.]+/.exec(shown.replaceAll(/[\u202f,]/g, "")) ?? [];
  const decimals = digits.split(".")[1]?.length ?? 0;
  const unit = shown.replace(/^[−\d.,\u202f ]+/, "");
  return /['"]/.test(shown) ? 0.0254 / 16 : number(`${(10 ** -decimals).toFixed(decimals)} ${unit}`, kind, display);
}
