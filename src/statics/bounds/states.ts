/** States of equilibrium of a contact problem at given points of the box (docs/mechanics-bounds.md, B9). */

import type { Dictionary } from "./dictionary";
import { follow } from "./moves";
import type { ContactSystem } from "./system";

/** How many pivots a path may take: each contact may come and go a few times. */
const pivotsAllowed = (system: ContactSystem) => 20 * system.contacts.length + 100;

/**
 * The state at the nominal point. The other contacts are first held clear of the tripods by the parameter, which is
 * then taken to 0. Null only if rounding keeps the path from its end.
 */
export function nominalState(system: ContactSystem): Dictionary | null {
  const { unknowns } = system;
  const state = system.start.copy();
  state.refresh();
  let overlap = 0;
  for (let j = 0; j < unknowns.contacts; j++) overlap = Math.max(overlap, -state.valueOf(unknowns.gap(j)));
  state.set(unknowns.parameter, overlap + 1);
  if (follow(state, unknowns, 0, pivotsAllowed(system)) !== "optimal") return null;
  state.refresh();
  return state;
}

/**
 * The state at a point x of the box (scaled, all variables), found by going there in a straight line.
 *
 * @param into is written over and returned, where given.
 */
export function stateAt(
  system: ContactSystem,
  nominal: Dictionary,
  x: ArrayLike<number>,
  into?: Dictionary,
): Dictionary | null {
  const { unknowns } = system;
  const state = into === undefined ? nominal.copy() : into.copyFrom(nominal);
  const { T, columns, rows, place, at } = state;
  const along = -1 - place[unknowns.parameter]!;
  // The parameter's column becomes Σ (column of x_k)·Δx_k
  for (let i = 0, base = 0; i <= rows; i++, base += columns) {
    let sum = 0;
    for (let k = 0; k < unknowns.variables; k++) {
      const c = -1 - place[unknowns.variable(k)]!;
      sum += T[base + c]! * (x[k]! - at[c]!);
    }
    T[base + along] = sum;
  }
  if (follow(state, unknowns, 1, pivotsAllowed(system)) !== "optimal") return null;
  for (let k = 0; k < unknowns.variables; k++) at[-1 - place[unknowns.variable(k)]!] = x[k]!;
  at[-1 - place[unknowns.parameter]!] = 0;
  state.low[unknowns.parameter] = 0;
  state.high[unknowns.parameter] = 0;
  state.refresh();
  return state;
}

/** The point of the box that a dictionary is at. */
export function pointOf({ unknowns }: ContactSystem, state: Dictionary): Float64Array {
  const x = new Float64Array(unknowns.variables);
  for (let k = 0; k < x.length; k++) x[k] = state.valueOf(unknowns.variable(k));
  return x;
}

/** What every contact carries in a state, scaled. */
export function reactionsOf({ unknowns }: ContactSystem, state: Dictionary): Float64Array {
  const reactions = new Float64Array(unknowns.contacts);
  for (let j = 0; j < reactions.length; j++) reactions[j] = state.valueOf(unknowns.reaction(j));
  return reactions;
}
