/** One entry a number: its formula, where it comes from, and the formula with a plan's values put in. */

import type { TippingEdge } from "../../statics";
import { gravity, pushForce } from "../../statics";
import { boundsOf, type StandContext, type StepContext } from "../context";
import { type Put, sum } from "./text";

export type NumberUnit = "N" | "m" | "Pa" | "N·m" | "1";

/** A number, and its formula with values put in. */
export interface Filled {
  readonly value: number;
  readonly text: string;
}

/** What a formula is put in for. */
export interface Subject {
  readonly context: StepContext;
  readonly stand?: StandContext;
  readonly edge?: TippingEdge;
  /** Index of the part. */
  readonly part?: number;
}

export interface Entry {
  /** What it is called on the screen. */
  readonly label: string;
  /** In words and symbols; SI units. */
  readonly formula: string;
  readonly source: string;
  readonly unit: NumberUnit;
  /** The number itself and the formula with values put in; null where this plan has no such number. */
  readonly of: (subject: Subject, put: Put) => Filled | null;
}

const equilibrium = "statics: vertical forces in balance";
const thisTool = "engine.md section 5; common practice";

const levelOf = (stand: StandContext) => stand.level.reaction;

function balance(
  total: number,
  stand: StandContext,
  others: readonly (number | null)[],
  own: number | null,
  put: Put,
): Filled | null {
  if (own === null) return null;
  const rest = others.flatMap((value, index) =>
    index === stand.index || value === null ? [] : [{ text: put(value), value }],
  );
  return { value: own, text: `${put(total)} - (${sum(rest, put)})` };
}

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

