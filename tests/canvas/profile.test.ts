import { describe, expect, test } from "vitest";
import { between, factorFor, heightOn, profileOf, undersideAt } from "../../src/canvas/elevation/profile";
import { complete, type PlanDocument } from "../../src/plan";
import { beam, layoutA } from "../store/plans";

const withShim: PlanDocument = {
  ...beam,
  layouts: [
    {
      id: layoutA,
      name: "",
      placements: beam.layouts[0]!.placements.map((placement, index) =>
        index === 1 ? { ...placement, shim: 0.01 } : placement,
      ),
    },
  ],
};

describe("profile", () => {
  test("without departures everything is drawn true to scale", () => {
    const plan = complete(beam);
    const profile = profileOf(plan, plan.steps[0]!, null, plan.layouts[0]!.placements, (departure) => {
      expect(departure).toBeCloseTo(0, 12);
      return 1;
    });
    expect(profile.stands.map(({ top }) => top)).toEqual([0.762, 0.762, 0.762]);
    expect(profile.parts.map(({ datum }) => datum)).toEqual([
      [
        [0, 0.762],
        [12, 0.762],
      ],
    ]);
  });

  test("departures, shims among them, are drawn so many times as large about the line through the tops", () => {
    const plan = complete(withShim);
    const profile = profileOf(plan, plan.steps[0]!, null, plan.layouts[0]!.placements, () => 20);
    const [first, second, third] = profile.stands;
    // The least-squares line through 0.762, 0.772, 0.762 at 1, 6 and 11 m is level at 0.762 + 0.01/3.
    const line = 0.762 + 0.01 / 3;
    expect(first!.top).toBeCloseTo(line - (20 * 0.01) / 3, 9);
    expect(second!.top).toBeCloseTo(line + (20 * 2 * 0.01) / 3, 9);
    expect(third!.top).toBeCloseTo(first!.top, 9);
    expect(second!.shim).toBeCloseTo(0.2, 12);
    // No shim is drawn taller than 0.6 of its stand.
    const hundred = profileOf(plan, plan.steps[0]!, null, plan.layouts[0]!.placements, () => 100);
    expect(hundred.stands[1]!.shim).toBeCloseTo(0.6 * 0.762, 12);
    // Under the shim the stand is as high as its neighbours: drawn so too.
    expect(second!.top - second!.shim).toBeCloseTo(first!.top, 9);
  });

  test("the factor stays while it serves and is round", () => {
    expect(factorFor(0.003, 80, 0.762, 1)).toBe(100);
    expect(factorFor(0.0031, 80, 0.762, 100)).toBe(100);
    expect(factorFor(0.0009, 80, 0.762, 100)).toBe(200);
    expect(factorFor(0.02, 80, 0.762, 100)).toBe(10);
    expect(factorFor(0, 80, 0.762, 1)).toBe(1);
    for (const departure of [1e-7, 1e-5, 1e-3, 0.1, 5]) {
      const factor = factorFor(departure, 80, 0.762, 1);
      expect(factor * departure * 80 <= 30 || factor === 1).toBe(true);
    }
  });

  test("on a step of the underside the lower surface counts", () => {
    const plan = complete({
      ...beam,
      piece: {
        ...beam.piece,
        underside: [
          { from: 0, to: 4, z: [0, 0.02] },
          { from: 4, to: 12, z: [0.05, 0.05] },
        ],
      },
    });
    expect([0, 2, 4, 5].map((s) => undersideAt(plan, s))).toEqual([0, 0.01, 0.02, 0.05]);
  });

  test("a height between two points lies on the line between them", () => {
    const points = [
      [0, 1],
      [2, 3],
      [4, 3],
    ] as const;
    expect([-1, 0, 1, 2, 3, 9].map((s) => heightOn(points, s))).toEqual([1, 1, 2, 3, 3, 3]);
  });
});

describe("settling", () => {
  test("goes from one profile to the other and ends there", () => {
    const [plan, shimmed] = [complete(beam), complete(withShim)];
    const profile = (of: typeof plan) => profileOf(of, of.steps[0]!, null, of.layouts[0]!.placements, () => 20);
    const [before, after] = [profile(shimmed), profile(plan)];
    expect(between(before, after, 1)).toEqual(after);
    const half = between(before, after, 0.5);
    expect(half.stands[1]!.top).toBeCloseTo((before.stands[1]!.top + after.stands[1]!.top) / 2, 12);
    expect(half.stands[1]!.shim).toBeCloseTo(0.1, 12);
    expect(between(before, after, 0).stands.map(({ top }) => top)).toEqual(before.stands.map(({ top }) => top));
  });
});
