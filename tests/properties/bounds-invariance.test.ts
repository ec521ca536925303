/** The bounds do not know left from right, nor what the units are. */

import { describe, expect, test } from "vitest";
import type { Plan } from "../../src/plan";
import { certifiedBoundsOf, solveStep } from "../../src/statics";
import { randomNumbers, randomPlan } from "../statics/bounds/plans";

function boundsIn(plan: Plan) {
  const bounds = certifiedBoundsOf(plan, plan.steps[0]!);
  if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
  const weight = solveStep(plan, plan.steps[0]!).parts[0]!.resultant.force;
  return { weight, stands: bounds.stands };
}

/** The same with the piece seen from its other end, or from below its other side. */
function mirrored(plan: Plan, length: number, along: boolean): Plan {
  const s = (value: number) => (along ? length - value : value);
  const t = (value: number) => (along ? value : -value);
  const { piece } = plan;
  return {
    ...plan,
    piece: {
      ...piece,
      masses: piece.masses.map((mass) => {
        if (mass.kind === "point") return { ...mass, s: s(mass.s), t: t(mass.t) };
        const [first, last] = mass.massPerLength;
        const ends = along ? { from: length - mass.to, to: length - mass.from } : { from: mass.from, to: mass.to };
        return { ...mass, ...ends, t: t(mass.t), massPerLength: along ? ([last, first] as const) : mass.massPerLength };
      }),
    },
    layouts: plan.layouts.map((layout) => ({
      ...layout,
      placements: layout.placements.map((one) => ({ ...one, s: s(one.s), t: t(one.t), angle: -one.angle })),
    })),
    steps: plan.steps.map((step) => ({
      ...step,
      loads: step.loads.map((load) => {
        const [fs, ft, fz] = load.force;
        return { ...load, s: s(load.s), t: t(load.t), force: [along ? -fs : fs, along ? ft : -ft, fz] as const };
      }),
    })),
  };
}

/** All forces and stiffnesses times `factor`: what is carried is too, at the same heights. */
function heavier(plan: Plan, factor: number): Plan {
  const { piece } = plan;
  return {
    ...plan,
    piece: {
      ...piece,
      stiffness:
        piece.stiffness === "rigid"
          ? "rigid"
          : piece.stiffness.map((one) => ({
              ...one,
              EI: one.EI * factor,
              kGA: one.kGA === null ? null : one.kGA * factor,
              GJ: one.GJ === null ? null : one.GJ * factor,
            })),
      masses: piece.masses.map((mass) => {
        if (mass.kind === "point") return { ...mass, mass: mass.mass * factor };
        return { ...mass, massPerLength: [mass.massPerLength[0] * factor, mass.massPerLength[1] * factor] as const };
      }),
    },
    standTypes: plan.standTypes.map((type) => ({
      ...type,
      stiffness: type.stiffness === null ? null : type.stiffness * factor,
      ratedLoad: type.ratedLoad === null ? null : type.ratedLoad * factor,
    })),
    steps: plan.steps.map((step) => ({
      ...step,
      loads: step.loads.map((load) => {
        const [fs, ft, fz] = load.force;
        return { ...load, force: [fs * factor, ft * factor, fz * factor] as const };
      }),
    })),
  };
}

describe.each(Array.from({ length: 12 }, (_, seed) => seed))("seed %i", (seed) => {
  const random = randomNumbers(7_000 + seed);
  const plan = randomPlan(random, { stands: 2 + (seed % 4) });
  const length = plan.piece.outline[1]![0];
  const { weight, stands } = boundsIn(plan);

  test.each([
    ["mirrored along", mirrored(plan, length, true), 1],
    ["mirrored across", mirrored(plan, length, false), 1],
    ["a thousand times as heavy and stiff", heavier(plan, 1_000), 1_000],
  ] as const)("%s", (_, other, factor) => {
    const { weight: otherWeight, stands: otherStands } = boundsIn(other);
    expect(otherWeight / (factor * weight)).toBeCloseTo(1, 9);
    stands.forEach((stand, i) => {
      const same = otherStands[i]!;
      const near = (a: number, b: number, within: number) =>
        expect(Math.abs(a / factor - b) / weight).toBeLessThanOrEqual(within);
      near(same.staticsLeast, stand.staticsLeast, 1e-9);
      near(same.staticsMost, stand.staticsMost, 1e-9);
      // Each is proved to its own gap: they differ by no more than these
      near(same.least, stand.least, Math.max(stand.gap / weight, same.gap / otherWeight) + 1e-9);
      near(same.most, stand.most, Math.max(stand.gap / weight, same.gap / otherWeight) + 1e-9);
    });
  });
});
