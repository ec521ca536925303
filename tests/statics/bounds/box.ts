/** The ranges of the box, written out once more for checking witnesses. */

import type { Plan, Step } from "../../../src/plan";
import { criteriaOf, layoutOf, partsOf } from "../../../src/plan";
import type { Witness } from "../../../src/statics";

/** What of a witness passes its range by more than 1e-9 of it. */
export function witnessOutside(plan: Plan, step: Step, at: Witness): string[] {
  const { levelTolerance, topTilt, straightness } = criteriaOf(plan);
  const outside: string[] = [];
  const check = (what: string, value: number, middle: number, half: number) => {
    if (!(Math.abs(value - middle) <= half * (1 + 1e-9) + 1e-15)) outside.push(`${what} ${value}`);
  };
  const { placements } = layoutOf(plan, step);
  for (const [stand, d] of Object.entries(at.heights)) {
    const placement = placements.find((one) => one.stand === stand)!;
    check(`height ${stand}`, d, 0, placement.levelTolerance ?? levelTolerance);
  }
  for (const [stand, tilt] of Object.entries(at.tilts)) check(`tilt ${stand}`, tilt, 0, topTilt);
  for (const [part, bow] of Object.entries(at.bows)) {
    const [from, to] = partsOf(plan.piece, step)[Number(part)]!;
    check(`bow ${part}`, bow, 0, step.bow ?? straightness * (to - from));
  }
  const massOf = (id: string) => plan.piece.masses.find((mass) => mass.id === id)!;
  for (const [id, factor] of Object.entries(at.masses)) check(`mass ${id}`, factor, 1, massOf(id).uncertainty);
  for (const [id, [s, t]] of Object.entries(at.centres)) {
    const mass = massOf(id);
    if (mass.kind !== "point") outside.push(`centre of the line mass ${id}`);
    else {
      check(`centre ${id} in s`, s, 0, mass.centreWithin.s);
      check(`centre ${id} in t`, t, 0, mass.centreWithin.t);
    }
  }
  for (const [load, factor] of Object.entries(at.loads)) check(`load ${load}`, factor, 0.5, 0.5);
  if (![1 / 3, 1, 3].includes(at.stiffness)) outside.push(`stiffness ${at.stiffness}`);
  return outside;
}
