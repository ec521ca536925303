/** Rows of the table that speak of a step, its stands and its parts in the level case. */

import type { Plan, StandId, StepId } from "../../../src/plan";
import { pieceLength, stepOf, typeOf } from "../../../src/plan";
import { type DiagramCell, solveStep } from "../../../src/statics";
import type { Agreement } from "./agreement";
import type { ExpectedPart, ExpectedStand, ExpectedStep, Extremes, ResultPart, ResultStand, ResultStep } from "./types";

export function compareStep(a: Agreement, plan: Plan, got: ResultStep, expected: ExpectedStep): void {
  const name = `step ${expected.id}`;
  const length = pieceLength(plan.piece);
  const heaviest = Math.max(0, ...expected.stands.map((stand) => stand.W));
  a.near(`${name} weight`, got.weight, expected.weight, 1e-9 * heaviest);
  a.both(`${name} cg`, got.cg, expected.cg, (one, two) => {
    for (const key of ["s", "t", "z"] as const) a.near(`${name} cg.${key}`, one[key], two[key], 1e-8 * length);
  });
  a.same(`${name} stable`, got.stable, expected.stable);
  a.same(`${name} estimated`, got.estimated, expected.estimated);
  a.same(
    `${name} stands`,
    got.stands.map((stand) => stand.stand),
    expected.stands.map((stand) => stand.stand),
  );
  if (expected.stable) {
    a.holds(`${name} residual ${JSON.stringify(got.residual)}`, got.residual !== null);
    for (const [key, value] of Object.entries(got.residual ?? {}))
      a.holds(`${name} residual.${key} ${value}`, value <= 1e-9);
    balance(a, name, length, got);
  } else {
    a.same(`${name} residual`, got.residual, null);
    a.same(`${name} verdict`, got.verdict, "fails");
  }
  expected.stands.forEach((stand, index) => {
    const answer = got.stands[index];
    if (answer !== undefined) compareStand(a, `${name} stand ${stand.stand}`, plan, length, answer, stand);
  });
  a.same(`${name} number of parts`, got.parts.length, expected.parts.length);
  const diagrams = solveStep(plan, stepOf(plan, expected.id as StepId));
  expected.parts.forEach((part, index) => {
    const answer = got.parts[index];
    if (answer !== undefined)
      comparePart(a, `${name} part ${index}`, plan, length, diagrams.parts[index]!.cells ?? [], answer, part);
  });
}

/** The sum of all reactions within 2e-9 of the weight, Σ R·centre within 1e-7·W·L of the resultant's moments. */
function balance(a: Agreement, name: string, length: number, got: ResultStep): void {
  const force = got.parts.reduce((sum, part) => sum + part.resultant.force, 0);
  const reactions = got.stands.reduce((sum, stand) => sum + (stand.reaction?.level ?? 0), 0);
  a.near(`${name} sum of reactions`, reactions, force, 2e-9 * Math.max(force, got.weight));
  for (const key of ["s", "t"] as const) {
    const moment = got.parts.reduce((sum, part) => sum + part.resultant.force * (part.resultant[key] ?? 0), 0);
    const ofReactions = got.stands.reduce(
      (sum, stand) => sum + (stand.reaction?.level ?? 0) * (stand.centre?.[key] ?? 0),
      0,
    );
    a.near(`${name} moment of reactions in ${key}`, ofReactions, moment, 1e-7 * force * length);
  }
}

function compareStand(
  a: Agreement,
  name: string,
  plan: Plan,
  length: number,
  got: ResultStand,
  expected: ExpectedStand,
): void {
  const { W } = expected;
  const type = typeOf(plan, expected.stand as StandId);
  a.same(`${name} contact: number`, sameContacts(got.contact, expected.contact), true);
  const ends = joined(got.contact).flat();
  joined(expected.contact)
    .flat()
    .forEach((end, index) => {
      a.near(`${name} contact end`, ends[index], end, 1e-7 * Math.max(1, length));
    });
  a.both(`${name} reaction`, got.reaction, expected.reaction, (one, two) => {
    a.near(`${name} level`, one.level, two.level, 1e-5 * W);
    if (two.level > 1e-3 * W) {
      a.both(`${name} centre`, got.centre, expected.centre, (here, there) => {
        for (const key of ["s", "t"] as const) {
          a.near(`${name} centre.${key}`, here[key], there[key], (1e-5 * length * W) / two.level);
        }
      });
    }
  });
  if (expected.reaction === null || expected.contact.length === 0)
    a.same(`${name} centre`, got.centre, expected.centre);
  const frameTolerance = 3e-5 * W * Math.max(1, length / (10 * type.legSpacing));
  a.both(`${name} legFrames`, got.legFrames, expected.legFrames, (one, two) => {
    two.forEach((force, index) => {
      a.near(`${name} legFrames[${index}]`, one[index], force, frameTolerance);
    });
  });
  a.same(`${name} number of feet`, got.feet.length, expected.feet.length);
  expected.feet.forEach((foot, index) => {
    a.near(`${name} feet[${index}].x`, got.feet[index]?.x, foot.x, 1e-6);
    a.near(`${name} feet[${index}].y`, got.feet[index]?.y, foot.y, 1e-6);
    a.near(`${name} feet[${index}].force`, got.feet[index]?.force, foot.force, frameTolerance);
  });
  // The reference's k: an estimated one is ratedLoad ÷ 1 mm, ÷ 5 mm with a rubber top, 1e8 without a rating.
  const estimate = type.ratedLoad === null ? 1e8 : type.ratedLoad / (type.top.material === "rubber" ? 0.005 : 0.001);
  const k = type.stiffness ?? estimate;
  a.both(`${name} settlement`, got.settlement, expected.settlement, (one, two) => {
    if (two < 0 && one === 0) return;
    a.near(`${name} settlement`, one, two, 1e-4 * Math.max(Math.abs(two), (1e-5 * W) / k));
  });
  const bearing = expected.contact.reduce((sum, [from, to]) => sum + to - from, 0);
  a.both(`${name} bearingPressure`, got.bearingPressure, expected.bearingPressure, (one, two) => {
    const least = bearing > 0 ? (2e-4 * W) / (bearing * type.top.width) : 0;
    a.near(`${name} bearingPressure`, one, two, 1e-4 * Math.max(Math.abs(two), least));
  });
}

