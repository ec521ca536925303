import { describe, expect, it } from "vitest";
import { forFindings, reportOf } from "../../src/checks";
import { newPlan } from "../../src/library";
import { compared, standsOf } from "../../src/panels/steps/compare";
import { topCorners } from "../../src/panels/steps/LayoutPicture";
import { layoutRows } from "../../src/panels/steps/layoutRows";
import { complete, type LayoutId, type PlanDocument } from "../../src/plan";

const start = newPlan({
  kind: "member",
  name: "Beam",
  length: 10,
  width: 0.4,
  depth: 0.6,
  mass: 4000,
  basis: "scale",
  centre: { kind: "middle" },
  standCount: 2,
  stand: "horse",
  rating: { load: 30_000, per: "stand" },
  tops: "touch",
  display: { units: "metric" },
});
/** A second layout: the stands at 2 m and 6 m, so that the second carries three quarters. */
const layout = start.layouts[0]!;
const document: PlanDocument = {
  ...start,
  layouts: [
    { ...layout, placements: layout.placements.map((one, index) => ({ ...one, s: [2, 8][index]! })) },
    {
      id: "B" as LayoutId,
      name: "Layout B",
      placements: layout.placements.map((one, index) => ({ ...one, s: [2, 6][index]! })),
    },
  ],
};
const plan = complete(document);
const step = plan.steps[0]!;
/** Weight, N; g = 9.80665 m/s². */
const W = 4000 * 9.80665;

describe("layouts side by side in one step", () => {
  it("computes the step as it would be on each of them", () => {
    const [a, b] = [compared(plan, step, "A" as LayoutId), compared(plan, step, "B" as LayoutId)];
    // By hand: at 2 and 8 m each half; at 2 and 6 m the moments about 2 m give W·3/4 at 6 m.
    expect(a.rows.map(({ band }) => band.level! / W)).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.5, 9)]);
    expect(b.rows.map(({ band }) => band.level! / W)).toEqual([expect.closeTo(0.25, 9), expect.closeTo(0.75, 9)]);
    expect(b.governing!.stand).toBe("H-2");
    expect(b.heaviest!.stand).toBe("H-2");
    // At least 3/4 of the weight, 1 % heavier, with the set-down factor of 1.25, against 30 kN.
    expect(b.governing!.utilisation).toBeGreaterThanOrEqual((0.75 * W * 1.01 * 1.25) / 30_000 - 1e-6);
    expect(b.verdict).toBe("fails");
    expect(b.reserve!).toBeLessThan(a.reserve!);
    expect(standsOf([a, b])).toEqual(["H-1", "H-2"]);
  });

  it("the table of layouts names the governing stand of those in use", () => {
    const rows = layoutRows(plan, reportOf(plan, forFindings));
    expect(rows.map(({ steps }) => steps)).toEqual([1, 0]);
    expect(rows[0]!.governing!.utilisation).toBeCloseTo(
      compared(plan, step, "A" as LayoutId).governing!.utilisation,
      12,
    );
    expect(rows[1]).toMatchObject({ verdict: null, governing: null });
  });
});

it("the corners of a top turned by 90° lie along the piece", () => {
  const corners = topCorners({ s: 5, t: 0, angle: 90 }, { length: 1.5, width: 0.2 });
  expect(Math.max(...corners.map(([s]) => s))).toBeCloseTo(5.75, 12);
  expect(Math.max(...corners.map(([, t]) => t))).toBeCloseTo(0.1, 12);
});
