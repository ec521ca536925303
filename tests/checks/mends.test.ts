/** Mends against brute force: on seeded failing plans, wherever a single change mends a finding, one is offered. */

import { describe, expect, it } from "vitest";
import {
  awaited,
  type Finding,
  forFindings,
  type Mend,
  mended,
  mends,
  mendsSearch,
  reportOf,
  shopShims,
} from "../../src/checks";
import { failingInStep, failingOnFloor } from "../../src/checks/failing";
import { demoBeam } from "../../src/library";
import { complete, type Layout, type Plan } from "../../src/plan";
import { planWith } from "./base";
import { seededPlan } from "./seededPlans";

const nameOf = ({ code, step, stand }: Finding) =>
  `${step} ${code}${stand === null || ["tilts", "slides", "slab"].includes(code) ? "" : ` ${stand}`}`;
const failing = (plan: Plan) =>
  new Map(
    reportOf(plan, forFindings)
      .findings.filter(({ verdict }) => verdict === "fails")
      .map((finding) => [nameOf(finding), finding]),
  );

/** The same names without the sentences, which take longer than the checks. */
const untold = (plan: Plan, answers = forFindings): ReadonlySet<string> =>
  new Set([
    ...plan.steps.flatMap((step) => failingInStep(plan, step, answers).map((check) => `${step.id} ${check}`)),
    ...failingOnFloor(plan, plan.layouts[0]!, answers).map((check) => `null ${check}`),
  ]);

/** The finding is gone and nothing fails that did not fail before. */
function mendsIt(
  before: ReadonlyMap<string, Finding>,
  finding: Finding,
  after: { has(name: string): boolean; keys(): Iterable<string> },
): boolean {
  return !after.has(nameOf(finding)) && [...after.keys()].every((name) => before.has(name));
}

/**
 * Every single change: a shop shim set alone or none, a shift by 50 mm along or across, a free stand in the place of
 * another, at the height of that one or at the nearest that it has.
 */
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
    for (const by of [0.05, -0.05]) {
      yield change({ s: placement.s + by });
      yield change({ t: placement.t + by });
    }
    for (const { id, type } of free) {
      yield change({ stand: id });
      const { min, max } = plan.standTypes.find((one) => one.id === type)!.height;
      yield change({ stand: id, height: Math.max(min, Math.min(max, placement.height)) });
    }
  }
}

describe("mends", () => {
  it("take the demo's shim out, and nothing else first", () => {
    const plan = complete(demoBeam);
    const worst = reportOf(plan, forFindings).findings[0]!;
    expect([worst.code, worst.stand]).toEqual(["stand-over-rating", "H-03"]);
    expect(worst.message).toContain('its shim is 1/8" too thick');
    const [first] = mends(plan, worst, 1);
    expect(first).toEqual({ kind: "shim", layout: "A", stand: "H-03", shim: 0 });
    expect(mendsIt(failing(plan), worst, failing(mended(plan, first!)))).toBe(true);
  });

  it("are offered wherever brute force finds one on 100 failing plans, and are what they say", () => {
    let [plans, offers, without] = [0, 0, 0];
    const codes = new Set<string>();
    for (let seed = 1; plans < 100; seed++) {
      const plan = seededPlan(seed);
      const before = failing(plan);
      if (before.size === 0) continue;
      plans += 1;
      const unmended: Finding[] = [];
      const done = new Map<string, ReadonlySet<string>>();
      for (const finding of before.values()) {
        codes.add(finding.code);
        const [offered] = mends(plan, finding, 1);
        if (offered === undefined) {
          unmended.push(finding);
          continue;
        }
        offers += 1;
        const name = JSON.stringify(offered);
        const after = done.get(name) ?? untold(mended(plan, offered));
        done.set(name, after);
        expect(mendsIt(before, finding, after), `seed ${seed}: ${finding.message}`).toBe(true);
      }
      without += unmended.length;
      if (unmended.length === 0) continue;
      expect(untold(plan)).toEqual(new Set(before.keys()));
      for (const changed of everyChange(plan)) {
        // What fails as planned fails in the box around it: no more has to be worked out of such a change.
        const planned = untold(changed, awaited);
        if ([...planned].some((name) => !before.has(name))) continue;
        if (unmended.every((finding) => planned.has(nameOf(finding)))) continue;
        const after = untold(changed);
        for (const name of planned) expect(after, name).toContain(name);
        for (const finding of unmended)
          expect(mendsIt(before, finding, after), `seed ${seed}: ${finding.message}`).toBe(false);
      }
    }
    console.info(
      `mends on 100 failing plans: ${offers} findings with one, ${without} without, codes ${[...codes].join(" ")}`,
    );
    expect(offers).toBeGreaterThan(100);
    expect(without).toBeGreaterThan(50);
    expect(codes.size).toBeGreaterThan(8);
  }, 300_000);

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
    const finding = failing(plan).get("only stand-not-in-service A")!;
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
    const broken = [1, 2, 3, 4, 5].map(seededPlan).find((one) => failing(one).size > 0)!;
    const [finding] = failing(broken).values();
    let checked = 0;
    mends(broken, finding!, 1000, () => ++checked === 3);
    expect(checked).toBe(3);
    expect([...mendsSearch(plan, holding)]).toEqual([]);
  });
});
