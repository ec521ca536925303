/** How the piece is stressed and bent in one step: the worst of the level solution and of those at the witnesses. */

import type { SectionKey } from "../../statics";
import {
  diagramAt,
  greatestMoment,
  greatestShear,
  type StepLevel,
  sectionsOf,
  shearShare,
  staticsTolerance,
} from "../../statics";
import type { StepContext } from "../context";
import { levelsLookedAt } from "../strength";
import type { Entry, Filled } from "./entry";
import type { Put } from "./text";

export const pieceEntries = {
  "bending stress": {
    label: "bending stress",
    formula: "σ = set-down factor × greatest |M| ÷ S",
    source: "elastic bending; M from the level solution and the worst cases",
    unit: "Pa",
    of: ({ context }, put) => stressed(context, put, greatestMoment, "sectionModulus"),
  },
  "bending, % of what is allowed": {
    label: "bending, % of what is allowed",
    formula: "set-down factor × greatest |M| ÷ S ÷ (allowed share × F_y)",
    source: "allowable-stress custom",
    unit: "1",
    of: ({ context }, put) =>
      stressed(context, put, greatestMoment, "sectionModulus", context.criteria.allowableStressFactor),
  },
  "shear stress": {
    label: "shear stress",
    formula: "τ = set-down factor × greatest |V| ÷ shear area",
    source: "mean shear; V from the level solution and the worst cases",
    unit: "Pa",
    of: ({ context }, put) => stressed(context, put, greatestShear, "shearArea"),
  },
  "shear, % of what is allowed": {
    label: "shear, % of what is allowed",
    formula: "set-down factor × greatest |V| ÷ shear area ÷ (0.4 × F_y)",
    source: "AISC 360-22 G2.1: 0.6·F_y ÷ 1.50",
    unit: "1",
    of: ({ context }, put) => stressed(context, put, greatestShear, "shearArea", shearShare),
  },

  sag: {
    label: "sag of the piece",
    formula: "set-down factor × greatest distance from the straight line through the outermost two bearing stands",
    source: "beam statics, docs/mechanics-tipping.md, S6",
    unit: "m",
    of: ({ context }, put) => sagged(context, put),
  },
  "droop at the datum end": droop(0),
  "droop at the far end": droop(1),

  "centre of gravity along": centre("s", "along the piece"),
  "centre of gravity across": centre("t", "across the piece"),
  "centre of gravity up": centre("z", "over the datum plane"),
} as const satisfies Readonly<Record<string, Entry>>;

type Action = typeof greatestMoment;

/** The greatest stress of an action, or with `share` of the yield stress what part of it is used. */
function stressed(
  context: StepContext,
  put: Put,
  greatest: Action,
  by: SectionKey & ("sectionModulus" | "shearArea"),
  share: number | null = null,
): Filled | null {
  const { setDownFactor } = context;
  let worst: Filled | null = null;
  for (const { parts } of levelsLookedAt(context))
    for (const { curves, ...part } of parts)
      for (const section of sectionsOf(context.plan.piece)) {
        const [from, to] = [Math.max(part.from, section.from), Math.min(part.to, section.to)];
        const { [by]: property, yield: yieldStress } = section;
        if (curves === null || from >= to || property === undefined || yieldStress === undefined) continue;
        const action = greatest(curves, from, to).value;
        const stress = (setDownFactor * action) / property;
        const value = share === null ? stress : stress / (share * yieldStress);
        if (worst !== null && value <= worst.value) continue;
        const text = `${put(setDownFactor)} * ${put(action)} / ${put(property)}`;
        worst = { value, text: share === null ? text : `${text} / (${put(share)} * ${put(yieldStress)})` };
      }
  return worst;
}

