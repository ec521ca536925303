/** Mends against brute force: on seeded failing plans, wherever a single change mends a finding, one is offered. */

import { describe, expect, it } from "vitest";
import {
  type Finding,
  forFindings,
  type Mend,
  mended,
  mends,
  mendsSearch,
  reportOf,
  shopShims,
} from "../../src/checks";
import { demoBeam } from "../../src/library";
import { complete, type Layout, type Plan } from "../../src/plan";
import { randomNumbers } from "../statics/bounds/plans";
import { type Draft, planWith, thirdStand } from "./base";

const nameOf = ({ code, step, stand }: Finding) =>
  `${code} ${step} ${["tilts", "slides", "slab"].includes(code) ? "" : stand}`;
const failing = (plan: Plan) =>
  new Map(
    reportOf(plan, forFindings)
      .findings.filter(({ verdict }) => verdict === "fails")
      .map((finding) => [nameOf(finding), finding]),
  );

/** The finding is gone and nothing fails that did not fail before. */
function mendsIt(plan: Plan, finding: Finding, changed: Plan): boolean {
  const before = failing(plan);
  const after = failing(changed);
  return !after.has(nameOf(finding)) && [...after.keys()].every((name) => before.has(name));
}

/** Every single change: a shop shim set alone or none, a shift by 50 mm along, a free stand in the place of another. */
function* everyChange(plan: Plan): Generator<Plan> {
  const layout = plan.layouts[0]!;
  const used = new Set(layout.placements.map(({ stand }) => stand));
  const free = plan.stands.filter(({ id }) => !used.has(id));
  for (const [index, placement] of layout.placements.entries()) {
    const change = (more: Partial<typeof placement>): Plan => {
      const placements = layout.placements.map((one, other) => (other === index ? { ...one, ...more } : one));
      const layouts: readonly Layout[] = [{ ...layout, placements }];
      return { ...plan, layouts };
    };
    for (const shim of [0, ...shopShims]) if (Math.abs(shim - placement.shim) > 1e-9) yield change({ shim });
    for (const by of [0.05, -0.05]) yield change({ s: placement.s + by });
    for (const { id } of free) yield change({ stand: id });
  }
}

/** Three stands, one with a shim that may be too much, small ratings, one stand left over; no bay. */
function seeded(seed: number): Plan {
  const random = randomNumbers(seed);
  const pick = <Value>(values: readonly Value[]) => values[Math.floor(random() * values.length)]!;
  return planWith((draft: Draft) => {
    thirdStand(draft, { s: 4.5 + random() });
    const [a, b, c] = draft.layouts[0]!.placements;
    a!.s = 1 + 2 * random();
    b!.s = 7 + 2 * random();
    for (const placement of [a!, b!, c!]) placement.shim = pick([0, 0, 0.001, 0.003, 0.003175]);
    draft.standTypes[0]!.ratedLoad = 9000 + 8000 * random();
    draft.standTypes[0]!.ratedLoadCentre = draft.standTypes[0]!.ratedLoad;
    draft.stands[3]!.condition = "in-service";
    draft.stands[0]!.condition = pick(["in-service", "in-service", "out-of-service"] as const);
    draft.criteria = { topTilt: 0, levelTolerance: 0.00002 };
    draft.bay = null;
  });
}

describe("mends", () => {
  it("take the demo's shim out, and nothing else first", () => {
    const plan = complete(demoBeam);
    const worst = reportOf(plan, forFindings).findings[0]!;
    expect([worst.code, worst.stand]).toEqual(["stand-over-rating", "H-03"]);
    expect(worst.message).toContain('its shim is 1/8" too thick');
    const [first] = mends(plan, worst, 1);
    expect(first).toEqual({ kind: "shim", layout: "A", stand: "H-03", shim: 0 });
    expect(mendsIt(plan, worst, mended(plan, first!))).toBe(true);
  });

  it("are offered wherever brute force finds one, and are what they say", () => {
    let [findable, findings] = [0, 0];
    for (let seed = 1; seed <= 10; seed++) {
      const plan = seeded(seed);
      for (const finding of failing(plan).values()) {
        findings += 1;
        const [offered] = mends(plan, finding, 1);
        if (offered !== undefined) {
          expect(mendsIt(plan, finding, mended(plan, offered)), `seed ${seed} ${finding.message}`).toBe(true);
          findable += 1;
          continue;
        }
        for (const changed of everyChange(plan))
          expect(mendsIt(plan, finding, changed), `seed ${seed}: ${finding.message}`).toBe(false);
      }
    }
    expect(findings).toBeGreaterThan(10);
    expect(findable).toBeGreaterThan(5);
  });

  it("swap a stand that is out of service with one that is free, at a height that it has", () => {
    const plan = planWith((draft) => {
      draft.stands[0]!.condition = "out-of-service";
      draft.standTypes.push({
        ...draft.standTypes[0]!,
        id: "low" as never,
        height: { min: 0.5, max: 0.7, increment: 0.1 },
      });
      draft.stands[1]!.type = "low" as never;
      draft.stands[2]!.type = "low" as never;
      draft.layouts[0]!.placements[1]!.height = 0.7;
      draft.layouts[0]!.placements[0]!.height = 0.7;
    });
    const finding = failing(plan).get("stand-not-in-service only A")!;
    const offered = mends(plan, finding, 9).filter(
      (mend): mend is Extract<Mend, { kind: "swap" }> => mend.kind === "swap",
    );
    expect(offered.map(({ stand, by, height }) => [stand, by, Number(height.toFixed(9))])).toContainEqual([
      "A",
      "C",
      0.7,
    ]);
  });

  it("are not looked for where nothing fails, and can be stopped", () => {
    const plan = planWith(() => {});
    const holding = reportOf(plan, forFindings).findings[0]!;
    expect(mends(plan, holding)).toEqual([]);
    const broken = seeded(1);
    const [finding] = failing(broken).values();
    let checked = 0;
    mends(broken, finding!, 1000, () => ++checked === 3);
    expect(checked).toBe(3);
    expect([...mendsSearch(plan, holding)]).toEqual([]);
  });
});