export const entries = {
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

  "as planned": {
    label: "as planned",
    formula: "R = weight and loads − what the other stands carry; how it is shared follows from stiffness and heights",
    source: `${equilibrium}; contact without tension on elastic stands, docs/mechanics.md`,
    unit: "N",
    of: ({ context, stand }, put) =>
      stand === undefined ? null : balance(context.weight, stand, context.stands.map(levelOf), levelOf(stand), put),
  },

  "leg frame −": legFrame(0),
  "leg frame +": legFrame(1),

  "% of rating": {
    label: "% of rating",
    formula: "max(heaviest, 2 × heaviest leg frame) × set-down factor ÷ rated load",
    source: "the rating on the stand's plate; set-down factor: common practice",
    unit: "1",
    of: ({ context, stand }, put) => {
      const bounds = stand === undefined ? null : boundsOf(context, stand.index);
      const ratedLoad = stand?.type.ratedLoad ?? null;
      if (bounds === null || ratedLoad === null) return null;
      const frame = Math.max(...bounds.legFramesMost);
      return {
        value: (Math.max(bounds.most, 2 * frame) * context.setDownFactor) / ratedLoad,
        text: `max(${put(bounds.most)}, 2 * ${put(frame)}) * ${put(context.setDownFactor)} / ${put(ratedLoad)}`,
      };
    },
  },

  "rating at this spread": {
    label: "rating at this spread",
    formula: "1/P = (1 − q)/rating at the middle + q/rating spread, q = bearing length ÷ leg spacing, at most 1",
    source: "a top as a beam between two leg frames; this tool",
    unit: "N",
    of: ({ stand }, put) => {
      const { ratedLoad = null, ratedLoadCentre = null, legSpacing = 1 } = stand?.type ?? {};
      if (stand === undefined || ratedLoad === null || ratedLoadCentre === null) return null;
      const bearing = stand.level.contact.reduce((total, [from, to]) => total + (to - from), 0);
      const q = Math.min(1, bearing / legSpacing);
      const share = `min(1, ${put(bearing)} / ${put(legSpacing)})`;
      return {
        value: 1 / ((1 - q) / ratedLoadCentre + q / ratedLoad),
        text: `1 / ((1 - ${share}) / ${put(ratedLoadCentre)} + ${share} / ${put(ratedLoad)})`,
      };
    },
  },

  "inside the tipping line": {
    label: "load centre inside the tipping line",
    formula: "distance of the load centre from the line through the edge's two ends",
    source: "plane geometry",
    unit: "m",
    of: ({ context, edge, part = 0 }, put) => {
      const { s, t } = context.level.parts[part]!.resultant;
      if (edge === undefined || edge.distance === null || s === null || t === null) return null;
      const { from, outward } = edge;
      return {
        value: edge.distance,
        text: `${put(-outward[0])} * (${put(s)} - ${put(from[0])}) + ${put(-outward[1])} * (${put(t)} - ${put(from[1])})`,
      };
    },
  },

  "reserve against tipping": {
    label: "reserve against tipping",
    formula: "righting ÷ (overturning + a person at the farthest point beyond the line)",
    source: "customary overturning factor",
    unit: "1",
    of: ({ edge }, put) =>
      edge === undefined || edge.reserve === null
        ? null
        : {
            value: edge.reserve,
            text: `${put(edge.righting)} / (${put(edge.overturning)} + ${put(edge.person)})`,
          },
  },

  "margin against tipping": {
    label: "margin against tipping",
    formula: "M = righting − overturning, the person left out",
    source: thisTool,
    unit: "N·m",
    of: ({ edge }, put) =>
      edge === undefined || edge.margin === null
        ? null
        : { value: edge.margin, text: `${put(edge.righting)} - ${put(edge.overturning)}` },
  },

  "least force that tips": {
    label: "least force that tips it",
    formula: "margin of the edge ÷ distance of the point beyond it, the least over edges and outline",
    source: "statics: moments about the edge",
    unit: "N",
    of: ({ context, part = 0 }, put) => {
      const { addedLoad, edges } = context.tipping[part]!;
      if (addedLoad === null) return null;
      for (const { from, outward, margin } of edges) {
        const beyond = outward[0] * (addedLoad.s - from[0]) + outward[1] * (addedLoad.t - from[1]);
        const force = margin === null || beyond <= 0 ? null : Math.max(0, margin) / beyond;
        if (force === null || Math.abs(force - addedLoad.value) > 1e-9 * Math.max(1, force)) continue;
        const distance = `${put(outward[0])} * (${put(addedLoad.s)} - ${put(from[0])}) + ${put(outward[1])} * (${put(addedLoad.t)} - ${put(from[1])})`;
        return { value: addedLoad.value, text: `max(0, ${put(margin!)}) / (${distance})` };
      }
      return null;
    },
  },

  push: {
    label: "push",
    formula: "H = max(share × W, least push) + W × slope of the floor",
    source: "temporary-works custom",
    unit: "N",
    of: ({ context }, put) => {
      const { criteria, plan, weight } = context;
      const slope = plan.bay?.floor.slope ?? [0, 0];
      return {
        value: pushForce(weight, slope, criteria),
        text: `max(${put(criteria.horizontalFraction)} * ${put(weight)}, ${put(criteria.pushLeast)}) + ${put(weight)} * hypot(${put(slope[0])}, ${put(slope[1])})`,
      };
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;

export type NumberName = keyof typeof entries;

function legFrame(index: 0 | 1): Entry {
  const sign = index === 0 ? "-" : "+";
  return {
    label: `leg frame ${index === 0 ? "−" : "+"}`,
    formula: `R·(½ ${index === 0 ? "−" : "+"} c ÷ leg spacing), c the place of the reaction along the top`,
    source: "statics: the lever rule between the two leg frames",
    unit: "N",
    of: ({ context, stand }, put) => {
      const frames = stand?.level.legFrames ?? null;
      const centre = stand?.level.centre ?? null;
      if (stand === undefined || frames === null || centre === null || stand.level.reaction === null) return null;
      const { along, legSpacing, s, t } = context.model.stands[stand.index]!;
      const c = `(${put(along[0])} * (${put(centre.s)} - ${put(s)}) + ${put(along[1])} * (${put(centre.t)} - ${put(t)}))`;
      return {
        value: frames[index],
        text: `${put(stand.level.reaction)} * (0.5 ${sign} ${c} / ${put(legSpacing)})`,
      };
    },
  };
}
