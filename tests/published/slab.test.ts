/** Slab on ground against the worked examples of Y. H. Huang, Pavement Analysis and Design, 2nd ed. (2004). */

import { describe, expect, it } from "vitest";
import {
  allowableSlabStress,
  concreteModulus,
  cornerStress,
  edgeStress,
  interiorStress,
  loadedRadius,
  relativeStiffnessRadius,
  resistingRadius,
  slabFootForce,
  slabStresses,
} from "../../src/floor";
import type { Point, Slab } from "../../src/plan";
import { printedTo, published } from "../helpers/published";

const inch = 0.0254;
const pound = 4.4482216152605;
const psi = pound / inch ** 2;
const pci = psi / inch;

// P 10 000 lb on a circle of radius 6 in, h 10 in, k 100 pci, E 4e6 psi, ν 0.15.
const P = 10_000 * pound;
const a = 6 * inch;
const h = 10 * inch;
/** The strength that has the example's E by E = 4700·√f′c. */
const strength = ((4e6 * psi) / (4700 * 1e6)) ** 2 * 1e6;
const slab: Slab = { thickness: h, compressiveStrength: strength, subgradeModulus: 100 * pci, joints: [] };
const plateArea = Math.PI * a ** 2;

const huang = "Y. H. Huang, Pavement Analysis and Design, 2nd ed. (2004), Examples 4.1 to 4.3";
const recomputed = `${huang}, recomputed from the formula`;

describe("Westergaard's equations", () => {
  const l = relativeStiffnessRadius(slab);
  const b = resistingRadius(a, h);

  it("radii", () => {
    published({
      source: recomputed,
      item: "radius of relative stiffness, in",
      expected: 42.9725,
      computed: l / inch,
      tolerance: printedTo(4),
    });
    published({
      source: recomputed,
      item: "equivalent radius b, in",
      expected: 5.8039,
      computed: b / inch,
      tolerance: printedTo(4),
    });
    published({
      source: "H. M. Westergaard (1926): b = a where a ≥ 1.724h",
      item: "b of a = 2 m on h = 1 m, m",
      expected: 2,
      computed: resistingRadius(2, 1),
      tolerance: { absolute: 0 },
    });
    published({
      source: "Derived: square pad of side c has a = c/√π",
      item: "a of a pad 0.15 × 0.15 m, m",
      expected: 0.15 / Math.sqrt(Math.PI),
      computed: loadedRadius(0.15 * 0.15),
      tolerance: { relative: 1e-14 },
    });
  });

  it("stresses", () => {
    const [interior, edge, corner] = [interiorStress(P, h, l, b), edgeStress(P, h, l, a), cornerStress(P, h, l, a)];
    published({
      source: huang,
      item: "corner stress (Ioannides), psi, printed",
      expected: 190.3,
      computed: corner / psi,
      tolerance: printedTo(1),
    });
    published({
      source: recomputed,
      item: "corner stress (Ioannides), psi",
      expected: 190.25,
      computed: corner / psi,
      tolerance: printedTo(2),
    });
    published({
      source: recomputed,
      item: "interior stress, psi",
      expected: 143.68,
      computed: interior / psi,
      tolerance: printedTo(2),
    });
    published({
      source: recomputed,
      item: "edge stress, circle, psi",
      expected: 279.38,
      computed: edge / psi,
      tolerance: printedTo(2),
    });
  });

  it("a foot out on the slab, at a joint and at a corner of joints gets the same", () => {
    const at = (joints: Slab["joints"], place: Point) =>
      slabStresses({ ...slab, joints }, [{ at: place, force: P, plateArea }])[0]!;
    const joints: Slab["joints"] = [
      [
        [0, 0],
        [20, 0],
      ],
      [
        [0, 0],
        [0, 20],
      ],
    ];
    const inside = at(joints, [10, 10]);
    published({
      source: recomputed,
      item: "foot away from joints, psi",
      expected: 143.68,
      computed: inside.greatest / psi,
      tolerance: printedTo(2),
    });
    expect(inside).toMatchObject({ edge: null, corner: null });
    const beside = at(joints, [10, 1.5 * l - 1e-9]);
    published({
      source: recomputed,
      item: "foot 1.5 l from a joint, psi",
      expected: 279.38,
      computed: beside.greatest / psi,
      tolerance: printedTo(2),
    });
    expect(beside.corner).toBeNull();
    expect(at(joints, [10, 1.5 * l + 1e-9]).edge).toBeNull();
    const corner = at(joints, [0.3, 0.4]);
    published({
      source: recomputed,
      item: "foot in a corner of joints, psi",
      expected: 190.25,
      computed: Number(corner.corner) / psi,
      tolerance: printedTo(2),
    });
    expect(corner.greatest).toBe(corner.edge);
    const unknown = at(null, [10, 10]);
    expect(unknown).toMatchObject({ edge: "unknown", corner: "unknown", greatest: unknown.interior });
  });
});

