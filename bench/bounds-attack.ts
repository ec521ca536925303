/**
 * Attacks the bounds harder than the tests do: `npx tsx bench/bounds-attack.ts [tries a plan] [plans] [seed]`, by default
 * 100 000 tries at each of 200 plans. Prints what got farther than the bounds by 0.1 % of the weight, or than the proof.
 */

import { certifiedBoundsOf } from "../src/statics";
import { attack, beaten } from "../tests/statics/bounds/attack";
import { randomNumbers, randomPlan } from "../tests/statics/bounds/plans";

const [tries = 100_000, plans = 200, seed = 1] = process.argv.slice(2).map(Number);
const random = randomNumbers(seed);
let [bounded, lost] = [0, 0];
for (let n = 0; n < plans; n++) {
  const plan = randomPlan(random);
  const bounds = certifiedBoundsOf(plan, plan.steps[0]!);
  if (bounds.status !== "bounded") continue;
  bounded++;
  for (const words of beaten(bounds, attack(plan, tries, random), 1e-3)) {
    lost++;
    console.log(`plan ${n}: ${words}`);
  }
}
console.log(`${tries} tries at each of ${bounded} plans (seed ${seed}): beaten ${lost} times`);
process.exit(lost === 0 ? 0 : 1);
