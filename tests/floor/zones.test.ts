import { describe, expect, it } from "vitest";
import { floorOf } from "../../src/floor";
import type { Polygon } from "../../src/plan";
import { bay, planWith } from "./plans";

const floor = (setting: Parameters<typeof planWith>[0]) => {
  const plan = planWith(setting);
  return floorOf(plan, plan.layouts[0]!);
};
const box = (x: number, y: number, width: number, height: number): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const straightStand = [{ type: "straight" }, { type: "straight" }];
// A straight stand at (s, t) covers: top s ± 0.1, t ± 0.5; frames s ± 0.2, t ± 0.35 to 0.45.

describe("no-rest zones", () => {
  it("share an area with the top's rectangle, its width included", () => {
    const at = (from: number) =>
      floor({
        stands: straightStand,
        placements: [{ s: 5 }],
        piece: { noRestZones: [{ name: "pad", polygon: box(from, -0.2, 0.4, 0.4) }] },
      }).stands[0]!.noRestZones;
    expect(at(5.1)).toEqual([]);
    expect(at(5.05)).toEqual([{ name: "pad", area: expect.closeTo(0.05 * 0.4, 12) }]);
    expect(at(4.8)[0]!.area).toBeCloseTo(0.2 * 0.4, 12);
  });
  it("touching at any angle is not overlapping", () => {
    for (const angle of [7, 33, 90, 181, 270]) {
      const cos = Math.cos((angle * Math.PI) / 180);
      const sin = Math.sin((angle * Math.PI) / 180);
      const polygon = box(0.1, -0.5, 0.3, 1).map(([p, q]) => [5 + p * cos - q * sin, p * sin + q * cos] as const);
      const placements = [{ s: 5, angle }];
      expect(
        floor({ stands: straightStand, placements, piece: { noRestZones: [{ name: "pad", polygon }] } }).stands[0]!
          .noRestZones,
      ).toEqual([]);
    }
  });
});

describe("no-foot zones, obstacles, the bay", () => {
  const inBay = (more: object, placements: readonly object[] = [{ s: 5 }]) =>
    floor({ stands: straightStand, placements, bay: { ...bay, ...more } });

  it("a no-foot zone minds the plates, not what is above the floor", () => {
    // Plates at x 10 ± 0.1 ± 0.1, y 3.6 ± 0.05 and 4.4 ± 0.05. Between the frames only the top runs.
    const zone = (polygon: Polygon) => inBay({ noFootZones: [{ name: "trench", polygon }] }).stands[0]!.noFootZones;
    expect(zone(box(9, 3.7, 2, 0.6))).toEqual([]);
    expect(zone(box(9, 3.6, 2, 0.8))[0]).toEqual({ name: "trench", area: expect.closeTo(2 * 0.4 * 0.05, 6) });
    expect(zone(box(10.2, 3, 2, 2))).toEqual([]);
    expect(zone(box(10.199, 3, 2, 2))).toHaveLength(1);
  });

  it("an obstacle minds top and frames", () => {
    const hit = (polygon: Polygon) => inBay({ obstacles: [{ name: "column", polygon }] }).stands[0]!.obstacles;
    expect(hit(box(10.1, 3.8, 0.4, 0.4))).toEqual([]);
    expect(hit(box(10.05, 3.8, 0.4, 0.4))).toEqual([{ name: "column", area: expect.closeTo(0.05 * 0.4, 6) }]);
    expect(hit(box(10.15, 3.5, 0.4, 0.3))).toEqual([{ name: "column", area: expect.closeTo(0.05 * 0.1, 6) }]);
  });

  it("outside the bay: the stand, and the piece", () => {
    const inside = inBay({}, [{ s: 5, t: -3.5 }]);
    // The top ends at y = 4 − 3.5 − 0.5 = 0: on the wall.
    expect(inside.stands[0]!.outsideBay).toBe(0);
    expect(inBay({}, [{ s: 5, t: -3.51 }]).stands[0]!.outsideBay).toBeCloseTo(0.2 * 0.01, 6);
    expect(inside.pieceOutsideBay).toBe(0);
    const outlineTo = (x: number) => ({ outline: box(0, 0, x, 8) });
    expect(inBay(outlineTo(15)).pieceOutsideBay).toBe(0);
    expect(inBay(outlineTo(14.9)).pieceOutsideBay).toBeCloseTo(0.1 * 0.4, 6);
  });

  it("a bay with a corner cut into it", () => {
    const notch: Polygon = [
      [0, 0],
      [9.95, 0],
      [9.95, 3.7],
      [10.5, 3.7],
      [10.5, 0],
      [20, 0],
      [20, 8],
      [0, 8],
    ];
    // Frame x 9.8 to 10.2, y 3.55 to 3.65, top x 9.9 to 10.1, y 3.5 up: beyond x = 9.95 and below y = 3.7 they are outside.
    const expected = 0.25 * 0.1 + 0.15 * 0.2 - 0.15 * 0.1;
    expect(inBay({ outline: notch }).stands[0]!.outsideBay).toBeCloseTo(expected, 6);
  });

  it("without a bay only what speaks of the piece is left", () => {
    const report = floor({ stands: straightStand, placements: [{ s: 5 }, { s: 5.1 }], bay: null });
    expect(report).toMatchObject({ pieceOutsideBay: 0, walkways: [] });
    expect(report.stands[0]).toMatchObject({ outsideBay: 0, obstacles: [], noFootZones: [] });
    expect(report.standOverlaps).toHaveLength(1);
  });
});

describe("stands that overlap", () => {
  it("frames 0.4 wide side by side", () => {
    const at = (s: number) => floor({ stands: straightStand, placements: [{ s: 5 }, { s }] }).standOverlaps;
    expect(at(5.4)).toEqual([]);
    // Two frames share 0.1 × 0.1 each; the tops, 0.2 wide and 0.3 apart, do not meet.
    expect(at(5.3)).toEqual([{ stands: ["S1", "S2"], area: expect.closeTo(2 * 0.1 * 0.1, 6) }]);
    // The same place: all of one, counted once: two frames 0.4 × 0.1, top 0.2 × 1, less the 0.2 × 0.1 in both, twice.
    expect(at(5)[0]!.area).toBeCloseTo(0.08 + 0.2 - 0.04, 6);
  });
});

describe("work windows", () => {
  const windowAt = (from: number, clearance = 0.3, angle = 0) =>
    floor({
      stands: straightStand,
      placements: [{ s: 5, angle }],
      piece: {
        pose: { x: 4, y: 3, heading: 23 },
        workWindows: [{ name: "splice", polygon: box(from, -0.2, 1, 0.4), clearance }],
      },
    }).stands[0]!.windows[0]!;

  it("distance to the nearest of top and frames", () => {
    // The top ends at s = 5.1; the frames, at 5.2 but 0.15 off in t, are nearer once the window is beyond them.
    expect(windowAt(5.15).distance).toBeCloseTo(0.05, 12);
    expect(windowAt(5.7).distance).toBeCloseTo(Math.hypot(0.5, 0.15), 12);
    expect(windowAt(5.7)).toMatchObject({ name: "splice", clearance: 0.3, area: 0 });
  });
  it("0 where they touch, with an area where they overlap", () => {
    expect(windowAt(5.1).distance).toBeLessThan(1e-12);
    expect(windowAt(5.1).area).toBe(0);
    expect(windowAt(5.05)).toEqual({
      name: "splice",
      distance: 0,
      clearance: 0.3,
      area: expect.closeTo(0.05 * 0.4, 6),
    });
  });
});
