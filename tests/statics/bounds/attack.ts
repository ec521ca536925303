/** Tries to beat the bounds: random points of the box and climbs from them, each solved by the level statics. */

import type { Plan } from "../../../src/plan";
import { assembleStep, levelAt, type PartModel, PartSolver, type StepBounds } from "../../../src/statics";
import { type BoxVariable, boxOf } from "../../../src/statics/bounds/variables";

type LoadVariable = Extract<BoxVariable, { readonly kind: "mass" | "load" | "centre" }>;
const movesLoads = (variable: BoxVariable): variable is LoadVariable =>
  variable.kind === "mass" || variable.kind === "load" || variable.kind === "centre";

/** Solves one part anywhere in the box: values of the variables in, reactions by stand out, N. */
class BoxSolver {
  readonly box: readonly BoxVariable[];
  readonly values: Float64Array;
  readonly reactions: Float64Array;
  private readonly part: PartModel;
  private readonly solver: PartSolver;

  constructor(part: PartModel, box: readonly BoxVariable[], stands: number) {
    const loads = box.filter(movesLoads);
    const varied = (load: PartModel["loads"][0]) =>
      loads.some(
        (variable) =>
          (variable.kind === "mass" && load.source.kind === "mass" && load.source.index === variable.mass) ||
          (variable.kind === "load" && load.source.kind === "load" && load.source.index === variable.load),
      );
    const patterns = loads.map((variable) =>
      part.loads.flatMap((load) => {
        const { source } = load;
        if (variable.kind === "load") return source.kind === "load" && source.index === variable.load ? [load] : [];
        if (source.kind !== "mass" || source.index !== variable.mass) return [];
        if (variable.kind === "mass") return [load];
        if (load.kind !== "point") return [];
        const couple = { ...load, down: 0, momentS: 0, momentT: 0 };
        return [{ ...couple, [variable.axis === "s" ? "momentS" : "momentT"]: variable.force }];
      }),
    );
    this.part = part;
    this.box = [...loads, ...box.filter((variable) => !movesLoads(variable))];
    this.solver = new PartSolver(part, [...patterns, part.loads.filter((load) => !varied(load))]);
    this.values = Float64Array.from(this.box, ({ nominal }) => nominal);
    this.reactions = new Float64Array(stands);
  }

  solve(): void {
    const { part, solver, box, values, reactions } = this;
    part.contacts.forEach(({ height }, j) => {
      solver.heights[j] = height;
    });
    box.forEach((variable, k) => {
      const value = values[k]!;
      if (variable.kind === "height" || variable.kind === "tilt") {
        part.contacts.forEach(({ stand, c }, j) => {
          if (stand === variable.stand) solver.heights[j]! += variable.kind === "height" ? value : value * c;
        });
      } else if (variable.kind === "bow") {
        part.contacts.forEach(({ bow }, j) => {
          solver.heights[j]! -= value * bow;
        });
      } else solver.factors[k] = value;
    });
    if (solver.solve() === "unstable") throw new Error("the box tips");
    reactions.fill(0);
    part.contacts.forEach(({ stand }, j) => {
      reactions[stand]! += solver.reactions[j]!;
    });
  }
}

export interface Attack {
  /** N, by stand: the farthest that any try got. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** N: the weight. */
  readonly weight: number;
}

/** Half of the tries at random (three in four variables at an end of their range), half climbing from there, a variable a try. */
export function attack(plan: Plan, tries: number, random: () => number): Attack {
  const model = assembleStep(plan, plan.steps[0]!);
  const [part] = model.parts;
  const stands = model.stands.length;
  const solver = new BoxSolver(part!, boxOf(plan, plan.steps[0]!, model), stands);
  const { box, values, reactions } = solver;
  const least = new Float64Array(stands).fill(Number.POSITIVE_INFINITY);
  const most = new Float64Array(stands).fill(Number.NEGATIVE_INFINITY);
  const anywhere = ({ from, to }: BoxVariable) => {
    const place = random();
    return random() < 0.75 ? (place < 0.5 ? from : to) : from + place * (to - from);
  };
  const note = () => {
    solver.solve();
    reactions.forEach((reaction, i) => {
      least[i] = Math.min(least[i]!, reaction);
      most[i] = Math.max(most[i]!, reaction);
    });
  };
  for (let n = 0; n < tries; ) {
    box.forEach((variable, k) => {
      values[k] = anywhere(variable);
    });
    note();
    n++;
    const stand = Math.floor(random() * stands);
    const sign = random() < 0.5 ? 1 : -1;
    for (let steps = 0; steps < 2 * box.length && n < tries; steps++, n++) {
      const k = Math.floor(random() * box.length);
      const before = sign * reactions[stand]!;
      const value = values[k]!;
      values[k] = anywhere(box[k]!);
      note();
      if (sign * reactions[stand]! < before) {
        values[k] = value;
        reactions[stand] = sign * before;
      }
    }
  }
  return { least, most, weight: weightOf(plan) };
}

function weightOf(plan: Plan): number {
  const { parts } = levelAt(assembleStep(plan, plan.steps[0]!), plan.piece.masses);
  return parts.reduce((sum, { resultant }) => sum + resultant.force, 0);
}

/** Where a try went farther than the bounds by more than `share` of the weight, in words; and where one passed what is proved. */
export function beaten(bounds: StepBounds, { least, most, weight }: Attack, share: number): string[] {
  if (bounds.status !== "bounded") return [];
  return bounds.stands.flatMap((stand, i) => {
    const words: string[] = [];
    const by = (newton: number) => `${stand.stand} by ${(newton / weight).toExponential(2)} of the weight`;
    if (least[i]! < stand.least - share * weight) words.push(`least of ${by(stand.least - least[i]!)}`);
    if (most[i]! > stand.most + share * weight) words.push(`most of ${by(most[i]! - stand.most)}`);
    if (least[i]! < stand.outer.least - 1e-8 * weight) words.push(`proof of ${by(stand.outer.least - least[i]!)}`);
    if (most[i]! > stand.outer.most + 1e-8 * weight) words.push(`proof of ${by(most[i]! - stand.outer.most)}`);
    return words;
  });
}
