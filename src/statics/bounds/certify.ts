/**
 * Proof of how far an objective can go at most: branch and bound over which of each pair, reaction or gap, is 0, each
 * branch bounded by a linear programme without the other pairs (docs/mechanics-bounds.md, B11, B12 and B15).
 */

import type { Dictionary } from "./dictionary";
import { ascend, dualSteps } from "./moves";
import type { Objective } from "./objectives";
import { type Attained, attainedAt, climbFrom } from "./search";
import { pointOf, stateAt } from "./states";
import type { ContactSystem } from "./system";

export interface Certificate {
  /** Nothing in the box exceeds this, scaled; always valid, however early the proof was stopped. */
  readonly bound: number;
  /** The best found, which may be better than what was handed in. */
  readonly attained: Attained;
  /** Branches looked at. */
  readonly branches: number;
}

export interface Effort {
  /** Asked often; true ends the proof where it is. */
  readonly shouldStop: () => boolean;
  /** Branches to look at, at most. */
  readonly branches: number;
}

/** Branches that cannot lead more than this share of the weight beyond the best found are not followed. */
export const provedWithin = 5e-4;
/** How often a branch's point is climbed from, in branches. */
const climbEvery = 20;
/** Numbers that the open branches may hold together. */
const numbersHeld = 4e7;

/** A branch: the dictionary of its linear programme, solved, some reactions or gaps held at 0. */
interface Branch {
  readonly bound: number;
  readonly dictionary: Dictionary;
}

/**
 * @param known the best found in this system so far.
 * @param toBeat the best found in any system: what leads no farther than that, within `provedWithin`, is not followed.
 * @param outer what is known to bound the objective already.
 */
export function certify(
  system: ContactSystem,
  nominal: Dictionary,
  objective: Objective,
  known: Attained,
  { toBeat, outer }: { readonly toBeat: number; readonly outer: number },
  effort: Effort,
): Certificate {
  let attained = known;
  let closed = Number.NEGATIVE_INFINITY;
  let branches = 0;
  const cutOff = () => Math.max(attained.value, toBeat) + provedWithin;
  const asItIs = { bound: Math.max(outer, attained.value), attained, branches };
  if (outer <= cutOff() || effort.shouldStop()) return asItIs;
  const root = rootOf(system, nominal, objective, known);
  if (root === null) return asItIs;

  const open = new Heap();
  const follow = (dictionary: Dictionary) => {
    switch (dualSteps(dictionary, cutOff(), 100 * dictionary.rows)) {
      case "infeasible":
        return;
      case "below cut-off":
        closed = Math.max(closed, dictionary.objective);
        return;
      default:
        // Not brought to its end it is still a bound; the pairs tell where to go on.
        open.push({ bound: dictionary.objective, dictionary });
    }
  };
  const better = (candidate: Attained | null) => {
    if (candidate !== null && candidate.value > attained.value) attained = candidate;
  };

  open.push({ bound: root.objective, dictionary: root });
  const held = Math.floor(numbersHeld / root.T.length);
  while (open.size > 0 && open.size < held && branches < effort.branches && !effort.shouldStop()) {
    if (open.greatest <= cutOff()) break;
    const { dictionary } = open.pop();
    branches++;
    dictionary.refresh();
    const pair = mostViolated(system, dictionary);
    if (pair < 0) {
      // Every pair complementary: its point is a state, and nothing in this branch exceeds it.
      closed = Math.max(closed, dictionary.objective);
      better(attainedAt(system, nominal, objective, pointOf(system, dictionary)));
      continue;
    }
    if (branches % climbEvery === 1) {
      const reached = climbFrom(system, nominal, objective, pointOf(system, dictionary));
      if (reached !== null && reached.objective > attained.value) {
        better(attainedAt(system, nominal, objective, pointOf(system, reached)));
      }
    }
    const other = dictionary.copy();
    dictionary.high[system.unknowns.reaction(pair)] = 0;
    follow(dictionary);
    other.high[system.unknowns.gap(pair)] = 0;
    follow(other);
  }
  const rest = open.size > 0 ? open.greatest : Number.NEGATIVE_INFINITY;
  return { bound: Math.max(attained.value, Math.min(outer, Math.max(closed, rest))), attained, branches };
}

/**
 * The linear programme with no pair decided, solved; null if rounding kept it from its end. A stand's own height is at
 * that end of its range where its reaction is extreme: nothing else need be looked at (B13).
 */
function rootOf(system: ContactSystem, nominal: Dictionary, objective: Objective, known: Attained): Dictionary | null {
  const { variables, unknowns, start } = system;
  const x = known.x.slice();
  const own = variables.findIndex((variable) => variable.kind === "height" && variable.stand === objective.stand);
  const fixed = objective.kind === "frame" || own < 0 ? -1 : unknowns.variable(own);
  if (fixed >= 0) x[own] = objective.kind === "most" ? start.high[fixed]! : start.low[fixed]!;
  const root = stateAt(system, nominal, x);
  if (root === null) return null;
  if (fixed >= 0) {
    root.low[fixed] = x[own]!;
    root.high[fixed] = x[own]!;
  }
  root.maximise(objective.reactions, objective.weights);
  return ascend(root, null, 100 * (root.rows + root.columns)) === "optimal" ? root : null;
}

/** The contact with the greatest r·w, of those whose pair is not decided; −1 where all pairs are complementary. */
function mostViolated({ contacts, unknowns }: ContactSystem, dictionary: Dictionary): number {
  let worst = 1e-16;
  let at = -1;
  for (let j = 0; j < contacts.length; j++) {
    const [reaction, gap] = [unknowns.reaction(j), unknowns.gap(j)];
    if (dictionary.high[reaction] === 0 || dictionary.high[gap] === 0) continue;
    const product = dictionary.valueOf(reaction) * dictionary.valueOf(gap);
    if (product <= worst) continue;
    worst = product;
    at = j;
  }
  return at;
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
