/** Facts → findings: told in words, marked with their basis, sorted and gathered. */

import type { FindingCode, Layout, Plan, StepId } from "../plan";
import { criteriaOf, findingCodes } from "../plan";
import type { StepContext } from "./context";
import { contactChecks } from "./families/contact";
import type { LeftOut, Outcome } from "./families/fact";
import { floorChecks } from "./families/floor";
import { ratingChecks } from "./families/ratings";
import { readingChecks } from "./families/readings";
import { stabilityChecks } from "./families/stability";
import { strengthChecks } from "./families/strength";
import { tippingChecks } from "./families/tipping";
import type { LayoutParts } from "./parts";
import { type Finding, type FindingLine, type NotChecked, rankOf } from "./report";
import { basisOf, sayIn, sentenceOf } from "./words";

export interface Findings {
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

const families: readonly ((context: StepContext) => Outcome)[] = [
  tippingChecks,
  contactChecks,
  ratingChecks,
  stabilityChecks,
  strengthChecks,
  readingChecks,
];

/** Every check of one step, before it is told. */
export function stepOutcomes(context: StepContext): readonly Outcome[] {
  return families.map((family) => family(context));
}

/** Every check of one layout's floor, before it is told. */
export function floorOutcomes(plan: Plan, { floor }: Pick<LayoutParts, "floor">): readonly Outcome[] {
  return [floorChecks(plan, floor)];
}

/** Every check of one step. */
export function stepFindings(context: StepContext): Findings {
  return tell(context.plan, context.layout, context.step.id, stepOutcomes(context));
}

/** Every check of one layout's floor. */
export function layoutFindings(plan: Plan, layout: Layout, parts: Pick<LayoutParts, "floor">): Findings {
  return tell(plan, layout, null, floorOutcomes(plan, parts));
}

function tell(plan: Plan, layout: Layout, step: StepId | null, outcomes: readonly Outcome[]): Findings {
  const say = sayIn(plan.display);
  const required = new Set(criteriaOf(plan).require);
  const findings = outcomes.flatMap(({ facts }) =>
    facts.map((fact): Finding => {
      const { code, verdict, stand, at, value, limit, unit, use } = fact;
      const { basis, changed } = basisOf(fact.basis, plan);
      const place = { step, layout: layout.id, stand, at };
      return { code, verdict, ...place, message: sentenceOf(fact, say), value, limit, unit, basis, changed, use };
    }),
  );
  const leftOut = gathered(outcomes.flatMap((outcome) => outcome.leftOut));
  const missed = leftOut.filter(({ code }) => required.has(code)).map((one) => requiredButLeftOut(one, layout, step));
  return {
    findings: [...findings, ...missed].sort(worstFirst),
    notChecked: leftOut.filter(({ code }) => !required.has(code)).map(({ code, why }) => ({ check: code, why })),
  };
}

function requiredButLeftOut({ code, why }: LeftOut, layout: Layout, step: StepId | null): Finding {
  return {
    code,
    verdict: "unknown",
    step,
    layout: layout.id,
    stand: null,
    at: null,
    message: `The plan asks for this check and it could not be made: ${why}. Give what is missing.`,
    value: null,
    limit: null,
    unit: null,
    basis: "require: the shop's own",
    changed: true,
    use: 0,
  };
}

/** One entry a code, with every reason once. */
function gathered(leftOut: readonly LeftOut[]): readonly LeftOut[] {
  const reasons = new Map<FindingCode, Set<string>>();
  for (const { code, why } of leftOut) reasons.set(code, (reasons.get(code) ?? new Set()).add(why));
  return [...reasons].map(([code, whys]) => ({ code, why: [...whys].join("; ") }));
}

/** One entry a code over several steps and layouts, in the order of the codes. */
export function gatherNotChecked(lists: Iterable<readonly NotChecked[]>): readonly NotChecked[] {
  const all = [...lists].flat().map(({ check, why }) => ({ code: check, why }));
  return gathered(all)
    .map(({ code, why }) => ({ check: code, why }))
    .sort((one, two) => findingCodes.indexOf(one.check) - findingCodes.indexOf(two.check));
}

/** Among findings of one verdict: what drops the piece or a stand first, what merely wants doing last. */
const gravestFirst: readonly FindingCode[] = [
  "tips",
  "crane-holds",
  "stand-over-rating",
  "stand-not-rated-under",
  "rolls-over",
  "tip-reserve",
  "stand-tips-over",
  "slides",
  "rating-centre",
  "stand-not-in-service",
  "not-under-piece",
  "single-stand-loss",
  "stand-lifts-off",
  "stand-never-bears",
  "readings-disagree",
];
const gravityOf = new Map(
  [...new Set([...gravestFirst, ...findingCodes])].map((code, index): [FindingCode, number] => [code, index]),
);

/** Order of findings: by verdict, then by gravity of the code, then by how much of the limit is used. */
export function worstFirst(one: Finding, two: Finding): number {
  return (
    rankOf(one.verdict) - rankOf(two.verdict) ||
    gravityOf.get(one.code)! - gravityOf.get(two.code)! ||
    (one.use === two.use ? 0 : two.use - one.use)
  );
}

/** The same code in one layout is one line: the worst number, and how many more stands and steps do not hold either. */
export function linesOf(findings: readonly Finding[]): readonly FindingLine[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of [...findings].sort(worstFirst)) {
    const key = JSON.stringify([finding.code, finding.layout]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()].map((all) => {
    const worst = all[0]!;
    const alike = all.filter((finding) => finding.verdict !== "holds" || worst.verdict === "holds");
    const others = <Key extends "stand" | "step">(key: Key) =>
      new Set(alike.map((finding) => finding[key]).filter((id) => id !== null && id !== worst[key])).size;
    return { worst, moreStands: others("stand"), moreSteps: others("step"), all };
  });
}
