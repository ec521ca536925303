/**
 * Newton steps over contact sets with an exact line search (docs/mechanics.md, M16 and M17): the usual way to the level
 * reactions, three to six sweeps.
 */

import type { ContactProblem } from "./contactProblem";
import { rounding } from "./contactProblem";
import type { LineSearch } from "./lineSearch";

/** Steps before the slower method takes over; of 90 000 random parts all but two took fewer than 27. */
const mostSteps = 60;

/**
 * Solves from the bearing contacts that are set. True where every contact obeys its law and a further step changes
 * nothing; false where it got stuck in rounding or the steps ran out.
 */
export function newton(problem: ContactProblem, search: LineSearch): boolean {
  const { progress } = problem;
  const small = rounding.law * problem.resultant[0]!;
  let lastChange = Infinity;
  problem.unbalance();
  problem.factor();
  for (let turn = 0; turn < mostSteps; turn++) {
    problem.increment();
    const obeyed = problem.obeysAfterWhole();
    // The first step starts from nothing that is in balance, so there is no energy to go down yet.
    if (turn === 0 || obeyed) progress[0] = 1;
    else search.exactStep(progress);
    if (progress[0] === 0) return false;
    problem.go();
    if (obeyed) {
      const change = progress[1]!;
      if (change <= small || change > lastChange / 2) return true;
      lastChange = change;
    }
    if (chooseBearing(problem)) problem.factor();
  }
  return false;
}

/** A contact bears where it is pressed; one within rounding of touching stays as it is. Whether any changed. */
function chooseBearing(problem: ContactProblem): boolean {
  const { bearing, depth, stiffness, slack } = problem;
  let changed = false;
  for (let j = 0; j < depth.length; j++) {
    const bears = depth[j]! > 0 ? 1 : 0;
    if (bears === bearing[j] || Math.abs(depth[j]! * stiffness[j]!) <= slack[j]!) continue;
    bearing[j] = bears;
    changed = true;
  }
  return changed;
}
