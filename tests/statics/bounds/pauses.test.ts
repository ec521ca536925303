/** A proof can be looked into while it runs: what it says at a pause holds, and its end is that of the run without pauses. */

import { describe, expect, test } from "vitest";
import {
  boundsOf,
  boundsSearch,
  certifiedBoundsOf,
  certifiedBoundsSearch,
  type StepBounds,
} from "../../../src/statics";
import { randomNumbers, randomPlan } from "./plans";

const random = randomNumbers(77);
const plans = (["rigid", "elastic", "torsion-flexible"] as const).map((beam) =>
  randomPlan(random, { stands: 4, masses: 6, beam, levelTolerance: 0.0005, topTilt: 0.001 }),
);

function standsOf(bounds: StepBounds) {
  if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
  return bounds.stands;
}

describe.each([...plans.keys()])("plan %i", (index) => {
  const plan = plans[index]!;
  const [step] = plan.steps;
  const whole = standsOf(certifiedBoundsOf(plan, step!));

  /** N. */
  const rounding = 1e-12 * Math.max(...whole.map(({ staticsMost }) => staticsMost));

  test("what is known at a pause holds, and only gets narrower", () => {
    const search = certifiedBoundsSearch(plan, step!);
    let [pauses, looks] = [0, 0];
    let before = whole.map(({ staticsLeast, staticsMost }) => ({ least: staticsLeast, most: staticsMost }));
    let next = search.next();
    for (; next.done !== true; next = search.next()) {
      pauses++;
      if (next.value === undefined || pauses % 7 !== 0) continue;
      looks++;
      const now = standsOf(next.value());
      now.forEach((stand, i) => {
        expect(stand.outer.most).toBeGreaterThanOrEqual(whole[i]!.most);
        expect(stand.outer.least).toBeLessThanOrEqual(whole[i]!.least);
        expect(stand.most).toBeLessThanOrEqual(whole[i]!.most);
        expect(stand.least).toBeGreaterThanOrEqual(whole[i]!.least);
        expect(stand.gap).toBe(Math.max(stand.least - stand.outer.least, stand.outer.most - stand.most));
        expect(stand.outer.most).toBeLessThanOrEqual(before[i]!.most + rounding);
        expect(stand.outer.least).toBeGreaterThanOrEqual(before[i]!.least - rounding);
      });
      before = now.map(({ outer }) => outer);
    }
    expect(looks).toBeGreaterThan(5);
    expect(standsOf(next.value)).toEqual(whole);
  });

  test("climbs pause too, and end where they end without", () => {
    const search = boundsSearch(plan, step!);
    let pauses = 0;
    let next = search.next();
    for (; next.done !== true; next = search.next()) pauses++;
    expect(pauses).toBeGreaterThan(whole.length);
    expect(next.value).toEqual(boundsOf(plan, step!));
  });
});
