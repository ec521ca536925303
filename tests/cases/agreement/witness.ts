/** What a witness brings about: the level solution with its errors, weights and loads put in. */

import type { Mass, Plan, StandId, Step } from "../../../src/plan";
import { criteriaOf, layoutOf, partsOf } from "../../../src/plan";
import { assembleStep, levelAt, type StepModel } from "../../../src/statics";
import type { WitnessJson } from "./types";

/** Ranges are kept within this, of themselves and absolutely. */
const slack = 1e-9;

/** Everything of a witness that lies outside its range in the box of engine.md section 4. */
export function inBox(plan: Plan, step: Step, at: WitnessJson): string[] {
  const criteria = criteriaOf(plan);
  const { placements } = layoutOf(plan, step);
  const outside: string[] = [];
  const within = (what: string, value: number, from: number, to: number) => {
    const room = slack * Math.max(1, Math.abs(from), Math.abs(to));
    if (!(value >= from - room && value <= to + room)) outside.push(`${what} ${value} is outside ${from} to ${to}`);
  };
  for (const [stand, d] of Object.entries(at.heights)) {
    const placement = placements.find((one) => one.stand === stand);
    const tolerance = placement?.levelTolerance ?? (placement === undefined ? 0 : criteria.levelTolerance);
    within(`height of ${stand}`, d, -tolerance, tolerance);
  }
  for (const [stand, tilt] of Object.entries(at.tilts))
    within(`tilt of ${stand}`, tilt, -criteria.topTilt, criteria.topTilt);
  const parts = partsOf(plan.piece, step);
  for (const [index, bow] of Object.entries(at.bows)) {
    const [from, to] = parts[Number(index)]!;
    const most = step.bow ?? criteria.straightness * (to - from);
    within(`bow of part ${index}`, bow, -most, most);
  }
  const massOf = (id: string): Mass => plan.piece.masses.find((mass) => mass.id === id)!;
  for (const [id, factor] of Object.entries(at.masses)) {
    const { uncertainty } = massOf(id);
    within(`factor of ${id}`, factor, 1 - uncertainty, 1 + uncertainty);
  }
  for (const [id, [ds, dt]] of Object.entries(at.centres)) {
    const mass = massOf(id);
    const { s, t } = mass.kind === "point" ? mass.centreWithin : { s: 0, t: 0 };
    within(`centre of ${id} in s`, ds, -s, s);
    within(`centre of ${id} in t`, dt, -t, t);
  }
  for (const [index, factor] of Object.entries(at.loads)) within(`factor of load ${index}`, factor, 0, 1);
  if (![1 / 3, 1, 3].some((factor) => Math.abs(factor - at.stiffness) < 1e-6))
    outside.push(`stiffness ${at.stiffness}`);
  return outside;
}

/** The step's model at a witness. */
export function modelAt(plan: Plan, step: Step, at: WitnessJson): StepModel {
  const nominal = assembleStep(weighed(plan, at), { ...step, loads: loaded(step, at) });
  return {
    stands: nominal.stands.map((stand) =>
      stand.estimated ? { ...stand, stiffness: stand.stiffness * at.stiffness } : stand,
    ),
    parts: nominal.parts.map((part, index) => ({
      ...part,
      contacts: part.contacts.map((contact) => {
        const stand = nominal.stands[contact.stand]!;
        const d = at.heights[stand.stand] ?? 0;
        const tilt = at.tilts[stand.stand] ?? 0;
        const bow = at.bows[String(index)] ?? 0;
        return {
          ...contact,
          height: contact.height + d + tilt * contact.c - bow * contact.bow,
          stiffness: contact.stiffness * (stand.estimated ? at.stiffness : 1),
        };
      }),
    })),
  };
}

/** Masses with their factors; a centre that is off is a couple of the heaviest weight, so it shifts a lighter one farther. */
function weighed(plan: Plan, at: WitnessJson): Plan {
  const masses = plan.piece.masses.map((mass): Mass => {
    const factor = at.masses[mass.id] ?? 1;
    if (mass.kind === "line") {
      const [from, to] = mass.massPerLength;
      return { ...mass, massPerLength: [from * factor, to * factor] };
    }
    const [ds, dt] = at.centres[mass.id] ?? [0, 0];
    const couple = (1 + mass.uncertainty) / factor;
    return { ...mass, mass: mass.mass * factor, s: mass.s + ds * couple, t: mass.t + dt * couple };
  });
  return { ...plan, piece: { ...plan.piece, masses } };
}

function loaded(step: Step, at: WitnessJson): Step["loads"] {
  return step.loads.map((load, index) => {
    const factor = at.loads[String(index)] ?? 1;
    const [s, t, z] = load.force;
    return { ...load, force: [s * factor, t * factor, z * factor] as const };
  });
}

/** The reaction of one stand at a witness, and the residuals of the solution there. */
export function reactionAt(
  plan: Plan,
  step: Step,
  at: WitnessJson,
  stand: string,
): { readonly reaction: number | null; readonly residuals: readonly number[] } {
  const level = levelAt(modelAt(plan, step, at), plan.piece.masses);
  const { force = Number.NaN, momentS = Number.NaN, momentT = Number.NaN } = level.residual ?? {};
  return {
    reaction: level.stands.find((one) => one.stand === (stand as StandId))?.reaction ?? null,
    residuals: [force, momentS, momentT],
  };
}
