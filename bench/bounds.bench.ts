/** Bounds of one step, five stands and ten uncertain masses: attained values with witnesses, and these with the proof, on a machine that does nothing else. */

import { boundsOf, certifiedBoundsOf, solveStep } from "../src/statics";
import { randomNumbers, randomPlan } from "../tests/statics/bounds/plans";
import { machine, writeReport } from "./measure";

const plans = 60;

const quantile = (values: readonly number[], share: number) =>
  values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))]!;

/** Notes how long a run took, ms. */
function timed<Answer>(times: number[], run: () => Answer): Answer {
  const start = performance.now();
  const answer = run();
  times.push(performance.now() - start);
  return answer;
}

/** As a shop would have it: tops within 3 mm by laser, or within 0.5 mm by feeler gauge. */
const settings = [
  { levelTolerance: 0.003, topTilt: 0.001 },
  { levelTolerance: 0.0005, topTilt: 0.001 },
];

console.log(machine);
const figures: object[] = [];
for (const beam of ["rigid", "elastic", "torsion-flexible"] as const) {
  for (const { levelTolerance, topTilt } of settings) {
    const drawn = (seed: number) => {
      const random = randomNumbers(seed);
      return Array.from({ length: plans }, () => {
        const plan = randomPlan(random, { stands: 5, masses: 10, beam, levelTolerance, topTilt });
        return { plan, step: plan.steps[0]! };
      });
    };
    // Warms up: the page's worker is warm after its first plans.
    for (const { plan, step } of drawn(1)) boundsOf(plan, step);
    const attained: number[] = [];
    const firsts = drawn(1_234).map(({ plan, step }) => timed(attained, () => boundsOf(plan, step)));
    const proof: number[] = [];
    let [proved, stands, farther] = [0, 0, 0];
    drawn(1_234).forEach(({ plan, step }, n) => {
      const first = firsts[n]!;
      const bounds = timed(proof, () => certifiedBoundsOf(plan, step));
      if (bounds.status !== "bounded" || first.status !== "bounded") throw new Error("a plan tips");
      stands += bounds.stands.length;
      proved += bounds.stands.filter(({ certified }) => certified !== null).length;
      const weight = solveStep(plan, step).parts[0]!.resultant.force;
      farther += bounds.stands.filter(
        ({ least, most }, i) => first.stands[i]!.least - least > 1e-3 * weight || most - first.stands[i]!.most > 1e-3 * weight, // biome-ignore format: one row
      ).length;
    });
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
