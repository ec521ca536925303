/** Every open case agrees with the independent reference, by the table of tests/cases/reference/README.md. */

import { describe, expect, it } from "vitest";
import { lineOf, reportOf, resultOf } from "../../src/checks";
import type { Plan } from "../../src/plan";
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
    expect(disagreements(plan, resultFor(plan, name), wanted as Expected)).toEqual([]);
  });
});

function resultFor(plan: Plan, name: string): ResultJson {
  return JSON.parse(lineOf(resultOf(plan, reportOf(plan), `${name}.json`))) as ResultJson;
}

function disagreements(plan: Plan, result: ResultJson, expected: Expected): readonly string[] {
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
  return agreement.disagreements;
}

describe("the comparison", () => {
  /** What an answer is not compared with: the witness need not be the same one, an extreme may lie at several s. */
  const notCompared = [
    /\.(leastAt|mostAt)\./,
    /\.(moment|shear|torque|deflection|twist)\.(most|least)\.s$/,
    /\.proved\./,
    /\.W$/,
    /\.(righting|overturning)$/,
    /\.addedLoad\.[st]$/,
    /\.goodUpTo/,
  ];

  it.each(["07-four-elastic", "70-columns-a-frames"])("finds a number of %s that is wrong, whichever", (name) => {
    const { plan, expected } = referenceCases.find((one) => one.name === name)!;
    const result = resultFor(plan, name);
    const paths = [...numbersIn(expected)].filter((path) => !notCompared.some((one) => one.test(path)));
    expect(paths.length).toBeGreaterThan(80);
    const missed = paths.filter((path) => {
      const wrong = structuredClone(expected) as Expected;
      spoil(wrong, path);
      return disagreements(plan, result, wrong).length === 0;
    });
    expect(missed).toEqual([]);
  });
});

/** Paths of all numbers, ".steps.0.weight". */
function* numbersIn(json: unknown, path = ""): Generator<string> {
  if (typeof json === "number") yield path;
  else if (typeof json === "object" && json !== null)
    for (const [key, value] of Object.entries(json)) yield* numbersIn(value, `${path}.${key}`);
}

/** Makes the number at a path larger by a tenth and a bit: more than any tolerance of the table, for better or worse. */
function spoil(json: Expected, path: string): void {
  const keys = path.split(".").slice(1);
  const last = keys.pop()!;
  let at = json as unknown as Record<string, unknown>;
  for (const key of keys) at = at[key] as Record<string, unknown>;
  const value = at[last] as number;
  // A bound is asked to be as far out as the reference's: the least is made less, all else more.
  const more = Math.max(0.1 * Math.abs(value), 0.3);
  const outward = last === "least" || last === "staticsLeast" ? -1 : 1;
  at[last] = value + outward * Math.max(more, path.includes("reaction") || path.includes("egFrames") ? 1000 : 0);
}
