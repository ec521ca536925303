/** Rows of the table that speak of what the reactions may be over the box. */

import type { Plan, StandId, Step } from "../../../src/plan";
import { setDownFactorOf, typeOf } from "../../../src/plan";
import type { Agreement } from "./agreement";
import type { ExpectedStand, ExpectedStep, ResultJson, ResultStand, ResultStep, WitnessJson } from "./types";
import { inBox, reactionAt } from "./witness";

export function compareBounds(
  a: Agreement,
  plan: Plan,
  step: Step,
  result: ResultJson,
  got: ResultStep,
  expected: ExpectedStep,
): void {
  if (!expected.stable) {
    const tips = result.findings.some((finding) => finding.code === "tips" && finding.verdict === "fails");
    a.holds(`step ${expected.id}: an unstable step raises tips`, tips);
  }
  if (expected.boxTips !== null) boxTips(a, result, expected);
  expected.stands.forEach((stand, index) => {
    const answer = got.stands[index];
    if (answer === undefined) return;
    const name = `step ${expected.id} stand ${stand.stand}`;
    if (stand.reaction === null || stand.reaction.least === null) nulls(a, name, answer);
    else reactions(a, name, plan, step, got, answer, stand);
    if (stand.reaction !== null) {
      const { staticsLeast, staticsMost } = stand.reaction;
      a.near(`${name} staticsLeast`, answer.reaction?.staticsLeast, staticsLeast, 1e-5 * stand.W);
      a.near(`${name} staticsMost`, answer.reaction?.staticsMost, staticsMost, 1e-5 * stand.W);
    }
  });
}

/** A failing `tips` names all of `must` and at least one of `names` of one entry. */
function boxTips(a: Agreement, result: ResultJson, expected: ExpectedStep): void {
  const messages = result.findings
    .filter((finding) => finding.code === "tips" && finding.verdict === "fails" && finding.step === expected.id)
    .map((finding) => finding.message);
  const named = messages.some((message) =>
    expected.boxTips?.some(
      (entry) =>
        entry.must.every((name) => message.includes(name)) && entry.names.some((name) => message.includes(name)),
    ),
  );
  a.holds(`step ${expected.id}: tips names what tips it: ${messages} of ${JSON.stringify(expected.boxTips)}`, named);
}

function nulls(a: Agreement, name: string, got: ResultStand): void {
  const left = [got.reaction?.least, got.reaction?.most, got.reaction?.certified];
  const rest = [got.legFramesMost, got.leastAt, got.mostAt, got.utilisation];
  a.holds(
    `${name}: bounds are null`,
    [...left, ...rest].every((value) => value === null || (value === undefined && got.reaction === null)),
  );
}

function reactions(
  a: Agreement,
  name: string,
  plan: Plan,
  step: Step,
  got: ResultStep,
  answer: ResultStand,
  expected: ExpectedStand,
): void {
  const { W } = expected;
  const reaction = answer.reaction;
  if (reaction === null || reaction.least === null || reaction.most === null) {
    a.holds(`${name}: least and most are missing`, false);
    return;
  }
  const { least, most, level, staticsLeast, staticsMost, certified } = reaction;
  const inOrder = [staticsLeast, least, level, most, staticsMost];
  a.holds(
    `${name}: ${inOrder} ascend`,
    inOrder.every((value, index) => index === 0 || value >= inOrder[index - 1]! - 1e-6 * W),
  );

  const wanted = expected.reaction as { least: number; most: number };
  a.holds(`${name}: least ${least} is as far out as ${wanted.least}`, least <= wanted.least + 1e-3 * W);
  a.holds(`${name}: most ${most} is as far out as ${wanted.most}`, most >= wanted.most - 1e-3 * W);
  if (expected.proved !== null) {
    a.holds(
      `${name}: least ${least} is within the proved ${expected.proved.least}`,
      least >= expected.proved.least - 1e-3 * W,
    );
    a.holds(
      `${name}: most ${most} is within the proved ${expected.proved.most}`,
      most <= expected.proved.most + 1e-3 * W,
    );
  }
  if (expected.contact.length > 0) {
    witness(a, `${name} leastAt`, plan, step, expected, answer.leastAt, least);
    witness(a, `${name} mostAt`, plan, step, expected, answer.mostAt, most);
  }

  a.holds(`${name}: certified`, certified !== null);
  if (certified !== null) {
    a.holds(
      `${name}: certified least ${certified.least} encloses ${wanted.least}`,
      certified.least <= wanted.least + 2e-5 * W,
    );
    a.holds(
      `${name}: certified most ${certified.most} encloses ${wanted.most}`,
      certified.most >= wanted.most - 2e-5 * W,
    );
    a.holds(`${name}: certified least ${certified.least} is near ${least}`, certified.least >= least - 1e-3 * W);
    a.holds(`${name}: certified most ${certified.most} is near ${most}`, certified.most <= most + 1e-3 * W);
  }

  a.both(`${name} legFramesMost`, answer.legFramesMost, expected.legFramesMost, (one, two) => {
    two.forEach((force, index) => {
      const bound = expected.proved?.legFramesMost[index] ?? Number.POSITIVE_INFINITY;
      a.holds(
        `${name} legFramesMost[${index}] ${one[index]} is as far out as ${force}`,
        one[index]! >= force - 1e-3 * W,
      );
      a.holds(`${name} legFramesMost[${index}] ${one[index]} is within ${bound}`, one[index]! <= bound + 1e-3 * W);
    });
  });

  const { ratedLoad } = typeOf(plan, expected.stand as StandId);
  const frames = answer.legFramesMost ?? [0, 0];
  const governing = setDownFactorOf(plan, step) * Math.max(most, 2 * Math.max(...frames));
  const utilisation = ratedLoad === null ? null : governing / ratedLoad;
  a.near(`${name} utilisation`, answer.utilisation, utilisation, 1e-6 * Math.max(1, utilisation ?? 0));
  a.same(`${name} step`, got.id, step.id);
}

/** The third test of a bound: its witness lies in the box, balances, and gives the value back. */
function witness(
  a: Agreement,
  name: string,
  plan: Plan,
  step: Step,
  expected: ExpectedStand,
  at: WitnessJson | null,
  value: number,
): void {
  if (at === null) {
    a.holds(`${name}: missing`, false);
    return;
  }
  for (const outside of inBox(plan, step, at)) a.holds(`${name}: ${outside}`, false);
  const solved = reactionAt(plan, step, at, expected.stand);
  a.holds(
    `${name}: residuals ${JSON.stringify(solved.residuals)}`,
    solved.residuals.every((one) => one <= 1e-8),
  );
  a.near(`${name} gives the value back`, solved.reaction, value, 1e-4 * expected.W);
}
