/** Torsion of rectangles, tubes and built-up sections; shear areas; steel and its weight. */

import { describe, expect, it } from "vitest";
import {
  box,
  builtUpI,
  densities,
  findSection,
  inch,
  ksi,
  poundForce,
  rectangleTorsion,
  sectionToPlan,
  solid,
  steel,
  steelDensity,
} from "../../src/library";
import { printedTo, published } from "../helpers/published";
import { torsionByDifferences } from "../helpers/torsion";

describe("solid rectangles, J = β·b·t³ and τ = T/(α·b·t²)", () => {
  const ratios = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 10];
  const alpha = [0.208165, 0.218934, 0.230969, 0.245878, 0.25759, 0.267208, 0.281666, 0.2915, 0.298359, 0.312325];
  const beta = [0.140577, 0.166119, 0.195761, 0.228682, 0.249365, 0.263317, 0.280813, 0.291317, 0.29832, 0.312325];
  const printedAlpha = [0.208, 0.219, 0.231, 0.246, 0.258, 0.267, 0.282, 0.291, null, 0.312];
  const printedBeta = [0.141, 0.166, 0.196, 0.229, 0.249, 0.263, 0.281, 0.291, null, 0.312];
  ratios.forEach((ratio, i) => {
    it(`b/t = ${ratio}`, () => {
      const { constant, modulus } = rectangleTorsion(1, ratio);
      const series = "Timoshenko and Goodier, Theory of Elasticity, §109, series summed";
      const row = (item: string, expected: number, value: number): void =>
        published({
          source: series,
          item: `b/t ${ratio}: ${item}`,
          expected,
          computed: value / ratio,
          tolerance: printedTo(6),
        });
      row("β", beta[i]!, constant);
      row("α", alpha[i]!, modulus);
      for (const [item, printed, value] of [
        ["α", printedAlpha[i], modulus],
        ["β", printedBeta[i], constant],
      ] as const) {
        if (printed === null || printed === undefined) continue;
        published({
          source: "Timoshenko, Strength of Materials II, table of rectangular bars (from memory)",
          item: `b/t ${ratio}: ${item}`,
          expected: printed,
          computed: value / ratio,
          // 0.2915 is printed 0.291: half a unit and the rounding of a half.
          tolerance: { absolute: 0.5e-3 + 1e-6 },
        });
      }
    });
  });
  it("a long one nears a third", () => {
    const { constant, modulus } = rectangleTorsion(1e6, 1);
    const source = "limit of the series, b/t → ∞";
    published({ source, item: "β", expected: 1 / 3, computed: constant / 1e6, tolerance: { absolute: 1e-6 } });
    published({ source, item: "α", expected: 1 / 3, computed: modulus / 1e6, tolerance: { absolute: 1e-6 } });
  });
});

describe("rectangular tubes, AISC convention", () => {
  for (const [name, computed, printed] of [
    ["HSS8×8×1/2", 204.13, 204],
    ["HSS12×6×3/8", 178.26, 178],
  ] as const) {
    it(name, () => {
      const J = findSection(name)!.torsionConstant / inch ** 4;
      const source = "AISC Manual, HSS torsion by J ≈ 4·A_o²·t/h";
      published({
        source,
        item: `${name} J evaluated, in⁴`,
        expected: computed,
        computed: J,
        tolerance: printedTo(2),
      });
      published({ source, item: `${name} J printed, in⁴`, expected: printed, computed: J, tolerance: printedTo(0) });
    });
  }
});

