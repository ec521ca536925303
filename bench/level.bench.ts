/**
 * The level reactions: how long they take, with and without assembly; what general-purpose solvers make of the same
 * contact problems in the same run, and whether they agree; and that solving allocates nothing.
 */

import loadHighs from "highs";
import * as quadprog from "quadprog";
import type { Plan } from "../src/plan";
import { assembleStep, levelAt, PartSolver } from "../src/statics";
import { type Beam, planOf } from "../tests/helpers/beam";
import { type ForceProblem, forceProblem, oracle } from "../tests/helpers/oracle";
import { machine, median, writeReport } from "./measure";

/** An elastic piece on evenly spaced stands, ten masses on it, some stands a little low. */
function elastic(stands: number, k: number, unevenness: number): Beam {
  const length = 4 * stands;
  return {
    length,
    width: 0.6,
    EI: 1.2e8,
    kGA: 4e8,
    GJ: 2e6,
    lines: [{ w: 3200 }, { w: 500, from: length / 3, to: length / 2, t: 0.05 }],
    points: Array.from({ length: 8 }, (_, index) => ({
      s: (length * (index + 0.4)) / 8,
      t: 0.03 * ((index % 3) - 1),
      P: 4000 + 500 * index,
    })),
    supports: Array.from({ length: stands }, (_, index) => ({
      s: (length * (index + 0.5)) / stands,
      k,
      lower: unevenness * Math.abs(Math.sin(3.7 * index)),
    })),
  };
}

const die: Beam = {
  length: 4,
  width: 2,
  points: [{ s: 2.1, t: 0.1, P: 2e5 }],
  supports: [
    { s: 0.5, k: 1e8, top: 1.6 },
    { s: 2, k: 1e8, top: 1.6, lower: 0.0005 },
    { s: 3.5, k: 1e8, top: 1.6 },
  ],
};

/** Rocks on a diagonal: the forces are unique, the motion is not. */
const table: Beam = {
  length: 2,
  width: 1,
  points: [{ s: 1, P: 4e4 }],
  supports: [
    { s: 0.2, t: -0.4, k: 1e8, top: 0.01, lower: 0.004 },
    { s: 1.8, t: -0.4, k: 1e8, top: 0.01 },
    { s: 1.8, t: 0.4, k: 1e8, top: 0.01 },
    { s: 0.2, t: 0.4, k: 1e8, top: 0.01 },
  ],
};

const cases: readonly (readonly [name: string, beam: Beam])[] = [
  ["five stands, level", elastic(5, 1e8, 0)],
  ["five stands, 2 mm out of level", elastic(5, 1e8, 0.002)],
  ["five stands, k = 1e9 N/m", elastic(5, 1e9, 0.002)],
  ["20 t die on three stands, one low", die],
  ["rigid table, one short leg", table],
  ["twenty stands, 2 mm out of level", elastic(20, 1e8, 0.002)],
  ["twenty stands, k = 1e10 N/m", elastic(20, 1e10, 0.002)],
];

/** The plan anew each time: nothing is remembered of its outline, its masses or where its stands are. */
function renewed(plan: Plan): Plan {
  const [layout] = plan.layouts;
  const placements = layout!.placements.map((placement) => ({ ...placement }));
  const piece = { ...plan.piece, outline: [...plan.piece.outline], masses: [...plan.piece.masses] };
  return { ...plan, piece, layouts: [{ ...layout!, placements }] };
}

console.log(machine);
console.log("\nTime, median, ms");
const times = ([5, 100] as const).map((stands) => {
  const beam = elastic(stands, 1e8, 0.001);
  const given = planOf(beam);
  const both = median(() => {
    const plan = renewed(given);
    const model = assembleStep(plan, plan.steps[0]!);
    if (new PartSolver(model.parts[0]!).solve() !== "solved") throw new Error("not solved");
  }, 1000);
  const answer = median(() => {
    const plan = renewed(given);
    return levelAt(assembleStep(plan, plan.steps[0]!), plan.piece.masses);
  }, 1000);
  const plan = planOf(beam);
  const [part] = assembleStep(plan, plan.steps[0]!).parts;
  const solver = new PartSolver(part!);
  const batch = stands === 5 ? 100 : 5;
  const cold =
    median(() => {
      for (let turn = 0; turn < batch; turn++) {
        solver.forget();
        solver.solve();
      }
    }) / batch;
  const warm =
    median(() => {
      for (let turn = 0; turn < batch; turn++) {
        solver.heights[2]! += turn % 2 === 0 ? 1e-6 : -1e-6;
        solver.solve();
      }
    }) / batch;
  return { stands, masses: 10, assemblyAndSolve: both, wholeAnswer: answer, solve: cold, solveWarm: warm };
});
console.table(
  times.map((row) => Object.fromEntries(Object.entries(row).map(([key, value]) => [key, Number(value.toFixed(4))]))),
);

