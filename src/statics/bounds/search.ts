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
import { type BoxVariable, movesHeights } from "./variables";

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
/** How many stands are kicked, itself among them. */
const kicked = 5;
/** A kick that gains less than this is not worth another. */
const leastKick = 1e-5;
/**
 * Multiply-adds after which no more climbs are made than from each stand's own height, and none at all: some tenths of a
 * second, and some ten seconds, of which forty stands take three.
 */
const workAllowed = { further: 3e8, any: 1e10 };

/** The best found of every objective. Pauses after every climb. */
export function* searchExtremes(
  system: ContactSystem,
  nominal: Dictionary,
  objectives: readonly Objective[],
  limits: readonly StaticsLimit[],
): Generator<undefined, Attained[]> {
  const search = new Search(system, nominal, objectives, limits);
  yield* search.climbFromOwnHeights();
  yield* search.climbFromStatics();
  yield* search.climbFromEachOther();
  yield* search.climbFromKicks();
  const attained: Attained[] = [];
  for (const index of objectives.keys()) {
    attained.push(search.settled(index));
    yield;
  }
  return attained;
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
  if (state !== null) climb(system, objective, state);
  return state;
}

/** Climbs from a state, which becomes the vertex reached. */
function climb(system: ContactSystem, objective: Objective, state: Dictionary): void {
  if (objective.kind !== "least") closeGap(system, objective, state);
  state.maximise(objective.reactions, objective.weights);
  ascend(state, system.unknowns, pivotsAllowed(system));
}

/** The value at a point, solved for afresh so that it carries no rounding of a climb; null as with `climbFrom`. */
export function attainedAt(
  system: ContactSystem,
  nominal: Dictionary,
  objective: Objective,
  point: Float64Array,
): Attained | null {
  const vertex = vertexAt(system, nominal, point);
  return vertex === null ? null : { value: valueIn(vertex.reactions, objective), x: vertex.x };
}

