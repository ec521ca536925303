/** An edit recomputes what it touches: calls of the engine are counted from edit to edit. */

import { beforeEach, describe, expect, it, vi } from "vitest";

const calls = vi.hoisted(() => ({ level: 0, bounds: 0, certificates: 0, tipping: 0, floor: 0 }));

vi.mock("../../src/statics", async (original) => {
  const real = await original<typeof import("../../src/statics")>();
  return {
    ...real,
    solveStep: (...args: Parameters<typeof real.solveStep>) => {
      calls.level += 1;
      return real.solveStep(...args);
    },
    boundsSearch: (...args: Parameters<typeof real.boundsSearch>) => {
      calls.bounds += 1;
      return real.boundsSearch(...args);
    },
    certifiedBoundsSearch: (...args: Parameters<typeof real.certifiedBoundsSearch>) => {
      calls.certificates += 1;
      return real.certifiedBoundsSearch(...args);
    },
    tippingOf: (...args: Parameters<typeof real.tippingOf>) => {
      calls.tipping += 1;
      return real.tippingOf(...args);
    },
  };
});
vi.mock("../../src/floor", async (original) => {
  const real = await original<typeof import("../../src/floor")>();
  return {
    ...real,
    floorOf: (...args: Parameters<typeof real.floorOf>) => {
      calls.floor += 1;
      return real.floorOf(...args);
    },
  };
});

const { forFindings, reportOf, withoutMargins } = await import("../../src/checks");
const { planWith } = await import("./base");
type Plan = ReturnType<typeof planWith>;

/** Two layouts, a step on each. */
const plan = planWith((draft) => {
  const [layout] = draft.layouts;
  draft.layouts.push({ ...layout!, id: "M" as never, placements: layout!.placements.map((one) => ({ ...one })) });
  draft.steps.push({ ...draft.steps[0]!, id: "second" as never, layout: "M" as never });
});

const moved = (from: Plan, layoutIndex: number): Plan => ({
  ...from,
  layouts: from.layouts.map((layout, index) =>
    index === layoutIndex
      ? {
          ...layout,
          placements: layout.placements.map((one, first) => (first === 0 ? { ...one, s: one.s + 0.1 } : one)),
        }
      : layout,
  ),
});

describe("an edit recomputes what it touches", () => {
  beforeEach(() => {
    reportOf(plan, withoutMargins);
    Object.assign(calls, { level: 0, bounds: 0, certificates: 0, tipping: 0, floor: 0 });
  });
  const after = (changed: Plan) => {
    reportOf(changed, withoutMargins);
    const { level, bounds, certificates, tipping, floor } = calls;
    return [level > 0, bounds + certificates, tipping, floor];
  };
  const none = [false, 0, 0, 0];

  it("the same plan: nothing", () => expect(after(plan)).toEqual(none));
  it("the title: nothing", () => expect(after({ ...plan, title: "another" })).toEqual(none));
  it("notes and revision: nothing", () => expect(after({ ...plan, notes: "x", revision: 7 })).toEqual(none));
  it("the display units: nothing", () => {
    expect(after({ ...plan, display: { units: "us", length: null, force: null } })).toEqual(none);
  });
  it("a layout's name: nothing", () => {
    const layouts = plan.layouts.map((layout) => ({ ...layout, name: "another" }));
    expect(after({ ...plan, layouts })).toEqual(none);
  });
  it("a step's name: nothing", () => {
    const steps = plan.steps.map((step) => ({ ...step, name: "another" }));
    expect(after({ ...plan, steps })).toEqual(none);
  });
  it("a criterion that only a verdict reads: nothing", () => {
    expect(after({ ...plan, criteria: { ...plan.criteria, slideReserve: 3 } })).toEqual(none);
  });

  it("a stand of one layout: that layout's step and floor alone", () => {
    const report = reportOf(plan, withoutMargins);
    expect(after(moved(plan, 1))).toEqual([true, 1, 1, 1]);
    const again = reportOf(moved(plan, 1), forFindings);
    expect(again.steps[0]!.level).toBe(report.steps[0]!.level);
    expect(again.steps[1]!.level).not.toBe(report.steps[1]!.level);
  });

  it("a level tolerance: bounds, not the level solution or the floor", () => {
    const [level, bounds, , floor] = after({ ...plan, criteria: { ...plan.criteria, levelTolerance: 0.001 } });
    expect([level, bounds, floor]).toEqual([false, 2, 0]);
  });

  it("an obstacle: the floor alone", () => {
    const obstacles = [
      {
        name: "post",
        polygon: [
          [0.1, 0.1],
          [0.3, 0.1],
          [0.2, 0.3],
        ] as const,
      },
    ];
    expect(after({ ...plan, bay: { ...plan.bay!, obstacles } })).toEqual([false, 0, 0, 2]);
  });

  it("going back: nothing, because the old objects have their answers", () => {
    reportOf(moved(plan, 0), withoutMargins);
    Object.assign(calls, { level: 0, bounds: 0, certificates: 0, tipping: 0, floor: 0 });
    expect(after(plan)).toEqual(none);
  });
});
