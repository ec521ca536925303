/** What a hand keeps to while it draws, and what of a shape it hits. */
import { describe, expect, test } from "vitest";
import { cornerHandles, hitShape, middleHandles } from "../../src/canvas/draw/hitShape";
import { aimed, inLineWith, type Marks, marksOf, withDrawn } from "../../src/canvas/draw/marks";
import { complete, type PlanDocument, type Point } from "../../src/plan";
import { beam } from "../store/plans";

const plan = complete({
  ...beam,
  piece: { ...beam.piece, pose: { x: 1, y: 2, heading: 90 } },
  bay: {
    floor: { slope: [0, 0] },
    outline: [
      [0, 0],
      [9, 0],
      [9, 20],
      [0, 20],
    ],
    obstacles: [
      {
        name: "column B3",
        polygon: [
          [5, 5],
          [5.4, 5],
          [5.4, 5.4],
          [5, 5.4],
        ],
      },
    ],
  },
} satisfies PlanDocument);
const step = plan.steps[0]!;
const none: Marks = { corners: [], edges: [], lines: [] };

describe("a hand that draws", () => {
  const inBay = marksOf(plan, step, "bay");

  test("keeps to a corner in reach, by its name", () => {
    expect(aimed([5.03, 4.98], inBay, 0.05, 0.1)).toEqual({ at: [5, 5], lines: [], name: "corner of column B3" });
    expect(aimed([5.06, 4.98], inBay, 0.05, 0.1).name).not.toBe("corner of column B3");
  });

  test("keeps to an edge in reach, at a round place along it", () => {
    const { at, name } = aimed([9.02, 7.34], inBay, 0.05, 0.1);
    expect(name).toBe("edge of bay");
    expect(at[0]).toBe(9);
    expect(at[1]).toBeCloseTo(7.3, 12);
  });

  test("knows the piece in the bay: its far end lies 12 m up from (1, 2)", () => {
    expect(aimed([1.22, 13.98], inBay, 0.05, 0.1)).toEqual({
      at: [expect.closeTo(1.2, 12), expect.closeTo(14, 12)],
      lines: [],
      name: "corner of Beam",
    });
  });

  test("on the piece keeps to its ends, its middle and its axis", () => {
    const onPiece = marksOf(plan, step, "piece");
    const aim = aimed([6.02, 0.01], onPiece, 0.05, 0.1);
    expect(aim.at).toEqual([6, 0]);
    expect(aim.lines.map(({ name }) => name)).toEqual(["middle", "axis"]);
  });

  test("closes on the first corner, and keeps in line with those before", () => {
    const drawn = withDrawn(none, [
      [1, 1],
      [3, 1],
    ]);
    expect(aimed([1.02, 0.99], drawn, 0.05, 0.1).name).toBe("first corner");
    expect(aimed([3.01, 2.44], drawn, 0.05, 0.1)).toEqual({
      at: [3, expect.closeTo(2.4, 12)],
      lines: [{ axis: 0, at: 3, name: "in line with corner 2" }],
      name: null,
    });
    expect(inLineWith([1, 2], "corner 1").map(({ axis, at }) => [axis, at])).toEqual([
      [0, 1],
      [1, 2],
    ]);
  });

  test("else takes the nearest round numbers", () => {
    expect(aimed([2.46, -1.31], none, 0.05, 0.5).at).toEqual([2.5, -1.5]);
  });
});

describe("a shape under the hand", () => {
  const square: readonly Point[] = [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ];

  test("answers by its corners, then the middles of its edges, its edges, its inside", () => {
    expect(hitShape(square, true, [97, 4], 9)).toEqual({ kind: "corner", index: 1 });
    expect(hitShape(square, true, [104, 52], 9)).toEqual({ kind: "middle", index: 1 });
    expect(hitShape(square, true, [103, 30], 9)).toEqual({ kind: "edge" });
    expect(hitShape(square, true, [60, 30], 9)).toEqual({ kind: "inside" });
    expect(hitShape(square, true, [130, 30], 9)).toBeNull();
    expect(hitShape(square.slice(0, 2), false, [50, 2], 9)).toEqual({ kind: "edge" });
    expect(hitShape(square.slice(0, 2), false, [50, 20], 9)).toBeNull();
  });

  test("with a thousand corners has handles that stand apart", () => {
    const fine = Array.from({ length: 1000 }, (_, k): Point => [k, 0]);
    const handles = cornerHandles(fine);
    expect(handles.length).toBeGreaterThan(40);
    for (const [index, handle] of handles.slice(1).entries())
      expect(handle - handles[index]!).toBeGreaterThanOrEqual(20);
    expect(middleHandles(fine, true)).toHaveLength(1);
    expect(middleHandles(square, true).map(({ at }) => at)).toContainEqual([50, 0]);
  });
});
