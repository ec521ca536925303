/** Corners edited by hand: what comes out follows from counting and from plane geometry. */
import { describe, expect, it } from "vitest";
import {
  edgeInTheWay,
  polygonArea,
  rectangleBetween,
  shifted,
  withCornerAfter,
  withCornerAt,
  withoutCorner,
} from "../../src/geometry";

const square = rectangleBetween([2, 2], [0, 0]);

describe("a ring", () => {
  it("is spanned by two opposite corners, whichever comes first", () => {
    expect(square).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
    expect(rectangleBetween([0, 2], [2, 0])).toEqual(square);
  });

  it("takes a corner, gives one back and moves one; the area follows", () => {
    const roof = withCornerAfter(square, 2, [1, 3]);
    expect(roof[3]).toEqual([1, 3]);
    // The square, 4 m², and a triangle 2 m wide and 1 m high.
    expect(polygonArea(roof)).toBeCloseTo(5, 12);
    expect(withoutCorner(roof, 3)).toEqual(square);
    // One corner pulled to (4, 0) adds a triangle of 2 m by 2 m.
    expect(polygonArea(withCornerAt(square, 1, [4, 0]))).toBeCloseTo(6, 12);
    expect(withCornerAfter(square, 3, [-1, 1])).toHaveLength(5);
    expect(shifted(square, [1, -1])[2]).toEqual([3, 1]);
  });
});

describe("an edge of a chain that is being drawn", () => {
  const chain = [
    [0, 0],
    [4, 0],
    [4, 3],
  ] as const;

  it("is free where it meets nothing", () => {
    expect(edgeInTheWay(chain, [0, 3])).toBeNull();
    expect(edgeInTheWay([], [1, 1])).toBeNull();
    expect(edgeInTheWay([[0, 0]], [1, 1])).toBeNull();
  });

  it("is named where it crosses or touches one drawn before", () => {
    expect(edgeInTheWay(chain, [2, -1])).toBe(0);
    expect(edgeInTheWay(chain, [2, 0])).toBe(0);
    expect(edgeInTheWay(chain, [0, 0])).toBe(0);
  });

  it("may not fold back on the last one, but may go straight on", () => {
    expect(edgeInTheWay(chain, [4, 1])).toBe(1);
    expect(edgeInTheWay(chain, [4, -1])).toBe(0);
    expect(edgeInTheWay(chain, [4, 3])).toBe(1);
    expect(edgeInTheWay(chain, [4, 5])).toBeNull();
    expect(edgeInTheWay(chain, [3.9, 1])).toBeNull();
  });
});
