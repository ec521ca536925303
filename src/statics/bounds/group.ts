/** The bounds of the stands that bear on the same parts: attained, then proved (docs/mechanics-bounds.md). */

import type { Plan } from "../../plan";
import type { StepModel } from "../model";
import type { StandBounds, StandLimits } from "./answers";
import { certify } from "./certify";
import type { Dictionary } from "./dictionary";
import { type Objective, objectivesOf } from "./objectives";
import { type Attained, searchExtremes } from "./search";
import { nominalState } from "./states";
import { type StaticsLimit, staticsLimits } from "./staticsLimits";
import { type ContactSystem, condense } from "./system";
import type { BoxVariable } from "./variables";
import { witnessAt } from "./witness";

/** Stands whose stiffness is not known are taken so many times as stiff, all together (engine.md section 4). */
const estimatedFactors = [1, 1 / 3, 3];

/** A bound within this share of the weight of what is attained is certified. */
const certifiedWithin = 1e-3;

/**
 * Multiply-adds that a step's proofs may take together, and one of them: some four seconds and one. A count, not a time,
 * so that every run proves the same.
 */
const workAllowed = { step: 4e9, objective: 1e9 };

/** Branches that a better leg frame share is looked for in; a reaction may take as many as its work allows. */
const branchesAllowed = { most: Number.POSITIVE_INFINITY, least: Number.POSITIVE_INFINITY, frame: 100 };

/** The greatest reactions first, which most findings rest on; what is left of the work goes to the leg frames. */
const provedInTurn = ["most", "least", "frame"] as const;

/** Stands that bear on the same parts, and these parts: everything about them is decided there. */
export interface Group {
  readonly parts: readonly number[];
  readonly stands: readonly number[];
}

export function groupsOf(model: StepModel): readonly Group[] {
  const groups = new Map<string, { parts: number[]; stands: number[] }>();
  model.stands.forEach(({ intervals }, stand) => {
    const parts = [...new Set(intervals.map(({ part }) => part))].sort((a, b) => a - b);
    if (parts.length === 0) return;
    const group = groups.get(parts.join()) ?? { parts, stands: [] };
    group.stands.push(stand);
    groups.set(parts.join(), group);
  });
  return [...groups.values()];
}

/** Least, most and the two frames of each stand of a group, in this order. */
const objectivesAStand = 4;

function objectivesOfGroup(model: StepModel, system: ContactSystem, group: Group): readonly Objective[] {
  return group.stands.flatMap((stand) => objectivesOf(system, stand, model.stands[stand]!));
}

/** The statics limits of the stands of a group. */
export function limitsOf(model: StepModel, box: readonly BoxVariable[], group: Group): readonly StandLimits[] {
  const system = condense(model, box, group.parts, 1);
  const limits = staticsLimits(system, objectivesOfGroup(model, system, group));
  return group.stands.map((stand, index) => ({
    stand: model.stands[stand]!.stand,
    staticsLeast: nonNegative(-limits[objectivesAStand * index]!.value * system.force),
    staticsMost: limits[objectivesAStand * index + 1]!.value * system.force,
  }));
}

/** The contact problem of a group at one stiffness of the estimated stands, and what is known of it so far. */
export interface Case {
  readonly stiffness: number;
  readonly system: ContactSystem;
  readonly nominal: Dictionary;
  readonly objectives: readonly Objective[];
  readonly limits: readonly StaticsLimit[];
  /** By objective: the best found, and a bound that nothing exceeds, scaled. */
  readonly attained: Attained[];
  readonly outer: number[];
}

