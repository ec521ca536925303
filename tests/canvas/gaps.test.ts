import { expect, test } from "vitest";
import { outlineOf } from "../../src/canvas/elevation/PieceInElevation";
import { complete } from "../../src/plan";
import { beam } from "../store/plans";

test("a part that is drawn shorter is so along its lower and its upper edge, however few its stations", () => {
  // Rigid: the datum is one straight line from 0.762 m at s = 0 to 0.862 m at s = 6; drawn from 1 to 5.
  const part = {
    from: 1,
    to: 5,
    datum: [
      [0, 0.762],
      [6, 0.862],
    ],
  } as const;
  const outline = outlineOf(complete(beam), part);
  const ss = outline.map(([s]) => s);
  expect(Math.min(...ss)).toBeCloseTo(1, 5);
  expect(Math.max(...ss)).toBeCloseTo(5, 5);
  // The upper corners are the depth of 0.6 m over the datum there.
  for (const [s, z] of [
    [1, 0.762 + 0.1 / 6 + 0.6],
    [5, 0.762 + 0.5 / 6 + 0.6],
  ] as const)
    expect(outline.some(([ps, pz]) => Math.abs(ps - s) < 1e-9 && Math.abs(pz - z) < 1e-9)).toBe(true);
});
