/** How far an answer is from equilibrium and from the contact law, found from the answer and the plan's loads alone. */

import type { Residual } from "./answers";
import type { PartModel } from "./model";
import type { Resultant } from "./resultant";

/**
 * Relative residuals of one part (docs/mechanics.md, M19).
 *
 * @param reactions r_j, N, and `depth` h_j − u_j, m, by contact of the part.
 */
export function residualOf(
  { from, to, contacts }: PartModel,
  { force: weight, momentS, momentT }: Resultant,
  reactions: ArrayLike<number>,
  depth: ArrayLike<number>,
): Residual {
  const arm = weight * (to - from);
  let [force, aboutS, aboutT, complementarity] = [-weight, -momentS, -momentT, 0];
  for (const [index, { s, t, stiffness }] of contacts.entries()) {
    const reaction = reactions[index]!;
    force += reaction;
    aboutS += reaction * (s - from);
    aboutT += reaction * t;
    // min(r, k·|h − u − r/k|)
    const offLaw = Math.abs(stiffness * depth[index]! - reaction);
    complementarity = Math.max(complementarity, Math.min(reaction, offLaw));
  }
  return {
    force: Math.abs(force) / weight,
    momentS: Math.abs(aboutS) / arm,
    momentT: Math.abs(aboutT) / arm,
    complementarity: complementarity / weight,
  };
}

/** The worst of each. */
export function worstResidual(residuals: readonly Residual[]): Residual {
  const worst = (kind: keyof Residual) => residuals.reduce((most, residual) => Math.max(most, residual[kind]), 0);
  return {
    force: worst("force"),
    momentS: worst("momentS"),
    momentT: worst("momentT"),
    complementarity: worst("complementarity"),
  };
}
