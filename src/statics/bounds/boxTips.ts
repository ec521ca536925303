/** Whether some combination within the box tips a part (docs/mechanics-bounds.md, B17 and B18). Heights do not matter for that. */

import { convexHull } from "../../geometry";
import type { Point } from "../../plan";
import { staticsTolerance } from "../constants";
import type { PartModel, StepModel } from "../model";
import { type Resultant, resultantOf } from "../resultant";
import type { BoxVariable } from "./variables";

/** A weight (its factor), a centre (where it lies) or a load of the step that has a part in tipping. */
export type TipCause =
  | { readonly kind: "mass"; readonly mass: number }
  | { readonly kind: "centre"; readonly mass: number }
  | { readonly kind: "load"; readonly load: number };

/** One edge of the support polygon over which something within the box tips a part. */
export interface BoxTip {
  /** Index of the part. */
  readonly part: number;
  readonly from: Point;
  readonly to: Point;
  /** All that does it together. */
  readonly names: readonly TipCause[];
  /** Those without which (at their nominal value; a load: not there) it would not tip. */
  readonly must: readonly TipCause[];
}

/** Whether every part's nominal resultant passes strictly inside the hull of its contacts. */
export function stableAsWeighed(model: StepModel): boolean {
  const hulls = model.parts.map(({ contacts }) => convexHull(contacts.map(({ s, t }): Point => [s, t])));
  return hulls.every((hull) => hull.length >= 3) && boxTipsOf(model, []).length === 0;
}

/** All edges over which the box tips a part; empty when it never does. The parts must be stable as weighed. */
export function boxTipsOf(model: StepModel, box: readonly BoxVariable[]): readonly BoxTip[] {
  return model.parts.flatMap((part, index) => {
    const hull = convexHull(part.contacts.map(({ s, t }): Point => [s, t]));
    return hull.flatMap((from, i) => {
      const tip = tipOver(part, index, from, hull[(i + 1) % hull.length]!, box);
      return tip === null ? [] : [tip];
    });
  });
}

function tipOver(part: PartModel, index: number, from: Point, to: Point, box: readonly BoxVariable[]): BoxTip | null {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [outS, outT] = [(to[1] - from[1]) / length, -(to[0] - from[0]) / length];
  const least = staticsTolerance.inside * (part.to - part.from);
  // B17: overturning moment about the edge, M = n·(ΣM − W·a), to stay below −1e-9·l·W
  const overturning = ({ force, momentS, momentT }: Resultant) =>
    outS * (momentS - force * from[0]) + outT * (momentT - force * from[1]) + least * force;
  const nominal = part.loads.map((load) => overturning(resultantOf([load], 0)));
  const sum = nominal.reduce((total, moment) => total + moment, 0);
  const effects = causesOf(part, box, nominal, [outS, outT]);
  const worst = sum + effects.reduce((total, { worsens }) => total + worsens, 0);
  // Rounding of the sum itself must not tip what just stands.
  const size = nominal.reduce((total, moment) => total + Math.abs(moment), 0);
  if (worst < -1e-14 * size) return null;
  const acting = effects.filter(({ worsens, present }) => worsens > 0 || present > 0);
  return {
    part: index,
    from,
    to,
    names: acting.map(({ cause }) => cause),
    must: acting.filter(({ worsens, present }) => worst - Math.max(worsens, present) < 0).map(({ cause }) => cause),
  };
}

interface Effect {
  readonly cause: TipCause;
  /** N·m, ≥ 0: how much more it overturns at its worst than as planned. */
  readonly worsens: number;
  /** N·m: what a load overturns as planned; without the load that is gone. 0 for weights and centres. */
  readonly present: number;
}

/** B18: each variable adds to the overturning moment by itself, so each one's worst is its own. */
function causesOf(part: PartModel, box: readonly BoxVariable[], nominal: readonly number[], out: Point): Effect[] {
  const effects: Effect[] = [];
  const momentOf = (kind: "mass" | "load", of: number) =>
    part.loads.reduce(
      (total, { source }, i) => (source.kind === kind && source.index === of ? total + nominal[i]! : total),
      0,
    );
  for (const variable of box) {
    const half = (variable.to - variable.from) / 2;
    if (variable.kind === "mass") {
      const worsens = Math.abs(momentOf("mass", variable.mass)) * half;
      effects.push({ cause: { kind: "mass", mass: variable.mass }, worsens, present: 0 });
    } else if (variable.kind === "load") {
      const moment = momentOf("load", variable.load);
      const cause = { kind: "load", load: variable.load } as const;
      effects.push({ cause, worsens: Math.max(0, -moment), present: moment });
    } else if (variable.kind === "centre") {
      const there = part.loads.some(
        ({ kind, source }) => kind === "point" && source.kind === "mass" && source.index === variable.mass,
      );
      if (!there) continue;
      const worsens = variable.force * half * Math.abs(out[variable.axis === "s" ? 0 : 1]);
      const known = effects.findIndex(({ cause }) => cause.kind === "centre" && cause.mass === variable.mass);
      if (known < 0) effects.push({ cause: { kind: "centre", mass: variable.mass }, worsens, present: 0 });
      else effects[known] = { ...effects[known]!, worsens: effects[known]!.worsens + worsens };
    }
  }
  return effects;
}
