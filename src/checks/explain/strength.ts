/** What the piece's section is good for. */

import type { SectionSegment } from "../../plan";
import {
  cripplingOmega,
  fullStrengthLength,
  sectionsAt,
  sectionsOf,
  webCrippling,
  webYielding,
  yieldingOmega,
} from "../../statics";
import { boundsOf, type StandContext, type StepContext } from "../context";
import type { Entry, Subject } from "./entry";
import type { Put } from "./text";

const strengths = {
  "web yielding strength": {
    label: "strength of the web against local yielding",
    formula: "F_y·t_w·(5k + l_b) ÷ 1.5, 2.5k at most d from an end; k = flange + fillet, l_b = width of the top",
    source: "AISC 360-22 J10.2, equations J10-2 and J10-3",
    unit: "N",
    of: (subject, put) => {
      const over = sectionOver(subject);
      if (over === null) return null;
      const { section, fromEnd, width } = over;
      const { depth, flangeThickness, fillet, webThickness, yield: yieldStress } = section;
      if (depth === undefined || flangeThickness === undefined || fillet === undefined) return null;
      if (webThickness === undefined || yieldStress === undefined) return null;
      const nearEnd = fromEnd <= depth;
      const data = { flangeThickness, fillet, webThickness, yield: yieldStress };
      const k = `(${put(flangeThickness)} + ${put(fillet)})`;
      return {
        value: webYielding(data, width, nearEnd) / yieldingOmega,
        text: `${put(yieldStress)} * ${put(webThickness)} * (${nearEnd ? "2.5" : "5"} * ${k} + ${put(width)}) / ${put(yieldingOmega)}`,
      };
    },
  },

  "web crippling strength": {
    label: "strength of the web against crippling",
    formula:
      "0.8·t_w²·(1 + 3·(l_b/d)·(t_w/t_f)^1.5)·√(E·F_y·t_f/t_w) ÷ 2, half of it and its end form less than d/2 from an end",
    source: "AISC 360-22 J10.3, equations J10-4, J10-5a and J10-5b, Q_f = 1",
    unit: "N",
    of: (subject, put) => {
      const over = sectionOver(subject);
      if (over === null) return null;
      const { section, fromEnd, width } = over;
      const { depth, flangeThickness, webThickness, yield: yieldStress, E } = section;
      if (depth === undefined || flangeThickness === undefined || webThickness === undefined) return null;
      if (yieldStress === undefined || E === undefined) return null;
      const nearEnd = fromEnd < depth / 2;
      const data = { depth, flangeThickness, webThickness, yield: yieldStress, E };
      return {
        value: webCrippling(data, width, nearEnd) / cripplingOmega,
        text: cripplingText(data, width, nearEnd, put),
      };
    },
  },

  "length without hold": {
    label: "length up to which it cannot buckle sideways",
    formula: "1.76·r_y·√(E ÷ F_y)",
    source: "AISC 360-22 F2-5",
    unit: "m",
    of: (subject, put) => {
      const { radiusOfGyrationY, E, yield: yieldStress } = sectionOver(subject)?.section ?? {};
      if (radiusOfGyrationY === undefined || E === undefined || yieldStress === undefined) return null;
      return {
        value: fullStrengthLength({ radiusOfGyrationY, E, yield: yieldStress }),
        text: `1.76 * ${put(radiusOfGyrationY)} * sqrt(${put(E)} / ${put(yieldStress)})`,
      };
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;

export const strengthEntries = {
  ...strengths,
  "web yielding, % of strength": used("web: local yielding, % of its strength", strengths["web yielding strength"]),
  "web crippling, % of strength": used("web: crippling, % of its strength", strengths["web crippling strength"]),
} as const satisfies Readonly<Record<string, Entry>>;

/** The heaviest reaction against what the web over the stand is good for. */
function used(label: string, strength: Entry): Entry {
  return {
    label,
    formula: `heaviest × set-down factor ÷ strength; strength: ${strength.formula}`,
    source: strength.source,
    unit: "1",
    of: (subject, put) => {
      const { context, stand } = subject;
      const most = stand === undefined ? null : (boundsOf(context, stand.index)?.most ?? null);
      const good = strength.of(subject, put);
      if (most === null || good === null) return null;
      return {
        value: (most * context.setDownFactor) / good.value,
        text: `${put(most)} * ${put(context.setDownFactor)} / (${good.text})`,
      };
    },
  };
}

interface Over {
  readonly section: SectionSegment;
  /** From the stand to the nearer end of its part, m. */
  readonly fromEnd: number;
  /** Of the top, m. */
  readonly width: number;
}

/** The section over a stand; null where there is none, more than one, or two webs. */
function sectionOver({ context, stand }: Subject): Over | null {
  if (stand === undefined) return null;
  const [section, another] = sectionsAt(sectionsOf(context.plan.piece), stand.placement.s);
  const part = partUnder(context, stand);
  if (section === undefined || another !== undefined || part === null || (section.webs ?? 1) !== 1) return null;
  const { s } = stand.placement;
  return { section, fromEnd: Math.min(s - part.from, part.to - s), width: stand.type.top.width };
}

/** The one part that a stand can bear on. */
function partUnder({ model }: StepContext, { index }: StandContext) {
  const parts = new Set(model.stands[index]!.intervals.map((interval) => interval.part));
  const [part] = parts;
  return parts.size === 1 && part !== undefined ? model.parts[part]! : null;
}

function cripplingText(
  {
    depth,
    flangeThickness: tf,
    webThickness: tw,
    yield: Fy,
    E,
  }: Record<"depth" | "flangeThickness" | "webThickness" | "yield" | "E", number>,
  width: number,
  nearEnd: boolean,
  put: Put,
): string {
  const ratio = `${put(tw)} / ${put(tf)}`;
  const toPower = `(${ratio}) * sqrt(${ratio})`;
  const spread =
    nearEnd && width / depth > 0.2 ? `(4 * ${put(width)} / ${put(depth)} - 0.2)` : `3 * ${put(width)} / ${put(depth)}`;
  const root = `sqrt(${put(E)} * ${put(Fy)} * ${put(tf)} / ${put(tw)})`;
  return `${nearEnd ? "0.4" : "0.8"} * ${put(tw)} * ${put(tw)} * (1 + ${spread} * ${toPower}) * ${root} / ${put(cripplingOmega)}`;
}
