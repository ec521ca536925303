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

/**
 * A pull under this × W is none (no unit): where the load lies on the line of two contacts, a third one that carries
 * nothing must be able to stay.
 */
const asNone = 1e-11;

/** Starts from three contacts that enclose the resultant. False where rounding keeps it from ending: the forces hold still. */
export function oneByOne(problem: ContactProblem): boolean {
  const { bearing, force, growth } = problem;
  const slack = asNone * problem.resultant[0]!;
  startOnThree(problem);
  problem.unbalance();
  for (let set = 0; set < setsPerContact * force.length; set++) {
    problem.factor();
    problem.increment();
    let step = 1;
    let blocking = -1;
    for (let j = 0; j < force.length; j++) {
      if (bearing[j] === 0 || force[j]! + growth[j]! >= -slack) continue;
      const reach = force[j]! / -growth[j]!;
      if (reach < step || blocking < 0) {
        step = Math.min(step, reach);
        blocking = j;
      }
    }
    problem.go(step);
    if (blocking >= 0) {
      bearing[blocking] = 0;
      force[blocking] = 0;
      continue;
    }
    // The same set once more: what the first solution of it lacked in digits.
    problem.increment();
    problem.go(1);
    const next = deepest(problem);
    if (next < 0) return true;
    bearing[next] = 1;
  }
  return false;
}

/** Of the contacts that do not bear the one pressed most against its law; −1 if all obey it. */
function deepest(problem: ContactProblem): number {
  const { bearing, depth, stiffness } = problem;
  let most = 0;
  let found = -1;
  for (let j = 0; j < depth.length; j++) {
    const pressed = stiffness[j]! * depth[j]!;
    if (bearing[j] === 1 || pressed <= problem.allowed(j) || pressed <= most) continue;
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
