/** Bounds against a mixed-integer programme: a yes-or-no variable a contact, solved by HiGHS. */

import { describe, expect, test } from "vitest";
import { assembleStep, certifiedBoundsOf } from "../../../src/statics";
import { boxOf } from "../../../src/statics/bounds/variables";
import { DisplacementModel } from "./displacementForm";
import { randomNumbers, randomPlan } from "./plans";

/** m, more than any contact of these plans can be clear by: a rigid piece lies on tops that differ by millimetres. */
const mostGap = { rigid: 0.03, elastic: 0.1, "torsion-flexible": 0.1 };
const random = randomNumbers(4_711);

describe("all contacts decided by integers", () => {
  test.each(Array.from({ length: 20 }, (_, index) => index))("plan %i", (index) => {
    const beam = (["rigid", "elastic", "torsion-flexible"] as const)[index % 3]!;
    const plan = randomPlan(random, { beam, stands: 3, simpleBeam: true });
    const step = plan.steps[0]!;
    const model = assembleStep(plan, step);
    const bounds = certifiedBoundsOf(plan, step);
    if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
    const problem = new DisplacementModel(model, boxOf(plan, step, model), plan.piece.masses);
    problem.decideByIntegers(mostGap[beam]);
    const stand = index % model.stands.length;
    const own = problem.contacts.map((contact) => (contact.stand === stand ? 1 : 0));
    const sense = index % 2 === 0 ? 1 : -1;
    const extreme = sense * problem.greatest(own.map((weight) => sense * weight))!;
    problem.model.dispose();
    const { least, most, outer, certified } = bounds.stands[stand]!;
    const [value, bound] = sense === 1 ? [most, outer.most] : [least, outer.least];
    expect(Math.abs(value / problem.force - extreme)).toBeLessThan(1e-3);
    expect(certified).not.toBeNull();
    // HiGHS takes a yes-or-no of 1e-6 for a no, which lets a contact carry 2e-6 of the weight while it is clear
    expect(sense * (bound / problem.force - extreme)).toBeGreaterThan(-1e-4);
  });
});