/** The state at a point, or at the nearest of the box where rounding has left it. */
function vertexAt(system: ContactSystem, nominal: Dictionary, point: Float64Array, into?: Dictionary): Vertex | null {
  const { start, unknowns } = system;
  const x = point.map((value, k) => {
    const unknown = unknowns.variable(k);
    return Math.min(start.high[unknown]!, Math.max(start.low[unknown]!, value));
  });
  const state = stateAt(system, nominal, x, into);
  return state === null ? null : { x, reactions: reactionsOf(system, state) };
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
    this.best = objectives.map((objective) => ({ value: valueIn(vertex.reactions, objective), vertex }));
  }

  /** From each stand's own height at its end; a leg frame goes on from where its stand's greatest reaction was found. */
  *climbFromOwnHeights(): Generator<undefined> {
    for (const [index, objective] of this.objectives.entries()) {
      if (this.work > workAllowed.any) return;
      if (objective.kind === "frame") this.climbOn(index);
      else this.climb(index, ownStart(this.system, objective));
      yield;
    }
  }

  *climbFromStatics(): Generator<undefined> {
    for (const [index, objective] of this.objectives.entries()) {
      if (this.work > workAllowed.further) return;
      this.climb(index, staticsStart(this.system, this.limits[index]!));
      if (objective.kind === "frame") this.climb(index, ownStart(this.system, objective));
      yield;
    }
  }

  /** Every objective goes on from the vertices at which it is greatest of all those found for others. */
  *climbFromEachOther(): Generator<undefined> {
    for (let round = 0; round < rounds && this.work < workAllowed.further; round++) {
      const known = this.found.slice();
      const before = this.best.map(({ value }) => value);
      for (const [index, objective] of this.objectives.entries()) {
        if (this.atLimit(index)) continue;
        const values = known.map((vertex) => valueIn(vertex.reactions, objective));
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
   * From the best vertex with one stand that bears let down as far as it goes, or one that is clear brought up, the
   * nearest first. Only for the leg frames: what the reactions lack the proof finds.
   */
  *climbFromKicks(): Generator<undefined> {
    for (const [index, { kind, stand }] of this.objectives.entries()) {
      if (kind !== "frame") continue;
      for (let gained = true; gained; ) {
        const { value, vertex } = this.best[index]!;
        gained = false;
        for (const x of kicksFrom(this.system, vertex, stand)) {
          if (this.work > workAllowed.further) return;
          this.climb(index, x);
          yield;
          gained = this.best[index]!.value > value + leastKick;
          if (gained) break;
        }
      }
    }
  }

  /** The best of an objective, solved for afresh. */
  settled(index: number): Attained {
    const { vertex } = this.best[index]!;
    const { x, reactions } = vertexAt(this.system, this.nominal, vertex.x, this.scratch) ?? this.found[0]!;
    return { value: valueIn(reactions, this.objectives[index]!), x };
  }

  private climb(index: number, from: ArrayLike<number>): void {
    if (this.atLimit(index)) return;
    const reached = climbFrom(this.system, this.nominal, this.objectives[index]!, from, this.scratch);
    if (reached === null) this.scratch.copyFrom(this.nominal);
    else this.note(index, reached, reached.pivots);
  }

  /** Climbs from where the last climb ended. */
  private climbOn(index: number): void {
    if (this.atLimit(index)) return;
    const { scratch } = this;
    const before = scratch.pivots;
    climb(this.system, this.objectives[index]!, scratch);
    this.note(index, scratch, scratch.pivots - before);
  }

  private note(index: number, reached: Dictionary, pivots: number): void {
    // Choosing a row and a column costs about as much as exchanging them.
    this.work += 2 * pivots * reached.T.length;
    const vertex = this.remember(reached);
    if (reached.objective > this.best[index]!.value + leastGain) {
      this.best[index] = { value: reached.objective, vertex };
    }
  }

  /** One vertex for all climbs that end alike. */
  private remember(state: Dictionary): Vertex {
    const vertex = { x: pointOf(this.system, state), reactions: reactionsOf(this.system, state) };
    const same = this.found.find(({ reactions }) =>
      vertex.reactions.every((reaction, j) => Math.abs(reaction - reactions[j]!) <= leastGain),
    );
    if (same !== undefined) return same;
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

/**
 * Points where another set of stands may bear: each bearing stand that is up let down, each clear one that is down raised,
 * a stand itself and those nearest to it in turn.
 */
function* kicksFrom(
  { contacts, variables, unknowns, start }: ContactSystem,
  vertex: Vertex,
  stand: number,
): Generator<Float64Array> {
  const placeOf = (one: number) => contacts.find((contact) => contact.stand === one)!.s;
  const near = variables
    .flatMap((variable, k) => (variable.kind === "height" ? [{ k, stand: variable.stand }] : []))
    .map((height) => ({ ...height, distance: Math.abs(placeOf(height.stand) - placeOf(stand)) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, kicked);
  for (const { k, stand: other } of near) {
    const bears = contacts.some((contact, j) => contact.stand === other && vertex.reactions[j]! > leastGain);
    if (vertex.x[k]! > 0 !== bears) continue;
    const unknown = unknowns.variable(k);
    const x = vertex.x.slice();
    x[k] = bears ? start.low[unknown]! : start.high[unknown]!;
    yield x;
  }
}

/** Where a climb begins: the stand's own top at the end of its range; the other tops tilted the other way. */
function ownStart(system: ContactSystem, objective: Objective): Float64Array {
  const lift = liftOf(system, objective);
  return startBy(system, (variable) => {
    if (variable.kind === "height") return variable.stand === objective.stand ? lift.height : 0;
    if (variable.kind === "tilt") return variable.stand === objective.stand ? lift.tilt : -lift.tilt;
    return 0;
  });
}

/**
 * And a guess at what statics would have carry the load: each stand that it uses up, the others down, tops tilted towards
 * where it presses, weights as there.
 */
function staticsStart(system: ContactSystem, { dictionary }: StaticsLimit): Float64Array {
  const pressed = pressOf(system, dictionary);
  const start = startBy(system, (variable) => {
    if (variable.kind === "height") return pressed[variable.stand]!.force > leastGain ? 1 : -1;
    return variable.kind === "tilt" ? pressed[variable.stand]!.moment : 0;
  });
  system.variables.forEach((variable, k) => {
    if (!movesHeights(variable)) start[k] = dictionary.valueOf(system.unknowns.variable(k));
  });
  return start;
}

/** The point where every variable is at the end of its range that a sign names; 0 = at its nominal value. */
function startBy(
  { variables, unknowns, start }: ContactSystem,
  signOf: (variable: BoxVariable) => number,
): Float64Array {
  return Float64Array.from(variables, (variable, k) => {
    const sign = signOf(variable);
    if (Math.abs(sign) <= leastGain) return 0;
    return (sign > 0 ? start.high : start.low)[unknowns.variable(k)]!;
  });
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
