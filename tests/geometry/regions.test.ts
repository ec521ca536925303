import { describe, expect, it } from "vitest";
import {
  difference,
  directionOf,
  frameAt,
  frameWithin,
  grow,
  intersection,
  pieceFrame,
  pointToPolygon,
  polygonArea,
  rectangleIn,
  regionsArea,
  standFrame,
  toInner,
  toOuter,
  union,
} from "../../src/geometry";
import type { Polygon } from "../../src/plan";

const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

describe("union, difference, intersection", () => {
  it("unites overlapping rectangles of mixed winding", () => {
    const regions = union([rectangle(0, 0, 2, 1), [...rectangle(1, 0, 2, 1)].reverse()]);
    expect(regions).toHaveLength(1);
    expect(regionsArea(regions)).toBeCloseTo(3, 6);
  });
  it("a frame of four bars has a hole, and what stands in the hole is a region of its own", () => {
    const bars = [rectangle(0, 0, 4, 1), rectangle(0, 3, 4, 1), rectangle(0, 0, 1, 4), rectangle(3, 0, 1, 4)];
    const regions = union([...bars, rectangle(1.5, 1.5, 1, 1)]);
    expect(regions).toHaveLength(2);
    expect(regions.map(({ holes }) => holes.length).sort()).toEqual([0, 1]);
    expect(regionsArea(regions)).toBeCloseTo(16 - 4 + 1, 6);
  });
  it("cuts a strip in two", () => {
    const regions = difference([rectangle(0, 0, 3, 1)], [rectangle(1, -1, 1, 3)]);
    expect(regions).toHaveLength(2);
    expect(regionsArea(regions)).toBeCloseTo(2, 6);
    expect(difference([rectangle(0, 0, 1, 1)], [rectangle(-1, -1, 3, 3)])).toEqual([]);
    expect(regionsArea(intersection([rectangle(0, 0, 3, 1)], [rectangle(1, -1, 1, 3)]))).toBeCloseTo(1, 6);
    expect(union([])).toEqual([]);
  });
});

describe("grow", () => {
  it("adds perimeter·r + πr², within 0.01 % (Steiner's formula)", () => {
    for (const radius of [0.01, 0.05, 0.3, 2]) {
      const grown = polygonArea(grow(rectangle(1, 2, 3, 0.5), radius));
      const exact = 1.5 + 7 * radius + Math.PI * radius ** 2;
      expect(Math.abs(grown / exact - 1)).toBeLessThan(1e-4);
      expect(grown).toBeLessThanOrEqual(exact);
    }
  });
  it("puts every corner at the radius, either winding", () => {
    const core: Polygon = [
      [0, 0],
      [1, 0.2],
      [0.3, 0.9],
    ];
    for (const ring of [core, [...core].reverse()]) {
      for (const point of grow(ring, 0.05)) expect(pointToPolygon(point, core).distance).toBeCloseTo(0.05, 12);
    }
    expect(grow(core, 0)).toBe(core);
  });
});

describe("frames", () => {
  it("quarter turns are exact", () => {
    expect([-450, -90, 0, 90, 180, 630].map(directionOf)).toEqual([
      [0, -1],
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ]);
    expect(directionOf(30)[1]).toBeCloseTo(0.5, 15);
  });
  it("puts a stand of a turned piece into the bay", () => {
    const pose = pieceFrame({ x: 10, y: 5, heading: 90 });
    // s runs up the bay, t to the left; the stand turned by 90° has its top along −s.
    const stand = frameWithin(pose, standFrame({ s: 3, t: 1, angle: 90 }));
    expect(stand.origin).toEqual([9, 8]);
    expect(toOuter(stand, [0, 1])).toEqual([9, 7]);
    const corners = rectangleIn(stand, [0, 0], 0.2, 2);
    const expected = [
      [9.1, 9],
      [8.9, 9],
      [8.9, 7],
      [9.1, 7],
    ];
    for (const [k, [x, y]] of corners.entries()) {
      expect(x).toBeCloseTo(expected[k]![0]!, 14);
      expect(y).toBeCloseTo(expected[k]![1]!, 14);
    }
  });
  it("toInner undoes toOuter", () => {
    const frame = frameAt([3, -4], 37);
    const [p, q] = toInner(frame, toOuter(frame, [1.25, -7]));
    expect(p).toBeCloseTo(1.25, 13);
    expect(q).toBeCloseTo(-7, 13);
  });
});
