/**
 * How the cost of the level reactions, of the floor and of the bounds (attained, without their proofs) grows with the number of stands, of masses and of
 * outline points. Prints tables with the fitted power, writes reports/growth.json and the picture docs/growth.svg.
 */

import { writeFileSync } from "node:fs";
import { floorOf } from "../src/floor";
import type { Plan, Point, Polygon } from "../src/plan";
import { complete, type PlanDocument } from "../src/plan";
import { assembleStep, boundsOf, levelAt } from "../src/statics";
import { exponent, machine, processorTime, writeReport } from "./measure";

interface Size {
  readonly stands: number;
  readonly masses: number;
  readonly outlinePoints: number;
}

const usual: Size = { stands: 5, masses: 10, outlinePoints: 4 };
const length = 24;

/** An elastic piece with a wavy outline on evenly spaced stands, with point masses along it. */
function planOf({ stands, masses, outlinePoints }: Size): Plan {
  const half = Math.max(2, Math.ceil(outlinePoints / 2));
  const side = (sign: number): Point[] =>
    Array.from({ length: half }, (_, k) => [(length * k) / (half - 1), sign * (0.2 + (k % 2 === 0 ? 0 : 0.01))]);
  const outline: Polygon = [...side(-1), ...side(1).reverse()];
  const ids = Array.from({ length: stands }, (_, k) => `S${k + 1}`);
  const document = {
    format: "trestleboard-plan",
    version: 1,
    title: "growth",
    piece: {
      name: "piece",
      outline,
      depth: 0.6,
      stiffness: [{ from: 0, to: length, EI: 1.2e8, kGA: 4e8, GJ: 2e6 }],
      masses: [
        {
          id: "beam",
          name: "beam",
          kind: "line",
          from: 0,
          to: length,
          massPerLength: [300, 340],
          t: 0,
          z: 0.3,
          uncertainty: 0.03,
        },
        ...Array.from({ length: masses - 1 }, (_, k) => ({
          id: `m${k}`,
          name: `mass ${k}`,
          kind: "point",
          s: (length * (k + 0.5)) / masses,
          t: 0.05 * ((k % 3) - 1),
          z: 0.3,
          mass: 1000 / masses,
          uncertainty: 0.05,
        })),
      ],
    },
    standTypes: [
      {
        id: "horse",
        name: "horse",
        legs: "a-frame",
        height: { min: 0.5, max: 1.2, increment: 0 },
        top: { length: 1, width: 0.2, material: "hardwood" },
        legSpacing: 0.8,
        splay: { along: 15, across: 0 },
        foot: { length: 0.15, width: 0.1 },
        ratedLoad: 90000,
        stiffness: 4e7,
        selfMass: 100,
      },
    ],
    stands: ids.map((id) => ({ id, type: "horse", condition: "in-service" })),
    layouts: [
      {
        id: "A",
        name: "A",
        placements: ids.map((stand, k) => ({ stand, s: (length * (k + 0.5)) / stands, t: 0, height: 0.8 })),
      },
    ],
    steps: [{ id: "only", name: "only", layout: "A" }],
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [-4, -4],
        [length + 4, -4],
        [length + 4, 4],
        [-4, 4],
      ],
    },
  };
  return complete(document as unknown as PlanDocument);
}

/** Answers are remembered by identity; a fresh plan has none. */
function measure(size: Size) {
  const plan = planOf(size);
  const [step, layout] = [plan.steps[0]!, plan.layouts[0]!];
  const fresh = () => ({ ...plan, piece: { ...plan.piece, outline: [...plan.piece.outline] } });
  return {
    ...size,
    level: processorTime(() => {
      const again = fresh();
      return levelAt(assembleStep(again, step), again.piece.masses);
    }),
    floor: processorTime(() => floorOf(fresh(), layout)),
    bounds: processorTime(() => boundsOf(fresh(), step), 3),
  };
}

// Warms up, so that the first row is not the compiler's.
measure(usual);

type Row = ReturnType<typeof measure>;
const series: Readonly<Record<keyof Size, readonly Row[]>> = {
  stands: [2, 3, 5, 10, 20, 40].map((stands) => measure({ ...usual, stands })),
  masses: [1, 10, 100, 1000].map((masses) => measure({ ...usual, masses })),
  outlinePoints: [4, 40, 400, 5000].map((outlinePoints) => measure({ ...usual, outlinePoints })),
};
const parts = ["level", "floor", "bounds"] as const;
const names: Readonly<Record<keyof Size, string>> = {
  stands: "stands",
  masses: "masses",
  outlinePoints: "points of the outline",
};

