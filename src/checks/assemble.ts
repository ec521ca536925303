/** A plan's report, put together from its parts. */

import type { Layout, Plan, Step, StepId } from "../plan";
import { layoutOf } from "../plan";
import { assembleStep, type StepLevel } from "../statics";
import { type StepContext, stepContext } from "./context";
import { boundsProved, diagramsPart, levelPart, slabPart, tippingPart, withoutMargins } from "./engine";
import { type Findings, gatherNotChecked, layoutFindings, stepFindings, worstFirst } from "./findings";
import { memoByIdentity } from "./memo";
import { type Answers, knownValue, type StepParts } from "./parts";
import { type Finding, type LayoutReport, type Report, type StepReport, worstOf } from "./report";

/** The parts of one step; what takes long comes from `answers`. */
export function stepPartsOf(plan: Plan, step: Step, answers: Answers): StepParts {
  const certificates = answers.certificates(plan, step);
  // The proof comes with the bounds as it leaves them, so that both belong together.
  const bounds = certificates.status === "known" ? boundsProved(certificates.value) : answers.bounds(plan, step);
  return {
    level: levelPart(plan, step),
    tipping: tippingPart(plan, step, bounds),
    diagrams: diagramsPart(plan, step),
    bounds,
    certificates,
    strength: answers.strength(plan, step),
    slab: slabPart(plan, step, bounds),
    margins: answers.margins(plan, step),
    standing: answers.standing(plan, step),
  };
}

/** The same from a report. */
export function contextOf(plan: Plan, parts: StepParts & { readonly step: Step["id"] }): StepContext | null {
  const step = plan.steps.find((one) => one.id === parts.step)!;
  return stepContextOf(plan, step, parts);
}

/** What the checks of a step read; null where the level solution is not there. */
export function stepContextOf(plan: Plan, step: Step, parts: StepParts): StepContext | null {
  const level: StepLevel | null = knownValue(parts.level);
  const tipping = knownValue(parts.tipping);
  if (level === null || tipping === null) return null;
  const { bounds, strength, slab, margins } = parts;
  return stepContext(plan, step, { model: assembleStep(plan, step), level, tipping, bounds, strength, slab, margins });
}

const findingsOfStep = memoByIdentity(
  (plan: Plan, step: Step, parts: StepParts) => [
    step,
    layoutOf(plan, step),
    plan.piece,
    plan.standTypes,
    plan.stands,
    plan.criteria,
    plan.display,
    plan.bay,
    parts.level,
    parts.tipping,
    parts.bounds,
    parts.strength,
    parts.slab,
    parts.margins,
  ],
  (plan: Plan, step: Step, parts: StepParts): Findings => {
    const context = stepContextOf(plan, step, parts);
    return context === null ? withoutLevel(plan, step, parts) : stepFindings(context);
  },
);

const findingsOfLayout = memoByIdentity(
  (plan: Plan, layout: Layout, floor: LayoutReport["floor"]) => [
    layout,
    plan.piece,
    plan.standTypes,
    plan.stands,
    plan.criteria,
    plan.display,
    plan.bay,
    floor,
  ],
  (plan: Plan, layout: Layout, floor: LayoutReport["floor"]): Findings => layoutFindings(plan, layout, { floor }),
);

/** Without a level solution nothing can be said of the step. */
function withoutLevel(plan: Plan, step: Step, { level }: StepParts): Findings {
  const waiting = level.status === "pending";
  const finding: Finding = {
    code: "tips",
    verdict: waiting ? "pending" : "unknown",
    step: step.id,
    layout: layoutOf(plan, step).id,
    stand: null,
    at: null,
    message: waiting
      ? "What the stands carry is still being computed."
      : `What the stands carry could not be computed${level.status === "failed" ? ` (${level.why})` : ""}. Ask the qualified person and follow local rules.`,
    value: null,
    limit: null,
    unit: null,
    basis: "statics",
    changed: false,
    use: 0,
  };
  return { findings: [finding], notChecked: [] };
}

export function layoutReportOf(plan: Plan, layout: Layout, answers: Answers = withoutMargins): LayoutReport {
  const floor = answers.floor(plan, layout);
  return { layout: layout.id, floor, ...findingsOfLayout(plan, layout, floor) };
}

export function stepReportOf(plan: Plan, step: Step, answers: Answers = withoutMargins): StepReport {
  const parts = stepPartsOf(plan, step, answers);
  const own = findingsOfStep(plan, step, parts);
  const layout = layoutOf(plan, step);
  const floorFindings = layoutReportOf(plan, layout, answers).findings;
  return {
    step: step.id,
    layout: layout.id,
    placements: layout.placements,
    ...parts,
    ...own,
    floorFindings,
    verdict: worstOf([...own.findings, ...floorFindings].map((finding) => finding.verdict)),
  };
}

/** The whole report. `answers` says where the slow parts come from; without it all but the margins are computed. */
export function reportOf(plan: Plan, answers: Answers = withoutMargins): Report {
  const steps = plan.steps.map((step) => stepReportOf(plan, step, answers));
  const layouts = plan.layouts.map((layout) => layoutReportOf(plan, layout, answers));
  const findings = [...steps, ...layouts].flatMap((one) => one.findings).sort(worstFirst);
  return {
    verdict: worstOf(findings.map((finding) => finding.verdict)),
    steps,
    layouts,
    findings,
    notChecked: gatherNotChecked([...steps, ...layouts].map((one) => one.notChecked)),
  };
}

/**
 * The report while a stand is dragged: the step in view is computed, the others stay as they were before, with a
 * verdict that is still to come. A report of every step would not be there within a frame.
 */
export function reportInPassing(plan: Plan, inView: StepId, before: Report, answers: Answers): Report {
  const steps = plan.steps.map((step): StepReport => {
    const last = step.id === inView ? undefined : before.steps.find((one) => one.step === step.id);
    if (last === undefined) return stepReportOf(plan, step, answers);
    return last.verdict === "pending" ? last : { ...last, verdict: "pending" };
  });
  const layouts = plan.layouts.map((layout) => layoutReportOf(plan, layout, answers));
  const parts = [...steps, ...layouts];
  return {
    verdict: worstOf([...steps.map(({ verdict }) => verdict), ...layouts.flatMap(verdictsOf)]),
    steps,
    layouts,
    findings: parts.flatMap((one) => one.findings).sort(worstFirst),
    notChecked: gatherNotChecked(parts.map((one) => one.notChecked)),
  };
}

const verdictsOf = ({ findings }: LayoutReport) => findings.map(({ verdict }) => verdict);

/** All findings of a plan, worst first; works while bounds are pending. */
export function findingsOf(plan: Plan, answers: Answers = withoutMargins): readonly Finding[] {
  return reportOf(plan, answers).findings;
}
