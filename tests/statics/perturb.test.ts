import { describe, expect, it } from "vitest";
import { assembleStep, levelAt, perturb, type Witness } from "../../src/statics";
import { type Expected, referenceCases } from "../helpers/reference";

/** Solving at the reference's own witnesses gives its extremes back. */
describe.each(referenceCases)("witnesses of reference case $name", ({ plan, expected }) => {
  const solved: { what: string; got: number | null; right: number; W: number }[] = [];
  for (const [index, step] of plan.steps.entries()) {
    const right: Expected = expected.steps[index];
    const model = assembleStep(plan, step);
    for (const [at, stand] of right.stands.entries()) {
      for (const [end, witness] of Object.entries({ least: stand.leastAt, most: stand.mostAt })) {
        if (witness === null || witness === undefined || stand.contact.length === 0) continue;
        const level = levelAt(perturb(model, plan, witness as Witness), plan.piece.masses);
        const got = level.stands[at]!.reaction;
        solved.push({ what: `${step.id} ${stand.stand} ${end}`, got, right: stand.reaction[end], W: stand.W });
      }
    }
  }

  it("bring about the extremes, where the box has any", () => {
    expect(solved.length > 0).toBe(expected.steps.some(hasWitnesses));
    for (const { what, got, right, W } of solved) {
      expect(got, what).not.toBeNull();
      expect(Math.abs(got! - right), `${what}: got ${got}, right ${right}`).toBeLessThanOrEqual(1e-6 * W);
    }
  });
});

function hasWitnesses({ stable, boxTips }: Expected): boolean {
  return stable && boxTips === null;
}
