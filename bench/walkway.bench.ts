/**
 * Time of the walkway widths (with the legs and without) and of the whole floor of a layout: a typical bay, then against
 * the number of stands, of obstacles and of outline points. Medians, ms. Prints a table and writes reports/walkway.json.
 */

import { floorOf } from "../src/floor";
import type { Plan, Point, Polygon } from "../src/plan";
import { aFrame, planWith } from "../tests/floor/plans";
import { exponent, median, writeReport } from "./measure";

interface Size {
  readonly stands: number;
  readonly obstacles: number;
  readonly outlinePoints: number;
}

const typical: Size = { stands: 5, obstacles: 8, outlinePoints: 8 };

/** A bay 40 × 12 m, the piece along its middle, notched machines on either side, a walkway from end to end. */
function planOf({ stands, obstacles, outlinePoints }: Size) {
  const half = Math.max(2, Math.ceil(outlinePoints / 2));
  const side = (sign: number): Point[] =>
    Array.from({ length: half }, (_, k) => [(12 * k) / (half - 1), sign * (0.2 + (k % 2 === 0 ? 0 : 0.01))]);
  const outline: Polygon = [...side(-1), ...side(1).reverse()];
  const machine = (k: number): Polygon => {
    const [x, y] = [2 + (((36 * k) / obstacles) % 36), k % 2 === 0 ? 1 + 0.1 * (k % 5) : 10 - 0.1 * (k % 7)];
    return [
      [x, y],
      [x + 1.5, y],
      [x + 1.5, y + 1],
      [x + 1, y + 1],
      [x + 1, y + 0.4],
      [x + 0.5, y + 0.4],
      [x + 0.5, y + 1],
      [x, y + 1],
    ];
  };
  return planWith({
    types: [aFrame],
    placements: Array.from({ length: stands }, (_, k) => ({ s: (12 * (k + 0.5)) / stands, angle: 3 * (k % 4) })),
    piece: { pose: { x: 14, y: 6, heading: 2 }, outline },
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [0, 0],
        [40, 0],
        [40, 12],
        [0, 12],
      ],
      obstacles: Array.from({ length: obstacles }, (_, k) => ({ name: `machine ${k}`, polygon: machine(k) })),
      walkways: [{ name: "route", from: [1, 4], to: [39, 4] }],
    },
  });
}

/** Many of the same walkway, so that one can be told from the rest of the floor. */
const copies = 20;

function measure(size: Size) {
  const plan = planOf(size);
  const layout = plan.layouts[0]!;
  const withWalkways = (count: number): Plan => {
    const walkways = Array.from({ length: count }, () => plan.bay!.walkways[0]!);
    return { ...plan, bay: { ...plan.bay!, walkways } };
  };
  const [none, many] = [withWalkways(0), withWalkways(copies)];
  const walkway = (median(() => floorOf(many, layout)) - median(() => floorOf(none, layout))) / copies;
  const [answer] = floorOf(plan, layout).walkways;
  return { ...size, floor: median(() => floorOf(plan, layout)), walkway, clearWidth: answer!.clearWidth };
}

const series = {
  stands: [2, 5, 10, 20, 40].map((stands) => measure({ ...typical, stands })),
  obstacles: [2, 8, 32, 128].map((obstacles) => measure({ ...typical, obstacles })),
  outlinePoints: [4, 40, 400, 5000].map((outlinePoints) => measure({ ...typical, outlinePoints })),
};
const one = measure(typical);
console.log(
  `typical bay (5 stands, 8 machines of 8 corners): one walkway, both widths ${one.walkway.toFixed(2)} ms, whole floor ${one.floor.toFixed(2)} ms`,
);
for (const [what, rows] of Object.entries(series) as [
  keyof Size,
  readonly (Size & { floor: number; walkway: number })[],
][]) {
  const fitted = exponent(rows.map((row) => [row[what], row.floor]));
  console.log(`\n${what} (whole floor grows with the power ${fitted.toFixed(2)})`);
  for (const row of rows)
    console.log(
      `${String(row[what]).padStart(6)}  floor ${row.floor.toFixed(2).padStart(8)} ms  walkway ${row.walkway.toFixed(2).padStart(8)} ms`,
    );
}

writeReport("walkway", { typical: one, series });