function pointsOf(what: keyof Size, part: (typeof parts)[number]): (readonly [number, number])[] {
  return series[what].flatMap((row) => (row[part] === null ? [] : [[row[what], row[part]] as const]));
}

const fitted = Object.fromEntries(
  (Object.keys(series) as (keyof Size)[]).map((what) => [
    what,
    Object.fromEntries(parts.map((part) => [part, exponent(pointsOf(what, part))])),
  ]),
) as Readonly<Record<keyof Size, Readonly<Record<(typeof parts)[number], number>>>>;

for (const what of Object.keys(series) as (keyof Size)[]) {
  console.log(
    `\n${names[what]}; powers: ${parts.map((part) => `${part} ${fitted[what][part].toFixed(2)}`).join(", ")}`,
  );
  for (const row of series[what])
    console.log(
      `${String(row[what]).padStart(6)}  ${parts.map((part) => `${part} ${(row[part]?.toFixed(3) ?? "–").padStart(9)} ms`).join("  ")}`,
    );
}

/** Three diagrams side by side, log over log, one line a part of the report. */
function picture(): string {
  const [width, height, left, top, apart] = [290, 230, 70, 66, 80];
  const [least, most] = [0.01, 10_000];
  const colours = { level: "#0b4f8a", floor: "#0a6b58", bounds: "#8a3b0b" };
  const said = { level: "level reactions", floor: "floor", bounds: "bounds, attained" };
  const y = (time: number) => top + height * (1 - Math.log(time / least) / Math.log(most / least));
  const text = (at: readonly [number, number], words: string, more = "") =>
    `<text x="${at[0].toFixed(1)}" y="${at[1].toFixed(1)}" ${more}>${words}</text>`;
  const diagrams = (Object.keys(series) as (keyof Size)[]).map((what, index) => {
    const from = left + index * (width + apart);
    const sizes = series[what].map((row) => row[what]);
    const x = (size: number) => from + (width * Math.log(size / sizes[0]!)) / Math.log(sizes.at(-1)! / sizes[0]!);
    const lines = parts.flatMap((part) => {
      const points = pointsOf(what, part).map(([size, time]) => [x(size).toFixed(1), y(time).toFixed(1)] as const);
      return [
        `<polyline points="${points.join(" ")}" fill="none" stroke="${colours[part]}" stroke-width="1.5"/>`,
        ...points.map(([cx, cy]) => `<circle cx="${cx}" cy="${cy}" r="2.5" fill="${colours[part]}"/>`),
      ];
    });
    const legend = parts.map((part, i) =>
      text(
        [from, top + height + 42 + 16 * i],
        `${said[part]}: power ${fitted[what][part].toFixed(2)}`,
        `fill="${colours[part]}"`,
      ),
    );
    const times = { 0.01: "10 µs", 0.1: "0.1 ms", 1: "1 ms", 10: "10 ms", 100: "0.1 s", 1000: "1 s", 10000: "10 s" };
    const grid = Object.entries(times).map(
      ([time, words]) =>
        `<line x1="${from}" x2="${from + width}" y1="${y(+time)}" y2="${y(+time)}" stroke="#c8ced6" stroke-width="0.5"/>` +
        text([from - 8, y(+time) + 4], words, 'text-anchor="end" fill="#44515f"'),
    );
    const ticks = sizes.map((size) =>
      text([x(size), top + height + 18], String(size), 'text-anchor="middle" fill="#44515f"'),
    );
    const title = text([from + width / 2, top - 12], `against ${names[what]}`, 'text-anchor="middle"');
    return [...grid, ...lines, ...legend, ...ticks, title].join("\n");
  });
  const size = [left + 3 * (width + apart) - apart + 30, top + height + 90];
  const heading = `Processor time: ${usual.stands} stands, ${usual.masses} masses, ${usual.outlinePoints} points of the outline, one of them varied. Power: slope over the upper half.`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.join(" ")}" font-family="sans-serif" font-size="12">
<title>What an answer costs, against stands, masses and points of the outline</title>
<rect width="100%" height="100%" fill="#fff"/>
${text([left, 24], heading, 'fill="#44515f"')}
${diagrams.join("\n")}
</svg>
`;
}

writeFileSync("docs/growth.svg", picture());
writeReport("growth", { usual, fitted, series });
console.log(`\ndocs/growth.svg written; ${machine}`);
