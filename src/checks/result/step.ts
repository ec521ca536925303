/** A step's entry of the result file. */

import type { Extremes, PartLevel, PartTipping } from "../../statics";
import type { StepContext } from "../context";
import { type GoodUpTo, knownValue } from "../parts";
import type { StepReport } from "../report";
import { type Json, number, numbers } from "./json";
import { standEntry } from "./stand";

export function stepEntry(context: StepContext, report: StepReport): Json {
  const { level } = context;
  const { cg, residual } = level;
  return {
    id: report.step,
    layout: report.layout,
    verdict: report.verdict,
    weight: number(level.weight),
    cg: cg === null ? null : { s: number(cg.s), t: number(cg.t), z: number(cg.z) },
    stable: level.stable,
    estimated: [...level.estimated],
    residual:
      residual === null
        ? null
        : {
            force: number(residual.force),
            momentS: number(residual.momentS),
            momentT: number(residual.momentT),
            complementarity: number(residual.complementarity),
          },
    stands: context.stands.map((stand) => standEntry(context, stand, report)),
    parts: level.parts.map((part, index) => partEntry(context, part, context.tipping[index]!)),
    goodUpTo: margins(knownValue(report.margins)),
  };
}

function partEntry(context: StepContext, part: PartLevel, { edges, addedLoad }: PartTipping): Json {
  const { resultant } = part;
  const stable = context.level.stable;
  const ofStable = <Value>(value: Value | null) => (stable ? value : null);
  return {
    from: number(part.from),
    to: number(part.to),
    stable: part.stable,
    weight: number(part.weight),
    resultant: { force: number(resultant.force), s: number(resultant.s), t: number(resultant.t) },
    moment: extremes(ofStable(part.moment)),
    shear: extremes(ofStable(part.shear)),
    torque: extremes(ofStable(part.torque)),
    deflection: extremes(ofStable(part.deflection)),
    droop: numbers(ofStable(part.droop)),
    twist: extremes(ofStable(part.twist)),
    tipping: {
      edges: edges.map(({ from, to, distance, reserve, margin }) => ({
        from: numbers(from),
        to: numbers(to),
        distance: number(distance),
        reserve: number(reserve),
        margin: number(margin),
      })),
      addedLoad:
        addedLoad === null ? null : { value: number(addedLoad.value), s: number(addedLoad.s), t: number(addedLoad.t) },
    },
  };
}

function extremes(of: Extremes | null): Json {
  if (of === null) return null;
  const extreme = ({ value, s }: Extremes["most"]): Json => ({ value: number(value), s: number(s) });
  return { most: extreme(of.most), least: extreme(of.least) };
}

function margins(goodUpTo: GoodUpTo | null): Json {
  if (goodUpTo === null) return null;
  const { weight, level, along, across, push, addedLoad, without, turned } = goodUpTo;
  return {
    weight: number(weight),
    level: number(level),
    along: number(along),
    across: number(across),
    push: number(push),
    addedLoad: addedLoad.map(({ s, t, value }) => ({ s: number(s), t: number(t), value: number(value) })),
    without: without.map(({ stand, verdict, utilisation }) => ({ stand, verdict, utilisation: number(utilisation) })),
    turned: { verdict: turned.verdict },
  };
}