function sagged(context: StepContext, put: Put): Filled | null {
  const { setDownFactor } = context;
  let worst: { value: number; at: number; level: StepLevel; part: number } | null = null;
  for (const level of levelsLookedAt(context))
    for (const [part, { deflection }] of level.parts.entries())
      for (const one of deflection === null ? [] : [deflection.most, deflection.least]) {
        const value = setDownFactor * Math.abs(one.value);
        if (worst === null || value > worst.value) worst = { value, at: one.s, level, part };
      }
  if (worst === null || worst.value < nothingBends) return null;
  const off = offLine(context, worst.level, worst.part, worst.at, put);
  return off === null ? null : { value: worst.value, text: `${put(setDownFactor)} * abs(${off})` };
}

/** A bend of less than this is rounding, m. */
const nothingBends = 1e-9;

/** Height of the piece at s less that of the straight line through the outermost two stands that bear on the part. */
function offLine({ model }: StepContext, level: StepLevel, part: number, s: number, put: Put): string | null {
  const { cells, resultant } = level.parts[part]!;
  if (cells === null) return null;
  const places = level.stands
    .flatMap(({ centre, reaction }, index) => {
      const on = model.stands[index]!.intervals.some((interval) => interval.part === part);
      return on && centre !== null && (reaction ?? 0) > staticsTolerance.bears * resultant.force ? [centre.s] : [];
    })
    .sort((one, two) => one - two);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || last - first <= staticsTolerance.place) return null;
  const [v, start, end] = [s, first, last].map((at) => put(diagramAt(cells, at).v));
  return `${v} - (${start} + (${end} - ${start}) * (${put(s)} - ${put(first)}) / (${put(last)} - ${put(first)}))`;
}

function droop(end: 0 | 1): Entry {
  return {
    label: `droop at the ${end === 0 ? "datum" : "far"} end`,
    formula: "height of the end − height there of the straight line through the outermost two bearing stands",
    source: "beam statics: the level solution",
    unit: "m",
    of: ({ context, part = 0 }, put) => {
      const { droop: both, from, to } = context.level.parts[part]!;
      const text = offLine(context, context.level, part, end === 0 ? from : to, put);
      return both === null || text === null || Math.abs(both[end]) < nothingBends ? null : { value: both[end], text };
    },
  };
}

function centre(of: "s" | "t" | "z", where: string): Entry {
  return {
    label: `centre of gravity ${where}`,
    formula: `Σ mass·${of} ÷ Σ mass, of the masses that are there`,
    source: "statics",
    unit: "m",
    of: ({ context }, put) => {
      const { cg } = context.level;
      const items = weights(context);
      if (cg === null || items.length === 0) return null;
      const top = items.map((item) => `${put(item.down)} * ${put(item[of])}`).join(" + ");
      const down = items.map((item) => put(item.down)).join(" + ");
      return { value: cg[of], text: `(${top}) / (${down})` };
    },
  };
}

interface Weight {
  readonly down: number;
  readonly s: number;
  readonly t: number;
  readonly z: number;
}

/** The weights of a step, N, each at its centre; from a dozen on the rest as one. */
function weights({ model, plan }: StepContext): readonly Weight[] {
  const all = model.parts.flatMap(({ loads }) =>
    loads.flatMap((load): Weight[] => {
      if (load.source.kind !== "mass") return [];
      const { z } = plan.piece.masses[load.source.index]!;
      if (load.kind === "point") {
        return load.down === 0 ? [] : [{ down: load.down, s: load.s, t: load.momentT / load.down, z }];
      }
      const [first, last] = load.intensity;
      const length = load.to - load.from;
      const down = ((first + last) / 2) * length;
      return down === 0
        ? []
        : [{ down, s: load.from + (length * (first + 2 * last)) / (3 * (first + last)), t: load.t, z }];
    }),
  );
  return all.length <= mostWeights ? all : [...all.slice(0, mostWeights - 1), together(all.slice(mostWeights - 1))];
}

const mostWeights = 12;

function together(all: readonly Weight[]): Weight {
  const down = all.reduce((sum, one) => sum + one.down, 0);
  const mean = (of: "s" | "t" | "z") => all.reduce((sum, one) => sum + one.down * one[of], 0) / down;
  return { down, s: mean("s"), t: mean("t"), z: mean("z") };
}
