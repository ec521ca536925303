/** Good up to: what a step still takes before something fails that did not fail before, all else as planned. */

import type { Plan, Step, StepId } from "../plan";
import { layoutOf, partsOf, stepOf } from "../plan";
import { stepReportOf } from "./assemble";
import { forFindings } from "./engine";
import { failingInStep, failingOnFloor } from "./failing";
import { type Answers, type GoodUpTo, knownValue, pending } from "./parts";
import { type StepReport, worstOf } from "./report";
import {
  landedOff,
  turnedRound,
  withAddedLoad,
  withCriterion,
  withLevelTolerance,
  withoutStand,
  withWeight,
} from "./variations";

/** Where each scan ends: factor, m, m, share of the weight, and times the weight. */
const ends = { weight: 3, level: 0.05, offTheMarks: 1, push: 0.5, addedLoad: 2 } as const;
/** Equal steps of a scan. */
const scanSteps = 32;
/** A value is found to this share of itself. */
const precision = 0.01;
/** Halvings after which a value that keeps shrinking is 0. */
const mostHalvings = 20;

/**
 * Everything that `goodUpTo` of a step says. A generator that pauses after every plan that it has checked, so that a
 * worker can look for messages, stop it or show how far it is.
 */
export function* marginsSearch(plan: Plan, stepId: StepId): Generator<undefined, GoodUpTo> {
  const step = stepOf(plan, stepId);
  const planned = checked(plan, step);
  const before = new Set(failing(plan, step));
  const nothingNew = (changed: Plan, answers: Answers) =>
    failing(changed, step, answers).every((check) => before.has(check));
  const upTo = (from: number, to: number, change: (value: number) => Plan) =>
    largest(from, to, (value) => nothingNew(change(value), onStands));
  // Without bay and work windows the floor knows nothing of where the piece lies.
  const answersOff = plan.bay === null && plan.piece.workWindows.length === 0 ? onStands : forFindings;
  const eitherWay = (change: (off: number) => Plan) =>
    largest(0, ends.offTheMarks, (off) => [off, -off].every((one) => nothingNew(change(one), answersOff)));

  const weight = yield* upTo(1, ends.weight, (factor) => withWeight(plan, factor));
  const level = yield* upTo(0, ends.level, (tolerance) => withLevelTolerance(plan, step, tolerance));
  const along = yield* eitherWay((off) => landedOff(plan, step, off, 0));
  const across = yield* eitherWay((off) => landedOff(plan, step, 0, off));
  const push = yield* upTo(0, ends.push, (share) => withCriterion(plan, "horizontalFraction", share));

  const heaviest = ends.addedLoad * resultant(planned);
  const addedLoad: { s: number; t: number; value: number }[] = [];
  for (const [s, t] of cornersThere(plan, step)) {
    const value = yield* upTo(0, heaviest, (force) => withAddedLoad(plan, step, s, t, force));
    addedLoad.push({ s, t, value });
  }

  const without: GoodUpTo["without"][number][] = [];
  for (const { stand } of planned.placements) {
    const lost = checked(withoutStand(plan, step, stand), step);
    without.push({ stand, verdict: finished(lost), utilisation: worstUtilisation(lost) });
    yield;
  }
  const turned = { verdict: finished(checked(turnedRound(plan, step), step)) };
  return { weight, level, along, across, push, addedLoad, without, turned };
}

/** `marginsSearch` run to its end; null where `stop` said so before. */
export function goodUpTo(plan: Plan, step: StepId, stop: () => boolean = () => false): GoodUpTo | null {
  const search = marginsSearch(plan, step);
  for (;;) {
    const next = search.next();
    if (next.done === true) return next.value;
    if (stop()) return null;
  }
}

/** The step's report in a changed plan; its own checks and those of its layout's floor. */
function checked(plan: Plan, { id }: Pick<Step, "id">): StepReport {
  return stepReportOf(plan, stepOf(plan, id), forFindings);
}

/** Without the floor, which weights, tolerances, pushes and loads leave as it is. */
const onStands: Answers = { ...forFindings, floor: () => pending() };

/** The checks of a step and of its layout's floor that fail in a changed plan. */
function failing(plan: Plan, { id }: Pick<Step, "id">, answers: Answers = forFindings): readonly string[] {
  const step = stepOf(plan, id);
  return [...failingInStep(plan, step, answers), ...failingOnFloor(plan, layoutOf(plan, step), answers)];
}

/** The largest value that still holds: a scan in equal steps, then halving where it first does not. */
function* largest(from: number, to: number, holds: (value: number) => boolean): Generator<undefined, number> {
  let low = from;
  let high: number | null = null;
  for (let step = 1; step <= scanSteps && high === null; step++) {
    const value = from + ((to - from) * step) / scanSteps;
    if (holds(value)) low = value;
    else high = value;
    yield;
  }
  if (high === null) return to;
  for (let halving = 0; halving < mostHalvings && high - low > precision * high; halving++) {
    const middle: number = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
    yield;
  }
  return low;
}

/** The corners of the outline that are on a part. */
function cornersThere(plan: Plan, step: Step): readonly (readonly [number, number])[] {
  const parts = partsOf(plan.piece, step);
  return plan.piece.outline.filter(([s]) => parts.some(([from, to]) => s >= from && s <= to));
}

/** Nominal resultant force of all parts, N. */
function resultant({ level }: StepReport): number {
  return (knownValue(level)?.parts ?? []).reduce((sum, part) => sum + part.resultant.force, 0);
}

function worstUtilisation({ findings }: StepReport): number | null {
  const shares = findings.flatMap(({ code, value, limit }) =>
    code === "stand-over-rating" && value !== null && limit !== null ? [value / limit] : [],
  );
  return shares.length === 0 ? null : Math.max(...shares);
}

/** A verdict of parts that are all computed. */
function finished({ findings, floorFindings }: StepReport): GoodUpTo["turned"]["verdict"] {
  const verdict = worstOf([...findings, ...floorFindings].map((finding) => finding.verdict));
  return verdict === "pending" ? "unknown" : verdict;
}
