/** Bounds of one step, five stands and ten uncertain masses: attained values with witnesses, and the proof, in processor time. */

import { boundsOf, certifiedBoundsOf, solveStep } from "../src/statics";
import { randomNumbers, randomPlan } from "../tests/statics/bounds/plans";
import { machine, used, writeReport } from "./measure";

const plans = 60;

const quantile = (values: readonly number[], share: number) =>
  values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))]!;

/** As a shop would have it: tops within 3 mm by laser, or within 0.5 mm by feeler gauge. */
const settings = [
  { levelTolerance: 0.003, topTilt: 0.001 },
  { levelTolerance: 0.0005, topTilt: 0.001 },
];

// Warms up: the page's worker is warm after its first plans.
const early = randomNumbers(1);
for (let n = 0; n < 15; n++) {
  const plan = randomPlan(early, { stands: 5, masses: 10 });
  certifiedBoundsOf(plan, plan.steps[0]!);
}

console.log(machine);
const figures: object[] = [];
for (const beam of ["rigid", "elastic", "torsion-flexible"] as const) {
  for (const { levelTolerance, topTilt } of settings) {
    const random = randomNumbers(1_234);
    const attained: number[] = [];
    const proof: number[] = [];
    let [proved, stands, farther] = [0, 0, 0];
    for (let n = 0; n < plans; n++) {
      const plan = randomPlan(random, { stands: 5, masses: 10, beam, levelTolerance, topTilt });
      const step = plan.steps[0]!;
      const start = used();
      const first = boundsOf(plan, step);
      const between = used();
      const bounds = certifiedBoundsOf(plan, step);
      if (bounds.status !== "bounded" || first.status !== "bounded") continue;
      attained.push(between - start);
      proof.push(used() - between);
      stands += bounds.stands.length;
      proved += bounds.stands.filter(({ certified }) => certified !== null).length;
      const weight = solveStep(plan, step).parts[0]!.resultant.force;
      farther += bounds.stands.filter(
        ({ least, most }, i) => first.stands[i]!.least - least > 1e-3 * weight || most - first.stands[i]!.most > 1e-3 * weight, // biome-ignore format: one row
      ).length;
    }
    const row = {
      beam,
      levelTolerance,
      attainedMedian: quantile(attained, 0.5),
      attained90: quantile(attained, 0.9),
      proofMedian: quantile(proof, 0.5),
      proof90: quantile(proof, 0.9),
      proofMost: quantile(proof, 1),
      proved: `${proved} of ${stands}`,
      proofWentFartherBy0_1Percent: farther,
    };
    figures.push(row);
    const ms = (value: number) => `${value.toFixed(1)} ms`;
    console.log(
      `${beam.padEnd(16)} ±${levelTolerance * 1000} mm: attained ${ms(row.attainedMedian)} (90 %: ${ms(row.attained90)}), ` +
        `proof ${ms(row.proofMedian)} (90 %: ${ms(row.proof90)}, most ${ms(row.proofMost)}), proved ${row.proved}, ` +
        `the proof went farther by over 0.1 % of the weight at ${farther}`,
    );
  }
}
writeReport("bounds", { plans, figures });
