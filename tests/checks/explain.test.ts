/** Help on numbers: the formula with a plan's values put in comes out to every figure shown. */

import { describe, expect, it } from "vitest";
import { type Explanation, entryOf, explain, numberNames, reportOf } from "../../src/checks";
import { referenceCases } from "../helpers/reference";
import { planWith } from "./base";

/** An evaluator other than the program's: JavaScript's own. */
function evaluated(text: string): number {
  expect(text).toMatch(/^[\d\s.e+\-*/(),]*(?:(?:min|max|sqrt|hypot|log10|abs)\([\d\s.e+\-*/(),]*|[\d\s.e+\-*/(),])*$/);
  const { min, max, sqrt, hypot, log10, abs } = Math;
  return new Function("min", "max", "sqrt", "hypot", "log10", "abs", `return ${text}`)(
    min,
    max,
    sqrt,
    hypot,
    log10,
    abs,
  ) as number;
}

/** Everything that can be explained of a plan. */
function* explanations(plan: (typeof referenceCases)[number]["plan"]): Generator<Explanation> {
  for (const report of reportOf(plan).steps) {
    const parts = report.tipping.status === "known" ? report.tipping.value : [];
    const subjects = [
      {},
      ...report.placements.map(({ stand }) => ({ stand })),
      ...parts.flatMap(({ edges }, part) => [{ part }, ...edges.map((edge) => ({ part, edge }))]),
    ];
    for (const name of numberNames)
      for (const subject of subjects) {
        const explanation = explain(name, plan, report, subject);
        if (explanation !== null) yield explanation;
      }
  }
}

describe("help on numbers", () => {
  it.each(referenceCases.map(({ name, plan }) => [name, plan] as const))("comes out as shown: %s", (_name, plan) => {
    let count = 0;
    for (const { label, text, shown, value } of explanations(plan)) {
      expect(Number(evaluated(text).toPrecision(5)) + 0, `${label}: ${text}`).toBe(Number(shown));
      expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(0.6e-4 * Math.abs(value));
      count += 1;
    }
    expect(count).toBeGreaterThan(0);
  });

  it("comes out as shown for a section, at its end and inside", () => {
    const plan = planWith((draft) => {
      draft.layouts[0]!.placements[0]!.s = 0.1;
      draft.piece.section = {
        depth: 0.457,
        flangeThickness: 0.0145,
        webThickness: 0.009,
        fillet: 0.0102,
        radiusOfGyrationY: 0.0419,
        yield: 345e6,
        E: 200e9,
      };
    });
    const texts = [...explanations(plan)];
    for (const { text, shown } of texts) expect(Number(evaluated(text).toPrecision(5)) + 0).toBe(Number(shown));
    const strengths = texts.filter(({ label }) => label.includes("strength of the web"));
    // 345e6·0.009·(2.5·0.0247 + 0.2)/1.5 and 345e6·0.009·(5·0.0247 + 0.2)/1.5, by hand.
    expect(strengths[0]!.value).toBeCloseTo(541822.5, 3);
    expect(strengths[1]!.value).toBeCloseTo(669645, 3);
    expect(strengths).toHaveLength(4);
  });

  it("names formula, source and unit of every number", () => {
    for (const name of numberNames) {
      const { label, formula, source } = entryOf(name);
      for (const text of [label, formula, source]) expect(text.length).toBeGreaterThan(3);
    }
  });

  it("puts this plan's values in", () => {
    // The base plan by hand: 2000 kg on two stands, rated 50 kN.
    const plan = planWith(() => {});
    const [report] = reportOf(plan).steps;
    expect(explain("weight", plan, report!)!.text).toBe("(200 + 200) / 2 * 10 * 9.80665");
    const stand = report!.placements[0]!.stand;
    expect(explain("as planned", plan, report!, { stand })!.text).toBe("19613.3 - (9806.65)");
    expect(explain("% of rating", plan, report!, { stand })!.text).toBe("max(9806.65, 2 * 4903.33) * 1 / 50000");
    expect(explain("% of rating", plan, report!, { stand })!.shown).toBe("0.19613");
  });
});
