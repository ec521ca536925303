/** Codes of the piece's strength, the tops and the slab; numbers by hand from the base plan (base.ts). */

import type { SectionStrength } from "../../src/plan";
import type { Draft } from "./base";
import { rowsOf } from "./codes";

const steel: SectionStrength = {
  depth: 0.5,
  flangeWidth: 0.2,
  flangeThickness: 0.02,
  webThickness: 0.01,
  fillet: 0,
  sectionModulus: 1,
  shearArea: 1,
  radiusOfGyrationY: 1,
  yield: 250e6,
  E: 200e9,
};

/** A section that is strong enough in all but what is given. */
const section = (weak: Partial<SectionStrength>) => (draft: Draft) => {
  draft.piece.section = { ...steel, ...weak } as NonNullable<Draft["piece"]["section"]>;
};
const lacking = (key: keyof SectionStrength) => (draft: Draft) => {
  const { [key]: _, ...rest } = steel;
  draft.piece.section = rest as NonNullable<Draft["piece"]["section"]>;
};
const nothing = () => {};

// w = 1961.33 N/m, 6 m between stands, 2 m overhangs: M = 1961.33·(36/8 − 4/2) = 4903.3 N·m at the middle.
rowsOf("bending", [
  {
    name: "S = 32 cm³",
    change: section({ sectionModulus: 3.2e-5 }),
    verdict: "fails",
    value: 153.2289e6,
    limit: 150e6,
  },
  { name: "S = 35 cm³", change: section({ sectionModulus: 3.5e-5 }), verdict: "close", value: 140.095e6 },
  { name: "S = 37 cm³", change: section({ sectionModulus: 3.7e-5 }), verdict: "holds", value: 132.522e6 },
  { name: "no yield stress", change: lacking("yield"), verdict: "unknown", says: ["yield"] },
  { name: "no section", change: nothing, verdict: "not checked" },
]);

// V = 1961.33·3 = 5883.99 N beside a stand, against 0.4·250 MPa.
rowsOf("shear", [
  { name: "A = 0.58 cm²", change: section({ shearArea: 5.8e-5 }), verdict: "fails", value: 101.448e6, limit: 100e6 },
  { name: "A = 0.62 cm²", change: section({ shearArea: 6.2e-5 }), verdict: "close" },
  { name: "A = 0.66 cm²", change: section({ shearArea: 6.6e-5 }), verdict: "holds", value: 89.1514e6 },
  { name: "no shear area", change: lacking("shearArea"), verdict: "unknown", says: ["shearArea"] },
  { name: "no section", change: nothing, verdict: "not checked" },
]);

// R_n/1.5 = 250e6·t_w·(5·0.02 + 0.2)/1.5 = 5e7·t_w, 2 m from the end.
rowsOf("web-yielding", [
  { name: "t_w = 0.19 mm", change: section({ webThickness: 1.9e-4 }), verdict: "fails", value: 9806.65, limit: 9500 },
  { name: "t_w = 0.21 mm", change: section({ webThickness: 2.1e-4 }), verdict: "close", limit: 10500 },
  {
    name: "t_w = 0.23 mm",
    change: section({ webThickness: 2.3e-4 }),
    verdict: "holds",
    limit: 11500,
    says: ["kept from rolling"],
  },
  { name: "no fillet", change: lacking("fillet"), verdict: "unknown", says: ["fillet"] },
  {
    name: "two webs",
    change: section({ webs: 2 }),
    verdict: "unknown",
    says: ["one web", "has two", "fit stiffeners"],
  },
  { name: "no section", change: nothing, verdict: "not checked" },
]);

