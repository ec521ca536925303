/** Everything computed when asked for, the margins too: the worker's answers, and the command line's with --margins. */

import type { Plan, Step } from "../plan";
import { stepReportOf } from "./assemble";
import { forFindings, withoutMargins } from "./engine";
import { goodUpTo } from "./margins";
import { type Answers, failed, type GoodUpTo, known, type Part } from "./parts";

/** What the plan still takes (engine.md section 13). Seconds of work: computed only when asked for. */
export function marginsPart(plan: Plan, step: Step, stop?: () => boolean): Part<GoodUpTo> {
  const planned = stepReportOf(plan, step, forFindings);
  const tips = planned.findings.some(({ code, verdict }) => code === "tips" && verdict === "fails");
  if (tips) return failed("the piece tips as it is, so there is nothing that it still takes");
  const margins = goodUpTo(plan, step.id, stop);
  return margins === null ? failed("it was stopped") : known(margins);
}

export const computed: Answers = { ...withoutMargins, margins: (plan, step) => marginsPart(plan, step) };
