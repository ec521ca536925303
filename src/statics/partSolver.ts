/** The level reactions of one part, again and again: for any heights, stiffnesses and load factors. */

import type { LoadPattern } from "./chain";
import { ContactProblem } from "./contactProblem";
import { LineSearch } from "./lineSearch";
import type { PartModel } from "./model";
import { newton } from "./newton";
import { oneByOne } from "./oneByOne";

export type SolveStatus =
  /** The reactions are exact to rounding. */
  | "solved"
  /** The reactions are in balance; rounding kept them from the contact law, by as much as the residual says. */
  | "rough"
  /** The resultant does not pass strictly inside the hull of the contacts, or does not press down: no reactions. */
  | "unstable";

/** Times that the heights are levelled out; once is usual where it is needed at all. */
const mostLevellings = 3;

/**
 * Set `heights`, `stiffness` and `factors`, call `solve`, read the rest. The contacts that bore last time are tried
 * first, so a small change costs two sweeps. Nothing is allocated after construction.
 */
export class PartSolver {
  /** h_j by contact of the part, m. */
  readonly heights: Float64Array;
  /** k_j by contact, N/m, > 0. */
  readonly stiffness: Float64Array;
  /** Factor on each load pattern; 1 in the level case. */
  readonly factors: Float64Array;
  /** r_j by contact, N, ≥ 0; all 0 where unstable. */
  readonly reactions: Float64Array;
  /** h_j − u_j by contact, m: how deep it is pressed, negative where it is clear. */
  readonly depth: Float64Array;
  readonly problem: ContactProblem;
  private readonly search: LineSearch;

  /** @param patterns load items that vary together, each with a factor; all loads of the part as one, if left out. */
  constructor(part: PartModel, patterns?: readonly LoadPattern[]) {
    const problem = new ContactProblem(part, patterns);
    this.problem = problem;
    this.heights = problem.heights;
    this.stiffness = problem.stiffness;
    this.factors = problem.factors;
    this.depth = problem.depth;
    this.reactions = new Float64Array(part.contacts.length);
    this.search = new LineSearch(problem.stiffness, problem.depth, problem.rise, problem.force, problem.growth);
  }

  /** Solves with the present heights, stiffnesses and factors. */
  solve(): SolveStatus {
    const { problem, reactions } = this;
    problem.reset();
    reactions.fill(0);
    if (!problem.support.holds(problem.resultant)) return "unstable";
    let solved = this.settle();
    for (let turn = 0; turn < mostLevellings && problem.levelOut(); turn++) solved = this.settle();
    problem.restorePlane();
    for (let j = 0; j < reactions.length; j++) {
      reactions[j] = problem.bearing[j] === 1 ? Math.max(0, problem.force[j]!) : 0;
    }
    return solved ? "solved" : "rough";
  }

  /** Has the next solve start from all contacts. */
  forget(): void {
    this.problem.bearing.fill(1);
  }

  /** False where rounding keeps Newton's steps from ending: then the forces are those found contact by contact. */
  private settle(): boolean {
    const { problem, search } = this;
    if (newton(problem, search)) return true;
    if (oneByOne(problem) && newton(problem, search)) return true;
    oneByOne(problem);
    return false;
  }
}
