import { describe, expect, it } from "vitest";
import { assembleStep } from "../../src/statics";
import { referenceCases } from "../helpers/reference";

describe.each(referenceCases)("contacts of reference case $name", ({ plan, expected }) => {
  it("lie where the reference has them", () => {
    const length = Math.max(1, ...plan.piece.outline.map(([s]) => s));
    for (const [index, step] of plan.steps.entries()) {
      const model = assembleStep(plan, step);
      const right = expected.steps[index];
      expect(model.stands.map(({ stand }) => stand)).toEqual(right.stands.map((s: { stand: string }) => s.stand));
      expect(model.stands.filter((s) => s.estimated).map((s) => s.stand)).toEqual(right.estimated);
      for (const [at, stand] of model.stands.entries()) {
        const contact: [number, number][] = right.stands[at].contact;
        expect(stand.intervals).toHaveLength(contact.length);
        for (const [k, { from, to }] of stand.intervals.entries()) {
          expect(Math.abs(from - contact[k]![0])).toBeLessThanOrEqual(1e-7 * length);
          expect(Math.abs(to - contact[k]![1])).toBeLessThanOrEqual(1e-7 * length);
        }
      }
    }
  });
});
