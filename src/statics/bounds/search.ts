/**
 * Attained extremes: climbs from several states, each to a vertex that is a local maximum over the whole box
 * (docs/mechanics-bounds.md, B10 and B14). What they attain is attained; that nothing exceeds it is for the certificate.
 */

import type { Dictionary } from "./dictionary";
import { ascend } from "./moves";
import { type Objective, valueIn } from "./objectives";
import { pointOf, reactionsOf, stateAt } from "./states";
import type { StaticsLimit } from "./staticsLimits";
import type { ContactSystem } from "./system";

/** The greatest value found of an objective, scaled, and the point of the box that attains it. */
export interface Attained {
  readonly value: number;
  readonly x: Float64Array;
}

/** Rounds in which every objective may go on from the states that the others have found. */
const rounds = 3;
/** How many of those states it goes on from in a round. */
const shared = 2;
/** A gain below this, as a share of the weight, is none. */
const leastGain = 1e-9;
/** A kick that gains less than this is not worth another. */
const leastKick = 1e-5;
/**
 * Multiply-adds after which no more climbs are made from each other's vertices and from kicks, and none at all: some tenths
 * of a second, and a few seconds, which forty stands do not need.
 */
const workAllowed = { further: 3e8, any: 1.5e9 };

/** The best found of every objective. Pauses after every climb. */
export function* searchExtremes(
  system: ContactSystem,
  nominal: Dictionary,
  objectives: readonly Objective[],
  limits: readonly StaticsLimit[],
): Generator<undefined, Attained[]> {
  const search = new Search(system, nominal, objectives, limits);
  yield* search.climbFromStarts();
  yield* search.climbFromEachOther();
  yield* search.climbFromKicks();
  return objectives.map((_, index) => search.settled(index));
}

/**
 * Climbs from the state at a point of the box.
 *
 * @param into is written over and returned, where given.
 * @returns the vertex reached, or null where rounding kept the path from its end.
 */
export function climbFrom(
  system: ContactSystem,
  nominal: Dictionary,
  objective: Objective,
  x: ArrayLike<number>,
  into?: Dictionary,
): Dictionary | null {
  const state = stateAt(system, nominal, x, into);
  if (state === null) return null;
  if (objective.kind !== "least") closeGap(system, objective, state);
  state.maximise(objective.reactions, objective.weights);
  ascend(state, system.unknowns, pivotsAllowed(system));
  return state;
}

/**
 * The value at a point, solved for afresh so that it carries no rounding of a climb; null as with `climbFrom`.
 *
 * @param into is written over, where given.
 */
export function attainedAt(
  system: ContactSystem,
  nominal: Dictionary,
  objective: Objective,
  point: Float64Array,
  into?: Dictionary,
): Attained | null {
  const { start, unknowns } = system;
  const x = point.map((value, k) => {
    const unknown = unknowns.variable(k);
    return Math.min(start.high[unknown]!, Math.max(start.low[unknown]!, value));
  });
  const state = stateAt(system, nominal, x, into);
  return state === null ? null : { value: valueIn(state, objective), x };
}

const pivotsAllowed = (system: ContactSystem) => 4 * (system.contacts.length + system.variables.length) + 100;

/** A vertex found: where it is and what every contact carries there. */
interface Vertex {
  readonly x: Float64Array;
  readonly reactions: Float64Array;
}

class Search {
  private readonly system: ContactSystem;
  private readonly nominal: Dictionary;
  private readonly objectives: readonly Objective[];
  private readonly limits: readonly StaticsLimit[];
  private readonly found: Vertex[] = [];
  private readonly best: { value: number; vertex: Vertex }[];
  private readonly scratch: Dictionary;
  private work = 0;

  constructor(
    system: ContactSystem,
    nominal: Dictionary,
    objectives: readonly Objective[],
    limits: readonly StaticsLimit[],
  ) {
    this.system = system;
    this.nominal = nominal;
    this.objectives = objectives;
    this.limits = limits;
    this.scratch = nominal.copy();
    const vertex = this.remember(nominal);
    this.best = objectives.map((objective) => ({ value: valueIn(nominal, objective), vertex }));
  }

  *climbFromStarts(): Generator<undefined> {
    for (const [index, objective] of this.objectives.entries()) {
      for (const start of startsFor(this.system, objective, this.limits[index]!)) {
        this.climb(index, start);
        yield;
      }
    }
  }

  /** Every objective goes on from the vertices at which it is greatest of all those found for others. */
  *climbFromEachOther(): Generator<undefined> {
    for (let round = 0; round < rounds && this.work < workAllowed.further; round++) {
      const known = this.found.slice();
      const before = this.best.map(({ value }) => value);
      for (const [index, { reactions, weights }] of this.objectives.entries()) {
        if (this.atLimit(index)) continue;
        const values = known.map((vertex) =>
          reactions.reduce((sum, reaction, i) => sum + weights[i]! * vertex.reactions[reaction]!, 0),
        );
        const order = [...known.keys()].sort((a, b) => values[b]! - values[a]!).slice(0, shared);
        for (const i of order) {
          if (known[i] === this.best[index]!.vertex) continue;
          this.climb(index, known[i]!.x);
          yield;
        }
      }
      if (this.best.every(({ value }, index) => value <= before[index]! + leastGain)) return;
    }
  }