type Intervals = readonly (readonly [number, number])[];

/** Intervals that touch are joined: a top split at a step of the underside may be listed in one piece. */
function joined(intervals: Intervals): Intervals {
  const runs: [number, number][] = [];
  for (const [from, to] of intervals) {
    const last = runs.at(-1);
    if (last !== undefined && Math.abs(last[1] - from) < 1e-9) last[1] = to;
    else runs.push([from, to]);
  }
  return runs;
}

/** Where two parts meet over a top both list it; the reference lists part after part, and so must the answer. */
function sameContacts(got: Intervals, expected: Intervals): boolean {
  return joined(got).length === joined(expected).length;
}

function comparePart(
  a: Agreement,
  name: string,
  plan: Plan,
  length: number,
  cells: readonly DiagramCell[],
  got: ResultPart,
  expected: ExpectedPart,
): void {
  const W = expected.resultant.force;
  const l = expected.to - expected.from;
  const across = plan.piece.outline.map(([, t]) => t);
  const width = Math.max(...across) - Math.min(...across);
  a.near(`${name} from`, got.from, expected.from, 0);
  a.near(`${name} to`, got.to, expected.to, 0);
  a.same(`${name} stable`, got.stable, expected.stable);
  a.near(`${name} weight`, got.weight, expected.weight, 1e-9 * Math.abs(W));
  a.near(`${name} resultant.force`, got.resultant.force, W, 1e-9 * Math.max(Math.abs(W), expected.weight));
  a.near(`${name} resultant.s`, got.resultant.s, expected.resultant.s, 1e-8 * length);
  a.near(`${name} resultant.t`, got.resultant.t, expected.resultant.t, 1e-8 * length);
  const actions = { moment: 1e-5 * W * l, shear: 1e-5 * W, torque: 1e-5 * W * Math.max(1, width) } as const;
  for (const kind of ["moment", "shear", "torque"] as const) {
    extremes(a, `${name} ${kind}`, got[kind], expected[kind], () => actions[kind]);
    for (const { value, s } of got[kind] === null ? [] : [got[kind].most, got[kind].least])
      a.holds(
        `${name}: the diagram has the ${kind} ${value} at ${s}`,
        valuesAt(cells, kind, s).some((one) => Math.abs(one - value) <= actions[kind]),
      );
  }
  const range = (of: Extremes) => of.most.value - of.least.value;
  const deflectionTolerance = (of: Extremes) => 1e-4 * range(of) + 2e-7;
  extremes(a, `${name} deflection`, got.deflection, expected.deflection, deflectionTolerance);
  a.both(`${name} droop`, got.droop, expected.droop, (one, two) => {
    const tolerance = expected.deflection === null ? 0 : deflectionTolerance(expected.deflection);
    a.near(`${name} droop[0]`, one[0], two[0], tolerance);
    a.near(`${name} droop[1]`, one[1], two[1], tolerance);
  });
  extremes(a, `${name} twist`, got.twist, expected.twist, (of) => 1e-4 * range(of) + 1e-6);
}

/** What a diagram shows at s, on either side of a jump. */
function valuesAt(cells: readonly DiagramCell[], kind: "moment" | "shear" | "torque", s: number): number[] {
  return cells
    .filter(({ from, to }) => s >= from - 1e-9 && s <= to + 1e-9)
    .map((cell) => cell[kind].reduce((sum, coefficient, power) => sum + coefficient * (s - cell.from) ** power, 0));
}

/** Only the values: an extreme may lie at any of several s. */
function extremes(
  a: Agreement,
  name: string,
  got: Extremes | null,
  expected: Extremes | null,
  tolerance: (of: Extremes) => number,
): void {
  a.both(name, got, expected, (one, two) => {
    a.near(`${name} most`, one.most.value, two.most.value, tolerance(two));
    a.near(`${name} least`, one.least.value, two.least.value, tolerance(two));
  });
}
