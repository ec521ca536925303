/** What equilibrium alone allows, against HiGHS's linear programmes and by hand. */

import { describe, expect, test } from "vitest";
import type { Plan } from "../../../src/plan";
import { assembleStep, boundsOf, gravity, type LoadItem, type PartModel } from "../../../src/statics";
import { type BoxVariable, boxOf } from "../../../src/statics/bounds/variables";
import { highs } from "./displacementForm";
import { randomNumbers, randomPlan } from "./plans";

/** Greatest of sign·(reaction of a stand) in balance: contact forces, and the loads of the box, as LP text for HiGHS. */
function limitByHighs(part: PartModel, box: readonly BoxVariable[], stand: number, sign: 1 | -1): number {
  const W = part.loads.reduce((sum, load) => sum + momentsOf(load)[0]!, 0);
  const l = part.to - part.from;
  const loads = box.flatMap((variable) => (loadChange(part, variable) === null ? [] : [variable]));
  const term = (value: number, name: string) => `${value < 0 ? "-" : "+"} ${Math.abs(value)} ${name}`;
  const rows = [0, 1, 2].map((row) => {
    const size = row === 0 ? 1 : l;
    const own = part.contacts.map(({ s, t }, j) => term([1, s, t][row]! / size, `r${j}`));
    const change = loads.map((variable, k) => term(-loadChange(part, variable)![row]! / (W * size), `x${k}`));
    const right = part.loads.reduce((sum, load) => sum + momentsOf(load)[row]!, 0) / (W * size);
    return `c${row}: ${[...own, ...change].join(" ")} = ${right}`;
  });
  const objective = part.contacts.flatMap((contact, j) => (contact.stand === stand ? [term(sign, `r${j}`)] : []));
  const bounds = loads.map(({ from, to, nominal }, k) => `${from - nominal} <= x${k} <= ${to - nominal}`);
  const text = `Maximize\n z: ${objective.join(" ")}\nSubject To\n ${rows.join("\n ")}\nBounds\n ${bounds.join("\n ")}\nEnd`;
  const solved = highs.solve(text, { output_flag: false });
  if (solved.Status !== "Optimal") throw new Error(`HiGHS ended with ${solved.Status}`);
  return sign * solved.ObjectiveValue * W;
}

/** Downward force and its moments about s = 0 and t = 0. */
function momentsOf(load: LoadItem): readonly [number, number, number] {
  if (load.kind === "point") return [load.down, load.down * load.s + load.momentS, load.momentT];
  const [a, b] = load.intensity;
  const l = load.to - load.from;
  const down = ((a + b) * l) / 2;
  // ∫ q·s ds over the trapezoid, by Simpson's rule, which is exact for a quadratic
  const moment = (l / 6) * (a * load.from + 4 * ((a + b) / 2) * ((load.from + load.to) / 2) + b * load.to);
  return [down, moment, down * load.t];
}

/** What a unit of a variable adds to the loads; null if it moves heights. */
function loadChange(part: PartModel, variable: BoxVariable): readonly [number, number, number] | null {
  if (variable.kind === "centre") return variable.axis === "s" ? [0, variable.force, 0] : [0, 0, variable.force];
  if (variable.kind !== "mass" && variable.kind !== "load") return null;
  const index = variable.kind === "mass" ? variable.mass : variable.load;
  const own = part.loads.filter(({ source }) => source.kind === variable.kind && source.index === index);
  return own.map(momentsOf).reduce((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0] as const);
}

const random = randomNumbers(88);

test("a hundred random plans agree with HiGHS to its own tolerance, 1e-7 of the weight", () => {
  let stands = 0;
  for (let n = 0; n < 100; n++) {
    const plan = randomPlan(random, { masses: 1 + (n % 10) });
    const step = plan.steps[0]!;
    const model = assembleStep(plan, step);
    const box = boxOf(plan, step, model);
    const bounds = boundsOf(plan, step);
    if (bounds.status === "unstable") continue;
    const part = model.parts[0]!;
    const W = part.loads.reduce((sum, load) => sum + momentsOf(load)[0]!, 0);
    const stand = n % bounds.stands.length;
    const found = bounds.stands[stand]!;
    stands++;
    expect(Math.abs(found.staticsMost - limitByHighs(part, box, stand, 1)) / W).toBeLessThan(1e-7);
    expect(Math.abs(found.staticsLeast - limitByHighs(part, box, stand, -1)) / W).toBeLessThan(1e-7);
  }
  expect(stands).toBeGreaterThan(90);
});

describe("by hand", () => {
  /** A rigid beam of 10 m and 1000 kg on single contacts in its axis would roll: tops of 0.4 m keep it from that. */
  const beam = (places: readonly number[], uncertainty: number): Plan => {
    const plan = randomPlan(randomNumbers(1), { stands: places.length, masses: 1, beam: "rigid", plain: true });
    const layout = plan.layouts[0]!;
    const placements = layout.placements.map((placement, i) => ({ ...placement, s: places[i]!, t: 0 }));
    const body = { ...plan.piece.masses[0]!, kind: "line", from: 0, to: 10, massPerLength: [100, 100], uncertainty } as const; // biome-ignore format: one row
    const outline = [[0, -0.2], [10, -0.2], [10, 0.2], [0, 0.2]] as const; // biome-ignore format: one row
    return {
      ...plan,
      piece: { ...plan.piece, outline, masses: [body] },
      layouts: [{ ...layout, placements }],
    };
  };
  const W = 1000 * gravity;

  test("three in a row: the middle one carries all or nothing, an end one up to what the middle one leaves it", () => {
    const plan = beam([1, 4, 9], 0);
    const bounds = boundsOf(plan, plan.steps[0]!);
    if (bounds.status !== "bounded") throw new Error(bounds.status);
    const [first, middle, last] = bounds.stands;
    // Load at 5: the pairs that can carry it are (1, 9) and (4, 9)
    expect(first!.staticsMost / W).toBeCloseTo(4 / 8, 12);
    expect(first!.staticsLeast / W).toBeCloseTo(0, 12);
    expect(middle!.staticsMost / W).toBeCloseTo(4 / 5, 12);
    expect(middle!.staticsLeast / W).toBeCloseTo(0, 12);
    expect(last!.staticsMost / W).toBeCloseTo(4 / 8, 12);
    expect(last!.staticsLeast / W).toBeCloseTo(1 / 5, 12);
  });

  test("two stands: each carries its share, by so much more or less as the weight is not known", () => {
    const plan = beam([2, 7], 0.05);
    const bounds = boundsOf(plan, plan.steps[0]!);
    if (bounds.status !== "bounded") throw new Error(bounds.status);
    const [first, second] = bounds.stands;
    expect(first!.staticsLeast / W).toBeCloseTo((2 / 5) * 0.95, 12);
    expect(first!.staticsMost / W).toBeCloseTo((2 / 5) * 1.05, 12);
    // Statically determinate: nothing that the tops do changes it
    expect(second!.least / W).toBeCloseTo((3 / 5) * 0.95, 12);
    expect(second!.most / W).toBeCloseTo((3 / 5) * 1.05, 12);
    expect(second!.certified).not.toBeNull();
  });
});
