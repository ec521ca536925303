/** The statics limits by hand: forces turned about the line on which the other stands bear. */

import type { LoadItem } from "../../statics";
import { gravity } from "../../statics";
import type { StandContext, StepContext } from "../context";
import type { Entry, Filled } from "./entry";
import { type Put, sum } from "./text";

export const staticsEntries = {
  "heaviest, whatever the floor": limitOf("heaviest, whatever the floor", 1),
  "lightest, whatever the floor": limitOf("lightest, whatever the floor", -1),
} as const satisfies Readonly<Record<string, Entry>>;

function limitOf(label: string, sign: 1 | -1): Entry {
  return {
    label,
    formula:
      "R = Σ force × lever; a force's lever is its distance from the line through the tops that carry the rest ÷ this stand's distance from it",
    source: "statics: moments about a line, tops that push and never pull; docs/mechanics-bounds.md, B16",
    unit: "N",
    of: ({ context, stand }, put) => {
      if (stand === undefined || context.range.kind !== "known") return null;
      const bounds = context.range.stands[stand.index];
      if (bounds === undefined) return null;
      const value = sign === 1 ? bounds.staticsMost : bounds.staticsLeast;
      const turned = turnedAbout(context, stand, sign, put);
      return turned !== null && Math.abs(turned.value - value) <= agreement * context.weight ? turned : null;
    },
  };
}

/** The limits of two methods are the same within this share of the weight. */
const agreement = 1e-7;
/** A contact that pushes outward by less than this lever is on the line. */
const onLine = 1e-9;
/** Conditions of which three are taken at a time; with more there is no line to be shown. */
const mostConditions = 70;

/** Lever of a place (s, t): a + b·s + c·t. */
type Lever = readonly [a: number, b: number, c: number];

/** What has to be met with equality: row · lever = right. */
interface Condition {
  readonly row: Lever;
  readonly right: number;
}

/** A load of a part: force and moments by row · lever, and the factors that it may have. */
interface Turning {
  readonly row: Lever;
  readonly factors: readonly [number, number];
}

/** The limit of a stand, all parts that it bears on together; null where no line is found. */
function turnedAbout(context: StepContext, { index }: StandContext, sign: 1 | -1, put: Put): Filled | null {
  let value = 0;
  const terms: { text: string; value: number }[] = [];
  for (const [partIndex, { contacts, loads }] of context.model.parts.entries()) {
    const own = contacts.filter(({ stand }) => stand === index);
    if (own.length === 0) continue;
    const items = loads.map((load) => turningOf(context, load));
    const couples = couplesOf(context, partIndex);
    const places = contacts.map(
      ({ stand, s, t }): Condition => ({ row: [1, s, t], right: stand === index ? sign : 0 }),
    );
    // Where a load's lever changes sign, it is its other weight that counts.
    const kinks = [
      ...items.filter(({ factors: [low, high] }) => low !== high).map(({ row }) => row),
      ...(couples[0] > 0 ? [[0, 1, 0] as const] : []),
      ...(couples[1] > 0 ? [[0, 0, 1] as const] : []),
    ].map((row): Condition => ({ row, right: 0 }));
    const lever = leastLever([...ends(places), ...kinks], places, (one) => resultOf(one, items, couples));
    if (lever === null) return null;
    for (const { row, factors } of items) {
      const arm = dot(row, lever) / (row[0] || 1);
      const factor = heavier(dot(row, lever), factors);
      if (factor === 0) continue;
      const force = factor * (row[0] || 1);
      terms.push({ text: `${put(force)} * ${put(sign * arm)}`, value: sign * force * arm });
    }
    const turned = couples[0] * Math.abs(lever[1]) + couples[1] * Math.abs(lever[2]);
    if (turned > 0) {
      const text = `${put(couples[0])} * ${put(sign * Math.abs(lever[1]))} + ${put(couples[1])} * ${put(sign * Math.abs(lever[2]))}`;
      terms.push({ text, value: sign * turned });
    }
    value += sign * resultOf(lever, items, couples);
  }
  return terms.length === 0 ? null : { value, text: sum(terms, put) };
}

const dot = (one: Lever, two: Lever): number => one[0] * two[0] + one[1] * two[1] + one[2] * two[2];
const heavier = (turning: number, [low, high]: readonly [number, number]): number => (turning > 0 ? high : low);

