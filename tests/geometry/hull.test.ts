import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convexHull } from "../../src/geometry";
import type { Point } from "../../src/plan";

const area = (ring: readonly Point[]): number => {
  let twice = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    twice += p[0] * q[1] - q[0] * p[1];
  });
  return twice / 2;
};

describe("convexHull", () => {
  it("gives the four corners of a square with points inside and on its sides", () => {
    const points: Point[] = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
      [1, 1],
      [1, 0],
      [2, 1],
      [0.5, 2],
      [0, 0.3],
      [0, 0],
    ];
    expect(convexHull(points)).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
  });

  it("gives no area to no point, one point and points on a line", () => {
    expect(convexHull([])).toEqual([]);
    expect(
      convexHull([
        [3, 4],
        [3, 4],
      ]),
    ).toEqual([[3, 4]]);
    const line = [0, 0.17, 0.5, 0.83, 1].map((u): Point => [2 - 0.3 * u, -0.45 + 0.9 * u]);
    const hull = convexHull(line);
    expect(hull).toHaveLength(2);
    expect(hull).toContainEqual([2, -0.45]);
  });

  it("drops points that only rounding puts off the line", () => {
    // Five points of a top at 15°, and of one at −20°: two edges of the hull are the tops, two join their ends.
    const top = (s: number, degrees: number): Point[] =>
      [-1, -Math.sqrt(3 / 7), 0, Math.sqrt(3 / 7), 1].map((u): Point => {
        const a = (degrees * Math.PI) / 180;
        return [s - Math.sin(a) * 0.45 * u, Math.cos(a) * 0.45 * u];
      });
    expect(convexHull([...top(2, 15), ...top(7.4, -20)])).toHaveLength(4);
    for (let degrees = -89; degrees <= 89; degrees++) expect(convexHull(top(5e3, degrees))).toHaveLength(2);
  });

  it("keeps every corner of a polygon of 5 000 sides", () => {
    const n = 5000;
    const ring = Array.from({ length: n }, (_, i): Point => {
      const a = (2 * Math.PI * i) / n;
      return [3 * Math.cos(a), 3 * Math.sin(a)];
    });
    const hull = convexHull([...ring].reverse());
    expect(hull).toHaveLength(n);
    // Area of the regular n-gon: ½·n·R²·sin(2π/n).
    expect(area(hull)).toBeCloseTo(0.5 * n * 9 * Math.sin((2 * Math.PI) / n), 10);
  });

  it("holds every point, turns left everywhere and is its own hull, at any place and size", () => {
    const point = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }));
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 1, maxLength: 40 }),
        fc.constantFrom(1e-3, 1, 1e3),
        fc.constantFrom(0, 0.7, 2.1),
        (grid, scale, turned) => {
          const [c, s] = [Math.cos(turned) * scale, Math.sin(turned) * scale];
          const points = grid.map(([x, y]): Point => [c * x - s * y, s * x + c * y]);
          const hull = convexHull(points);
          expect(convexHull(hull)).toEqual(hull);
          if (hull.length < 3) return;
          expect(area(hull)).toBeGreaterThan(0);
          hull.forEach((a, i) => {
            const b = hull[(i + 1) % hull.length]!;
            const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
            for (const p of points) {
              const inside = ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / l;
              expect(inside).toBeGreaterThan(-1e-9 * scale);
            }
          });
        },
      ),
      { numRuns: 500 },
    );
  });

  it("does not change with the order of its points", () => {
    const points: Point[] = [
      [0, 0],
      [4, 1],
      [3, 5],
      [-1, 4],
      [1, 2],
      [2, 3],
    ];
    expect(convexHull([...points].reverse())).toEqual(convexHull(points));
  });
});
