/** What presses on the parts of a step: the masses that are there and the step's loads. */

import type { LineMass, Load, Mass, PointMass } from "../plan";
import { gravity } from "./constants";
import type { LineLoad, LoadItem, PointLoad } from "./model";

type Part = readonly [from: number, to: number];

/** Index of the part that a force at s acts on: at a common end the part that ends there; −1 off every part. */
export function partAt(parts: readonly Part[], s: number): number {
  return parts.findIndex(([from, to]) => from <= s && s <= to);
}

/**
 * The load items of every part, nominal, in the order masses then loads.
 *
 * @param masses all masses of the piece; `absent` names those that are not there.
 */
export function loadsOnParts(
  parts: readonly Part[],
  masses: readonly Mass[],
  absent: readonly string[],
  loads: readonly Load[],
): readonly (readonly LoadItem[])[] {
  const items: LoadItem[][] = parts.map(() => []);
  const gone = new Set(absent);
  for (const [index, mass] of masses.entries()) {
    if (gone.has(mass.id)) continue;
    if (mass.kind === "point") items[partAt(parts, mass.s)]?.push(pointWeight(mass, index));
    else for (const [part, ends] of parts.entries()) items[part]!.push(...lineWeight(mass, index, ends));
  }
  for (const [index, load] of loads.entries()) items[partAt(parts, load.s)]?.push(stepLoad(load, index));
  return items;
}

function pointWeight(mass: PointMass, index: number): PointLoad {
  const down = mass.mass * gravity;
  return { kind: "point", source: { kind: "mass", index }, s: mass.s, down, momentS: 0, momentT: down * mass.t };
}

/** The stretch of a line mass on one part, as a list of one or none. */
function lineWeight(mass: LineMass, index: number, [partFrom, partTo]: Part): LineLoad[] {
  const [from, to] = [Math.max(mass.from, partFrom), Math.min(mass.to, partTo)];
  if (to <= from) return [];
  const [first, last] = mass.massPerLength;
  const slope = (last - first) / (mass.to - mass.from);
  const at = (s: number) => (s === mass.to ? last : first + slope * (s - mass.from)) * gravity;
  return [
    { kind: "line", source: { kind: "mass", index }, from, to, intensity: [at(from), at(to)] as const, t: mass.t },
  ];
}

function stepLoad({ s, t, z, force }: Load, index: number): PointLoad {
  const down = -force[2];
  // M6: a horizontal force at height z acts on the support plane through its moments.
  return {
    kind: "point",
    source: { kind: "load", index },
    s,
    down,
    momentS: force[0] * z,
    momentT: down * t + force[1] * z,
  };
}
