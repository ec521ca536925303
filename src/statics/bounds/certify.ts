/**
 * Proof of how far an objective can go at most: branch and bound over which of each pair, reaction or gap, is 0, each
 * branch bounded by a linear programme without the other pairs (docs/mechanics-bounds.md, B11, B12 and B15).
 */

import type { Dictionary } from "./dictionary";
import { ascend, dualSteps, lossOf } from "./moves";
import type { Objective } from "./objectives";
import { type Attained, attainedAt, climbFrom } from "./search";
import { pointOf, stateAt } from "./states";
import type { StaticsLimit } from "./staticsLimits";
import type { ContactSystem } from "./system";

export interface Certificate {
  /** Nothing in the box exceeds this, scaled; always valid, however early the proof was stopped. */
  readonly bound: number;
  /** The best found, which may be better than what was handed in. */
  readonly attained: Attained;
  /** Branches looked at. */
  readonly branches: number;
  /** Multiply-adds that it took. */
  readonly work: number;
}

/** What a proof may take, at most. Counts, not times, so that every run proves the same. */
export interface Effort {
  readonly branches: number;
  /** Multiply-adds. */
  readonly work: number;
}

/** Branches that cannot lead more than this share of the weight beyond the best found are not followed. */
const provedWithin = { reaction: 5e-4, frame: 8e-4 };
/** How often a branch's point is climbed from, in branches. */
const climbEvery = 20;
/** Numbers that the open branches may hold together. */
const numbersHeld = 4e7;

/** r·w below this is 0 (both scaled). */
const leastProduct = 1e-16;
/** Pivots that a branch may take, a row. */
const pivotsAllowed = 20;
/** Cost, as a share of the weight per unit of a scaled unknown, that a column gets for leaving its bound. */
const tiltOfCost = 1e-7;
/** A fall of the bound that counts as none, lest two pairs be alike for want of one fall. */
const leastFall = 1e-6;

/** A branch: the dictionary of its linear programme, solved, some reactions or gaps held at 0. */
interface Branch {
  readonly bound: number;
  readonly dictionary: Dictionary;
}

/**
 * Pauses after every branch with the bound so far.
 *
 * @param known the best found in this system so far.
 * @param toBeat the best found in any system: what leads no farther than that, within `provedWithin`, is not followed.
 * @param limit of the objective by statics alone, which bounds it already.
 */
export function* certify(
  system: ContactSystem,
  nominal: Dictionary,
  objective: Objective,
  known: Attained,
  { toBeat, limit }: { readonly toBeat: number; readonly limit: StaticsLimit },
  effort: Effort,
): Generator<number, Certificate> {
  let attained = known;
  let closed = Number.NEGATIVE_INFINITY;
  let branches = 0;
  const outer = limit.value;
  const within = objective.kind === "frame" ? provedWithin.frame : provedWithin.reaction;
  const cutOff = () => Math.max(attained.value, toBeat) + within;
  const asItIs = { bound: Math.max(outer, attained.value), attained, branches, work: 0 };
  if (outer <= cutOff() || rootWork(nominal) > effort.work) return asItIs;
  const root = rootOf(system, nominal, objective, known) ?? rootFromStatics(system, objective, limit);
  let work = root.pivots * root.T.length;

  const open = new Heap();
  const close = (bound: number) => {
    closed = Math.max(closed, bound);
  };
  /** Dictionaries of branches that are done with, to be written over. */
  const spare: Dictionary[] = [];
  /** Solves a branch's programme; false if nothing in it leads farther. */
  const solve = (dictionary: Dictionary): boolean => {
    const before = dictionary.pivots;
    let outcome = dualSteps(dictionary, cutOff(), pivotsAllowed * dictionary.rows);
    if (outcome === "out of pivots") {
      tilt(dictionary, system);
      outcome = dualSteps(dictionary, cutOff(), pivotsAllowed * dictionary.rows);
    }
    // Choosing a row and a column costs about as much as exchanging them.
    work += 2 * (dictionary.pivots - before + 1) * dictionary.T.length;
    if (outcome === "below cut-off") close(dictionary.objective);
    // Not brought to its end it is still a bound; the pairs tell where to go on.
    return outcome === "optimal" || outcome === "out of pivots";
  };
  const better = (candidate: Attained | null) => {
    if (candidate !== null && candidate.value > attained.value) attained = candidate;
  };

  const boundNow = () => {
    const rest = open.size > 0 ? open.greatest : Number.NEGATIVE_INFINITY;
    return Math.max(attained.value, Math.min(outer, Math.max(closed, rest)));
  };

  open.push({ bound: root.objective, dictionary: root });
  const held = Math.floor(numbersHeld / root.T.length);
  while (open.size > 0 && open.size < held && branches < effort.branches && work < effort.work) {
    yield boundNow();
    if (open.greatest <= cutOff()) break;
    const { dictionary } = open.pop();
    branches++;
    dictionary.refresh();
    let choice = choose(system, dictionary, cutOff(), close);
    while (choice.kind === "decided" && solve(dictionary)) choice = choose(system, dictionary, cutOff(), close);
    if (choice.kind !== "branch") spare.push(dictionary);
    if (choice.kind === "decided" || choice.kind === "nothing left") continue;
    if (choice.kind === "complementary") {
      // Its point is a state, and nothing in this branch exceeds it.
      close(dictionary.objective);
      better(attainedAt(system, nominal, objective, pointOf(system, dictionary)));
      continue;
    }
    if (branches % climbEvery === 1) {
      const reached = climbFrom(system, nominal, objective, pointOf(system, dictionary));
      if (reached !== null && reached.objective > attained.value) {
        better(attainedAt(system, nominal, objective, pointOf(system, reached)));
      }
    }
    const other = spare.pop()?.copyFrom(dictionary) ?? dictionary.copy();
    dictionary.high[system.unknowns.reaction(choice.pair)] = 0;
    other.high[system.unknowns.gap(choice.pair)] = 0;
    for (const branch of [dictionary, other]) {
      if (solve(branch)) open.push({ bound: branch.objective, dictionary: branch });
      else spare.push(branch);
    }
  }
  return { bound: boundNow(), attained, branches, work };
}

