/** What a stand carries. */

import { levelAt, perturb, type StandLevel } from "../../statics";
import { boundsOf } from "../context";
import type { Entry, Filled } from "./entry";
import { type Put, sum } from "./text";

const equilibrium = "statics: vertical forces in balance";

export const standEntries = {
  "as planned": {
    label: "as planned",
    formula: "R = weight and loads − what the other stands carry; how it is shared follows from stiffness and heights",
    source: `${equilibrium}; contact without tension on elastic stands, docs/mechanics.md`,
    unit: "N",
    of: ({ context, stand }, put) =>
      stand === undefined ? null : balance(context.weight, context.level.stands, stand.index, put),
  },

  heaviest: extreme("heaviest", "mostAt"),
  lightest: extreme("lightest", "leastAt"),

  "leg frame −": legFrame(0),
  "leg frame +": legFrame(1),

  "% of rating": {
    label: "% of rating",
    formula:
      "max(heaviest, 2 × heaviest leg frame) × set-down factor ÷ rated load; a plate rates a load spread evenly, so each leg frame is good for half of it",
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
} as const satisfies Readonly<Record<string, Entry>>;

/** A reaction under this share of the weight is rounding: the stand is clear of the piece. */
const clear = 1e-9;

/** What is there less what the others carry; nothing where the stand is clear of the piece. */
function balance(total: number, stands: readonly StandLevel[], index: number, put: Put): Filled | null {
  const own = stands[index]!;
  if (own.reaction === null) return null;
  if (own.reaction <= clear * total) return { value: 0, text: `max(0, 0 - ${put(own.gap ?? 0)})` };
  const others = stands.flatMap(({ reaction }, other) =>
    other === index || reaction === null ? [] : [{ text: put(reaction), value: reaction }],
  );
  return { value: own.reaction, text: `${put(total)} - (${sum(others, put)})` };
}

/** R at the witness: what is there then, less what the others carry then. */
function extreme(label: string, which: "mostAt" | "leastAt"): Entry {
  return {
    label,
    formula: "R = weight and loads − what the other stands carry, with the errors and weights that are worst for it",
    source: `${equilibrium}; the worst of all that is not known, docs/mechanics-bounds.md`,
    unit: "N",
    of: ({ context, stand }, put) => {
      const witness = stand === undefined ? undefined : boundsOf(context, stand.index)?.[which];
      if (stand === undefined || witness === undefined) return null;
      const { masses } = context.plan.piece;
      const { parts, stands } = levelAt(perturb(context.model, context.plan, witness), masses);
      const total = parts.reduce((all, part) => all + part.resultant.force, 0);
      return balance(total, stands, stand.index, put);
    },
  };
}

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