/** Bytes that solving leaves on the heap, by solve, once all is compiled; the collector does not run in between. */
function allocated(): number {
  const plan = planOf(elastic(5, 1e8, 0.002));
  const solver = new PartSolver(assembleStep(plan, plan.steps[0]!).parts[0]!);
  const run = (): number => {
    globalThis.gc?.();
    const before = process.memoryUsage().heapUsed;
    for (let turn = 0; turn < 100_000; turn++) {
      // Far enough that contacts open and close.
      solver.heights[turn % 25]! += turn % 2 === 0 ? 8e-3 : -8e-3;
      if (solver.solve() !== "solved") throw new Error("not solved");
    }
    return (process.memoryUsage().heapUsed - before) / 100_000;
  };
  return Math.min(...Array.from({ length: 5 }, run));
}
const bytes = allocated();
console.log(
  `\nHeap left by 100 000 solves: ${bytes.toFixed(2)} bytes a solve${bytes < 1 ? " (nothing is allocated)" : ""}`,
);

/** Numbered from one, as the library asks; it changes its input, so it gets a new one each time. */
function byQuadprog({ flexibility, give, arms, rise, resultant }: ForceProblem): number[] {
  const n = give.length;
  const D: number[][] = [[]];
  for (let i = 0; i < n; i++) D.push([0, ...flexibility[i]!.map((value, j) => value + (i === j ? give[i]! : 0))]);
  const A: number[][] = [[]];
  for (let i = 0; i < n; i++) A.push([0, ...arms[i]!, ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0))]);
  const b = [0, ...resultant, ...new Array<number>(n).fill(0)];
  const { solution, message } = quadprog.solveQP(D, [0, ...rise], A, b, 3);
  return message === "" ? solution.slice(1) : new Array<number>(n).fill(Number.NaN);
}

const highs = await loadHighs();

function byHighs({ flexibility, give, arms, rise, resultant }: ForceProblem): number[] {
  const n = give.length;
  const term = (value: number, what: string) => `${value < 0 ? "-" : "+"} ${Math.abs(value).toPrecision(17)} ${what}`;
  const quadratic: string[] = [];
  for (let i = 0; i < n; i++) {
    quadratic.push(term(flexibility[i]![i]! + give[i]!, `r${i} ^2`));
    for (let j = 0; j < i; j++) quadratic.push(term(2 * flexibility[i]![j]!, `r${i} * r${j}`));
  }
  const rows = [0, 1, 2].map((axis) => {
    const left = arms.map((arm, j) => term(arm[axis]!, `r${j}`)).join(" ");
    return ` e${axis}: ${left} = ${resultant[axis]!.toPrecision(17)}`;
  });
  const linear = rise.map((value, j) => term(-value, `r${j}`)).join(" ");
  const text = `Minimize\n o: ${linear} + [ ${quadratic.join(" ")} ] / 2\nSubject To\n${rows.join("\n")}\nEnd`;
  const { Columns, Status } = highs.solve(text, { output_flag: false });
  return Array.from({ length: n }, (_, j) => (Status === "Optimal" ? (Columns[`r${j}`]?.Primal ?? 0) : Number.NaN));
}

console.log("\nThe same contact problem, given to each; distance of a stand's reaction from 32-digit arithmetic, ÷ W");
const compared: object[] = [];
const words: string[] = [];
for (const [name, beam] of cases) {
  const plan = planOf(beam);
  const model = assembleStep(plan, plan.steps[0]!);
  const part = model.parts[0]!;
  const problem = forceProblem(part);
  const right = oracle(part);
  if (right === null) throw new Error(`${name}: no answer in 32 digits`);
  const onStands = (forces: ArrayLike<number>): number[] =>
    model.stands.map((_, stand) =>
      part.contacts.reduce((sum, contact, j) => sum + (contact.stand === stand ? forces[j]! : 0), 0),
    );
  const wanted = onStands(right.reactions).map((force) => force / problem.weight);
  const off = (shares: readonly number[]) =>
    Math.max(...shares.map((share, stand) => Math.abs(share - wanted[stand]!)));
  const solver = new PartSolver(part);
  const solvers: readonly (readonly [string, () => number[]])[] = [
    [
      "ours",
      () => {
        solver.forget();
        solver.solve();
        return Array.from(solver.reactions, (force) => force / problem.weight);
      },
    ],
    ["quadprog", () => byQuadprog(problem)],
    ["HiGHS", () => byHighs(problem)],
  ];
  const { residual } = levelAt(model, plan.piece.masses);
  for (const [who, run] of solvers) {
    const distance = off(onStands(run()));
    const time = median(run, 200, 5);
    const agrees = distance <= 1e-6;
    compared.push({
      problem: name,
      solver: who,
      ms: Number(time.toPrecision(3)),
      distance: Number(distance.toExponential(1)),
      agrees,
    });
    if (!agrees && who !== "ours") {
      const worst = Math.max(...Object.values(residual!)).toExponential(1);
      words.push(
        `${name}: ${who} disagrees by ${(100 * distance).toPrecision(3)} % of the weight; our residuals are ≤ ${worst}`,
      );
    }
  }
}
console.table(compared);
for (const line of words) console.log(line);
writeReport("level", { times, bytesPerSolve: bytes, compared });
