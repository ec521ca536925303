/** Nothing tried at random goes farther than the bounds, and nothing at all farther than what is proved. */

import { describe, expect, test } from "vitest";
import { certifiedBoundsOf } from "../../src/statics";
import { attack, beaten } from "../statics/bounds/attack";
import { randomNumbers, randomPlan } from "../statics/bounds/plans";

const plans = 200;
const tries = 2_000;
const groups = 10;

describe(`${tries} tries each at ${plans} plans`, () => {
  test.each(Array.from({ length: groups }, (_, index) => 1_000 + index))("seed %i", (seed) => {
    const random = randomNumbers(seed);
    let bounded = 0;
    for (let n = 0; n < plans / groups; n++) {
      const plan = randomPlan(random);
      const bounds = certifiedBoundsOf(plan, plan.steps[0]!);
      if (bounds.status !== "bounded") continue;
      bounded++;
      expect(beaten(bounds, attack(plan, tries, random), 1e-3), `seed ${seed}, plan ${n}`).toEqual([]);
    }
    expect(bounded).toBe(plans / groups);
  });
});
