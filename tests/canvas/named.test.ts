import { expect, test } from "vitest";
import { along } from "../../src/canvas/planView/named";

const paper = { width: 1000, height: 400 };

test("a name along a line stands over the part of it that is on the paper", () => {
  // The paper has 8 px at its sides: of a line from −1000 to 600 it shows 8 to 600, whose middle is 304.
  const [middle] = along([-1000, 200], [600, 200], paper);
  expect(middle?.[0]).toBeCloseTo(304, 9);
  expect(middle?.[1]).toBe(190);
  for (const [x, y] of along([-300, -300], [1300, 700], paper)) {
    expect(x).toBeGreaterThanOrEqual(8);
    expect(x).toBeLessThanOrEqual(992);
    expect(y).toBeGreaterThanOrEqual(8);
    expect(y).toBeLessThan(400);
  }
});

test("a line off the paper has no place for its name", () => {
  expect(along([0, -50], [1000, -20], paper)).toEqual([]);
  expect(along([1200, 0], [1200, 400], paper)).toEqual([]);
});
