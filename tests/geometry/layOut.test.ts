/** A drawing laid out as a piece or a bay: turned by hand on paper. */
import { describe, expect, it } from "vitest";
import {
  cornerOf,
  datumOf,
  holesOf,
  laidOut,
  polygonArea,
  rectangleBetween,
  shifted,
  turnsAlong,
} from "../../src/geometry";
import type { Polygon } from "../../src/plan";

/** An L in mm, 400 across and 1000 up, its foot to the right. */
const upright: Polygon = [
  [100, 50],
  [500, 50],
  [500, 250],
  [300, 250],
  [300, 1050],
  [100, 1050],
];
const millimetres = { metresAUnit: 0.001, mirrored: false, quarterTurns: 0 } as const;

describe("holes", () => {
  const outer = rectangleBetween([0, 0], [10, 10]);
  const hole = rectangleBetween([1, 1], [4, 4]);
  const island = rectangleBetween([2, 2], [3, 3]);
  const other = rectangleBetween([5, 1], [6, 2]);
  const across = rectangleBetween([9, 9], [11, 11]);
  const beside = rectangleBetween([20, 0], [30, 10]);

  it("are the rings inside the outer one, and not those inside a hole, across it or beside it", () => {
    expect(holesOf(outer, [beside, island, outer, hole, across, other])).toEqual([hole, other]);
  });

  it("are not what lies in the bay of a hook", () => {
    const hook: Polygon = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
      [0, 8],
      [8, 8],
      [8, 2],
      [0, 2],
    ];
    expect(holesOf(hook, [hook, rectangleBetween([1, 4], [2, 5])])).toEqual([]);
  });
});

describe("an outline laid out", () => {
  it("is turned so that its longer side runs along the piece", () => {
    expect(turnsAlong(upright)).toBe(1);
    expect(turnsAlong(rectangleBetween([0, 0], [3, 1]))).toBe(0);
  });

  it("begins at its datum and lies evenly about the axis; round millimetres stay round", () => {
    const laying = { ...millimetres, quarterTurns: 1 } as const;
    // A quarter turn takes (x, y) to (−y, x): the foot, at least y, comes to the far end.
    expect(laidOut(upright, laying, datumOf(upright, laying))).toEqual([
      [1, -0.2],
      [1, 0.2],
      [0.8, 0.2],
      [0.8, 0],
      [0, 0],
      [0, -0.2],
    ]);
  });

  it("has the foot at the datum when it is turned the other way round, and on the other side when it is mirrored", () => {
    const round = { ...millimetres, quarterTurns: 3 } as const;
    const turned = laidOut(upright, round, datumOf(upright, round));
    expect(turned).toContainEqual([0, 0.2]);
    expect(turned).toContainEqual([0.2, 0]);
    const below = { ...round, mirrored: true } as const;
    const mirrored = laidOut(upright, below, datumOf(upright, below));
    expect(polygonArea(mirrored)).toBeCloseTo(polygonArea(upright) * 1e-6, 9);
    // Mirrored across, the foot lies at the far end after the same turn.
    expect(mirrored).toContainEqual([1, -0.2]);
    expect(mirrored).toContainEqual([0.8, 0]);
  });

  it("of a bay begins at its least corner, and what is drawn with it keeps its place", () => {
    const origin = cornerOf(upright, millimetres);
    expect(origin).toEqual([0.1, 0.05]);
    const column = rectangleBetween([300, 250], [320, 270]);
    expect(laidOut(column, millimetres, origin)).toEqual([
      [0.2, 0.2],
      [0.22, 0.2],
      [0.22, 0.22],
      [0.2, 0.22],
    ]);
    expect(laidOut(shifted(column, [1000, 0]), { ...millimetres, metresAUnit: 0.0254 }, [0, 0])[0]).toEqual([
      33.02, 6.35,
    ]);
  });

  it("has no corner twice: those closer than a micrometre are one", () => {
    const ring: Polygon = [
      [0, 0],
      [1, 0],
      [1.0000002, 0.0000001],
      [1, 1],
      [0.0000001, 0],
    ];
    expect(laidOut(ring, { ...millimetres, metresAUnit: 1 }, [0, 0])).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
    ]);
  });
});
