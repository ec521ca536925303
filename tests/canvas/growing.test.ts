import { describe, expect, it } from "vitest";
import { absentStretches, shortened } from "../../src/canvas/growing/parts";

describe("half-built pieces as drawn", () => {
  it("parts are shortened where they touch, by 3 px each, and nowhere else", () => {
    expect(
      shortened(
        [
          [0, 5],
          [5, 8],
          [9, 12],
        ],
        100,
      ),
    ).toEqual([
      [0, 4.97],
      [5.03, 8],
      [9, 12],
    ]);
  });

  it("a short part keeps at least half of its length however far away it is seen", () => {
    const [, [from, to]] = shortened(
      [
        [0, 5],
        [5, 5.1],
        [5.1, 12],
      ],
      2,
    ) as [unknown, readonly [number, number]];
    expect(to - from).toBeCloseTo(0.05, 12);
  });

  it("what no part covers is not there", () => {
    expect(
      absentStretches(
        [
          [1, 5],
          [5, 8],
          [9, 12],
        ],
        12,
      ),
    ).toEqual([
      [0, 1],
      [8, 9],
    ]);
    expect(absentStretches([[0, 12]], 12)).toEqual([]);
  });
});
