/** Weight and load centre. */

import { gravity } from "../../statics";
import type { StepContext } from "../context";
import type { Entry } from "./entry";
import { type Put, sum } from "./text";

export const weightEntries = {
  weight: {
    label: "weight",
    formula: "W = Σ m·g, line masses ½(m₁ + m₂)·length·g, of everything that is there",
    source: `statics; g = ${gravity} m/s², standard gravity (3rd CGPM, 1901)`,
    unit: "N",
    of: ({ context }, put) => {
      const items = context.model.parts.flatMap(({ loads }) =>
        loads.flatMap((load) => {
          if (load.source.kind !== "mass") return [];
          if (load.kind === "point") {
            return [{ text: `${put(load.down / gravity)} * ${put(gravity)}`, value: load.down }];
          }
          const [first, last] = load.intensity.map((one) => one / gravity) as [number, number];
          const length = load.to - load.from;
          const value = ((first + last) / 2) * length * gravity;
          return [{ text: `(${put(first)} + ${put(last)}) / 2 * ${put(length)} * ${put(gravity)}`, value }];
        }),
      );
      return { value: context.level.weight, text: sum(items, put) };
    },
  },

  "load centre along": {
    label: "load centre along the piece",
    formula: "s = Σ force·s ÷ W, horizontal loads by their height",
    source: "statics: moments in balance",
    unit: "m",
    of: ({ context, part = 0 }, put) => {
      const { s, force } = context.level.parts[part]!.resultant;
      return s === null ? null : { value: s, text: `(${moments(context, part, "s", put)}) / ${put(force)}` };
    },
  },

  "load centre across": {
    label: "load centre across the piece",
    formula: "t = Σ force·t ÷ W, horizontal loads by their height",
    source: "statics: moments in balance",
    unit: "m",
    of: ({ context, part = 0 }, put) => {
      const { t, force } = context.level.parts[part]!.resultant;
      return t === null ? null : { value: t, text: `(${moments(context, part, "t", put)}) / ${put(force)}` };
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;

/** The load centre of a part, from its load items. */
function moments(context: StepContext, part: number, of: "s" | "t", put: Put): string {
  const items = context.model.parts[part]!.loads.map((load) => {
    if (load.kind === "point") {
      const [at, extra] = of === "s" ? [load.s, load.momentS] : [0, load.momentT];
      return { text: `${put(load.down)} * ${put(at)} + ${put(extra)}`, value: load.down * at + extra };
    }
    const [first, last] = load.intensity;
    const length = load.to - load.from;
    const down = ((first + last) / 2) * length;
    const centre = of === "t" ? load.t : centroid(load.from, length, first, last);
    return { text: `${put(down)} * ${put(centre)}`, value: down * centre };
  });
  return sum(items, put);
}

/** Of a line of mass that grows evenly from `first` to `last`. */
function centroid(from: number, length: number, first: number, last: number): number {
  return first + last > 0 ? from + (length / 3) * ((first + 2 * last) / (first + last)) : from + length / 2;
}
