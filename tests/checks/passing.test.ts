import { describe, expect, test } from "vitest";
import { awaited, reportInPassing, reportOf } from "../../src/checks";
import { complete, type PlanDocument, type StepId } from "../../src/plan";
import { edits } from "../../src/store";
import { beam, h2, layoutA, stepOne } from "../store/plans";

const moved: PlanDocument = edits["stand.move"].run(beam, { layout: layoutA, stand: h2, s: 7, t: 0 });
const later = "weld" as StepId;

describe("the report while a stand is dragged", () => {
  const before = reportOf(complete(beam), awaited);
  const now = reportInPassing(complete(moved), stepOne, before, awaited);
  const stepIn = (report: typeof before, id: StepId) => report.steps.find(({ step }) => step === id)!;

  test("the step in view is that of the whole report", () => {
    const whole = reportOf(complete(moved), awaited);
    expect(stepIn(now, stepOne).level).toBe(stepIn(whole, stepOne).level);
    expect(stepIn(now, stepOne).findings).toEqual(stepIn(whole, stepOne).findings);
    expect(stepIn(now, stepOne).level).not.toBe(stepIn(before, stepOne).level);
  });

  test("the other steps are not computed, and nothing is said of how they hold", () => {
    expect(stepIn(now, later).level).toBe(stepIn(before, later).level);
    expect(stepIn(now, later).verdict).toBe("pending");
    expect(now.verdict).not.toBe("holds");
    const next = reportInPassing(complete(moved), stepOne, now, awaited);
    expect(stepIn(next, later)).toBe(stepIn(now, later));
  });

  test("a step that was in no report before is computed", () => {
    const alone = { ...before, steps: before.steps.filter(({ step }) => step === stepOne) };
    const report = reportInPassing(complete(moved), stepOne, alone, awaited);
    const whole = reportOf(complete(moved), awaited);
    expect(stepIn(report, later).level).toBe(stepIn(whole, later).level);
  });
});