describe("sections of plates", () => {
  const i = builtUpI("girder", {
    top: { width: 0.3, thickness: 0.02 },
    bottom: { width: 0.4, thickness: 0.025 },
    web: { width: 0.8, thickness: 0.012 },
    weld: 0.006,
  });
  const cell = box("box", {
    top: { width: 0.5, thickness: 0.02 },
    bottom: { width: 0.5, thickness: 0.02 },
    web: { width: 0.6, thickness: 0.012 },
    between: 0.4,
  });

  it("an I with unequal flanges, by Steiner by hand", () => {
    // A = 0.006 + 0.0096 + 0.01; centroid from below: (0.01·0.0125 + 0.0096·0.425 + 0.006·0.835)/0.0256
    const areas = [0.01, 0.0096, 0.006];
    const centres = [0.0125, 0.425, 0.835];
    const own = [(0.4 * 0.025 ** 3) / 12, (0.012 * 0.8 ** 3) / 12, (0.3 * 0.02 ** 3) / 12];
    const area = 0.0256;
    const middle = areas.reduce((sum, a, k) => sum + a * centres[k]!, 0) / area;
    const strong = areas.reduce((sum, a, k) => sum + own[k]! + a * (centres[k]! - middle) ** 2, 0);
    const weak = (0.025 * 0.4 ** 3 + 0.8 * 0.012 ** 3 + 0.02 * 0.3 ** 3) / 12;
    const source = "parallel-axis theorem, by hand";
    const row = (item: string, expected: number, computed: number): void =>
      published({ source, item: `plate girder ${item}`, expected, computed, tolerance: { relative: 1e-12 } });
    row("A, m²", area, i.area);
    row("I, m⁴", strong, i.secondMoment);
    row("I weak, m⁴", weak, i.secondMomentWeak);
    row("S, m³", strong / (0.845 - middle), i.dimensions.sectionModulus!);
    row("r_y, m", Math.sqrt(weak / area), i.dimensions.radiusOfGyrationY!);
    row("A_w, m²", 0.845 * 0.012, i.dimensions.shearArea!);
    expect(i.dimensions).toMatchObject({ flangeThickness: 0.025, webThickness: 0.012, fillet: 0.006, webs: 1 });
    expect(i.dimensions.depth).toBeCloseTo(0.845, 12);
  });

  it("the torsion of an I against a numerical solution", () => {
    published({
      source: "Saint-Venant's problem by finite differences on the outline",
      item: "plate girder J, m⁴",
      expected: torsionByDifferences(i.outline[0]!, 0.012 / 8),
      computed: i.torsionConstant,
      tolerance: { relative: 0.01 },
    });
    // The plates taken apart, each with two free ends, are a few per cent less.
    const apart =
      rectangleTorsion(0.3, 0.02).constant +
      rectangleTorsion(0.8, 0.012).constant +
      rectangleTorsion(0.4, 0.025).constant;
    expect(apart).toBeLessThan(i.torsionConstant);
    expect(apart).toBeGreaterThan(0.9 * i.torsionConstant);
  });

  it("a box by Bredt, by hand", () => {
    // Middle line 0.412 × 0.62, flanges out 0.038 beyond each web.
    const Bredt = (4 * (0.412 * 0.62) ** 2) / (2 * (0.412 / 0.02 + 0.62 / 0.012));
    const overhangs = (2 * (0.5 - 0.424) * 0.02 ** 3) / 3;
    const source = "Bredt, 4·A_m² ÷ ∮ds/t, and Σ b·t³/3 of the overhangs, by hand";
    published({
      source,
      item: "box girder J, m⁴",
      expected: Bredt + overhangs,
      computed: cell.torsionConstant,
      tolerance: { relative: 1e-12 },
    });
    const outer = (0.5 * 0.64 ** 3) / 12 - ((0.5 - 0.424) * 0.6 ** 3) / 12 - (0.4 * 0.6 ** 3) / 12;
    published({
      source: "rectangles within rectangles, by hand",
      item: "box girder I, m⁴",
      expected: outer,
      computed: cell.secondMoment,
      tolerance: { relative: 1e-12 },
    });
    expect(cell.dimensions.webs).toBe(2);
  });

  it("the shear area of a rectangle is 5/6 of it, of an I nearly its web", () => {
    const bar = solid("bar", 0.05, 0.2);
    published({
      source: "Timoshenko beam, rectangle, ν = 0 (any text)",
      item: "A_s/A of a rectangle",
      expected: 5 / 6,
      computed: bar.shearStiffnessArea / bar.area,
      tolerance: { relative: 1e-12 },
    });
    // Half depths to the flange and to the edge, web and flange thickness. By integration of Q²/b, Q over the web
    // a + t₁(D₁² − z²)/2 with a = t₂(D₂² − D₁²)/2, over the flanges t₂(D₂² − z²)/2:
    const [D1, D2, t1, t2] = [0.4, 0.425, 0.012, 0.3];
    const equal = builtUpI("equal", {
      top: { width: t2, thickness: D2 - D1 },
      bottom: { width: t2, thickness: D2 - D1 },
      web: { width: 2 * D1, thickness: t1 },
      weld: 0,
    });
    const a = (t2 * (D2 ** 2 - D1 ** 2)) / 2;
    const web = (2 * a ** 2 * D1) / t1 + (4 / 3) * a * D1 ** 3 + (4 / 15) * t1 * D1 ** 5;
    const flanges = (t2 / 2) * ((8 / 15) * D2 ** 5 - D2 ** 4 * D1 + (2 / 3) * D2 ** 2 * D1 ** 3 - D1 ** 5 / 5);
    published({
      source: "energy of the shear stress V·Q/(I·b), integrated by hand",
      item: "A_s of an I, m²",
      expected: equal.secondMoment ** 2 / (web + flanges),
      computed: equal.shearStiffnessArea,
      tolerance: { relative: 1e-9 },
    });
  });

  it("goes into a plan", () => {
    const plan = sectionToPlan(findSection("W18×50")!, 50 * ksi, steel.aisc);
    const source = "W18×50 of the AISC Manual, E 29 000 ksi";
    const kipInch = (1000 * poundForce) / inch ** 2;
    published({
      source,
      item: "EI, kip·in²",
      expected: 29000 * 800,
      computed: plan.stiffness.EI / (kipInch * inch ** 4),
      tolerance: { relative: 0.01 },
    });
    published({
      source,
      item: "GJ, kip·in²",
      expected: 11200 * 1.24,
      computed: plan.stiffness.GJ / (kipInch * inch ** 4),
      tolerance: { relative: 0.02 },
    });
    published({
      source,
      item: "weight, lb/ft",
      expected: 50,
      computed: (plan.massPerLength * 0.3048) / 0.45359237,
      tolerance: { relative: 0.01 },
    });
    expect(plan.section.yield).toBe(50 * ksi);
    expect(sectionToPlan(findSection("W18×50")!, null, steel.aisc).section).not.toHaveProperty("yield");
  });
});

