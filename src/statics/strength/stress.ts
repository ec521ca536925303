/** Bending and shear stress along the piece (docs/mechanics-tipping.md, S1 and S2). */

import type { Criteria, SectionSegment } from "../../plan";
import type { Curves, StepLevel } from "../answers";
import { answerOf, given, type Look, type StrengthAnswer } from "./sections";

/** Allowable shear as a share of the yield stress: AISC 360 G2.1, 0.6·F_y ÷ Ω with Ω = 1.50. */
export const shearShare = 0.4;

/**
 * Greatest bending stress against allowableStressFactor·yield, Pa.
 *
 * @param levels the level solution and those at the witnesses; the worst counts.
 * @param factor on all of them: the set-down factor of the step.
 */
export function bending(
  sections: readonly SectionSegment[],
  levels: readonly StepLevel[],
  factor: number,
  { allowableStressFactor }: Pick<Criteria, "allowableStressFactor">,
): StrengthAnswer {
  return answerOf(
    looks(sections, levels, greatestMoment, (section, moment) => {
      const data = given(section, ["sectionModulus", "yield"]);
      if (!data.whole) return { missing: data.missing };
      // S1: σ = f·|M| ÷ S against α·F_y
      const value = (factor * moment.value) / data.section.sectionModulus;
      return { value, limit: allowableStressFactor * data.section.yield, s: moment.s };
    }),
  );
}

/** Greatest mean shear stress against 0.4·yield, Pa; parameters as `bending`. */
export function shear(
  sections: readonly SectionSegment[],
  levels: readonly StepLevel[],
  factor: number,
): StrengthAnswer {
  return answerOf(
    looks(sections, levels, greatestShear, (section, force) => {
      const data = given(section, ["shearArea", "yield"]);
      if (!data.whole) return { missing: data.missing };
      // S2: τ = f·|V| ÷ A_s against 0.4·F_y
      const value = (factor * force.value) / data.section.shearArea;
      return { value, limit: shearShare * data.section.yield, s: force.s };
    }),
  );
}

interface At {
  readonly value: number;
  readonly s: number;
}

/** One look a section, a part and a level: at the greatest action on the stretch that the section and the part share. */
function* looks(
  sections: readonly SectionSegment[],
  levels: readonly StepLevel[],
  greatest: (curves: Curves, from: number, to: number) => At,
  look: (section: SectionSegment, action: At) => Look,
): Generator<Look> {
  for (const { parts } of levels)
    for (const part of parts)
      for (const section of sections) {
        const [from, to] = [Math.max(part.from, section.from), Math.min(part.to, section.to)];
        if (part.curves !== null && from < to) yield look(section, greatest(part.curves, from, to));
      }
}

/**
 * Greatest |M| of a part on [from, to], N·m. Between two stations the load is linear, so M is a cubic with the slope V at
 * both ends: Hermite's interpolation is exact, and so are the extremes between stations.
 */
export function greatestMoment(curves: Curves, from: number, to: number): At {
  let worst: At = { value: 0, s: from };
  const consider = (value: number, s: number): void => {
    if (Math.abs(value) > worst.value) worst = { value: Math.abs(value), s };
  };
  eachStretch(curves, from, to, (i, a, b) => {
    const [start, length] = [curves.s[i]!, curves.s[i + 1]! - curves.s[i]!];
    const [m0, m1] = [curves.moment[i]!, curves.moment[i + 1]!];
    const [v0, v1] = [curves.shear[i]! * length, curves.shear[i + 1]! * length];
    // M(u) = m₀ + v₀·u + (3Δ − 2v₀ − v₁)·u² + (v₀ + v₁ − 2Δ)·u³, Δ = m₁ − m₀, u from 0 to 1
    const [c2, c3] = [3 * (m1 - m0) - 2 * v0 - v1, v0 + v1 - 2 * (m1 - m0)];
    const at = (u: number): number => m0 + u * (v0 + u * (c2 + u * c3));
    const [ua, ub] = [(a - start) / length, (b - start) / length];
    for (const u of [ua, ub, ...realRoots(3 * c3, 2 * c2, v0)])
      if (u >= ua && u <= ub) consider(at(u), start + u * length);
  });
  return worst;
}

/** Greatest |V| of a part on [from, to], N. Loads along the piece all act downward, so it lies at the end of a stretch. */
export function greatestShear(curves: Curves, from: number, to: number): At {
  let worst: At = { value: 0, s: from };
  eachStretch(curves, from, to, (i, a, b) => {
    const [start, length] = [curves.s[i]!, curves.s[i + 1]! - curves.s[i]!];
    const [m0, m1] = [curves.moment[i]!, curves.moment[i + 1]!];
    const [v0, v1] = [curves.shear[i]! * length, curves.shear[i + 1]! * length];
    const [c2, c3] = [3 * (m1 - m0) - 2 * v0 - v1, v0 + v1 - 2 * (m1 - m0)];
    for (const s of [a, b]) {
      const u = (s - start) / length;
      const value = Math.abs(v0 + u * (2 * c2 + u * 3 * c3)) / length;
      if (value > worst.value) worst = { value, s };
    }
  });
  return worst;
}

/** The stretches between stations that share some length with [from, to], each with the ends of what they share. */
function eachStretch(
  { s }: Curves,
  from: number,
  to: number,
  visit: (station: number, a: number, b: number) => void,
): void {
  for (let i = 0; i + 1 < s.length; i++) {
    const [a, b] = [Math.max(from, s[i]!), Math.min(to, s[i + 1]!)];
    if (a < b) visit(i, a, b);
  }
}

/** Real roots of a·x² + b·x + c, without loss of digits; none of the zero polynomial. */
function realRoots(a: number, b: number, c: number): number[] {
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
  return [q / a, c / q].filter(Number.isFinite);
}
