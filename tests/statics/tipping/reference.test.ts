import { describe, expect, it } from "vitest";
import { signedArea } from "../../../src/geometry";
import { type PartTipping, tippingOf } from "../../../src/statics";
import { type ExpectedEdge, type ReferenceStep, referenceSteps } from "./reference";

/** Edges of both answers in the same order, ours turned until it begins where the other does. */
function matched(ours: PartTipping, expected: readonly ExpectedEdge[]) {
  const start = ours.edges.findIndex(({ from }) => {
    const [s, t] = expected[0]!.from;
    return Math.hypot(from[0] - s, from[1] - t) < 1e-7;
  });
  expect(start).toBeGreaterThanOrEqual(0);
  return expected.map((edge, i) => ({ edge, own: ours.edges[(start + i) % expected.length]! }));
}

const near = (value: number | null, wanted: number | null, tolerance: number): void => {
  if (wanted === null || value === null) expect(value).toBe(wanted);
  else expect(Math.abs(value - wanted)).toBeLessThanOrEqual(tolerance);
};

function tipping({ model, level, plan, most, expected }: ReferenceStep): PartTipping[] {
  const tips = expected.stable && expected.stands.every((stand) => stand.reaction?.most == null);
  expect(plan.criteria.personLoad).toBeUndefined();
  return tippingOf(model, level, plan.piece, tips ? null : most, 1334);
}

describe("tipping agrees with the reference cases", () => {
  for (const reference of referenceSteps()) {
    it(reference.name, () => {
      const parts = tipping(reference);
      expect(parts).toHaveLength(reference.expected.parts.length);
      for (const [index, ours] of parts.entries()) {
        const part = reference.expected.parts[index]!;
        const length = part.to - part.from;
        expect(ours.edges).toHaveLength(part.tipping.edges.length);
        if (ours.edges.length === 0) continue;
        expect(signedArea(ours.edges.map(({ from }) => from))).toBeGreaterThan(0);
        for (const { own, edge } of matched(ours, part.tipping.edges)) {
          near(own.to[0], edge.to[0], 1e-7);
          near(own.to[1], edge.to[1], 1e-7);
          near(own.distance, edge.distance, 1e-6 * length);
          near(own.reserve, edge.reserve, 1e-5 * (edge.reserve ?? 0));
          const scale = (edge.righting ?? 0) + (edge.overturning ?? 0);
          near(own.margin, edge.margin, 1e-6 * scale);
          near(own.righting, edge.righting, 1e-6 * scale);
          near(own.overturning, edge.overturning, 1e-6 * scale);
        }
        const { addedLoad } = part.tipping;
        near(ours.addedLoad?.value ?? null, addedLoad?.value ?? null, 1e-5 * (addedLoad?.value ?? 0));
      }
    });
  }
});
