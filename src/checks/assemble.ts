/** A plan's report, put together from its parts. */

import type { Layout, Plan, Step } from "../plan";
import { layoutOf } from "../plan";
import { computed, diagramsPart, levelPart, tippingPart } from "./engine";
import type { Answers } from "./parts";
import type { Finding, LayoutReport, Report, StepReport } from "./report";

/** The parts of one step; what takes long comes from `answers`. */
export function stepReportOf(plan: Plan, step: Step, answers: Answers = computed): StepReport {
  const bounds = answers.bounds(plan, step);
  return {
    step: step.id,
    layout: step.layout,
    placements: layoutOf(plan, step).placements,
    level: levelPart(plan, step),
    tipping: tippingPart(plan, step, bounds),
    diagrams: diagramsPart(plan, step),
    bounds,
    certificates: answers.certificates(plan, step),
    strength: answers.strength(plan, step),
    margins: answers.margins(plan, step),
    verdict: "pending",
    findings: [],
    notChecked: [],
  };
}

export function layoutReportOf(plan: Plan, layout: Layout, answers: Answers = computed): LayoutReport {
  return {
    layout: layout.id,
    floor: answers.floor(plan, layout),
    slab: answers.slab(plan, layout),
    findings: [],
    notChecked: [],
  };
}

/** The whole report. `answers` says where the slow parts come from; without it all but the margins are computed. */
export function reportOf(plan: Plan, answers: Answers = computed): Report {
  const steps = plan.steps.map((step) => stepReportOf(plan, step, answers));
  const layouts = plan.layouts.map((layout) => layoutReportOf(plan, layout, answers));
  return { verdict: "pending", pending: true, steps, layouts, findings: [], notChecked: [] };
}

/** All findings of a report's plan, worst first; works while bounds are pending. */
export function findingsOf(plan: Plan, answers: Answers = computed): readonly Finding[] {
  return reportOf(plan, answers).findings;
}
