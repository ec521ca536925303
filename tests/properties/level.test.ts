/**
 * Invariants of the level answer over random plans: residuals, an independent oracle, other units, mirrors, turns, and
 * no number that is not one. The seed is printed and can be set: LEVEL_SEED=… npx vitest run tests/properties/level.
 */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../src/plan";
import { assembleStep, type StepLevel, type StepModel, solveStep } from "../../src/statics";
import { oracle } from "../helpers/oracle";
import { planArbitrary } from "../helpers/randomPlans";
import { mirroredAcross, mirroredAlong, rescaled, turned } from "../helpers/transformed";

const seed = Number(process.env.LEVEL_SEED ?? 20261125);
/** Plans held against the oracle, which takes most of the time, and plans looked at otherwise. */
const [runs, views] = [300, 150];

const answerOf = (plan: Plan): StepLevel => solveStep(plan, plan.steps[0]!);
const modelOf = (plan: Plan): StepModel => assembleStep(plan, plan.steps[0]!);

/** Weight that a stand's reaction is measured by: the resultant of the parts that it touches, N. */
function weightOn(model: StepModel, level: StepLevel, stand: number): number {
  const parts = new Set(model.stands[stand]!.intervals.map((interval) => interval.part));
  return [...parts].reduce((sum, part) => sum + level.parts[part]!.resultant.force, 0);
}

/**
 * How much of the weight the rounding of the plan's own numbers can move: a stiffness times the last digit of a height.
 * Two plans that differ in nothing but rounding may differ by so much.
 */
function rounding(model: StepModel, level: StepLevel): number {
  const shares = model.parts.map((part, index) => {
    const heights = part.contacts.map((contact) => contact.height);
    const most = Math.max(0, ...part.contacts.map((contact) => contact.stiffness));
    return (most * Math.max(0, ...heights.map(Math.abs)) * Number.EPSILON) / level.parts[index]!.resultant.force;
  });
  return Math.max(0, ...shares);
}

describe(`level answers of random plans, seed ${seed}`, () => {
  it("leave residuals below 1e-9, agree with the oracle and hold numbers only", () => {
    const seen = { plans: 0, unstable: 0, lifted: 0, clear: 0, undecided: 0 };
    fc.assert(
      fc.property(planArbitrary, (plan) => {
        const model = modelOf(plan);
        const level = answerOf(plan);
        seen.plans++;
        expect(notFinite(level)).toEqual([]);
        if (!level.stable) {
          seen.unstable++;
          expect(level.residual).toBeNull();
          expect(level.stands.every((stand) => stand.reaction === null)).toBe(true);
          return;
        }
        for (const residual of Object.values(level.residual!)) expect(residual).toBeLessThanOrEqual(1e-9);
        for (const stand of level.stands) expect(stand.reaction).toBeGreaterThanOrEqual(0);
        if (level.stands.some((stand, index) => isClear(model, stand.reaction!, index))) seen.clear++;
        const forces = new Array<number>(level.stands.length).fill(0);
        let lifted = false;
        for (const part of model.parts) {
          const answer = oracle(part);
          if (answer === null) {
            seen.undecided++;
            return;
          }
          for (const [index, contact] of part.contacts.entries()) {
            forces[contact.stand]! += answer.reactions[index]!;
            lifted ||= answer.reactions[index] === 0;
          }
        }
        if (lifted) seen.lifted++;
        for (const [index, stand] of level.stands.entries()) {
          const off = Math.abs(stand.reaction! - forces[index]!);
          expect(off).toBeLessThanOrEqual((1e-9 + rounding(model, level)) * weightOn(model, level, index));
        }
      }),
      { seed, numRuns: runs },
    );
    const share = (count: number) => `${((100 * count) / seen.plans).toFixed(0)} %`;
    console.log(
      `level, seed ${seed}: ${seen.plans} plans; ${share(seen.lifted)} with a lifted contact, ` +
        `${share(seen.clear)} with a stand clear, ${share(seen.unstable)} unstable, ${seen.undecided} undecided by the oracle`,
    );
    expect(seen.lifted / seen.plans).toBeGreaterThanOrEqual(0.3);
    expect(seen.unstable / seen.plans).toBeGreaterThanOrEqual(0.1);
    expect(seen.undecided / seen.plans).toBeLessThanOrEqual(0.02);
  });

  const changes: readonly (readonly [what: string, change: (plan: Plan) => Plan, force: number])[] = [
    ["feet and pounds", (plan) => rescaled(plan, 1 / 0.3048, 1 / 4.4482216152605), 1 / 4.4482216152605],
    ["a small model", (plan) => rescaled(plan, 0.05, 1e-4), 1e-4],
    ["left and right exchanged", mirroredAcross, 1],
    ["ends exchanged", mirroredAlong, 1],
    ["turned in the bay by 37°", (plan) => turned(plan, 37), 1],
    ["turned in the bay by 180°", (plan) => turned(plan, 180), 1],
  ];

  it.each(changes)("are the same in %s", (_, change, force) => {
    fc.assert(
      fc.property(planArbitrary.map(withoutLoadsOnJoints), (plan) => {
        const [model, level, other] = [modelOf(plan), answerOf(plan), answerOf(change(plan))];
        expect(other.stable).toBe(level.stable);
        if (!level.stable) return;
        // Both are rounded, and the softest stand may hold a hundred times as little as the stiffest.
        const tolerance = 1e-9 + 100 * rounding(model, level);
        for (const [index, stand] of level.stands.entries()) {
          const off = Math.abs(other.stands[index]!.reaction! - stand.reaction! * force);
          expect(off).toBeLessThanOrEqual(tolerance * weightOn(model, level, index) * force);
        }
      }),
      { seed, numRuns: views },
    );
  });
});

/** What acts on the common end of two parts acts on the one that ends there, so a mirror would move it. */
function withoutLoadsOnJoints(plan: Plan): Plan {
  const joints = new Set(plan.steps[0]!.parts?.map(([, to]) => to) ?? []);
  const masses = plan.piece.masses.filter((mass) => mass.kind === "line" || !joints.has(mass.s));
  const steps = plan.steps.map((step) => ({ ...step, loads: step.loads.filter((load) => !joints.has(load.s)) }));
  return { ...plan, piece: { ...plan.piece, masses }, steps };
}

function isClear(model: StepModel, reaction: number, stand: number): boolean {
  return reaction === 0 && model.stands[stand]!.intervals.length > 0;
}

/** Paths of numbers that are not finite, in an answer and all its parts. */
function notFinite(value: unknown, path = "level"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, item]) => notFinite(item, `${path}.${key}`));
}
