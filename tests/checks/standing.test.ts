import { describe, expect, it } from "vitest";
import {
  forFindings,
  levelPart,
  type StepStanding,
  standingAt,
  standingForces,
  standingSearch,
  tippingPart,
} from "../../src/checks";
import type { Plan } from "../../src/plan";
import { planWith, thirdStand } from "./base";

/** Of the base plan, N; each of the stands at 2 m and 8 m carries half of it. */
const W = 2000 * 9.80665;

function mapOf(plan: Plan): StepStanding {
  const search = standingSearch(plan, plan.steps[0]!);
  for (;;) {
    const next = search.next();
    if (next.done !== true) continue;
    expect(next.value.status).toBe("known");
    return (next.value as { readonly value: StepStanding }).value;
  }
}

function takes(plan: Plan, s: number, t = 0) {
  const step = plan.steps[0]!;
  const level = levelPart(plan, step);
  const tipping = tippingPart(plan, step, forFindings.bounds(plan, step));
  if (level.status !== "known" || tipping.status !== "known") throw new Error("known at once");
  return standingAt(plan, step, level.value, tipping.value, [s, t]);
}

const rated = (newtons: number) =>
  planWith((draft) => {
    draft.standTypes[0]!.ratedLoad = newtons;
  });

describe("where a person may stand", () => {
  it("names the stand that gives first, and how", () => {
    // Over B all of it goes into B, which has 12 000 − W/2 to spare.
    expect(takes(rated(12000), 8)!.first).toEqual({ stand: "B", why: "limit" });
    expect(takes(rated(12000), 8)!.level).toBeCloseTo(12000 - W / 2, 6);
    // Over its rating before anything is added.
    expect(takes(rated(9000), 2)).toMatchObject({ level: 0, first: { why: "limit" } });
    // On three stands a weight at one end takes the other stand's load away before it tips.
    const high = planWith((draft) => {
      thirdStand(draft);
      draft.standTypes[0]!.ratedLoad = 1e6;
    });
    expect(takes(high, 9.9)!.first).toEqual({ stand: "A", why: "light" });
  });

  it("a place takes what statics says: tipping about the nearer stand, its rating by the lever", () => {
    const plan = rated(12_000);
    // The piece bears on a line over each stand's middle: at s = 10 it tips when P·2 = W·3, and R_B = W/2 + P·8/6.
    const at = takes(plan, 10)!;
    expect(at.tips).toBe(false);
    expect(at.tipping).not.toBeNull();
    expect(at.tipping! * (10 - 8)).toBeCloseTo(W * (8 - 5), 6);
    expect(at.level).toBeCloseTo(((12_000 - W / 2) * 6) / 8, 6);
    // Between the stands nothing tips; in the middle each takes half.
    const middle = takes(plan, 5)!;
    expect(middle.tipping).toBeNull();
    expect(middle.level).toBeCloseTo(2 * (12_000 - W / 2), 6);
  });

  it("without a rating the stand at the other end goes light when the piece tips, and not before", () => {
    const plan = planWith((draft) => {
      draft.standTypes[0]!.ratedLoad = null;
    });
    // R_A = W/2 − P·2/6 = 0 at P = 3·W/2, when it tips too.
    const at = takes(plan, 10)!;
    expect(at.level).toBeCloseTo(1.5 * W, 6);
    expect(at.tipping).toBeCloseTo(1.5 * W, 6);
    expect(takes(plan, 5)!.level).toBeNull();
  });

  it("off the piece there is no answer, and a stand over its rating takes nothing more", () => {
    expect(takes(rated(12_000), 11)).toBeNull();
    expect(takes(rated(9_000), 5)!.level).toBe(0);
  });

  it("contours are of a person and of round multiples that tell places apart", () => {
    // From 1 645 N at the ends to 4 387 N in the middle there is 2 × 1 334 N only.
    const { forces, parts } = mapOf(rated(12_000));
    expect(forces).toEqual([1334, 2668]);
    const [, contour] = parts[0]!.contours;
    const along = contour!.level.flatMap(({ outer }) => outer.map(([s]) => s));
    // P·(s − 2)/6 = 12 000 − W/2
    const arm = ((12_000 - W / 2) * 6) / 2668;
    expect(Math.max(...along)).toBeCloseTo(2 + arm, 2);
    expect(Math.min(...along)).toBeCloseTo(8 - arm, 2);
  });

  it("no more than the piece weighs, at most two, spread", () => {
    // Of 2 000, 5 000, 10 000 and 20 000 N the two a third and two thirds up.
    expect(standingForces(1000, [0, 1e9], 25_000)).toEqual([1000, 5000, 10_000]);
    expect(standingForces(1000, [7000, Number.POSITIVE_INFINITY], 12_000)).toEqual([1000, 10_000]);
    expect(standingForces(1000, [Number.POSITIVE_INFINITY], 12_000)).toEqual([1000]);
  });

  it("a part that tips has no map", () => {
    const { parts } = mapOf(
      planWith((draft) => {
        draft.layouts[0]!.placements[0]!.s = 7;
      }),
    );
    expect(parts).toEqual([null]);
  });
});
