/** Bounds against full enumeration of the critical regions: every set of contacts that may bear, a linear programme each. */

import { describe, expect, test } from "vitest";
import { assembleStep, type StepModel } from "../../../src/statics";
import { searchOf } from "../../../src/statics/bounds/bounds";
import { ended } from "../../../src/statics/bounds/pauses";
import { boxOf } from "../../../src/statics/bounds/variables";
import { DisplacementModel } from "./displacementForm";
import { randomNumbers, randomPlan } from "./plans";

/** The model with only the two end points of each bearing interval, so that all sets of contacts can be gone through. */
function thinned(model: StepModel): StepModel {
  return {
    ...model,
    parts: model.parts.map((part) => ({
      ...part,
      contacts: part.contacts
        .filter((contact) => {
          const same = part.contacts.filter(({ interval, stand }) => interval === contact.interval && stand === contact.stand); // biome-ignore format: one row
          const ends = same.map(({ c }) => c);
          return contact.c === Math.min(...ends) || contact.c === Math.max(...ends);
        })
        .map((contact) => ({ ...contact, stiffness: model.stands[contact.stand]!.stiffness / 2 })),
    })),
  };
}

/** Greatest and least reaction of a stand over all sets of contacts, as shares of the weight. */
function enumerated(problem: DisplacementModel, stand: number): { least: number; most: number } {
  const { contacts } = problem;
  const own = contacts.map((contact) => (contact.stand === stand ? 1 : 0));
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let set = 0; set < 2 ** contacts.length; set++) {
    problem.decide(contacts.map((_, j) => (set & (2 ** j)) !== 0));
    const greatest = problem.greatest(own);
    if (greatest === null) continue;
    most = Math.max(most, greatest);
    least = Math.min(least, -problem.greatest(own.map((weight) => -weight))!);
  }
  return { least, most };
}

const random = randomNumbers(20_251_125);

describe("every set of contacts gone through", () => {
  test.each(Array.from({ length: 20 }, (_, index) => index))("plan %i", (index) => {
    const beam = (["rigid", "elastic", "torsion-flexible"] as const)[index % 3]!;
    const plan = randomPlan(random, { beam, stands: index % 5 === 0 ? 5 : 4, simpleBeam: true });
    const step = plan.steps[0]!;
    const model = thinned(assembleStep(plan, step));
    const box = boxOf(plan, step, model);
    const bounds = ended(searchOf(plan, model, box, true));
    if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
    const problem = new DisplacementModel(model, box, plan.piece.masses);
    const stand = index % model.stands.length;
    const { least, most } = enumerated(problem, stand);
    problem.model.dispose();
    const { force } = problem;
    const found = bounds.stands[stand]!;
    // Exact to 0.1 % of the weight, and what is proved encloses it
    expect(Math.abs(found.least / force - least)).toBeLessThan(1e-3);
    expect(Math.abs(found.most / force - most)).toBeLessThan(1e-3);
    expect(found.certified).not.toBeNull();
    expect(found.outer.least / force).toBeLessThan(least + 1e-6);
    expect(found.outer.most / force).toBeGreaterThan(most - 1e-6);
  });
});