/** What solving the first programme takes, roughly: an exchange for every row and every column. */
function rootWork({ rows, columns, T }: Dictionary): number {
  return (rows + columns) * T.length;
}

/**
 * The linear programme with no pair decided, solved from the state at the best point known, so that its solution is as near
 * to a state as it can be; null if degenerate steps keep it from its end.
 */
function rootOf(system: ContactSystem, nominal: Dictionary, objective: Objective, known: Attained): Dictionary | null {
  const own = ownHeight(system, objective);
  const x = known.x.slice();
  if (own !== null) x[own.index] = own.end;
  const root = stateAt(system, nominal, x);
  if (root === null) return null;
  fix(root, system, own);
  root.maximise(objective.reactions, objective.weights);
  return ascend(root, null, 100 * (root.rows + root.columns)) === "optimal" ? root : null;
}

/** The same from the statics limit: its basis is optimal but for gaps, which dual steps bring to feasibility. */
function rootFromStatics(system: ContactSystem, objective: Objective, { dictionary: limit }: StaticsLimit): Dictionary {
  const { start, unknowns } = system;
  const root = start.copy();
  const carried = (of: Dictionary) => [...of.basic].filter((unknown) => !unknowns.isGap(unknown));
  const [from, to] = [carried(start), carried(limit)];
  root.exchangeAll(
    from.filter((unknown) => !to.includes(unknown)),
    to.filter((unknown) => !from.includes(unknown)),
  );
  for (const unknown of limit.nonbasic) root.at[-1 - root.place[unknown]!] = limit.valueOf(unknown);
  fix(root, system, ownHeight(system, objective));
  root.high[unknowns.parameter] = 0;
  root.maximise(objective.reactions, objective.weights);
  tilt(root, system);
  dualSteps(root, Number.NEGATIVE_INFINITY, pivotsAllowed * root.rows);
  return root;
}

/** B13: a stand's own height is at that end of its range where its reaction is extreme. Null for a leg frame. */
function ownHeight(
  { variables, unknowns, start }: ContactSystem,
  { kind, stand }: Objective,
): { readonly index: number; readonly end: number } | null {
  const index = variables.findIndex((variable) => variable.kind === "height" && variable.stand === stand);
  if (kind === "frame" || index < 0) return null;
  const unknown = unknowns.variable(index);
  return { index, end: kind === "most" ? start.high[unknown]! : start.low[unknown]! };
}

function fix(root: Dictionary, { unknowns }: ContactSystem, own: ReturnType<typeof ownHeight>): void {
  if (own === null) return;
  const unknown = unknowns.variable(own.index);
  root.low[unknown] = own.end;
  root.high[unknown] = own.end;
  root.set(unknown, own.end);
}