// R_n/2 = 0.4·t_w²·(1 + 1.2·(t_w/0.02)^1.5)·√(200e9·250e6·0.02/t_w)
rowsOf("web-crippling", [
  { name: "t_w = 0.8 mm", change: section({ webThickness: 8e-4 }), verdict: "fails", limit: 9137.86 },
  { name: "t_w = 0.85 mm", change: section({ webThickness: 8.5e-4 }), verdict: "close", limit: 10016.84 },
  { name: "t_w = 0.95 mm", change: section({ webThickness: 9.5e-4 }), verdict: "holds", limit: 11857.89 },
  { name: "no E", change: lacking("E"), verdict: "unknown" },
  { name: "no section", change: nothing, verdict: "not checked" },
]);

// 1.76·r_y·√(200e9/250e6) = 49.78·r_y against 6 m.
rowsOf("lateral-buckling", [
  { name: "r_y = 120 mm", change: section({ radiusOfGyrationY: 0.12 }), verdict: "close", value: 6, limit: 5.97364 },
  { name: "r_y = 121 mm", change: section({ radiusOfGyrationY: 0.121 }), verdict: "holds", limit: 6.02342 },
  { name: "no r_y", change: lacking("radiusOfGyrationY"), verdict: "unknown" },
  { name: "no section", change: nothing, verdict: "not checked" },
]);

/** EI = 1e7 N·m²; in the middle 7.875e-4·w·L⁴/EI = 1.54455 mm below the line through the stands (published-checks, 2). */
const sagTo = (sagLimit: number | null) => (draft: Draft) => {
  draft.piece.stiffness = [{ from: 0, to: 10, EI: 1e7, kGA: null, GJ: null }];
  draft.criteria = { ...draft.criteria, sagLimit };
};
rowsOf("sag", [
  { name: "1.5 mm allowed", change: sagTo(0.0015), verdict: "fails", value: 0.00154455 },
  { name: "1.65 mm allowed", change: sagTo(0.00165), verdict: "close" },
  { name: "1.8 mm allowed", change: sagTo(0.0018), verdict: "holds" },
  { name: "no limit", change: sagTo(null), verdict: "not checked" },
]);

/** 9806.65 N on 1 m × 0.2 m: 49033 Pa. */
const pressure = (hardwood: number) => (draft: Draft) => {
  draft.criteria = { ...draft.criteria, bearingPressure: { hardwood } };
};
rowsOf("bearing-pressure", [
  { name: "49 kPa allowed", change: pressure(49000), verdict: "fails", value: 49033.25, limit: 49000 },
  { name: "54 kPa allowed", change: pressure(54000), verdict: "close" },
  { name: "55 kPa allowed", change: pressure(55000), verdict: "holds" },
]);

/**
 * Under a foot 9806.65/4·2 + 100·g/2 = 5393.66 N on 150 cm². At h = 65 mm: l = 0.32388 m, b = 0.06505 m, interior stress
 * 0.316·P/h²·(4·log₁₀(l/b) + 1.069) = 1.55617 MPa, no other foot within reach; allowed 0.62·5/2 = 1.55 MPa.
 */
const slab = (thickness: number, joints: [[number, number], [number, number]][] | null) => (draft: Draft) => {
  draft.bay!.slab = { thickness, compressiveStrength: 25e6, subgradeModulus: 50e6, joints };
};
rowsOf("slab", [
  { name: "65 mm", change: slab(0.065, []), verdict: "fails", value: 1556174.85, limit: 1.55e6 },
  // Another foot of the same stand, 0.63 m off, adds 4615 Pa.
  { name: "70 mm", change: slab(0.07, []), verdict: "holds", value: 1382978.0 },
  {
    name: "70 mm with a joint near",
    change: slab(0.07, [
      [
        [0, 5.6],
        [18, 5.6],
      ],
    ]),
    verdict: "fails",
    says: ["edge"],
  },
  { name: "70 mm, joints not known", change: slab(0.07, null), verdict: "unknown", says: ["joints"] },
  { name: "no slab", change: nothing, verdict: "not checked" },
  {
    name: "no bay",
    change: (draft) => {
      draft.bay = null;
    },
    verdict: "not checked",
  },
]);
