import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { longestOver } from "../../src/canvas/elevation/Reactions";
import { type LabelWish, placeLabels } from "../../src/canvas/labels";
import { rowsFor } from "../../src/canvas/sketch";

const paper = { left: 0, top: 0, right: 400, bottom: 300 };
const place = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 300 }));
const wish: fc.Arbitrary<LabelWish> = fc.record({
  text: fc.constant("name"),
  width: fc.integer({ min: 10, max: 90 }),
  height: fc.constant(14),
  places: fc.array(place, { minLength: 1, maxLength: 4 }),
  must: fc.constant(false),
});

describe("labels", () => {
  test("none lies on another or off the paper", () => {
    fc.assert(
      fc.property(fc.array(wish, { maxLength: 25 }), (wishes) => {
        const boxes = placeLabels(wishes, [], paper).flatMap((at, index) => {
          if (at === null) return [];
          const { width, height } = wishes[index]!;
          return [
            { left: at[0] - width / 2, right: at[0] + width / 2, top: at[1] - height / 2, bottom: at[1] + height / 2 },
          ];
        });
        if (wishes.length > 0) expect(boxes.length).toBeGreaterThan(0);
        boxes.forEach((a, index) => {
          expect(a.left >= 0 && a.right <= 400 && a.top >= 0 && a.bottom <= 300).toBe(true);
          for (const b of boxes.slice(index + 1))
            expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false);
        });
      }),
      { numRuns: 300 },
    );
  });

  test("a label takes its next place where the first is taken, and one that must be written always is", () => {
    const base = { text: "H-01", width: 40, height: 14 };
    const places = [
      [100, 100],
      [100, 130],
    ] as const;
    const taken = [{ left: 90, right: 110, top: 95, bottom: 105 }];
    expect(placeLabels([{ ...base, places, must: false }], taken, paper)).toEqual([[100, 130]]);
    const only = [{ ...base, places: [places[0]], must: false }];
    expect(placeLabels(only, taken, paper)).toEqual([null]);
    expect(placeLabels([{ ...only[0]!, must: true }], taken, paper)).toEqual([[100, 100]]);
  });

  test("figures side by side stand in rows in which none touches the next", () => {
    const figure = fc.record({ at: fc.integer({ min: 0, max: 300 }), width: fc.integer({ min: 10, max: 80 }) });
    fc.assert(
      fc.property(fc.array(figure, { maxLength: 12 }), (figures) => {
        const rows = rowsFor(figures);
        expect(rows).toHaveLength(figures.length);
        figures.forEach((a, i) => {
          figures.forEach((b, j) => {
            if (i < j && rows[i] === rows[j])
              expect(Math.abs(a.at - b.at)).toBeGreaterThanOrEqual((a.width + b.width) / 2);
          });
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe("arrows of reactions", () => {
  test("give way to the figures under them: every row lies on the paper as long as the rows alone do", () => {
    for (const rows of [1, 2, 3, 4])
      for (const room of [60, 68, 80, 120, 200]) {
        const arrow = longestOver(rows, room);
        // 9 px clear of the floor, the arrow, then rows of 17 px.
        const foot = 9 + arrow + 17 * rows;
        if (9 + 17 * rows <= room) expect(foot).toBeLessThanOrEqual(room);
        expect(arrow === 0 || (arrow >= 12 && arrow <= 30)).toBe(true);
      }
    expect(longestOver(1, 200)).toBe(30);
    expect(longestOver(3, 68)).toBe(0);
  });
});
