import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { joinTouching, type Line, polygonHolds, stretchesInPolygon, withoutStretches } from "../../src/geometry";
import type { Polygon } from "../../src/plan";

const square: Polygon = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];
/** A comb: two teeth up from a bar. */
const comb: Polygon = [
  [0, 0],
  [6, 0],
  [6, 3],
  [4, 3],
  [4, 1],
  [2, 1],
  [2, 3],
  [0, 3],
];
const up = (s: number, from = -10, to = 10): Line => ({ at: [s, 0], along: [0, 1], from, to });
const right = (t: number, from = -10, to = 10): Line => ({ at: [0, t], along: [1, 0], from, to });

describe.each([
  ["counter-clockwise", (polygon: Polygon) => polygon],
  ["clockwise", (polygon: Polygon) => [...polygon].reverse()],
] as const)("a line in a polygon, %s", (_, wind) => {
  it("is cut to the polygon and to its own ends", () => {
    expect(stretchesInPolygon(up(1), wind(square))).toEqual([[0, 4]]);
    expect(stretchesInPolygon(up(1, 1, 3), wind(square))).toEqual([[1, 3]]);
    expect(stretchesInPolygon(up(5), wind(square))).toEqual([]);
  });

  it("is inside along an edge, the set being closed", () => {
    for (const s of [0, 4]) expect(stretchesInPolygon(up(s), wind(square))).toEqual([[0, 4]]);
    expect(stretchesInPolygon(right(3), wind(comb))).toEqual([
      [0, 2],
      [4, 6],
    ]);
    expect(stretchesInPolygon(right(1), wind(comb))).toEqual([[0, 6]]);
    expect(stretchesInPolygon(up(2), wind(comb))).toEqual([[0, 3]]);
  });

  it("is inside along an edge that rounding has moved a hair", () => {
    expect(stretchesInPolygon(up(4 + 1e-15), wind(square))).toEqual([[0, 4]]);
    expect(stretchesInPolygon(up(4 + 1e-8), wind(square))).toEqual([]);
  });

  it("is not inside where it only touches a corner", () => {
    const half = Math.SQRT1_2;
    expect(stretchesInPolygon({ at: [4, 4], along: [half, -half], from: -3, to: 3 }, wind(square))).toEqual([]);
  });

  it("passes through corners", () => {
    const half = Math.SQRT1_2;
    const [stretch, ...rest] = stretchesInPolygon({ at: [0, 0], along: [half, half], from: -9, to: 9 }, wind(square));
    expect(rest).toEqual([]);
    expect(stretch![0]).toBeCloseTo(0, 14);
    expect(stretch![1]).toBeCloseTo(4 * Math.SQRT2, 14);
  });

  it("is several stretches where the polygon is not convex", () => {
    expect(stretchesInPolygon(right(2), wind(comb))).toEqual([
      [0, 2],
      [4, 6],
    ]);
  });

  it("joins what touches at a reentrant corner", () => {
    const notched: Polygon = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 2],
      [0, 4],
    ];
    expect(stretchesInPolygon(right(2), wind(notched))).toEqual([[0, 4]]);
  });
});

it("agrees with point by point on random stars of many corners", () => {
  const star = fc.array(fc.double({ min: 0.3, max: 3, noNaN: true }), { minLength: 3, maxLength: 40 }).map(
    (radii): Polygon =>
      radii.map((radius, index) => {
        const angle = (2 * Math.PI * index) / radii.length;
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      }),
  );
  const angle = fc.double({ min: 0, max: Math.PI, noNaN: true });
  const offset = fc.double({ min: -2, max: 2, noNaN: true });
  fc.assert(
    fc.property(star, angle, offset, (polygon, turn, off) => {
      const along = [Math.cos(turn), Math.sin(turn)] as const;
      const line = { at: [-along[1] * off, along[0] * off] as const, along, from: -2.5, to: 2.5 };
      const stretches = stretchesInPolygon(line, polygon);
      for (let index = 0; index < 60; index++) {
        const c = -2.5 + (5 * (index + 0.5)) / 60;
        // Beside a border rounding may decide either way.
        if (stretches.some(([from, to]) => Math.min(Math.abs(c - from), Math.abs(c - to)) < 1e-6)) continue;
        const inside = stretches.some(([from, to]) => from < c && c < to);
        expect(inside).toBe(polygonHolds(polygon, [line.at[0] + c * along[0], line.at[1] + c * along[1]]));
      }
    }),
    { seed: 7, numRuns: 300 },
  );
});

it("takes an outline of five thousand points", () => {
  const round: Polygon = Array.from({ length: 5000 }, (_, index) => {
    const angle = (2 * Math.PI * index) / 5000;
    return [3 * Math.cos(angle), 3 * Math.sin(angle)];
  });
  const [[from, to] = [0, 0]] = stretchesInPolygon(up(1), round);
  expect(to - from).toBeCloseTo(2 * Math.sqrt(8), 5);
});

describe("stretches", () => {
  it("are joined where they touch or overlap", () => {
    expect(
      joinTouching([
        [3, 4],
        [0, 1],
        [1, 2],
        [1.5, 1.8],
      ]),
    ).toEqual([
      [0, 2],
      [3, 4],
    ]);
  });

  it("keep their ends where something is left out of them", () => {
    expect(
      withoutStretches(
        [
          [0, 4],
          [5, 6],
        ],
        [
          [-1, 1],
          [2, 3],
          [5, 6],
        ],
      ),
    ).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});
