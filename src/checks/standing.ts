/** Where a person may stand on the piece in one step, for the page: contours of useful forces, and what a place takes. */

import { polygonHolds } from "../geometry";
import type { Plan, StandId, Step } from "../plan";
import { criteriaOf, layoutOf, setDownFactorOf, typeOf } from "../plan";
import {
  assembleStep,
  type PartLevel,
  type PartTipping,
  type StandingContour,
  type StandingMap,
  type StepLevel,
  standingMap,
} from "../statics";
import { boundsPart, levelPart, tippingPart } from "./engine";
import { memoByIdentity } from "./memo";
import { known, knownValue, type Part, type PartStanding, pending, type StepStanding, type StepTipping } from "./parts";

/** Forces that are worth a contour besides that of one person, in persons. */
const persons = [2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/**
 * The forces of the contours, N, ascending: a person with tools, and of round multiples of that up to two that some
 * places take and others do not: a third and two thirds up the list of these.
 *
 * @param taken what some places take, N; Infinity = any force.
 * @param weight of the piece, N: more than that nobody puts on it.
 */
export function standingForces(personLoad: number, taken: readonly number[], weight: number): readonly number[] {
  const [least, most] = [Math.min(...taken), Math.min(weight, Math.max(...taken))];
  const apart = persons.map((count) => count * personLoad).filter((force) => force > least && force < most);
  const last = apart.length - 1;
  const chosen = last < 1 ? apart : [apart[Math.floor(last / 3)]!, apart[Math.ceil((2 * last) / 3)]!];
  return [personLoad, ...chosen];
}

/** Stations along a part at which is looked how much its axis takes, besides the corners of its outline. */
const looks = 12;

/** What a part takes at the corners of its outline and along its axis, N; Infinity = any force. */
function takenBy({ at }: StandingMap, { outline }: PartTipping, { from, to }: PartLevel): readonly number[] {
  const axis = Array.from({ length: looks + 1 }, (_, i) => [from + ((to - from) * i) / looks, 0] as const);
  const places = [...outline.flat(), ...axis.filter((place) => outline.some((ring) => polygonHolds(ring, place)))];
  return places.map(([s, t]) => at(s, t).level ?? Number.POSITIVE_INFINITY);
}

/** What each stand may carry without the set-down factor's share, N; null where the plate says nothing. */
function limitsOf(plan: Plan, step: Step): readonly (number | null)[] {
  const factor = setDownFactorOf(plan, step);
  return layoutOf(plan, step).placements.map(({ stand }) => {
    const { ratedLoad } = typeOf(plan, stand);
    return ratedLoad === null ? null : ratedLoad / factor;
  });
}

/** Works out the map of a step, pausing after each contour of each part. */
export function* standingSearch(plan: Plan, step: Step): Generator<undefined, Part<StepStanding>> {
  const level = knownValue(levelPart(plan, step));
  const tipping = knownValue(tippingPart(plan, step, boundsPart(plan, step)));
  if (level === null || tipping === null) return pending();
  const maps = level.parts.map(({ stable }, part) => (stable ? mapOf(plan, step, level, tipping, part) : null));
  const taken = maps.flatMap((map, part) => (map === null ? [] : takenBy(map, tipping[part]!, level.parts[part]!)));
  const weight = level.parts.reduce((sum, { resultant }) => sum + resultant.force, 0);
  const forces = standingForces(criteriaOf(plan).personLoad, taken, weight);
  const parts: (PartStanding | null)[] = [];
  for (const [part, map] of maps.entries()) {
    const contours: StandingContour[] = [];
    for (const force of map === null ? [] : forces) {
      yield;
      contours.push(...standing(plan, step, level, tipping, part, [force]).contours);
    }
    parts.push(map === null ? null : { contours });
  }
  return known({ forces, parts });
}

function standing(
  plan: Plan,
  step: Step,
  level: StepLevel,
  tipping: StepTipping,
  part: number,
  forces: readonly number[],
): StandingMap {
  return standingMap(assembleStep(plan, step), level, part, tipping[part]!, limitsOf(plan, step), forces);
}

/** What one place of the piece takes, downward. */
export interface PlaceTakes {
  /** The part it lies on tips already. */
  readonly tips: boolean;
  /** The force that tips the part there, N; null = none does. */
  readonly tipping: number | null;
  /** The force at which a stand passes its rating or goes light, or that tips the part if that is less, N; null = none. */
  readonly level: number | null;
  /** The stand that gives first, and how; null where none does before the part tips. */
  readonly first: { readonly stand: StandId; readonly why: "limit" | "light" } | null;
}

const mapOf = memoByIdentity(
  (plan: Plan, step: Step, level: StepLevel, tipping: StepTipping, part: number) => [
    level,
    tipping,
    part,
    plan.stands,
    plan.standTypes,
    setDownFactorOf(plan, step),
  ],
  (plan: Plan, step: Step, level: StepLevel, tipping: StepTipping, part: number) =>
    standing(plan, step, level, tipping, part, []),
);

/** What the piece takes at (s, t), m; null where no part of it is. Some tenths of a millisecond. */
export function standingAt(
  plan: Plan,
  step: Step,
  level: StepLevel,
  tipping: StepTipping,
  [s, t]: readonly [number, number],
): PlaceTakes | null {
  const part = tipping.findIndex(({ outline }) => outline.some((ring) => polygonHolds(ring, [s, t])));
  if (part < 0) return null;
  if (!level.parts[part]!.stable) return { tips: true, tipping: 0, level: 0, first: null };
  const { gives, ...forces } = mapOf(plan, step, level, tipping, part).at(s, t);
  const stand = gives === null || gives.stand === null ? undefined : level.stands[gives.stand]?.stand;
  const first = stand === undefined || gives === null || gives.why === "tips" ? null : { stand, why: gives.why };
  return { tips: false, ...forces, first };
}