/** Force and moments of a load item, and its range. */
function turningOf({ plan }: StepContext, load: LoadItem): Turning {
  const unsure = load.source.kind === "mass" ? plan.piece.masses[load.source.index]!.uncertainty : 0;
  const factors: Turning["factors"] = load.source.kind === "mass" ? [1 - unsure, 1 + unsure] : [0, 1];
  if (load.kind === "point") return { row: [load.down, load.down * load.s + load.momentS, load.momentT], factors };
  const [first, last] = load.intensity;
  const length = load.to - load.from;
  const down = ((first + last) / 2) * length;
  // ∫ q·s ds of a line that grows evenly
  const moment = down * load.from + (length * length * (first + 2 * last)) / 6;
  return { row: [down, moment, down * load.t], factors };
}

/** Couples of centres that may lie elsewhere, N·m along and across, all added up. */
function couplesOf({ model, plan }: StepContext, part: number): readonly [number, number] {
  const couples: [number, number] = [0, 0];
  for (const { source } of model.parts[part]!.loads) {
    const mass = source.kind === "mass" ? plan.piece.masses[source.index]! : null;
    if (mass?.kind !== "point" || mass.centreWithin === null) continue;
    const force = mass.mass * (1 + mass.uncertainty) * gravity;
    couples[0] += force * mass.centreWithin.s;
    couples[1] += force * mass.centreWithin.t;
  }
  return couples;
}

/** What forces and couples come to with levers, at the factors that make most of it. */
function resultOf(lever: Lever, items: readonly Turning[], couples: readonly [number, number]): number {
  const loads = items.reduce((total, { row, factors }) => {
    const turning = dot(row, lever);
    return total + heavier(turning, factors) * turning;
  }, 0);
  return loads + couples[0] * Math.abs(lever[1]) + couples[1] * Math.abs(lever[2]);
}

/** Of places in one line, the two ends: what lies between them binds no more. */
function ends(places: readonly Condition[]): readonly Condition[] {
  return places.filter(
    (place) =>
      !places.some((one) =>
        places.some(
          (two) =>
            one !== place &&
            two !== place &&
            one.right === place.right &&
            two.right === place.right &&
            between(one, place, two),
        ),
      ),
  );
}

function between(
  { row: [, s0, t0] }: Condition,
  { row: [, s, t] }: Condition,
  { row: [, s1, t1] }: Condition,
): boolean {
  const across = Math.abs((s1 - s0) * (t - t0) - (t1 - t0) * (s - s0));
  const inside = (s - s0) * (s1 - s) + (t - t0) * (t1 - t);
  return across <= onLine && inside > 0;
}

/** The levers, met with equality by three conditions and by no contact overstepped, that make the least of all. */
function leastLever(
  conditions: readonly Condition[],
  places: readonly Condition[],
  result: (lever: Lever) => number,
): Lever | null {
  if (conditions.length > mostConditions) return null;
  let best: Lever | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < conditions.length; i++)
    for (let j = i + 1; j < conditions.length; j++)
      for (let k = j + 1; k < conditions.length; k++) {
        const lever = through(conditions[i]!, conditions[j]!, conditions[k]!);
        if (lever === null || places.some(({ row, right }) => dot(row, lever) < right - onLine)) continue;
        const value = result(lever);
        if (value >= least) continue;
        least = value;
        best = lever;
      }
  return best;
}

/** By Cramer's rule; null where the three say no more than two. */
function through(one: Condition, two: Condition, three: Condition): Lever | null {
  const rows = [one, two, three] as const;
  const det = determinant(one.row, two.row, three.row);
  const size = rows.reduce((product, { row }) => product * Math.hypot(...row), 1);
  if (Math.abs(det) <= 1e-12 * size) return null;
  const instead = (column: 0 | 1 | 2): number => {
    const replaced = rows.map(({ row, right }): Lever => {
      const copy: [number, number, number] = [...row];
      copy[column] = right;
      return copy;
    });
    return determinant(replaced[0]!, replaced[1]!, replaced[2]!) / det;
  };
  return [instead(0), instead(1), instead(2)];
}

function determinant(a: Lever, b: Lever, c: Lever): number {
  return a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
}
