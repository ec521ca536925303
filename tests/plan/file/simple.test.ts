/** Whether a polygon is simple, against every pair of edges in whole-number arithmetic, where nothing is rounded. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point, Polygon } from "../../../src/plan";
import { faultIn } from "../../../src/plan/file/simple";

const side = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point) =>
  Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));

const on = (a: Point, b: Point, c: Point) =>
  side(a, b, c) === 0 &&
  Math.min(a[0], b[0]) <= c[0] &&
  c[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= c[1] &&
  c[1] <= Math.max(a[1], b[1]);

/** The definition: no corner twice, no two edges with a point in common but for neighbours in their corner. */
function isSimpleByDefinition(polygon: Polygon): boolean {
  const count = polygon.length;
  for (let i = 0; i < count; i += 1)
    for (let j = i + 1; j < count; j += 1) {
      const [a, b, c, d] = [polygon[i]!, polygon[(i + 1) % count]!, polygon[j]!, polygon[(j + 1) % count]!];
      if (a[0] === c[0] && a[1] === c[1]) return false;
      if (j === i + 1) {
        if (on(a, b, d) || on(c, d, a)) return false;
      } else if (i === 0 && j === count - 1) {
        if (on(a, b, c) || on(c, d, b)) return false;
      } else if (on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b)) return false;
      else if (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)) return false;
    }
  return true;
}

const gridPolygon = fc.integer({ min: 1, max: 7 }).chain((size) =>
  fc.array(fc.tuple(fc.integer({ min: 0, max: size }), fc.integer({ min: 0, max: size })), {
    minLength: 3,
    maxLength: 9,
  }),
);

describe("a polygon", () => {
  it("is simple exactly where the definition says so", () => {
    const seen = { simple: 0, not: 0 };
    fc.assert(
      fc.property(gridPolygon, (polygon) => {
        const simple = isSimpleByDefinition(polygon);
        seen[simple ? "simple" : "not"] += 1;
        expect(faultIn(polygon) === null).toBe(simple);
      }),
      { seed: 20261125, numRuns: 20_000 },
    );
    expect(Math.min(seen.simple, seen.not)).toBeGreaterThan(2000);
  });

  it("is as simple turned, mirrored, shifted far away and in other units", () => {
    fc.assert(
      fc.property(gridPolygon, fc.constantFrom(1, 0.1, 1 / 3, 1e-9, 1e150, 1e300), (polygon, unit) => {
        const simple = isSimpleByDefinition(polygon);
        // A turn by an angle with cosine 3/5 keeps whole numbers whole.
        const turned = polygon.map(([x, y]): Point => [3 * x - 4 * y, 4 * x + 3 * y]);
        const images: readonly Polygon[] = [
          turned,
          polygon.map(([x, y]): Point => [-x, y]),
          polygon.map(([x, y]): Point => [y, x]),
          polygon.toReversed(),
          polygon.map(([x, y]): Point => [x + 2 ** 20, y - 2 ** 20]),
          polygon.map(([x, y]): Point => [unit * x, unit * y]),
          turned.map(([x, y]): Point => [unit * x, unit * y]),
        ];
        for (const image of images) expect(faultIn(image) === null).toBe(simple);
      }),
      { seed: 20261125, numRuns: 3000 },
    );
  });

  it("names two edges that do meet", () => {
    fc.assert(
      fc.property(gridPolygon, (polygon) => {
        const fault = faultIn(polygon);
        if (fault === null) return;
        const [i, j] = fault.which;
        expect(i).toBeLessThan(j);
        const at = (index: number) => polygon[index % polygon.length]!;
        if (fault.of === "corners") expect(at(i)).toEqual(at(j));
        else expect(meets(at(i), at(i + 1), at(j), at(j + 1))).toBe(true);
      }),
      { seed: 20261125, numRuns: 5000 },
    );
  });

  it.each([
    ["crossing in the middle of ten thousand edges", 5000],
    ["crossing at the end of ten thousand edges", 9998],
  ])("%s", (_, swapped) => {
    const round = Array.from({ length: 10_000 }, (_, index): Point => {
      const angle = (2 * Math.PI * index) / 10_000;
      return [100 * Math.cos(angle), 100 * Math.sin(angle)];
    });
    expect(faultIn(round)).toBeNull();
    const crossed = round.slice();
    [crossed[swapped], crossed[swapped + 1]] = [crossed[swapped + 1]!, crossed[swapped]!];
    expect(faultIn(crossed)).toMatchObject({ of: "edges" });
  });
});

function meets(a: Point, b: Point, c: Point, d: Point): boolean {
  return (
    on(a, b, c) ||
    on(a, b, d) ||
    on(c, d, a) ||
    on(c, d, b) ||
    (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b))
  );
}
