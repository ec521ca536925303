import type { LoadItem } from "./model";

/** What loads come to: N downward and N·m. */
export interface Resultant {
  readonly force: number;
  /** Σ down·(s − origin) + Σ F_s·z: the resultant acts at origin + this ÷ force. */
  readonly momentS: number;
  /** Σ down·t + Σ F_t·z: the resultant acts at this ÷ force. */
  readonly momentT: number;
}

/** M7: the resultant of load items, moments taken about s = origin and t = 0. */
export function resultantOf(loads: readonly LoadItem[], origin: number): Resultant {
  let [force, momentS, momentT] = [0, 0, 0];
  for (const load of loads) {
    if (load.kind === "point") {
      force += load.down;
      momentS += load.down * (load.s - origin) + load.momentS;
      momentT += load.momentT;
      continue;
    }
    // A trapezoid: its weight, and its middle third's share of the moment.
    const length = load.to - load.from;
    const [q0, q1] = load.intensity;
    const down = ((q0 + q1) / 2) * length;
    force += down;
    momentS += down * (load.from - origin) + ((q0 + 2 * q1) / 6) * length * length;
    momentT += down * load.t;
  }
  return { force, momentS, momentT };
}
