/** Good up to, against hand calculations on the base plan (base.ts): each found to 1 %, from below. */

import { beforeAll, describe, expect, it } from "vitest";
import { goodUpTo, marginsPart, marginsSearch, reportOf } from "../../src/checks";
import { type Draft, planWith, thirdStand } from "./base";

/** Ratings and reserves out of the way of what is looked at. */
const strong = (draft: Draft) => {
  draft.standTypes[0]!.ratedLoad = 1e6;
  draft.standTypes[0]!.ratedLoadCentre = 1e6;
  draft.bay = null;
};

function margins(change: (draft: Draft) => void) {
  const plan = planWith((draft) => {
    strong(draft);
    change(draft);
  });
  return goodUpTo(plan, plan.steps[0]!.id)!;
}

/** Of the base plan as it is. */
let plain: ReturnType<typeof margins>;
beforeAll(() => {
  plain = margins(() => {});
}, 60_000);

/** Within 1 % below the limit. */
function just(value: number, limit: number): void {
  expect(value).toBeLessThanOrEqual(limit * (1 + 1e-9));
  expect(value).toBeGreaterThanOrEqual(limit * 0.99);
}

/** The root of a falling function between two places. */
function root(falling: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

const g = 9.80665;
const W = 2000 * g;

describe("good up to", () => {
  it("weight: until the stands reach their rating", () => {
    // R = factor·9806.65 N against 11 kN
    const { weight } = margins((draft) => {
      draft.standTypes[0]!.ratedLoad = 11000;
    });
    just(weight, 11000 / 9806.65);
  });

  it("level: until the middle of three stands, alone too high, reaches its rating", () => {
    // Heights (−τ, τ, −τ) on three equal springs: R = W/3 + 4·k·τ/3
    const { level } = margins((draft) => {
      thirdStand(draft);
      draft.standTypes[0]!.ratedLoad = 11000;
    });
    just(level, ((11000 - W / 3) * 3) / (4 * 1e8));
  });

  it("along: until the reserve against tipping and rolling over is used up", () => {
    // About the line at s: the push H = 0.03·W acts 0.3 m up.
    const reserve = (s: number) => {
      const righting = (200 * g * s * s) / 2;
      const overturning = (200 * g * (10 - s) ** 2) / 2 + 1334 * (10 - s) + 0.03 * W * 0.3;
      return righting / overturning;
    };
    const { along } = margins((draft) => {
      draft.criteria = { ...draft.criteria, tipReserve: 5 };
    });
    just(
      along,
      root((off) => reserve(8 - off) - 5, 0, 4),
    );
  });

  it("across: until the piece bears outside a leg frame", () => {
    // Its centre lies `off` from the stands' middle, their frames 0.4 m.
    just(plain.across, 0.4);
  });

  it("push: until a stand slides on the floor", () => {
    // 0.1·(9806.65 + 100·g)·2 ÷ (share·W) = 2
    just(plain.push, (0.1 * (W + 200 * g)) / 2 / W);
  });

  it("added load at a corner: until the piece rolls over the near tops", () => {
    // 62762.6 ÷ (3922.66 + 1334·2 + 2·P + 0.3·0.03·(W + P)) = 1.5
    const righting = (1600 * g * 8) / 2;
    const overturning = (P: number) => (400 * g * 2) / 2 + 2668 + 2 * P + 0.009 * (W + P);
    const { addedLoad } = plain;
    expect(addedLoad.map(({ s, t }) => [s, t])).toEqual([
      [0, -0.5],
      [10, -0.5],
      [10, 0.5],
      [0, 0.5],
    ]);
    for (const { value } of addedLoad) {
      just(
        value,
        root((P) => righting / overturning(P) - 1.5, 0, 2 * W),
      );
    }
  });

  it("stops at the end of the scan", () => {
    const { weight, level } = plain;
    // Nothing depends on the weight but the ratings, which are far; two stands share it whatever their heights.
    expect([weight, level]).toEqual([3, 0.05]);
  });

  it("without a stand, and turned end for end", () => {
    const { without, turned } = plain;
    expect(without.map(({ stand, verdict, utilisation }) => [stand, verdict, utilisation])).toEqual([
      ["A", "fails", null],
      ["B", "fails", null],
    ]);
    expect(turned).toEqual({ verdict: "holds" });
  });

  it("without the middle one of three the others carry it", () => {
    const { without } = margins((draft) => thirdStand(draft));
    const middle = without.find(({ stand }) => stand === "C")!;
    expect(middle.verdict).toBe("holds");
    expect(middle.utilisation).toBeCloseTo(9806.65 / 1e6, 9);
  });

  it("what fails already is not counted", () => {
    // 9 kN fails as planned; the weight may grow until something else fails: nothing does.
    const { weight } = margins((draft) => {
      draft.standTypes[0]!.ratedLoad = 9000;
      draft.standTypes[0]!.ratedLoadCentre = 9000;
    });
    expect(weight).toBe(3);
  });

  it("a lopsided piece turned end for end falls off", () => {
    // 3 t at 9 m bring the centre to 7.4 m, between stands at 3 and 9.5 m; turned they stand at 0.5 and 7 m.
    const plan = planWith((draft) => {
      strong(draft);
      draft.piece.masses.push({ id: "head" as never, name: "Head", kind: "point", s: 9, t: 0, z: 0.3, mass: 3000 });
      draft.layouts[0]!.placements[0]!.s = 3;
      draft.layouts[0]!.placements[1]!.s = 9.5;
    });
    const [report] = reportOf(plan).steps;
    expect(report!.verdict).not.toBe("fails");
    const { turned } = goodUpTo(plan, plan.steps[0]!.id)!;
    expect(turned.verdict).toBe("fails");
  });

  it("is not told of a piece that tips as it is", () => {
    const plan = planWith((draft) => {
      draft.layouts[0]!.placements[1]!.s = 4.9;
    });
    expect(marginsPart(plan, plan.steps[0]!).status).toBe("failed");
  });

  it("stops when asked to, and leaves the plan alone", () => {
    const plan = planWith(strong);
    const before = JSON.stringify(plan);
    let asked = 0;
    expect(goodUpTo(plan, plan.steps[0]!.id, () => ++asked === 3)).toBeNull();
    expect(asked).toBe(3);
    const search = marginsSearch(plan, plan.steps[0]!.id);
    search.next();
    expect(JSON.stringify(plan)).toBe(before);
    expect(reportOf(plan).steps[0]!.margins.status).toBe("pending");
  });
});
