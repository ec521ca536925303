/** Help on numbers: the formula with a plan's values put in comes out to every figure shown. */

import { describe, expect, it } from "vitest";
import {
  type Explanation,
  entryOf,
  explain,
  floorPart,
  goodUpTo,
  known,
  type NumberName,
  numberNames,
  reportOf,
} from "../../src/checks";
import type { StrengthAnswer } from "../../src/statics";
import { referenceCases } from "../helpers/reference";
import { planWith, thirdStand } from "./base";

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

/** An elastic beam with a section on three stands, on a slab without joints. */
const beamOnSlab = planWith((draft) => {
  thirdStand(draft);
  draft.steps[0]!.setDown = true;
  draft.piece.stiffness = [{ from: 0, to: 10, EI: 4e7, kGA: 4e8, GJ: 1e6 }];
  draft.piece.section = {
    ...{ depth: 0.457, flangeThickness: 0.0145, webThickness: 0.009, fillet: 0.0102, radiusOfGyrationY: 0.0419 },
    ...{ yield: 345e6, E: 200e9, sectionModulus: 0.00146, shearArea: 0.0041 },
  };
  draft.criteria = { levelTolerance: 0.001, topTilt: 0, sagLimit: 0.005 };
  draft.bay!.slab = { thickness: 0.2, compressiveStrength: 25e6, subgradeModulus: 5e7, joints: [] };
});

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

  it("speaks of the very number that the report holds", () => {
    const seen = new Set<string>();
    const same = (found: Explanation | null, value: number | null | undefined) => {
      if (found === null || value === null || value === undefined) return;
      seen.add(found.label);
      expect(Math.abs(found.value - value), `${found.label} ${found.value} ${value}`).toBeLessThanOrEqual(
        1e-9 * Math.abs(value) + 1e-15,
      );
    };
    for (const plan of [...referenceCases.map((one) => one.plan), beamOnSlab])
      for (const report of reportOf(plan).steps) {
        const level = report.level.status === "known" ? report.level.value : null;
        const strength = report.strength.status === "known" ? report.strength.value : null;
        const floor = floorPart(plan, plan.layouts.find(({ id }) => id === report.layout)!);
        const floorKnown = floor.status === "known" ? floor.value : null;
        const of = (name: NumberName, about: Parameters<typeof explain>[3] = {}) => explain(name, plan, report, about);
        const worst = (answer: StrengthAnswer | undefined) =>
          answer === undefined || answer.status === "not-checked" ? null : answer.worst;
        same(of("bending stress"), worst(strength?.bending)?.value);
        same(of("shear stress"), worst(strength?.shear)?.value);
        same(of("sag"), strength?.sag?.value);
        for (const axis of ["s", "t", "z"] as const)
          same(
            of(
              ({ s: "centre of gravity along", t: "centre of gravity across", z: "centre of gravity up" } as const)[
                axis
              ],
            ),
            level?.cg?.[axis],
          );
        for (const [part, { droop }] of (level?.parts ?? []).entries()) {
          same(of("droop at the datum end", { part }), droop?.[0]);
          same(of("droop at the far end", { part }), droop?.[1]);
        }
        for (const [walkway, { clearWidth }] of (floorKnown?.walkways ?? []).entries())
          same(of("clear width", { walkway }), clearWidth);
        for (const [index, { stand }] of report.placements.entries()) {
          const own = strength?.stands[index];
          same(of("pressure on the top", { stand }), own?.pressure);
          same(of("press-down", { stand }), level?.stands[index]?.settlement);
          same(of("trip reach", { stand }), floorKnown?.stands[index]?.tripZone.reach);
          const [yielding, crippling] = [worst(own?.webYielding), worst(own?.webCrippling)];
          same(of("web yielding, % of strength", { stand }), yielding && yielding.value / yielding.limit);
          same(of("web crippling, % of strength", { stand }), crippling && crippling.value / crippling.limit);
          const tipping = report.findings.find((one) => one.code === "stand-tips-over" && one.stand === stand);
          if (tipping?.basis.includes("overturning")) same(of("own reserve", { stand }), tipping.value);
          const slab = report.slab.status === "known" ? report.slab.value?.stands[index]?.feet : undefined;
          if (slab !== undefined) same(of("slab stress", { stand }), Math.max(...slab.map(({ interior }) => interior)));
        }
      }
    console.info(`numbers held against the report: ${[...seen].join("; ")}`);
    expect(seen.size).toBeGreaterThan(15);
  });

  it("tells the statics limits of every stand of the reference plans by turning about a line", () => {
    let [told, stands] = [0, 0];
    for (const { plan } of referenceCases)
      for (const report of reportOf(plan).steps) {
        if (report.bounds.status !== "known" || report.bounds.value.stands === null) continue;
        for (const { stand, staticsMost, staticsLeast } of report.bounds.value.stands) {
          stands += 2;
          const most = explain("heaviest, whatever the floor", plan, report, { stand });
          const least = explain("lightest, whatever the floor", plan, report, { stand });
          if (most !== null) expect(Math.abs(most.value - staticsMost)).toBeLessThanOrEqual(1e-6 * staticsMost + 0.01);
          if (least !== null)
            expect(Math.abs(least.value - staticsLeast)).toBeLessThanOrEqual(1e-6 * staticsMost + 0.01);
          told += Number(most !== null) + Number(least !== null);
        }
      }
    console.info(`statics limits told: ${told} of ${stands}`);
    expect(told).toBeGreaterThan(0.8 * stands);
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
    for (const { text, shown } of [...texts, ...explanations(beamOnSlab)])
      expect(Number(evaluated(text).toPrecision(5)) + 0).toBe(Number(shown));
    const strengths = texts.filter(({ label }) => label.includes("strength of the web"));
    // 345e6·0.009·(2.5·0.0247 + 0.2)/1.5 and 345e6·0.009·(5·0.0247 + 0.2)/1.5, by hand.
    expect(strengths[0]!.value).toBeCloseTo(541822.5, 3);
    expect(strengths[1]!.value).toBeCloseTo(669645, 3);
    expect(strengths).toHaveLength(4);
  });

  it("tells what the plan still takes as good up to has it", () => {
    const plan = planWith(() => {});
    const step = plan.steps[0]!.id;
    const margins = goodUpTo(plan, step)!;
    const report = { ...reportOf(plan).steps[0]!, margins: known(margins) };
    margins.addedLoad.forEach(({ value }, corner) => {
      const told = explain("weight added at a corner", plan, report, { corner })!;
      expect(told.value).toBe(value);
      expect(Number(evaluated(told.text).toPrecision(5))).toBe(Number(told.shown));
    });
    for (const { stand, utilisation } of margins.without)
      expect(explain("% of rating without it", plan, report, { stand })?.value ?? null).toBe(utilisation);
    expect(margins.addedLoad).toHaveLength(plan.piece.outline.length);
    expect(margins.without).toHaveLength(2);
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
