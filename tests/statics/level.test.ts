import { describe, expect, it } from "vitest";
import type { Extremes, PartLevel } from "../../src/statics";
import { diagramAt, solveStep } from "../../src/statics";
import { type Expected, referenceCases } from "../helpers/reference";

/** The reference prints twelve digits; ten of them are asked for here, far more than its README does. */
const close = 1e-10;

describe.each(referenceCases)("level answer of reference case $name", ({ plan, expected }) => {
  for (const [index, step] of plan.steps.entries()) {
    const right: Expected = expected.steps[index];
    const answer = solveStep(plan, step);
    const length = Math.max(...plan.piece.outline.map(([s]) => s));

    it(`${step.id}: weight, stability and reactions`, () => {
      expect(Math.abs(answer.weight - right.weight)).toBeLessThanOrEqual(close * right.weight);
      expect(answer.stable).toBe(right.stable);
      expect(answer.estimated).toEqual(right.estimated);
      for (const axis of ["s", "t", "z"] as const) {
        expect(Math.abs(answer.cg![axis] - right.cg[axis])).toBeLessThanOrEqual(close * length);
      }
      for (const [at, stand] of answer.stands.entries()) {
        const wanted = right.stands[at];
        if (wanted.reaction === null) {
          const { reaction, centre, legFrames, settlement, bearingPressure } = stand;
          expect([reaction, centre, legFrames, settlement, bearingPressure]).toEqual([null, null, null, null, null]);
          continue;
        }
        const W: number = wanted.W;
        expect(Math.abs(stand.reaction! - wanted.reaction.level)).toBeLessThanOrEqual(close * W);
        for (const frame of [0, 1] as const) {
          expect(Math.abs(stand.legFrames![frame] - wanted.legFrames[frame])).toBeLessThanOrEqual(10 * close * W);
        }
        if (wanted.reaction.level > 1e-3 * W) {
          for (const axis of ["s", "t"] as const) {
            expect(Math.abs(stand.centre![axis] - wanted.centre[axis])).toBeLessThanOrEqual(10 * close * length);
          }
        } else if (wanted.centre === null) expect(stand.centre).toBeNull();
        const settled = Math.max(0, wanted.settlement);
        expect(Math.abs(stand.settlement! - settled)).toBeLessThanOrEqual(1e-7 * settled + 1e-14);
        expect(Math.abs(stand.bearingPressure! - wanted.bearingPressure)).toBeLessThanOrEqual(
          1e-7 * wanted.bearingPressure,
        );
      }
    });

    it(`${step.id}: residuals`, () => {
      expect(answer.residual === null).toBe(!right.stable);
      for (const residual of Object.values(answer.residual ?? {})) expect(residual).toBeLessThanOrEqual(1e-12);
    });

    it(`${step.id}: diagrams`, () => {
      expect(answer.parts).toHaveLength(right.parts.length);
      for (const [at, part] of answer.parts.entries()) comparePart(part, right.parts[at], plan.piece.stiffness);
    });
  }
});

function comparePart(part: PartLevel, right: Expected, stiffness: unknown): void {
  const l = part.to - part.from;
  expect([part.from, part.to, part.stable]).toEqual([right.from, right.to, right.stable]);
  const W: number = right.resultant.force;
  expect(Math.abs(part.weight - right.weight)).toBeLessThanOrEqual(close * Math.abs(W));
  expect(Math.abs(part.resultant.force - W)).toBeLessThanOrEqual(close * Math.abs(W));
  for (const axis of ["s", "t"] as const) {
    expect(Math.abs(part.resultant[axis]! - right.resultant[axis])).toBeLessThanOrEqual(close * l);
  }
  if (right.moment === null) {
    const { moment, shear, torque, deflection, droop, twist } = part;
    expect([moment, shear, torque, deflection, droop, twist]).toEqual([null, null, null, null, null, null]);
    return;
  }
  compareExtremes(part.moment!, right.moment, 10 * close * W * l);
  compareExtremes(part.shear!, right.shear, 10 * close * W);
  compareExtremes(part.torque!, right.torque, 10 * close * W);
  compareExtremes(part.twist!, right.twist, 1e-9 + 1e-6 * (right.twist.most.value - right.twist.least.value));
  for (const kind of ["moment", "shear", "torque"] as const) {
    for (const end of ["most", "least"] as const) {
      const { value, s } = part[kind]![end];
      if (s === part.from || s === part.to) continue;
      const [before, after] = [s - 1e-9 * l, s].map((place) => diagramAt(part.cells!, place)[kind]);
      expect(Math.min(Math.abs(before! - value), Math.abs(after! - value))).toBeLessThanOrEqual(1e-7 * W * l);
    }
  }
  if (right.deflection === null) {
    expect([part.deflection, part.droop]).toEqual([null, null]);
    return;
  }
  const range = right.deflection.most.value - right.deflection.least.value;
  compareExtremes(part.deflection!, right.deflection, 1e-8 * range + 1e-12);
  for (const end of [0, 1] as const) {
    expect(Math.abs(part.droop![end] - right.droop[end])).toBeLessThanOrEqual(1e-8 * range + 1e-12);
  }
  if (stiffness === "rigid") expect(range).toBe(0);
}

function compareExtremes(got: Extremes, right: Extremes, tolerance: number): void {
  expect(Math.abs(got.most.value - right.most.value)).toBeLessThanOrEqual(tolerance);
  expect(Math.abs(got.least.value - right.least.value)).toBeLessThanOrEqual(tolerance);
}
