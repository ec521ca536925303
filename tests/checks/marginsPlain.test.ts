/** Good up to against the plainest way to find it: the whole report at every value of the scan and of the halving. */

import { describe, expect, it } from "vitest";
import { type Finding, forFindings, goodUpTo, stepReportOf } from "../../src/checks";
import { landedOff, withAddedLoad, withCriterion, withLevelTolerance, withWeight } from "../../src/checks/variations";
import type { Plan } from "../../src/plan";
import { type Draft, planWith, thirdStand } from "./base";

const nameOf = ({ code, stand }: Finding) => (["tilts", "slides", "slab"].includes(code) ? code : `${code} ${stand}`);

function failingIn(plan: Plan): ReadonlySet<string> {
  const { findings, floorFindings } = stepReportOf(plan, plan.steps[0]!, forFindings);
  return new Set([...findings, ...floorFindings].filter(({ verdict }) => verdict === "fails").map(nameOf));
}

/** 32 equal steps to the end, then halving to 1 %. */
function plainly(plan: Plan, from: number, to: number, changes: ((value: number) => Plan)[]): number {
  const before = failingIn(plan);
  const good = (value: number) =>
    changes.every((change) => [...failingIn(change(value))].every((name) => before.has(name)));
  let low = from;
  for (let k = 1; k <= 32; k++) {
    let high = from + ((to - from) * k) / 32;
    if (good(high)) {
      low = high;
      continue;
    }
    for (let halving = 0; halving < 20 && high - low > 0.01 * high; halving++) {
      const middle = (low + high) / 2;
      if (good(middle)) low = middle;
      else high = middle;
    }
    return low;
  }
  return to;
}

const plans: readonly (readonly [string, (draft: Draft) => void])[] = [
  [
    "two stands in a bay with a walkway",
    (draft) => {
      draft.standTypes[0]!.ratedLoad = 14000;
      draft.standTypes[0]!.ratedLoadCentre = 14000;
      draft.bay!.walkways = [{ name: "aisle", from: [1, 7.5], to: [17, 7.5], width: 0.9, lane: null }];
    },
  ],
  [
    "an elastic piece with a section on three stands, one too high, without a bay",
    (draft) => {
      thirdStand(draft, { shim: 0.001 });
      draft.piece.stiffness = [{ from: 0, to: 10, EI: 4e7, kGA: null, GJ: 1e6 }];
      draft.piece.section = { sectionModulus: 0.001, shearArea: 0.003, yield: 235e6 };
      draft.standTypes[0]!.ratedLoad = 15000;
      draft.standTypes[0]!.ratedLoadCentre = 15000;
      draft.criteria = { levelTolerance: 0.0002, topTilt: 0, sagLimit: 0.004 };
      draft.bay = null;
    },
  ],
];

describe("good up to, found plainly, is the same", () => {
  it.each(plans)("%s", (_name, change) => {
    const plan = planWith(change);
    const step = plan.steps[0]!;
    const found = goodUpTo(plan, step.id)!;
    expect(found.weight).toBe(plainly(plan, 1, 3, [(factor) => withWeight(plan, factor)]));
    expect(found.level).toBe(plainly(plan, 0, 0.05, [(within) => withLevelTolerance(plan, step, within)]));
    expect(found.push).toBe(plainly(plan, 0, 0.5, [(share) => withCriterion(plan, "horizontalFraction", share)]));
    const along = [(off: number) => landedOff(plan, step, off, 0), (off: number) => landedOff(plan, step, -off, 0)];
    expect(found.along).toBe(plainly(plan, 0, 1, along));
    const across = [(off: number) => landedOff(plan, step, 0, off), (off: number) => landedOff(plan, step, 0, -off)];
    expect(found.across).toBe(plainly(plan, 0, 1, across));
    // 2·W
    const heaviest = 2 * 2000 * 9.80665;
    const [corner] = found.addedLoad;
    const loaded = (force: number) => withAddedLoad(plan, step, corner!.s, corner!.t, force);
    expect(Math.abs(corner!.value - plainly(plan, 0, heaviest, [loaded]))).toBeLessThan(1e-6);
    expect(new Set([found.weight, found.level, found.along, found.across, corner!.value]).size).toBeGreaterThan(3);
  });
});