/** The cases of a group with what their climbs attain; nothing is proved yet. */
export function* casesOf(
  model: StepModel,
  box: readonly BoxVariable[],
  group: Group,
): Generator<undefined, readonly Case[]> {
  const estimated = model.parts.some(
    ({ contacts }, part) => group.parts.includes(part) && contacts.some(({ stand }) => model.stands[stand]!.estimated),
  );
  const cases: Case[] = [];
  for (const stiffness of estimated ? estimatedFactors : [1]) {
    const system = condense(model, box, group.parts, stiffness);
    const nominal = nominalState(system);
    if (nominal === null) continue;
    const objectives = objectivesOfGroup(model, system, group);
    const limits = staticsLimits(system, objectives);
    const attained = yield* searchExtremes(system, nominal, objectives, limits);
    cases.push({ stiffness, system, nominal, objectives, limits, attained, outer: limits.map(({ value }) => value) });
  }
  if (cases.length === 0) throw new Error("no state of equilibrium was found");
  return cases;
}

/** Proves what can be proved with the work allowed. Pauses after every branch; what is known then stands in the cases. */
export function* prove(groups: readonly (readonly Case[])[]): Generator<undefined, void> {
  const budget = { left: workAllowed.step };
  for (const kind of provedInTurn) {
    for (const cases of groups) {
      for (const [index, objective] of cases[0]!.objectives.entries()) {
        if (objective.kind !== kind) continue;
        for (const one of cases) yield* proveOne(one, index, bestOf(cases, index).value, budget);
      }
    }
  }
}

/** @param toBeat the best found of the objective in any case. */
function* proveOne(
  { system, nominal, objectives, limits, attained, outer }: Case,
  index: number,
  toBeat: number,
  budget: { left: number },
): Generator<undefined, void> {
  const objective = objectives[index]!;
  const proof = certify(
    system,
    nominal,
    objective,
    attained[index]!,
    { toBeat, limit: limits[index]! },
    { branches: branchesAllowed[objective.kind], work: Math.min(workAllowed.objective, budget.left) },
  );
  for (;;) {
    const next = proof.next();
    if (next.done === true) {
      const certificate = next.value;
      budget.left -= certificate.work;
      attained[index] = certificate.attained;
      outer[index] = certificate.bound;
      return;
    }
    outer[index] = next.value;
    yield;
  }
}

/** What is known of the stands of a group. */
export function answersOf(
  plan: Pick<Plan, "piece">,
  model: StepModel,
  group: Group,
  cases: readonly Case[],
): readonly StandBounds[] {
  const { system, limits } = cases[0]!;
  const { force } = system;
  const outerOf = (index: number) => Math.max(...cases.map(({ outer }) => outer[index]!), bestOf(cases, index).value);
  return group.stands.map((stand, place): StandBounds => {
    const index = objectivesAStand * place;
    const at = (offset: number) => bestOf(cases, index + offset);
    const [least, most, minus, plus] = [at(0), at(1), at(2), at(3)];
    const outer = { least: nonNegative(-outerOf(index) * force), most: outerOf(index + 1) * force };
    const values = { least: nonNegative(-least.value * force), most: most.value * force };
    const gap = Math.max(values.least - outer.least, outer.most - values.most);
    const witness = ({ found, x }: Best) => witnessAt(found.system, model, plan, x, found.stiffness);
    return {
      stand: model.stands[stand]!.stand,
      ...values,
      leastAt: witness(least),
      mostAt: witness(most),
      staticsLeast: nonNegative(-limits[index]!.value * force),
      staticsMost: limits[index + 1]!.value * force,
      legFramesMost: [minus.value * force, plus.value * force],
      outer,
      certified: gap <= certifiedWithin * force ? outer : null,
      gap,
    };
  });
}

interface Best extends Attained {
  readonly found: Case;
}

/** The greatest of an objective over the cases; at equal values the first. */
function bestOf(cases: readonly Case[], index: number): Best {
  return cases
    .map((found) => ({ ...found.attained[index]!, found }))
    .reduce((best, next) => (next.value > best.value ? next : best));
}

/** A reaction of −1e-17 is 0. */
function nonNegative(force: number): number {
  return Math.max(0, force);
}