describe("materials", () => {
  it("steel and densities in both systems", () => {
    const source = "AISC 360; EN 1993-1-1 §3.2.6; handbook densities (from memory)";
    const row = (item: string, expected: number, computed: number, relative: number): void =>
      published({ source, item, expected, computed, tolerance: { relative } });
    row("E, ksi", 29000, steel.aisc.E / ksi, 1e-12);
    row("G, ksi", 11200, steel.aisc.G / ksi, 1e-12);
    row("E, GPa", 210, steel.eurocode.E / 1e9, 1e-12);
    row("steel, lb/ft³", 490, (steelDensity * 0.3048 ** 3) / 0.45359237, 2e-4);
    const pounds = {
      "structural steel": 490,
      "grey cast iron": 450,
      "ductile iron": 443,
      "aluminium 6061": 169,
      "tool steel D2": 481,
      "tool steel A2": 491,
      "stainless steel 304": 500,
      "concrete, normal, reinforced": 150,
    };
    for (const [name, expected] of Object.entries(pounds)) {
      const { density } = densities.find((one) => one.name === name)!;
      row(`${name}, lb/ft³`, expected, (density * 0.3048 ** 3) / 0.45359237, 0.005);
    }
  });

  it("plates and bars by weight", () => {
    const perInch = (490 / 12) * 1;
    const ours = (steelDensity * 0.0254 * 0.3048 ** 2) / 0.45359237;
    const source = "AISC Manual: plate 40.8 lb/ft² per inch; 7.85 kg/m² per mm";
    published({ source, item: "lb/ft² per inch", expected: perInch, computed: ours, tolerance: { relative: 2e-4 } });
    published({
      source: "README of the PyPI set steel-sections",
      item: "plate 2500 × 1250 × 10 mm, kg",
      expected: 245.3,
      computed: 2.5 * 1.25 * 0.01 * steelDensity,
      tolerance: printedTo(1),
    });
    published({
      source: "README of the PyPI set steel-sections",
      item: "12 m of Ø12 round bar, kg",
      expected: 10.65,
      computed: (12 * Math.PI * 0.012 ** 2 * steelDensity) / 4,
      tolerance: printedTo(2),
    });
  });
});