/**
 * Where many columns cost nothing, dual steps may go round among them. Each column then gets a small cost of its own for
 * leaving its bound, and the objective as much on top as that can ever come to: it bounds what it bounded before.
 */
function tilt(dictionary: Dictionary, { unknowns, heaviest }: ContactSystem): void {
  const { nonbasic, at, low, high, T, rows, columns } = dictionary;
  const one = rows * columns - 1 - dictionary.place[unknowns.one]!;
  for (let c = 0; c < columns; c++) {
    const unknown = nonbasic[c]!;
    // No contact carries more than all.
    const range = Math.min(high[unknown]! - low[unknown]!, heaviest);
    if (unknowns.isGap(unknown) || range <= 0) continue;
    // Multiples of the golden ratio never agree: the same costs every time, no two alike.
    const cost = tiltOfCost * (0.5 + (((c + 1) * 0.6180339887498949) % 1) / 2);
    const atLow = at[c]! - low[unknown]! <= high[unknown]! - at[c]!;
    T[rows * columns + c]! -= atLow ? cost : -cost;
    T[one]! += cost * (range + (atLow ? low[unknown]! : -high[unknown]!));
  }
  dictionary.refresh();
}

type Choice =
  /** A branch has to be made on this contact. */
  | { readonly kind: "branch"; readonly pair: number }
  /** Some pairs could be decided at once, since the other way leads nowhere: the programme is to be solved again. */
  | { readonly kind: "decided" }
  /** Neither way leads anywhere. */
  | { readonly kind: "nothing left" }
  /** All pairs are complementary. */
  | { readonly kind: "complementary" };

/**
 * Looks at every pair that is not complementary: how far at least the bound falls if its reaction, or its gap, must be 0.
 * The pair to branch on is the one where the lesser and the greater fall have the greatest product.
 */
function choose(
  { contacts, unknowns }: ContactSystem,
  dictionary: Dictionary,
  cutOff: number,
  close: (bound: number) => void,
): Choice {
  const { high, place, value } = dictionary;
  let pair = -1;
  let most = -1;
  let decided = false;
  for (let j = 0; j < contacts.length; j++) {
    const [reaction, gap] = [unknowns.reaction(j), unknowns.gap(j)];
    const [r, w] = [place[reaction]!, place[gap]!];
    if (r < 0 || w < 0 || high[reaction] === 0 || high[gap] === 0) continue;
    if (value[r]! * value[w]! <= leastProduct) continue;
    const withoutReaction = dictionary.objective - lossOf(dictionary, r, 0);
    const withoutGap = dictionary.objective - lossOf(dictionary, w, 0);
    if (withoutReaction <= cutOff) close(withoutReaction);
    if (withoutGap <= cutOff) close(withoutGap);
    if (withoutReaction <= cutOff && withoutGap <= cutOff) return { kind: "nothing left" };
    if (withoutReaction <= cutOff || withoutGap <= cutOff) {
      high[withoutReaction <= cutOff ? gap : reaction] = 0;
      decided = true;
      continue;
    }
    const score =
      Math.max(dictionary.objective - withoutReaction, leastFall) *
        Math.max(dictionary.objective - withoutGap, leastFall) +
      1e-9 * value[r]! * value[w]!;
    if (score <= most) continue;
    most = score;
    pair = j;
  }
  if (decided) return { kind: "decided" };
  return pair < 0 ? { kind: "complementary" } : { kind: "branch", pair };
}

/** Branches, the one with the greatest bound first (a binary heap). */
class Heap {
  private readonly items: Branch[] = [];

  get size(): number {
    return this.items.length;
  }

  get greatest(): number {
    return this.items[0]!.bound;
  }

  push(item: Branch): void {
    const { items } = this;
    let i = items.length;
    for (; i > 0; ) {
      const above = (i - 1) >> 1;
      if (items[above]!.bound >= item.bound) break;
      items[i] = items[above]!;
      i = above;
    }
    items[i] = item;
  }

  pop(): Branch {
    const { items } = this;
    const top = items[0]!;
    const last = items.pop()!;
    let i = 0;
    for (let below = 1; below < items.length; below = 2 * i + 1) {
      if (below + 1 < items.length && items[below + 1]!.bound > items[below]!.bound) below++;
      if (items[below]!.bound <= last.bound) break;
      items[i] = items[below]!;
      i = below;
    }
    if (items.length > 0) items[i] = last;
    return top;
  }
}
