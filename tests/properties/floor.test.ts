/** What the floor says does not depend on where in the world the bay lies, nor on which way round it is drawn. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FloorReport } from "../../src/floor";
import { floorOf } from "../../src/floor";
import type { Plan, Point, Polygon } from "../../src/plan";
import { aFrame, planWith, straight } from "../floor/plans";

const seed = 20261125;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

const placement = fc.record({
  s: between(0.5, 9.5),
  t: between(-0.6, 0.6),
  angle: between(-180, 180),
  height: between(0.3, 2.3),
});
const obstacle = fc.tuple(between(0, 19), between(0, 7), between(0.1, 2), between(0.1, 2));
const setting = fc.record({
  placements: fc.array(placement, { minLength: 1, maxLength: 4 }),
  tall: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
  obstacles: fc.array(obstacle, { maxLength: 5 }),
  heading: between(-180, 180),
  from: fc.tuple(between(0.5, 4), between(0.5, 7.5)),
  to: fc.tuple(between(16, 19.5), between(0.5, 7.5)),
});
type Setting = typeof setting extends fc.Arbitrary<infer Value> ? Value : never;

/** A motion of the floor plane: turned by `turn` degrees about the origin, then shifted; mirrored in the x axis before. */
interface Motion {
  readonly mirrored: boolean;
  readonly turn: number;
  readonly shift: Point;
}
const still: Motion = { mirrored: false, turn: 0, shift: [0, 0] };

function moved({ mirrored, turn, shift }: Motion, [x, y]: Point): Point {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const v = mirrored ? -y : y;
  return [shift[0] + x * cos - v * sin, shift[1] + x * sin + v * cos];
}

function planOf({ placements, tall, obstacles, heading, from, to }: Setting, motion: Motion): Plan {
  const sign = motion.mirrored ? -1 : 1;
  const move = (polygon: Polygon) => polygon.map((point) => moved(motion, point));
  const [x, y] = moved(motion, [6, 4]);
  return planWith({
    types: [aFrame, straight],
    stands: placements.map((_, k) => ({ type: tall[k] ? "straight" : "af" })),
    placements: placements.map((placed) => ({ ...placed, t: sign * placed.t, angle: sign * placed.angle })),
    piece: {
      pose: { x, y, heading: motion.turn + sign * heading },
      noRestZones: [{ name: "pad", polygon: mirroredIf(motion.mirrored, rectangle(3, -0.2, 0.8, 0.3)) }],
      workWindows: [
        { name: "weld", polygon: mirroredIf(motion.mirrored, rectangle(6, -0.1, 0.5, 0.3)), clearance: 0.2 },
      ],
    },
    bay: {
      floor: { slope: [0, 0] },
      outline: move(rectangle(0, 0, 20, 8)),
      obstacles: obstacles.map((box, k) => ({ name: `box ${k}`, polygon: move(rectangle(...box)) })),
      noFootZones: [{ name: "trench", polygon: move(rectangle(8, 0, 0.6, 8)) }],
      walkways: [
        { name: "route", from: moved(motion, from), to: moved(motion, to), lane: move(rectangle(0, 2, 20, 1.5)) },
      ],
    },
  });
}

function mirroredIf(mirrored: boolean, polygon: Polygon): Polygon {
  return mirrored ? polygon.map(([s, t]) => [s, -t]) : polygon;
}

/** Everything in a report that a motion must leave alone. */
function numbersOf(report: FloorReport): number[] {
  const areas = (zones: readonly { readonly area: number }[]) => zones.reduce((sum, { area }) => sum + area, 0);
  return [
    ...report.stands.flatMap(({ tripZone, outsideBay, noRestZones, noFootZones, obstacles, windows }) => [
      tripZone.area,
      tripZone.reach,
      outsideBay,
      areas(noRestZones),
      areas(noFootZones),
      areas(obstacles),
      ...windows.flatMap(({ distance, area }) => [distance, area]),
    ]),
    areas(report.standOverlaps),
    report.pieceOutsideBay,
    ...report.walkways.flatMap(({ clearWidth, withoutLegs, lane }) => [
      clearWidth,
      withoutLegs,
      ...lane.flatMap(({ feet, tripZone }) => [feet, tripZone]),
    ]),
  ];
}

const report = (plan: Plan) => floorOf(plan, plan.layouts[0]!);
/** Areas are rounded to the clipping grid, and below a square millimetre they count as none. */
const roundedTo = 5e-6;

function check(motion: fc.Arbitrary<Motion>): void {
  fc.assert(
    fc.property(setting, motion, (given, move) => {
      const here = numbersOf(report(planOf(given, still)));
      const there = numbersOf(report(planOf(given, move)));
      expect(there).toHaveLength(here.length);
      const differing = here.filter((value, k) => !(value >= 0 && Math.abs(value - there[k]!) <= roundedTo));
      expect(differing).toEqual([]);
    }),
    { seed, numRuns: 100 },
  );
}

describe("the floor of random layouts", () => {
  it("is the same wherever the bay lies and whichever way it is turned", () => {
    check(
      fc.record({
        mirrored: fc.constant(false),
        turn: between(-180, 180),
        shift: fc.tuple(between(-500, 500), between(-500, 500)),
      }),
    );
  });

  it("is the same mirrored", () => {
    check(fc.record({ mirrored: fc.constant(true), turn: between(-180, 180), shift: fc.constant<Point>([0, 0]) }));
  });

  it("walkways are no wider with the legs than without, no wider than the room at start and end", () => {
    fc.assert(
      fc.property(setting, (given) => {
        const [walkway] = report(planOf(given, still)).walkways;
        expect(walkway!.clearWidth).toBeLessThanOrEqual(walkway!.withoutLegs);
        expect(walkway!.withoutLegs).toBeLessThanOrEqual(
          2 * Math.min(given.from[1], 8 - given.from[1], given.from[0]) + 1e-12,
        );
        expect(walkway!.narrowestAt === null).toBe(walkway!.clearWidth === 0);
      }),
      { seed, numRuns: 100 },
    );
  });
});
