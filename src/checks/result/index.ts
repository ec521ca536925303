/** Report → result file. No other room knows its keys. */

import type { Plan } from "../../plan";
import { contextOf } from "../assemble";
import type { StepContext } from "../context";
import type { Finding, Report, StepReport } from "../report";
import { floorEntry } from "./floor";
import { type Json, number, place } from "./json";
import { stepEntry } from "./step";

export type { Json } from "./json";

/** The result file of a plan whose parts have all been computed; `file` as given on the command line. */
export function resultOf(plan: Plan, report: Report, file: string): Json {
  return {
    format: "trestleboard-result",
    version: 1,
    file,
    title: plan.title,
    verdict: report.verdict,
    notChecked: report.notChecked.map(({ check, why }) => ({ check, why })),
    steps: report.steps.map((step) => stepEntry(wholeContext(plan, step), step)),
    floor: plan.bay === null ? [] : report.layouts.map(floorEntry),
    findings: report.findings.map(findingEntry),
  };
}

function wholeContext(plan: Plan, step: StepReport): StepContext {
  const context = contextOf(plan, step);
  if (context === null) throw new Error(`step ${step.step} has no level solution`);
  return context;
}

function findingEntry(finding: Finding): Json {
  const { code, verdict, step, layout, stand, at, message, value, limit, unit, basis } = finding;
  return {
    code,
    verdict,
    step,
    layout,
    stand,
    at: place(at),
    message,
    value: number(value),
    limit: number(limit),
    unit,
    basis,
  };
}

/** The line of a plan that could not be read. */
export function refusalOf(file: string, refusal: { readonly path: string; readonly message: string }): Json {
  return { format: "trestleboard-refusal", version: 1, file, path: refusal.path, message: refusal.message };
}

/** One line of JSON, without its line end. */
export function lineOf(json: Json): string {
  return JSON.stringify(json);
}
