/** Least and most of every reaction over the box of what is not known, for one step (docs/mechanics-bounds.md). */

import type { Plan, Step } from "../../plan";
import type { Witness } from "../answers";
import { assembleStep } from "../assemble";
import type { StepModel } from "../model";
import type { StandBounds, StandLimits, StepBounds } from "./answers";
import { boxTipsOf, stableAsWeighed } from "./boxTips";
import { certify, type Effort } from "./certify";
import type { Dictionary } from "./dictionary";
import { type Objective, objectivesOf } from "./objectives";
import { type Attained, searchExtremes } from "./search";
import { nominalState } from "./states";
import { type StaticsLimit, staticsLimits } from "./staticsLimits";
import { type ContactSystem, condense } from "./system";
import { type BoxVariable, boxOf } from "./variables";
import { witnessAt } from "./witness";

/** Stands whose stiffness is not known are taken so many times as stiff, all together (engine.md section 4). */
const estimatedFactors = [1, 1 / 3, 3];

/** A bound within this share of the weight of what is attained is certified. */
const certifiedWithin = 1e-3;

/** Multiply-adds that a step's proofs may take together, and one of them: some ten and two seconds. */
const workAllowed = { step: 1e10, objective: 2e9 };

/** Branches that a better leg frame share is looked for in. */
const frameBranches = 300;

/**
 * Least and most of every stand, attained, with the statics limits. Nothing is proved yet: `certified` is null unless
 * statics already allows no more.
 */
export function boundsOf(plan: Plan, step: Step): StepBounds {
  return answer(plan, step, null);
}

/**
 * The same with proved outer bounds, as far as `effort` lets it get; the proof may find better values than `boundsOf`.
 * `shouldStop` is asked at every branch.
 */
export function certifiedBoundsOf(plan: Plan, step: Step, effort: Effort): StepBounds {
  return answer(plan, step, effort);
}

function answer(plan: Plan, step: Step, effort: Effort | null): StepBounds {
  const model = assembleStep(plan, step);
  return boundsOfModel(plan, model, boxOf(plan, step, model), effort);
}

/**
 * Bounds of an assembled step over a box.
 *
 * @param plan gives the masses their names.
 * @param effort null = prove nothing.
 */
export function boundsOfModel(
  plan: Pick<Plan, "piece">,
  model: StepModel,
  box: readonly BoxVariable[],
  effort: Effort | null,
): StepBounds {
  if (!stableAsWeighed(model)) return { status: "unstable" };
  const edges = boxTipsOf(model, box);
  const groups = groupsOf(model);
  if (edges.length > 0) {
    const stands = inOrder(model, groups, (group) => limitsOf(model, box, group), noLimits(model));
    return { status: "box tips", edges, stands };
  }
  const stands = inOrder(model, groups, (group) => boundsOfGroup(plan, model, box, group, effort), noBounds(model));
  return { status: "bounded", stands };
}

/** Stands that bear on the same parts, and these parts: everything about them is decided there. */
interface Group {
  readonly parts: readonly number[];
  readonly stands: readonly number[];
}

