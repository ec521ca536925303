/** Every open case agrees with the independent reference, by the table of tests/cases/reference/README.md. */

import { describe, expect, it } from "vitest";
import { lineOf, reportOf, resultOf } from "../../src/checks";
import { referenceCases } from "../helpers/reference";
import { Agreement } from "./agreement/agreement";
import { compareBounds } from "./agreement/bounds";
import { compareFloor } from "./agreement/floor";
import { compareStep } from "./agreement/step";
import { compareTipping } from "./agreement/tipping";
import type { Expected, ResultJson } from "./agreement/types";

describe("the reference cases", () => {
  it("are there", () => expect(referenceCases.length).toBeGreaterThanOrEqual(28));

  it.each(referenceCases.map((one) => [one.name, one] as const))("%s", (name, { plan, expected: wanted }) => {
    const expected = wanted as Expected;
    const report = reportOf(plan);
    const result = JSON.parse(lineOf(resultOf(plan, report, `${name}.json`))) as ResultJson;
    const agreement = new Agreement();
    expected.steps.forEach((step, index) => {
      const got = result.steps[index]!;
      compareStep(agreement, plan, got, step);
      compareBounds(agreement, plan, plan.steps[index]!, result, got, step);
      step.parts.forEach((part, number) => {
        compareTipping(agreement, `step ${step.id} part ${number}`, got.parts[number]!, part);
      });
    });
    compareFloor(agreement, plan, result, expected);
    expect(agreement.disagreements).toEqual([]);
  });
});
