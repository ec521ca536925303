import { describe, expect, it } from "vitest";
import { diagramAt, solveStep } from "../../src/statics";
import { derivativeOf, evaluate, signChanges } from "../../src/statics/polynomial";
import { planOf, solve } from "../helpers/beam";

describe("diagrams", () => {
  /** Simply supported over 8 m with overhangs of 1 m and 3 m, w = 2 kN/m, P = 6 kN at the far end. */
  const { part } = solve({
    length: 12,
    EI: 4e6,
    GJ: 5e5,
    lines: [{ w: 2000 }],
    points: [{ s: 12, t: 0.15, P: 6000 }],
    supports: [1, 9].map((s) => ({ s, k: 1e10 })),
  });

  it("are those of statics", () => {
    // Moments about s = 9: R₁·8 = 24000·3 − 6000·3; R₂ = 30000 − R₁.
    const R1 = (24000 * 3 - 6000 * 3) / 8;
    const R2 = 30000 - R1;
    expect(part.shear!.most.value).toBeCloseTo(Math.max(R1 - 2000, 6000 + 2000 * 3), 6);
    expect(part.shear!.least.value).toBeCloseTo(R1 - 2000 * 9, 6);
    expect(diagramAt(part.cells!, 5).shear).toBeCloseTo(R1 - 2000 * 5, 6);
    expect(diagramAt(part.cells!, 9).shear).toBeCloseTo(R1 + R2 - 2000 * 9, 6);
    expect(part.moment!.least).toMatchObject({ s: 9 });
    expect(part.moment!.least.value).toBeCloseTo(-6000 * 3 - (2000 * 9) / 2, 5);
    // Greatest where V = 0: R₁ = 2000·s.
    expect(part.moment!.most.s).toBeCloseTo(R1 / 2000, 9);
    expect(part.moment!.most.value).toBeCloseTo(R1 * (R1 / 2000 - 1) - 1000 * (R1 / 2000) ** 2, 5);
  });

  it("twist by the eccentric load, torque minus what works on θ to the left", () => {
    // To the left of s = 11 the stands have taken the load's moment, +6000·0.15 on θ.
    expect(diagramAt(part.cells!, 11).torque).toBeCloseTo(-6000 * 0.15, 6);
    expect(diagramAt(part.cells!, 0.5).torque).toBe(0);
    const turn = (part.twist!.most.value - part.twist!.least.value) * (Math.PI / 180);
    const between = -diagramAt(part.cells!, 5).torque;
    expect(turn).toBeCloseTo((between * 8 + 900 * 3) / 5e5, 12);
  });

  it("measure deflection from the line through both stands", () => {
    const { cells, curves, deflection, droop } = part;
    const [v1, v9] = [1, 9].map((s) => diagramAt(cells!, s).v);
    const line = (s: number) => v1! + ((v9! - v1!) * (s - 1)) / 8;
    for (const s of [0, 3, 6, 10.5, 12]) {
      const drawn = curves!.s.indexOf(s);
      const off = diagramAt(cells!, s).v - line(s);
      expect(off).toBeGreaterThanOrEqual(deflection!.least.value - 1e-15);
      expect(off).toBeLessThanOrEqual(deflection!.most.value + 1e-15);
      if (drawn >= 0) expect(curves!.deflection![drawn]).toBeCloseTo(off, 14);
    }
    expect(droop![0]).toBeCloseTo(diagramAt(cells!, 0).v - line(0), 14);
    expect(droop![1]).toBeCloseTo(diagramAt(cells!, 12).v - line(12), 14);
  });

  it("are continuous where nothing acts, and their derivatives fit", () => {
    const cells = part.cells!;
    for (let index = 0; index + 1 < cells.length; index++) {
      const [cell, next] = [cells[index]!, cells[index + 1]!];
      expect(next.from).toBe(cell.to);
      const x = cell.to - cell.from;
      for (const kind of ["moment", "v", "theta"] as const) {
        expect(Math.abs(evaluate(cell[kind], x) - next[kind][0]!)).toBeLessThanOrEqual(
          1e-9 * Math.abs(next[kind][0]!) + 1e-12,
        );
      }
      expect(derivativeOf(cell.moment)).toEqual(cell.shear.map((value) => expect.closeTo(value, 9)));
    }
    expect(evaluate(cells.at(-1)!.moment, cells.at(-1)!.to - cells.at(-1)!.from)).toBeCloseTo(0, 6);
  });

  it("hold every extreme among the stations of the curves", () => {
    const { curves, moment, shear, deflection } = part;
    expect(Math.max(...curves!.moment)).toBe(moment!.most.value);
    expect(Math.min(...curves!.moment)).toBe(moment!.least.value);
    expect(Math.max(...curves!.shear)).toBe(shear!.most.value);
    expect(Math.min(...curves!.deflection!)).toBe(deflection!.least.value);
  });

  it("have no deflection where the bearing stands share one s, but a twist", () => {
    const { part: alone } = solve({
      length: 4,
      width: 1,
      EI: 1e6,
      lines: [{ w: 1000, t: 0.1 }],
      supports: [
        { s: 2, k: 1e8, angle: 90, top: 1.5 },
        { s: 2, t: 0.4, k: 1e8, top: 0.1 },
      ],
    });
    expect([alone.deflection, alone.droop]).toEqual([null, null]);
    expect(alone.twist!.most.value).toBe(0);
  });

  it("of a rigid piece show no bend at all", () => {
    const { part: rigid } = solve({
      length: 9,
      lines: [{ w: 1000 }],
      supports: [1, 4.3, 8].map((s, index) => ({ s, k: 1e8, lower: index * 3e-4 })),
    });
    expect(rigid.deflection!.most.value - rigid.deflection!.least.value).toBeLessThanOrEqual(1e-17);
    expect(rigid.twist).toMatchObject({ most: { value: 0 }, least: { value: 0 } });
  });
});

describe("a step's level answer", () => {
  it("is the same object as long as what it reads is", () => {
    const plan = planOf({ length: 6, EI: 1e7, lines: [{ w: 100 }], supports: [1, 5].map((s) => ({ s, k: 1e8 })) });
    const [step] = plan.steps;
    const level = solveStep(plan, step!);
    expect(solveStep({ ...plan, title: "renamed" }, { ...step!, name: "renamed", setDown: true })).toBe(level);
    const [layout] = plan.layouts;
    expect(solveStep({ ...plan, layouts: [{ ...layout!, name: "renamed" }] }, step!)).toBe(level);
    const moved = { ...layout!, placements: [...layout!.placements].reverse() };
    expect(solveStep({ ...plan, layouts: [moved] }, step!)).not.toBe(level);
    expect(structuredClone(level).parts[0]!.moment).toEqual(level.parts[0]!.moment);
  });
});

describe("roots", () => {
  it("are every change of sign between the ends", () => {
    const quartic = coefficients([0.1, 0.25, 0.7, 2]);
    expect(signChanges(quartic, 1)).toEqual([0.1, 0.25, 0.7].map((root) => expect.closeTo(root, 13)));
    expect(signChanges([0.26, -1, 1], 1)).toEqual([]);
    expect(signChanges([0, 1], 1)).toEqual([]);
    expect(signChanges([-1e-300, 1], 1)).toEqual([expect.closeTo(1e-300, 305)]);
    expect(signChanges([0], 1)).toEqual([]);
  });
});

function coefficients(roots: readonly number[]): number[] {
  let product = [1];
  for (const root of roots) product = [0, ...product].map((value, power) => value - root * (product[power] ?? 0));
  return product;
}
