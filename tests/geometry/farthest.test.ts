import { describe, expect, it } from "vitest";
import { farthestFrom, pointToPolygon } from "../../src/geometry";
import type { Point, Polygon } from "../../src/plan";
import { randomFrom } from "./rooms";

const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
/** Open at the top: x 0 to 4, y 0 to 3, slot x 1 to 3 from y 1 up. */
const u: Polygon = [
  [0, 0],
  [4, 0],
  [4, 3],
  [3, 3],
  [3, 1],
  [1, 1],
  [1, 3],
  [0, 3],
];

describe("how far regions reach out of a polygon", () => {
  it("from a convex one exactly, at a corner", () => {
    expect(farthestFrom(rectangle(0, 0, 2, 1), [rectangle(1, 0.5, 4, 4.5)])).toBe(5);
    expect(farthestFrom(rectangle(0, 0, 2, 1), [rectangle(0.5, 0.2, 1, 0.5)])).toBe(0);
    expect(farthestFrom(rectangle(0, 0, 2, 1), [])).toBe(0);
  });

  it("in the slot of a U: the middle of the slot, 1 from both arms and floor", () => {
    const inside = farthestFrom(u, [rectangle(0.5, 1.5, 3, 1)]);
    expect(inside).toBeLessThanOrEqual(1);
    expect(inside).toBeGreaterThan(1 - 2e-4);
    // Only up to y = 1.4: 0.4 from the floor.
    expect(farthestFrom(u, [rectangle(0.5, 0.5, 3, 0.9)])).toBeCloseTo(0.4, 3);
    // Out of the mouth: (2, 4) is √2 from the tips of the arms at (1, 3) and (3, 3).
    expect(farthestFrom(u, [rectangle(1.5, 2, 1, 2)])).toBeCloseTo(Math.SQRT2, 3);
  });

  it("all within a polygon that is not convex: 0, and it comes to an end", () => {
    expect(farthestFrom(u, [rectangle(0.1, 0.1, 3.8, 0.8)])).toBe(0);
    const wide: Polygon = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 9],
      [0, 10],
    ];
    expect(farthestFrom(wide, [rectangle(1, 1, 8, 7)])).toBe(0);
    // 0.5 out of the straight side, the rest deep inside.
    expect(farthestFrom(wide, [rectangle(1, -0.5, 8, 8)])).toBeCloseTo(0.5, 3);
  });

  it("no sample of 200 random regions reaches farther, and one comes near", () => {
    const random = randomFrom(7);
    for (let k = 0; k < 200; k++) {
      const region = rectangle(4 * random() - 0.5, 3.5 * random() - 0.5, 2 * random(), 1.5 * random());
      const reach = farthestFrom(u, [region]);
      const [[x, y], , [x1, y1]] = region as [Point, Point, Point, Point];
      let sampled = 0;
      for (let i = 0; i <= 40; i++) {
        for (let j = 0; j <= 40; j++) {
          const point: Point = [x + ((x1 - x) * i) / 40, y + ((y1 - y) * j) / 40];
          sampled = Math.max(sampled, pointToPolygon(point, u).distance);
        }
      }
      expect(reach).toBeGreaterThanOrEqual(sampled - 2e-4);
      expect(reach).toBeLessThanOrEqual(sampled + 0.06);
    }
  });
});
