/** Loops of a drawing made into an outline or a bay: what comes of them follows from plane geometry. */
import { describe, expect, test } from "vitest";
import { polygonArea, rectangleBetween } from "../../src/geometry";
import { bayFrom, compareSize, pieceFrom, proposedLayers } from "../../src/panels/drawing/arrange";
import type { Point } from "../../src/plan";

const laying = { metresAUnit: 0.001, mirrored: false, quarterTurns: 0 } as const;
const plate = rectangleBetween([0, 0], [3000, 1000]);
const hole = rectangleBetween([500, 400], [700, 600]);
const bow: readonly Point[] = [
  [1000, 200],
  [1400, 600],
  [1400, 200],
  [1000, 700],
];

describe("a piece from loops", () => {
  test("has the holes that lie in its outline, and says of those that cross themselves", () => {
    const made = pieceFrom([plate, bow, hole], 0, laying);
    if (!made.ok) throw new Error(made.message);
    expect(made.outline).toEqual({
      polygon: [
        [0, -0.5],
        [3, -0.5],
        [3, 0.5],
        [0, 0.5],
      ],
      dropped: 0,
      within: 0,
    });
    expect(made.holes).toEqual([
      [
        [0.5, -0.1],
        [0.7, -0.1],
        [0.7, 0.1],
        [0.5, 0.1],
      ],
    ]);
    expect(made.unusable).toBe(1);
  });

  test("is another loop where that is chosen", () => {
    const made = pieceFrom([plate, hole], 1, laying);
    expect(made.ok && polygonArea(made.outline.polygon)).toBeCloseTo(0.04, 12);
    expect(made.ok && made.holes).toEqual([]);
  });

  test("is refused with one sentence where nothing closes or the outline crosses itself", () => {
    expect(pieceFrom([], 0, laying)).toEqual({
      ok: false,
      message: "Nothing on these layers closes to an outline; join the gaps or choose other layers.",
    });
    expect(pieceFrom([bow], 0, laying)).toMatchObject({ ok: false, message: expect.stringMatching(/^This outline/) });
  });

  test("of 30 000 corners comes with at most 10 000, and says how far off it may be", () => {
    const count = 30_000;
    const circle = Array.from({ length: count }, (_, k): Point => {
      const angle = (2 * Math.PI * k) / count;
      return [2000 * Math.cos(angle), 2000 * Math.sin(angle)];
    });
    const made = pieceFrom([circle], 0, laying);
    if (!made.ok) throw new Error(made.message);
    const { polygon, dropped, within } = made.outline;
    expect(polygon.length).toBeLessThanOrEqual(10_000);
    expect(dropped).toBe(count - polygon.length);
    // Every third corner left: a chord over 4π/count rad of a 2 m circle is off by at most 2·(1 − cos(3π/count)), and the
    // coordinates are kept to a micrometre.
    expect(within).toBeLessThan(2e-6);
    expect(polygonArea(polygon)).toBeCloseTo(Math.PI * 4, 4);
  });
});

test("a bay takes names from its layers, and of loops in one another the outermost", () => {
  const hall = rectangleBetween([10_000, 0], [30_000, 9000]);
  const column = rectangleBetween([12_000, 2000], [12_400, 2400]);
  const inside = rectangleBetween([12_100, 2100], [12_300, 2300]);
  const pit = rectangleBetween([20_000, 1000], [22_000, 2000]);
  const trench = rectangleBetween([25_000, 0], [25_500, 9000]);
  const made = bayFrom(
    [hall, pit],
    0,
    [{ name: "COL", loops: [column, inside] }],
    [{ name: "TR", loops: [trench] }],
    laying,
  );
  if (!made.ok) throw new Error(made.message);
  expect(made.outline.polygon[2]).toEqual([20, 9]);
  expect(made.obstacles).toEqual([
    { name: "obstacle 1", polygon: rectangleBetween([10, 1], [12, 2]) },
    { name: "COL 1", polygon: rectangleBetween([2, 2], [2.4, 2.4]) },
  ]);
  expect(made.noFootZones).toEqual([{ name: "TR 1", polygon: rectangleBetween([15, 0], [15.5, 9]) }]);
});

test("a typed size agrees to half a per cent, else says by how much the drawing is off", () => {
  expect(compareSize(3, 3)).toEqual({ kind: "agrees" });
  expect(compareSize(3, 3.0149)).toEqual({ kind: "agrees" });
  expect(compareSize(3, 3.016).kind).toBe("differs");
  // Inches read as millimetres.
  expect(compareSize(0.1, 2.54)).toMatchObject({ kind: "differs", factor: expect.closeTo(25.4, 12) });
});

test("the layers of the greatest loop are proposed; all of them where nothing closes", () => {
  const layers = [
    { name: "A", area: 2 },
    { name: "B", area: 9 },
    { name: "C", area: 0 },
  ];
  expect(proposedLayers(layers)).toEqual(["B"]);
  expect(proposedLayers(layers.map((layer) => ({ ...layer, area: 0 })))).toEqual(["A", "B", "C"]);
});
