/** How much more weight the level solution takes at a point (docs/mechanics-tipping.md, T15). */

import type { StepLevel } from "../answers";
import { staticsTolerance } from "../constants";
import type { PartModel, PointLoad, StepModel } from "../model";
import { PartSolver } from "../partSolver";

/** How a contact set is stepped past, and how long for; relative to the part's resultant force. Not to be changed. */
const march = {
  /** First try of a step within one contact set. */
  step: 0.05,
  /** Past the force at which a contact changes. */
  past: 1e-9,
  /** Halvings of a step before it is taken as it is. */
  halvings: 40,
  /** A force so great is none: only rounding would then say what gives. */
  far: 1e6,
} as const;

/**
 * The least downward force at (s, t) under which, in the level solution, some stand passes its limit or some stand that
 * bears is relieved to zero, N; 0 where a stand is past its limit already, null where no force does either.
 */
export type LevelForce = (s: number, t: number) => number | null;

/** What gives first at a place. */
export interface LevelGives {
  /** N, downward. */
  readonly force: number;
  /** Index of the stand that passes its limit or goes light; null where the part tips before. */
  readonly stand: number | null;
  readonly why: "limit" | "light" | "tips";
}

/** The forces of `levelGives` alone. */
export function levelForce(...given: Parameters<typeof levelGives>): LevelForce {
  const gives = levelGives(...given);
  return (s, t) => gives(s, t)?.force ?? null;
}

/**
 * T15. Between two changes of contact the reactions are linear in the force, so the force is followed from one change
 * to the next: the rate from two solutions with the same contacts, the next change from the depth of each contact.
 * Solvers are kept by s, so asking along one line across the piece is quick.
 *
 * @param limits what each stand may carry, ratedLoad ÷ set-down factor, N, in the order of the model's stands; null = no
 * limit is known.
 */
export function levelGives(
  model: StepModel,
  level: StepLevel,
  part: number,
  limits: readonly (number | null)[],
): (s: number, t: number) => LevelGives | null {
  const own = model.parts[part]!;
  const { force: weight } = level.parts[part]!.resultant;
  const base = new Reactions(own, model.stands.length, 0);
  base.solve(0, 0);
  // What a stand carries of other parts does not change.
  const elsewhere = model.stands.map((_, i) => (level.stands[i]?.reaction ?? 0) - base.stands[i]!);
  const bears = model.stands.map((_, i) => (level.stands[i]?.reaction ?? 0) > staticsTolerance.bears * weight);
  const room = (at: Reactions, rate: readonly number[]): LevelGives => {
    let least: LevelGives = { force: Infinity, stand: null, why: "tips" };
    const consider = (force: number, stand: number, why: "limit" | "light"): void => {
      if (force < least.force) least = { force, stand, why };
    };
    for (let i = 0; i < rate.length; i++) {
      const [reaction, growth, limit] = [at.stands[i]! + elsewhere[i]!, rate[i]!, limits[i] ?? null];
      if (limit !== null && reaction > limit) return { force: 0, stand: i, why: "limit" };
      if (limit !== null && growth > 0) consider((limit - reaction) / growth, i, "limit");
      if (bears[i] && growth < 0) consider(reaction / -growth, i, "light");
    }
    return least;
  };

  let here = base;
  let there = new Reactions(own, model.stands.length, 0);
  return (s, t) => {
    if (here.s !== s) {
      here = new Reactions(own, model.stands.length, s);
      there = new Reactions(own, model.stands.length, s);
    }
    let force = 0;
    for (let changes = 0; changes <= 4 * own.contacts.length; changes++) {
      if (!here.solve(force, t)) return { force, stand: null, why: "tips" };
      let step = march.step * weight;
      for (let k = 0; k < march.halvings; k++) {
        if (there.solve(force + step, t) && here.sameContacts(there)) break;
        step /= 2;
      }
      const rate = here.stands.map((reaction, i) => (there.stands[i]! - reaction) / step);
      const left = room(here, rate);
      const change = here.nextChange(there, step);
      if (Math.min(left.force, change) > march.far * weight) return null;
      if (left.force <= change * (1 + march.past)) return { ...left, force: force + left.force };
      force += change * (1 + march.past) + march.past * weight;
    }
    return { force, stand: null, why: "tips" };
  };
}

/** The level solution of a part with one more force on a line across it. */
class Reactions {
  /** N, by stand. */
  readonly stands: number[];
  readonly s: number;
  private readonly part: PartModel;
  private readonly solver: PartSolver;

  constructor(part: PartModel, stands: number, s: number) {
    const unit: PointLoad = { kind: "point", source: { kind: "load", index: 0 }, s, down: 0, momentS: 0, momentT: 0 };
    this.part = part;
    this.s = s;
    this.stands = Array<number>(stands).fill(0);
    this.solver = new PartSolver(part, [part.loads, [{ ...unit, down: 1 }], [{ ...unit, momentT: 1 }]]);
  }

  /** False where the part tips under the force. */
  solve(force: number, t: number): boolean {
    const { solver, stands, part } = this;
    solver.factors.set([1, force, force * t]);
    if (solver.solve() === "unstable") return false;
    stands.fill(0);
    part.contacts.forEach(({ stand }, j) => {
      stands[stand]! += solver.reactions[j]!;
    });
    return true;
  }

  sameContacts(other: Reactions): boolean {
    return this.solver.depth.every((depth, j) => depth > 0 === other.solver.depth[j]! > 0);
  }

  /** How much more force until a contact opens or closes, from the solution a step further on; Infinity if none does. */
  nextChange(other: Reactions, step: number): number {
    let least = Infinity;
    this.solver.depth.forEach((depth, j) => {
      const growth = (other.solver.depth[j]! - depth) / step;
      if (depth > 0 ? growth < 0 : growth > 0) least = Math.min(least, -depth / growth);
    });
    return least;
  }
}
