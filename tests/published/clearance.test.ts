/** Clear widths with a closed form. */

import { describe, it } from "vitest";
import { type Barrier, widestPath } from "../../src/geometry";
import type { Point, Polygon } from "../../src/plan";
import { published } from "../helpers/published";

const chains =
  "Derived: least over chains wall–obstacle–…–wall of the greatest gap in the chain (bottleneck paths: T. C. Hu, Operations Research 9 (1961), from memory)";

const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const bay = (ring: Polygon): Barrier => ({ ring, solid: "outside", radius: 0 });
const box = (x: number, y: number, width: number, height: number): Barrier => ({
  ring: rectangle(x, y, width, height),
  solid: "inside",
  radius: 0,
});
const disc = (x: number, y: number, radius: number): Barrier => ({ ring: [[x, y]], solid: "inside", radius });

function check(source: string, item: string, expected: number, barriers: readonly Barrier[], from: Point, to: Point) {
  const computed = widestPath(barriers, from, to).width;
  published({ source, item, expected, computed, tolerance: { absolute: 1e-9 } });
}

describe("a corridor 10 wide", () => {
  // So long that the start and the end are wider than any pinch.
  const corridor = bay(rectangle(-20, 0, 50, 10));
  const discs: readonly (readonly [string, number, readonly Barrier[]])[] = [
    ["corridor 10 wide, nothing in it, m", 10, []],
    ["corridor 10 wide, disc (5, 4) r 1: above it, m", 5, [disc(5, 4, 1)]],
    [
      "corridor 10 wide, discs (5, 3) and (8, 7) r 1: between them √(3² + 4²) − 2, m",
      3,
      [disc(5, 3, 1), disc(8, 7, 1)],
    ],
    [
      "corridor 10 wide, discs (4, 2), (6, 5), (8, 8) r 1: √13 − 2, m",
      Math.sqrt(13) - 2,
      [disc(4, 2, 1), disc(6, 5, 1), disc(8, 8, 1)],
    ],
  ];
  it.each(discs)("%s", (item, expected, obstacles) => {
    check(chains, item, expected, [corridor, ...obstacles], [-10, 5], [20, 5]);
  });
});

describe("closed forms", () => {
  const source = "Derived: plane geometry";

  it("two discs that close a corridor but for the gap between them", () => {
    for (const [dx, dy] of [
      [0, 5],
      [1, 5],
      [2.5, 4],
    ] as const) {
      const gap = Math.hypot(dx, dy) - 1.5;
      // The first touches one wall, the second the other.
      const barriers = [bay(rectangle(-20, 0, 40, dy + 1.5)), disc(0, 1, 1), disc(dx, 1 + dy, 0.5)];
      check(
        source,
        `two discs ${dx}, ${dy} apart, r 1 and 0.5: centre distance − r₁ − r₂, m`,
        gap,
        barriers,
        [-15, 3],
        [15, 3],
      );
    }
  });

  it("a disc and a wall, square and skew", () => {
    for (const angle of [0, 0.3, 1]) {
      const turn = ([x, y]: Point): Point => [
        x * Math.cos(angle) - y * Math.sin(angle),
        x * Math.sin(angle) + y * Math.cos(angle),
      ];
      const ring = rectangle(-20, 0, 40, 6).map(turn);
      const [x, y] = turn([0, 4.2]);
      const item = `disc r 0.7 at 4.2 from one wall of a corridor 6 wide, turned ${angle} rad, m`;
      check(source, item, 3.5, [bay(ring), disc(x, y, 0.7)], turn([-15, 3]), turn([15, 3]));
    }
  });

  it("round a right-angled corner the narrower leg governs", () => {
    const corner: Polygon = [
      [0, 0],
      [12, 0],
      [12, 1.2],
      [1.7, 1.2],
      [1.7, 12],
      [0, 12],
    ];
    check(
      source,
      "corridors 1.2 and 1.7 wide that meet at a right angle, m",
      1.2,
      [bay(corner)],
      [11, 0.6],
      [0.85, 11],
    );
  });

  it("past a corner of a turned square, with the wall behind it closed", () => {
    // A square of side 2, a corner pointing at the wall y = 0 from 0.9 away, its far corner through the wall y = 3.
    const half = Math.SQRT2;
    const square: Polygon = [
      [0, 0.9],
      [half, 0.9 + half],
      [0, 0.9 + 2 * half],
      [-half, 0.9 + half],
    ];
    const barriers: Barrier[] = [bay(rectangle(-10, 0, 20, 3)), { ring: square, solid: "inside", radius: 0 }];
    check(source, "corner of a square 0.9 from a wall, m", 0.9, barriers, [-8, 1.5], [8, 1.5]);
  });

  it("through a gap between two corners set off from each other", () => {
    // Two blocks from opposite walls, 0.5 apart along and 0.6 apart across: the corners are √(0.5² + 0.6²) apart.
    const barriers = [bay(rectangle(-10, 0, 20, 4)), box(-2, 0, 2, 1.7), box(0.5, 2.3, 2, 1.7)];
    check(
      source,
      "corners of two blocks 0.5 and 0.6 apart: √(0.5² + 0.6²), m",
      Math.hypot(0.5, 0.6),
      barriers,
      [-8, 2],
      [8, 2],
    );
  });

  it("between the legs of a grown frame and a wall", () => {
    const frame: Barrier = { ring: rectangle(-0.5, 0, 1, 1.8), solid: "inside", radius: 0.05 };
    const barriers = [bay(rectangle(-10, 0, 20, 3)), frame];
    check(
      source,
      "frame 1.8 deep grown by 0.05 in a corridor 3 wide: 3 − 1.8 − 0.05, m",
      1.15,
      barriers,
      [-8, 1.5],
      [8, 1.5],
    );
  });

  it("no wider than the room at the start", () => {
    const barriers = [bay(rectangle(-10, 0, 20, 3))];
    check(source, "start 0.4 from the wall of a corridor 3 wide: 2·0.4, m", 0.8, barriers, [-8, 0.4], [8, 1.5]);
  });

  it("nothing where the way is closed", () => {
    const closed = [bay(rectangle(-10, 0, 20, 3)), box(0, 0, 1, 3)];
    check(source, "a block from wall to wall, m", 0, closed, [-8, 1.5], [8, 1.5]);
    check(source, "a start inside a block, m", 0, closed, [0.5, 1.5], [8, 1.5]);
    check(source, "a start outside the bay, m", 0, [bay(rectangle(-10, 0, 20, 3))], [-8, 3.5], [8, 1.5]);
    const pen = [
      bay(rectangle(-10, 0, 20, 3)),
      box(-9, 0.5, 2, 0.1),
      box(-9, 2, 2, 0.1),
      box(-9, 0.5, 0.1, 1.6),
      box(-7.1, 0.5, 0.1, 1.6),
    ];
    check(source, "a start in a closed pen, m", 0, pen, [-8, 1.5], [8, 1.5]);
  });
});
