/** Rings thinned: how far off they may be follows from the circle, and no corner left out may lie farther off. */
import { describe, expect, it } from "vitest";
import { pointToBoundary, polygonArea, thinned } from "../../src/geometry";
import type { Point, Polygon } from "../../src/plan";

const circle = (count: number, radius: number): Polygon =>
  Array.from({ length: count }, (_, index): Point => {
    const angle = (2 * Math.PI * index) / count;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

describe("a ring thinned", () => {
  it("stays as it is where it has few corners enough", () => {
    const ring = circle(50, 1);
    expect(thinned(ring, 50)).toEqual({ ring, within: 0 });
  });

  it("leaves out the corners on straight edges, and is not off at all", () => {
    const sides: readonly Point[] = [
      [0, 0],
      [3, 0],
      [3, 1],
      [0, 1],
    ];
    const ring = sides.flatMap(([p, q], side): Point[] => {
      const [to0, to1] = sides[(side + 1) % 4]!;
      return Array.from({ length: 8 }, (_, k): Point => [p + ((to0 - p) * k) / 8, q + ((to1 - q) * k) / 8]);
    });
    const { ring: corners, within } = thinned(ring, 4);
    expect(corners).toEqual(sides);
    expect(within).toBeLessThan(1e-12);
  });

  it("says truly how far the corners left out lie from it", () => {
    const ring = circle(3000, 2);
    for (const most of [1000, 400, 64, 9]) {
      const { ring: fewer, within } = thinned(ring, most);
      expect(fewer.length).toBeLessThanOrEqual(most);
      expect(fewer.length).toBeGreaterThan(most / 4);
      const off = Math.max(...ring.map((point) => pointToBoundary(point, fewer).distance));
      expect(off).toBeLessThanOrEqual(within + 1e-12);
      expect(off).toBeGreaterThan(within / 4);
      // A chord cuts off less than its length times its sagitta.
      expect(polygonArea(ring) - polygonArea(fewer)).toBeLessThan(2 * Math.PI * 2 * within);
    }
  });

  it("takes a hundred thousand corners down to ten thousand", () => {
    const wavy = circle(100_000, 10).map(
      ([p, q], k): Point => [p * (1 + 1e-3 * Math.sin(k / 40)), q * (1 + 1e-3 * Math.sin(k / 40))],
    );
    const { ring, within } = thinned(wavy, 10_000);
    expect(ring.length).toBeLessThanOrEqual(10_000);
    expect(within).toBeLessThan(1e-3);
  });
});