describe("concrete", () => {
  const aci = "ACI 318 §19.2.3.1 (from memory)";
  it.each([
    [3000, 410.8],
    [3500, 443.7],
    [4000, 474.3],
    [5000, 530.3],
  ])("rupture at f′c %d psi", (strengthPsi, rupture) => {
    const computed = allowableSlabStress({ ...slab, compressiveStrength: strengthPsi * psi }, { slabFactor: 1 }) / psi;
    // The metric code rounds 7.5·√psi to 0.62·√MPa: 0.43 % lower.
    published({
      source: aci,
      item: `modulus of rupture 7.5√f′c, f′c ${strengthPsi} psi`,
      expected: rupture,
      computed,
      tolerance: { relative: 0.005 },
    });
  });
  it("modulus of elasticity", () => {
    // 57 000·√psi against the metric code's 4700·√MPa.
    published({
      source: "ACI 318 §19.2.2.1 (from memory)",
      item: "E = 57 000√f′c, f′c 4000 psi, psi",
      expected: 3.605e6,
      computed: concreteModulus(4000 * psi) / psi,
      tolerance: { relative: 0.01 },
    });
  });
  it("slabFactor divides", () => {
    expect(allowableSlabStress(slab, { slabFactor: 2 })).toBeCloseTo(
      allowableSlabStress(slab, { slabFactor: 1 }) / 2,
      6,
    );
  });
});

describe("several feet", () => {
  const l = relativeStiffnessRadius(slab);
  const at = (place: Point, force = P) => ({ at: place, force, plateArea });

  it("another foot adds 0.316·P/h²·(4·log₁₀(l/r) + 1.069) at its distance r, worked by hand at r = l", () => {
    const [first] = slabStresses(slab, [at([0, 0]), at([0, l], 2 * P)]);
    const [alone] = slabStresses(slab, [at([0, 0])]);
    // log₁₀(1) = 0
    expect(first!.interior - alone!.interior).toBeCloseTo(((0.316 * 2 * P) / h ** 2) * 1.069, 4);
  });
  it("nothing from where the bracket is negative, nothing beyond 3l, no more than under the foot itself", () => {
    const [alone] = slabStresses(slab, [at([0, 0])]);
    // 4·log₁₀(l/r) + 1.069 = 0 at r = 10^(1.069/4)·l = 1.85·l
    expect(slabStresses(slab, [at([0, 0]), at([0, 1.86 * l])])[0]!.interior).toBe(alone!.interior);
    expect(slabStresses(slab, [at([0, 0]), at([0, 1.84 * l])])[0]!.interior).toBeGreaterThan(alone!.interior);
    expect(slabStresses(slab, [at([0, 0]), at([0, 3.1 * l])])[0]!.interior).toBe(alone!.interior);
    expect(slabStresses(slab, [at([0, 0]), at([0, 0.001])])[0]!.interior).toBeCloseTo(2 * alone!.interior, 6);
  });
  it("adds to edge and corner too", () => {
    const joints: Slab["joints"] = [
      [
        [-9, 0],
        [9, 0],
      ],
      [
        [0, -9],
        [0, 9],
      ],
    ];
    const one = slabStresses({ ...slab, joints }, [at([0.1, 0.1])])[0]!;
    const two = slabStresses({ ...slab, joints }, [at([0.1, 0.1]), at([0.1, 0.1 + l])])[0]!;
    const added = two.interior - one.interior;
    expect(added).toBeGreaterThan(0);
    expect(Number(two.edge) - Number(one.edge)).toBeCloseTo(added, 4);
    expect(Number(two.corner) - Number(one.corner)).toBeCloseTo(added, 4);
  });
  it("two pieces of one straight joint are an edge, not a corner; crossing joints meet", () => {
    const straight: Slab["joints"] = [
      [
        [-9, 0],
        [0, 0],
      ],
      [
        [0, 0],
        [9, 0],
      ],
    ];
    expect(slabStresses({ ...slab, joints: straight }, [at([0, 0.5])])[0]).toMatchObject({ corner: null });
    const far: Slab["joints"] = [
      [
        [-9, 0],
        [9, 0],
      ],
      [
        [1.6 * l, -9],
        [1.6 * l, 9],
      ],
    ];
    expect(slabStresses({ ...slab, joints: far }, [at([0, 0])])[0]!.corner).toBeNull();
    expect(slabStresses({ ...slab, joints: far }, [at([0.2 * l, 0])])[0]!.corner).not.toBeNull();
  });
  it("the force of a foot: the whole frame share and half the stand's own weight", () => {
    expect(slabFootForce(10_000, 1.25, 1600)).toBe(12_500 + 800);
  });
});