  /**
   * From the best vertex with one stand that bears let down as far as it goes, or one that is clear brought up, each in
   * turn. Only for the leg frames: what the reactions lack the proof finds.
   */
  *climbFromKicks(): Generator<undefined> {
    for (const [index, { kind }] of this.objectives.entries()) {
      if (kind !== "frame") continue;
      for (let gained = true; gained; ) {
        const { value, vertex } = this.best[index]!;
        gained = false;
        for (const x of kicksFrom(this.system, vertex)) {
          if (this.work > workAllowed.further) return;
          this.climb(index, x);
          yield;
          gained = this.best[index]!.value > value + leastKick;
          if (gained) break;
        }
      }
    }
  }

  settled(index: number): Attained {
    const objective = this.objectives[index]!;
    return (
      attainedAt(this.system, this.nominal, objective, this.best[index]!.vertex.x, this.scratch) ?? {
        value: valueIn(this.nominal, objective),
        x: new Float64Array(this.system.variables.length),
      }
    );
  }

  private climb(index: number, from: ArrayLike<number>): void {
    if (this.work > workAllowed.any || this.atLimit(index)) return;
    const reached = climbFrom(this.system, this.nominal, this.objectives[index]!, from, this.scratch);
    if (reached === null) return;
    // Choosing a row and a column costs about as much as exchanging them.
    this.work += 2 * reached.pivots * reached.T.length;
    const vertex = this.remember(reached);
    if (reached.objective > this.best[index]!.value + leastGain) {
      this.best[index] = { value: reached.objective, vertex };
    }
  }

  private remember(state: Dictionary): Vertex {
    const vertex = { x: pointOf(this.system, state), reactions: reactionsOf(this.system, state) };
    this.found.push(vertex);
    return vertex;
  }

  /** Nothing can be greater than what statics allows. */
  private atLimit(index: number): boolean {
    return this.best[index]!.value > this.limits[index]!.value - leastGain;
  }
}

/** Where a stand is clear nothing changes its reaction at first: its nearest contact is brought to bear. */
function closeGap(system: ContactSystem, { reactions }: Objective, state: Dictionary): void {
  const { unknowns } = system;
  const gaps = reactions.map((reaction) => unknowns.partner(reaction));
  const nearest = gaps.reduce((a, b) => (state.valueOf(b) < state.valueOf(a) ? b : a));
  if (state.valueOf(nearest) <= leastGain) return;
  state.maximise([nearest], [-1]);
  ascend(state, unknowns, pivotsAllowed(system));
}

/** Points where another set of stands may bear: each bearing stand that is up let down, each clear one that is down raised. */
function* kicksFrom({ contacts, variables, unknowns, start }: ContactSystem, vertex: Vertex): Generator<Float64Array> {
  for (const [k, variable] of variables.entries()) {
    if (variable.kind !== "height") continue;
    const bears = contacts.some(({ stand }, j) => stand === variable.stand && vertex.reactions[j]! > leastGain);
    if (vertex.x[k]! > 0 !== bears) continue;
    const unknown = unknowns.variable(k);
    const kicked = vertex.x.slice();
    kicked[k] = bears ? start.low[unknown]! : start.high[unknown]!;
    yield kicked;
  }
}

/**
 * Where the climbs of an objective begin: the stand's own top at the end of its range, and a guess at what statics would
 * have carry the load (each stand that it uses up, the others down, tops tilted towards where it presses).
 */
function startsFor(system: ContactSystem, objective: Objective, { dictionary }: StaticsLimit): Float64Array[] {
  const { variables, unknowns } = system;
  const lift = liftOf(system, objective);
  const pressed = pressOf(system, dictionary);
  const own = new Float64Array(variables.length);
  const guess = new Float64Array(variables.length);
  variables.forEach((variable, k) => {
    const low = system.start.low[unknowns.variable(k)]!;
    const high = system.start.high[unknowns.variable(k)]!;
    const towards = (sign: number) => (Math.abs(sign) <= leastGain ? 0 : sign > 0 ? high : low);
    if (variable.kind === "height") {
      guess[k] = pressed[variable.stand]!.force > leastGain ? high : low;
      if (variable.stand === objective.stand) own[k] = towards(lift.height);
    } else if (variable.kind === "tilt") {
      guess[k] = towards(pressed[variable.stand]!.moment);
      own[k] = towards(variable.stand === objective.stand ? lift.tilt : -lift.tilt);
    } else if (variable.kind !== "bow") guess[k] = dictionary.valueOf(unknowns.variable(k));
  });
  return [own, guess];
}

/** Which way the stand's own height and tilt raise an objective while all else stays: Σ weight, Σ weight·c (B13). */
function liftOf(
  { contacts }: ContactSystem,
  { reactions, weights, kind }: Objective,
): { height: number; tilt: number } {
  const height = weights.reduce((sum, weight) => sum + weight, 0);
  if (kind !== "frame") return { height, tilt: 0 };
  return { height, tilt: weights.reduce((sum, weight, i) => sum + (weight - 0.5) * contacts[reactions[i]!]!.c, 0) };
}

/** What each stand carries in a state, and the moment of that about its middle, along its top. */
function pressOf({ contacts, unknowns }: ContactSystem, state: Dictionary): { force: number; moment: number }[] {
  const pressed: { force: number; moment: number }[] = [];
  contacts.forEach(({ stand, c }, j) => {
    pressed[stand] ??= { force: 0, moment: 0 };
    const force = state.valueOf(unknowns.reaction(j));
    pressed[stand].force += force;
    pressed[stand].moment += force * c;
  });
  return pressed;
}
