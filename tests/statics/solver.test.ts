import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembleStep, type PartModel, PartSolver, solveStep } from "../../src/statics";
import { ContactProblem } from "../../src/statics/contactProblem";
import { LineSearch } from "../../src/statics/lineSearch";
import { newton } from "../../src/statics/newton";
import { oneByOne } from "../../src/statics/oneByOne";
import { planOf, solve } from "../helpers/beam";
import { planArbitrary } from "../helpers/randomPlans";

const partsOf = planArbitrary.map((plan) => assembleStep(plan, plan.steps[0]!).parts);

function weightOf(part: PartModel): number {
  return new PartSolver(part).problem.chain.resultants[0]!;
}

describe("the two ways to the reactions", () => {
  it("agree: contact by contact from three of them, and by Newton steps from all", () => {
    let compared = 0;
    fc.assert(
      fc.property(partsOf, (parts) => {
        for (const part of parts) {
          const [first, second] = [new ContactProblem(part), new ContactProblem(part)];
          for (const problem of [first, second]) problem.reset();
          if (!first.support.holds(first.resultant)) continue;
          const { stiffness, depth, rise, force, growth } = first;
          newton(first, new LineSearch(stiffness, depth, rise, force, growth));
          expect(oneByOne(second)).toBe(true);
          const weight = first.resultant[0]!;
          for (let j = 0; j < force.length; j++) {
            // The slower way nudges the load by up to 3e-10 of the length, so that it always ends.
            expect(Math.abs(second.force[j]! - force[j]!)).toBeLessThanOrEqual(1e-5 * weight);
          }
          compared++;
        }
      }),
      { seed: 11, numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(150);
  });

  it("end in few sweeps", () => {
    const sweeps: number[] = [];
    fc.assert(
      fc.property(partsOf, (parts) => {
        for (const part of parts) {
          const solver = new PartSolver(part);
          if (solver.solve() !== "unstable") sweeps.push(solver.problem.sweeps);
        }
      }),
      { seed: 12, numRuns: 600 },
    );
    sweeps.sort((a, b) => a - b);
    expect(sweeps[sweeps.length >> 1]).toBeLessThanOrEqual(5);
    expect(sweeps.at(-1)).toBeLessThanOrEqual(60);
  });
});

describe("a part solver", () => {
  const beam = {
    length: 12,
    EI: 2e7,
    GJ: 1e6,
    lines: [{ w: 3000 }],
    points: [{ s: 9, t: 0.1, P: 8000 }],
    supports: [1, 4, 8, 11].map((s) => ({ s, k: 1e8 })),
  };
  const part = () => {
    const plan = planOf(beam);
    return assembleStep(plan, plan.steps[0]!).parts[0]!;
  };

  it("gives from the last answer what it gives afresh", () => {
    const model = part();
    const warm = new PartSolver(model);
    for (let turn = 0; turn < 40; turn++) {
      const low = 1e-3 * Math.sin(turn);
      const cold = new PartSolver(model);
      for (const [j, contact] of model.contacts.entries()) {
        const height = contact.height + (contact.stand === turn % 4 ? low : 0);
        warm.heights[j] = height;
        cold.heights[j] = height;
      }
      expect([warm.solve(), cold.solve()]).toEqual(["solved", "solved"]);
      for (const [j, reaction] of cold.reactions.entries()) {
        expect(Math.abs(warm.reactions[j]! - reaction)).toBeLessThanOrEqual(1e-9 * 44000);
      }
    }
  });

  it("takes factors on load patterns", () => {
    const model = part();
    const solver = new PartSolver(
      model,
      model.loads.map((load) => [load]),
    );
    solver.factors.set([1.2, 0]);
    expect(solver.solve()).toBe("solved");
    const right = solve({ ...beam, lines: [{ w: 3600 }], points: [] }).reactions;
    const got = right.map((_, stand) =>
      model.contacts.reduce((sum, contact, j) => sum + (contact.stand === stand ? solver.reactions[j]! : 0), 0),
    );
    for (const [index, reaction] of got.entries()) expect(Math.abs(reaction - right[index]!)).toBeLessThanOrEqual(1e-7);
    solver.factors.set([-1, 0]);
    expect(solver.solve()).toBe("unstable");
    expect(Array.from(solver.reactions).every((reaction) => reaction === 0)).toBe(true);
    solver.factors.set([1.2, 0]);
    expect(solver.solve()).toBe("solved");
  });

  it("weighs what the loads weigh", () => {
    expect(weightOf(part())).toBeCloseTo(44000, 8);
  });
});

describe("elements however short", () => {
  it("do not spoil the answer: stands a nanometre and less apart", () => {
    const at = (apart: number) =>
      solve({
        length: 10,
        EI: 5e6,
        kGA: 1e8,
        GJ: 2e5,
        lines: [{ w: 2000 }],
        supports: [1, 5, 5 + apart, 9].map((s) => ({ s, k: 2e8, top: 0.3 })),
      });
    const together = at(0).reactions;
    for (const apart of [1e-15, 1e-12, 1e-9, 1e-7]) {
      const { reactions, level } = at(apart);
      for (const residual of Object.values(level.residual!)) expect(residual).toBeLessThanOrEqual(1e-12);
      for (const [index, reaction] of reactions.entries()) {
        expect(Math.abs(reaction - together[index]!)).toBeLessThanOrEqual(20000 * (1e-11 + apart));
      }
    }
  });
});

describe("loads on the edge of the contacts", () => {
  const at = (s: number) => {
    const plan = planOf({ length: 10, points: [{ s, P: 1000 }], supports: [2, 8].map((at) => ({ s: at, k: 1e8 })) });
    return new PartSolver(assembleStep(plan, plan.steps[0]!).parts[0]!).solve();
  };
  it("are unstable up to 1e-9 of the length inside, stable beyond", () => {
    expect(at(2)).toBe("unstable");
    expect(at(2 + 0.9e-8)).toBe("unstable");
    expect(at(2 + 1.1e-8)).toBe("solved");
    expect(at(8 - 1.1e-8)).toBe("solved");
    expect(at(8 + 1e-6)).toBe("unstable");
  });
});

describe("loads that come to nothing", () => {
  it("act nowhere, and no number is made up", () => {
    const plan = planOf({ length: 6, lines: [], supports: [1, 5].map((s) => ({ s, k: 1e8 })) });
    const [step] = plan.steps;
    for (const up of [0, -1e-306, 1e-306, 500]) {
      const loads = [{ name: "push", s: 3, t: 0, z: 1, force: [900, 1800, up] as const }];
      const { stable, parts, stands } = solveStep(plan, { ...step!, loads });
      expect(stable).toBe(false);
      const { force, s, t } = parts[0]!.resultant;
      expect(force + up).toBeCloseTo(0, 12);
      expect([s, t]).toEqual([null, null]);
      expect(stands.map(({ reaction, settlement, gap }) => [reaction, settlement, gap])).toEqual([
        [null, null, null],
        [null, null, null],
      ]);
    }
  });
});
