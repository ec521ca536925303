import { describe, expect, it } from "vitest";
import { floorOf } from "../../src/floor";
import { boundingBox } from "../../src/geometry";
import { planWith } from "./plans";

const floor = (setting: Parameters<typeof planWith>[0]) => {
  const plan = planWith(setting);
  return floorOf(plan, plan.layouts[0]!);
};
const straightStand = [{ type: "straight" }];
const r = 0.05;

describe("trip zone", () => {
  it("clear of the piece: two hulls 0.4 × 0.1 grown by 0.05, A + perimeter·r + πr² each", () => {
    const { tripZone } = floor({ stands: straightStand, placements: [{ s: 5, t: 3 }] }).stands[0]!;
    const one = 0.04 + 1 * r + Math.PI * r ** 2;
    expect(tripZone.polygons).toHaveLength(2);
    expect(tripZone.area / (2 * one)).toBeCloseTo(1, 3);
    // Its farthest point: t = 3 + 0.4 + 0.05 + 0.05 from an outline that ends at t = 0.2.
    expect(tripZone.reach).toBeCloseTo(3.5 - 0.2, 5);
  });

  it("straddling the piece: only what stands out beyond its edges, each a stadium's end", () => {
    // The frames at t = ±0.4 span 0.35 to 0.45, grown 0.3 to 0.5: all beyond the edge at 0.2.
    const wide = floor({ stands: straightStand, placements: [{ s: 5 }] }).stands[0]!.tripZone;
    expect(wide.polygons).toHaveLength(2);
    expect(wide.reach).toBeCloseTo(0.3, 6);
    // A piece 0.8 wide covers them up to t = 0.4: what is left of each is a strip 0.1 wide with two round corners.
    const covered = floor({
      stands: straightStand,
      placements: [{ s: 5 }],
      piece: {
        outline: [
          [0, -0.4],
          [10, -0.4],
          [10, 0.4],
          [0, 0.4],
        ],
      },
    }).stands[0]!.tripZone;
    // From 0.4 to 0.45 full width 0.4 + 2r, above it 0.4 and two quarter discs.
    const half = 0.05 * 0.5 + 0.05 * 0.4 + (Math.PI * r ** 2) / 2;
    expect(covered.area / (2 * half)).toBeCloseTo(1, 3);
    expect(covered.reach).toBeCloseTo(0.1, 6);
  });

  it("is empty under a wide piece, with a reach of 0", () => {
    const { tripZone } = floor({
      stands: straightStand,
      placements: [{ s: 5 }],
      piece: {
        outline: [
          [0, -1],
          [10, -1],
          [10, 1],
          [0, 1],
        ],
      },
    }).stands[0]!;
    expect(tripZone).toEqual({ stand: "S1", polygons: [], area: 0, reach: 0 });
  });

  it("frames that overlap when grown are one polygon; a slot in the piece leaves a reach inside it", () => {
    const close = floor({
      types: [{ ...planWith({ placements: [] }).standTypes[1]!, legSpacing: 0.15 }],
      stands: straightStand,
      placements: [{ s: 5, t: 3 }],
    }).stands[0]!.tripZone;
    expect(close.polygons).toHaveLength(1);
    // A stand in a slot 1.2 wide between two arms 10 long: hulls at t = ±0.4 grown to ±0.5, slot edges at ±0.6. The
    // middle of the slot, 0.6 from both arms, is not in the zone; its nearest points are at |t| = 0.3, 0.3 from an arm.
    const slotted = floor({
      stands: straightStand,
      placements: [{ s: 5 }],
      piece: {
        outline: [
          [0, -1],
          [10, -1],
          [10, -0.6],
          [1, -0.6],
          [1, 0.6],
          [10, 0.6],
          [10, 1],
          [0, 1],
        ],
      },
    }).stands[0]!.tripZone;
    expect(slotted.reach).toBeGreaterThan(0.3 - 5e-4);
    expect(slotted.reach).toBeLessThanOrEqual(0.3 + 1e-5);
  });

  it("lies in the bay frame and moves with the piece", () => {
    const piece = { pose: { x: 3, y: 2, heading: 90 } };
    const { tripZone } = floor({ stands: straightStand, placements: [{ s: 5, t: 3 }], piece }).stands[0]!;
    // (s, t) = (5, 3) lies at (3 − 3, 2 + 5); the top along t runs along x.
    const box = boundingBox(tripZone.polygons.flatMap(({ outer }) => outer));
    expect(box.least[0]).toBeCloseTo(-0.5, 6);
    expect(box.most[0]).toBeCloseTo(0.5, 6);
    expect(box.least[1]).toBeCloseTo(7 - 0.25, 6);
    expect(box.most[1]).toBeCloseTo(7 + 0.25, 6);
  });
});
