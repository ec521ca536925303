import { describe, expect, test } from "vitest";
import { roundStep, snapsOf } from "../../src/canvas/hand/snaps";
import { complete } from "../../src/plan";
import { beam, h1, h2 } from "../store/plans";

const plan = complete(beam);
const snap = snapsOf(plan, plan.steps[1]!, 80);

describe("snapping", () => {
  test("to a station in reach, said by name: 7 px at 80 px a metre are 87 mm", () => {
    const near = snap(h1, 1.05, 0.3, false);
    // The mirror image of H-3 at 11 m about the middle of 12 m is 1 m.
    expect([near.s, near.lines]).toEqual([1, [{ axis: "s", at: 1, name: "mirror of H-3" }]]);
  });

  test("two names of one place are both said", () => {
    expect(snap(h2, 6.02, 0.3, false).lines[0]?.name).toBe("middle, under Lug");
  });

  test("else to a round number, which needs no name", () => {
    const free = snap(h1, 2.3371, 0.3371, false);
    expect([free.s, free.t, free.lines]).toEqual([expect.closeTo(2.34, 12), expect.closeTo(0.34, 12), []]);
  });

  test("not while the key is held: then to the millimetre", () => {
    const free = snap(h1, 1.0503, 0.0004, true);
    expect([free.s, free.t, free.lines]).toEqual([expect.closeTo(1.05, 12), 0, []]);
  });

  test("the nearer one looks, the finer the round numbers", () => {
    const metric = [20, 80, 400, 4000].map((scale) => roundStep({ units: "metric", length: null, force: null }, scale));
    expect(metric).toEqual([0.1, 0.02, 0.005, 0.001]);
    const us = [20, 80, 4000].map((scale) => roundStep({ units: "us", length: null, force: null }, scale) / 0.0254);
    expect(us).toEqual([3, 1, 1 / 16].map((inches) => expect.closeTo(inches, 9)));
  });
});
