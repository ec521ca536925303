import { describe, expect, it } from "vitest";
import {
  areaOutside,
  boundingBox,
  counterClockwise,
  isConvex,
  overlap,
  polygonArea,
  polygonToPolygon,
  segmentToSegment,
  sharedArea,
  signedArea,
  whereInPolygon,
} from "../../src/geometry";
import type { Point, Polygon } from "../../src/plan";

const square: Polygon = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];
/** A U open at the top: 4 wide, 3 high, walls and floor 1 thick; area 4·3 − 2·2 = 8. */
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
const shift = (polygon: Polygon, by: Point): Polygon => polygon.map(([p, q]) => [p + by[0], q + by[1]]);
const turn = (polygon: Polygon, angle: number): Polygon =>
  polygon.map(([p, q]) => [p * Math.cos(angle) - q * Math.sin(angle), p * Math.sin(angle) + q * Math.cos(angle)]);

describe("area, winding, box", () => {
  it("gives the area of a U whatever its winding, and far from the origin", () => {
    expect(polygonArea(u)).toBe(8);
    expect(signedArea([...u].reverse())).toBe(-8);
    expect(polygonArea(shift(u, [1e6, -1e6]))).toBe(8);
    expect(signedArea(counterClockwise([...u].reverse()))).toBe(8);
  });
  it("boxes", () => {
    expect(boundingBox(u)).toEqual({ least: [0, 0], most: [4, 3] });
  });
  it("tells convex from not", () => {
    expect(isConvex(square)).toBe(true);
    expect(isConvex([...square].reverse())).toBe(true);
    expect(isConvex(u)).toBe(false);
  });
});

describe("where a point lies", () => {
  it.each([
    [[2, 0.5], "inside"],
    [[2, 2], "outside"],
    [[1, 2], "boundary"],
    [[3.5, 3], "boundary"],
    [[0, 0], "boundary"],
    [[-1e-6, 0.5], "outside"],
    [[2, 1 - 1e-6], "inside"],
    [[2, 1], "boundary"],
    [[-1, 1], "outside"],
    [[-1, 3], "outside"],
  ] as const)("%j is %s of the U", (point, where) => {
    expect(whereInPolygon(u, point)).toBe(where);
    expect(whereInPolygon([...u].reverse(), point)).toBe(where);
  });
});

describe("distances", () => {
  it("of segments: crossing, ends, parallel, a point", () => {
    expect(segmentToSegment([0, 0], [2, 2], [0, 2], [2, 0])).toEqual({ distance: 0, from: [1, 1], to: [1, 1] });
    expect(segmentToSegment([0, 0], [1, 0], [4, 4], [9, 4])).toEqual({ distance: 5, from: [1, 0], to: [4, 4] });
    expect(segmentToSegment([0, 0], [4, 0], [1, 2], [3, 2]).distance).toBe(2);
    expect(segmentToSegment([0, 0], [4, 0], [3, 7], [3, 7])).toEqual({ distance: 7, from: [3, 0], to: [3, 7] });
  });
  it("of polygons: apart, inside one another, in the mouth of a U", () => {
    expect(polygonToPolygon(square, shift(square, [5, 6]))).toEqual({ distance: 5, from: [2, 2], to: [5, 6] });
    expect(
      polygonToPolygon(shift(square, [-1, -1]), [
        [-0.1, -0.1],
        [0.1, 0],
        [0, 0.1],
      ]).distance,
    ).toBe(0);
    const plug: Polygon = [
      [1.5, 1.7],
      [2.2, 1.7],
      [2.2, 2.7],
      [1.5, 2.7],
    ];
    expect(polygonToPolygon(u, plug).distance).toBeCloseTo(0.5, 14);
  });
});

describe("shared area", () => {
  it("of a U and a bar across it", () => {
    const bar: Polygon = [
      [-1, 2],
      [5, 2],
      [5, 2.5],
      [-1, 2.5],
    ];
    expect(sharedArea(u, bar)).toBeCloseTo(1, 13);
    expect(sharedArea(bar, u)).toBeCloseTo(1, 13);
    expect(areaOutside(bar, u)).toBeCloseTo(2, 13);
  });
  it("is 0 where polygons only touch, at any angle", () => {
    for (let k = 0; k < 50; k++) {
      const angle = 0.1 + k * 0.13;
      const [a, b] = [turn(square, angle), turn(shift(square, [2, 0]), angle)];
      expect(sharedArea(a, b)).toBeLessThan(1e-12);
      expect(overlap(a, b)).toBe(false);
      expect(overlap(a, turn(shift(square, [1.999, 0]), angle))).toBe(true);
      expect(sharedArea(a, turn(shift(square, [1.999, 0]), angle))).toBeCloseTo(0.002, 12);
    }
  });
  it("of two U's that interlock", () => {
    // The second, upside down and shifted by (2, 1): its left wall stands in the first one's mouth.
    const second = shift(turn(u, Math.PI), [6, 4]);
    // It covers x 2..6, y 1..4; its walls x 2..3 and 5..6 reach down to y = 1, its bar is y 3..4.
    // The first one's right wall, x 3..4, y 1..3, meets neither wall nor bar.
    expect(sharedArea(u, second)).toBeCloseTo(0, 12);
    const lower = shift(second, [0, -0.5]);
    // Now its left wall dips 0.5 into the first one's floor, x 2..3, and its bar 0.5 onto the right wall, x 3..4.
    expect(sharedArea(u, lower)).toBeCloseTo(1, 12);
  });
});