function groupsOf(model: StepModel): readonly Group[] {
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

/** One answer a stand: those of its group, or that of a stand without contact. */
function inOrder<Answer>(
  model: StepModel,
  groups: readonly Group[],
  answersOf: (group: Group) => readonly Answer[],
  without: (stand: number) => Answer,
): readonly Answer[] {
  const answers: Answer[] = model.stands.map((_, stand) => without(stand));
  for (const group of groups) {
    const own = answersOf(group);
    group.stands.forEach((stand, index) => {
      answers[stand] = own[index]!;
    });
  }
  return answers;
}

const noLimits =
  (model: StepModel) =>
  (stand: number): StandLimits => ({ stand: model.stands[stand]!.stand, staticsLeast: 0, staticsMost: 0 });

const nowhere: Witness = { heights: {}, tilts: {}, bows: {}, masses: {}, centres: {}, loads: {}, stiffness: 1 };

const noBounds =
  (model: StepModel) =>
  (stand: number): StandBounds => ({
    ...noLimits(model)(stand),
    least: 0,
    most: 0,
    leastAt: nowhere,
    mostAt: nowhere,
    legFramesMost: [0, 0],
    outer: { least: 0, most: 0 },
    certified: { least: 0, most: 0 },
    gap: 0,
  });

/** Least, most and the two frames of each stand of a group, in this order. */
const objectivesAStand = 4;

function objectivesOfGroup(model: StepModel, system: ContactSystem, group: Group): readonly Objective[] {
  return group.stands.flatMap((stand) => objectivesOf(system, stand, model.stands[stand]!));
}

function limitsOf(model: StepModel, box: readonly BoxVariable[], group: Group): readonly StandLimits[] {
  const system = condense(model, box, group.parts, 1);
  const limits = staticsLimits(system, objectivesOfGroup(model, system, group));
  return group.stands.map((stand, index) => ({
    stand: model.stands[stand]!.stand,
    staticsLeast: nonNegative(-limits[objectivesAStand * index]!.value * system.force),
    staticsMost: limits[objectivesAStand * index + 1]!.value * system.force,
  }));
}

/** The contact problem of a group at one stiffness of the estimated stands, and what has been found in it. */
interface Case {
  readonly stiffness: number;
  readonly system: ContactSystem;
  readonly nominal: Dictionary;
  readonly objectives: readonly Objective[];
  readonly limits: readonly StaticsLimit[];
  readonly attained: Attained[];
}

function casesOf(model: StepModel, box: readonly BoxVariable[], group: Group): readonly Case[] {
  const estimated = model.parts.some(
    ({ contacts }, part) => group.parts.includes(part) && contacts.some(({ stand }) => model.stands[stand]!.estimated),
  );
  return (estimated ? estimatedFactors : [1]).flatMap((stiffness): Case[] => {
    const system = condense(model, box, group.parts, stiffness);
    const nominal = nominalState(system);
    if (nominal === null) return [];
    const objectives = objectivesOfGroup(model, system, group);
    const limits = staticsLimits(system, objectives);
    return [
      {
        stiffness,
        system,
        nominal,
        objectives,
        limits,
        attained: [...searchExtremes(system, nominal, objectives, limits)],
      },
    ];
  });
}

function boundsOfGroup(
  plan: Pick<Plan, "piece">,
  model: StepModel,
  box: readonly BoxVariable[],
  group: Group,
  effort: Effort | null,
): readonly StandBounds[] {
  const cases = casesOf(model, box, group);
  const [first] = cases;
  if (first === undefined) throw new Error("no state of equilibrium was found");
  const { force } = first.system;
  // The reactions first: what is left of the effort goes to the leg frames.
  const outers: number[] = [];
  const budget = { left: workAllowed.step };
  for (const frames of [false, true]) {
    first.objectives.forEach(({ kind }, index) => {
      if ((kind === "frame") === frames) outers[index] = proved(cases, index, effort, budget);
    });
  }
  return group.stands.map((stand, place): StandBounds => {
    const at = (offset: number) => bestOf(cases, objectivesAStand * place + offset);
    const [least, most, minus, plus] = [at(0), at(1), at(2), at(3)];
    const outer = {
      least: nonNegative(-outers[objectivesAStand * place]! * force),
      most: outers[objectivesAStand * place + 1]! * force,
    };
    const values = { least: nonNegative(-least.value * force), most: most.value * force };
    const gap = Math.max(values.least - outer.least, outer.most - values.most);
    const witness = ({ found, x }: Best) => witnessAt(found.system, model, plan, x, found.stiffness);
    return {
      stand: model.stands[stand]!.stand,
      ...values,
      leastAt: witness(least),
      mostAt: witness(most),
      staticsLeast: nonNegative(-first.limits[objectivesAStand * place]!.value * force),
      staticsMost: first.limits[objectivesAStand * place + 1]!.value * force,
      legFramesMost: [minus.value * force, plus.value * force],
      outer,
      certified: gap <= certifiedWithin * force ? outer : null,
      gap,
    };
  });
}

/** Proves an objective in every case, which may improve what they attain. @returns the outer bound, scaled. */
function proved(cases: readonly Case[], index: number, effort: Effort | null, budget: { left: number }): number {
  const bounds = cases.map(({ system, nominal, objectives, limits, attained }) => {
    const objective = objectives[index]!;
    const outer = limits[index]!.value;
    if (effort === null) return outer;
    const toBeat = bestOf(cases, index).value;
    const branches = objective.kind === "frame" ? Math.min(frameBranches, effort.branches) : effort.branches;
    const certificate = certify(
      system,
      nominal,
      objective,
      attained[index]!,
      { toBeat, limit: limits[index]!, work: Math.min(workAllowed.objective, budget.left) },
      { ...effort, branches },
    );
    budget.left -= certificate.work;
    attained[index] = certificate.attained;
    return certificate.bound;
  });
  return Math.max(...bounds, bestOf(cases, index).value);
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
