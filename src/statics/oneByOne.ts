/**
 * Contacts taken on one by one (docs/mechanics.md, M20): the slower way to the level reactions, for where rounding
 * stops the Newton steps. In the contact forces the problem is a strictly convex least-squares problem with r ≥ 0 and
 * three equations of equilibrium; this is the active-set method of C. L. Lawson and R. J. Hanson, Solving Least Squares
 * Problems, 1974, chapter 23. No set of bearing contacts comes back, because each is left for one with less energy, so
 * it ends; the forces are in balance and ≥ 0 at every moment.
 */

import type { ContactProblem } from "./contactProblem";

/** Sets tried for each contact before the best so far is taken; one or two are usual. */
const setsPerContact = 20;

/** Sweeps for each set: the later ones mend what the first lacks in digits. */
const sweepsPerSet = 3;

/** In fractions of the part's length, well under the distance at which a part is called unstable. */
const hair = [1.7e-10, 2.5e-10] as const;

/**
 * Leaves the bearing contacts of the answer set, with forces as good as rounding lets them be; `newton` takes it from
 * there. Starts from three contacts that enclose the resultant. False where the sets ran out.
 */
export function oneByOne(problem: ContactProblem): boolean {
  startOnThree(problem);
  problem.nudge(...hair);
  const found = findContacts(problem);
  problem.nudge(-hair[0], -hair[1]);
  return found;
}

function findContacts(problem: ContactProblem): boolean {
  const { bearing, force } = problem;
  const before = new Float64Array(force.length);
  problem.unbalance();
  for (let set = 0; set < setsPerContact * force.length; set++) {
    before.set(force);
    problem.factor();
    for (let sweep = 0; sweep < sweepsPerSet; sweep++) {
      problem.increment();
      problem.progress[0] = 1;
      problem.go();
    }
    const blocking = firstToPull(problem, before);
    const next = blocking < 0 ? deepest(problem) : -1;
    if (blocking >= 0) {
      // Back to where it has just let go; the others are in balance and press all the way.
      const step = before[blocking]! / (before[blocking]! - force[blocking]!);
      for (let j = 0; j < force.length; j++) force[j] = before[j]! + step * (force[j]! - before[j]!);
      force[blocking] = 0;
      bearing[blocking] = 0;
      problem.unbalance();
    } else if (next >= 0) bearing[next] = 1;
    else return true;
  }
  return false;
}

/** Of the bearing contacts that would pull the one that lets go first on the way from the forces before; −1 if none would. */
function firstToPull({ bearing, force }: ContactProblem, before: Float64Array): number {
  let least = Infinity;
  let found = -1;
  for (let j = 0; j < force.length; j++) {
    if (bearing[j] === 0 || force[j]! >= 0) continue;
    const step = before[j]! / (before[j]! - force[j]!);
    if (step < least) {
      least = step;
      found = j;
    }
  }
  return found;
}

/** Of the contacts that do not bear the one pressed most against its law; −1 if all obey it. */
function deepest(problem: ContactProblem): number {
  const { bearing, depth, stiffness, slack } = problem;
  let most = 0;
  let found = -1;
  for (let j = 0; j < depth.length; j++) {
    const pressed = stiffness[j]! * depth[j]!;
    if (bearing[j] === 1 || pressed <= slack[j]! || pressed <= most) continue;
    most = pressed;
    found = j;
  }
  return found;
}

/** Three corners of the hull that enclose the resultant bear it, by the lever rule. */
function startOnThree(problem: ContactProblem): void {
  const { bearing, force, resultant, support } = problem;
  const { corners } = support;
  bearing.fill(0);
  force.fill(0);
  let best = -Infinity;
  let second = 1;
  for (let at = 1; at + 1 < corners.length; at++) {
    const inside = Math.min(...sharesOf(problem, at));
    if (inside > best) {
      best = inside;
      second = at;
    }
  }
  const shares = sharesOf(problem, second);
  for (const [index, corner] of [corners[0]!, corners[second]!, corners[second + 1]!].entries()) {
    bearing[corner] = 1;
    force[corner] = Math.max(0, shares[index]!) * resultant[0]!;
  }
}

/** Shares of the resultant on the first corner of the hull and two neighbouring ones. */
function sharesOf({ support, resultant }: ContactProblem, at: number): [number, number, number] {
  const { points } = support;
  const s = support.origin + resultant[1]! / resultant[0]!;
  const t = resultant[2]! / resultant[0]!;
  const [s0, t0] = points[0]!;
  const [s1, t1] = points[at]!;
  const [s2, t2] = points[at + 1]!;
  const area = (s1 - s0) * (t2 - t0) - (s2 - s0) * (t1 - t0);
  const share1 = ((s - s0) * (t2 - t0) - (s2 - s0) * (t - t0)) / area;
  const share2 = ((s1 - s0) * (t - t0) - (s - s0) * (t1 - t0)) / area;
  return [1 - share1 - share2, share1, share2];
}
