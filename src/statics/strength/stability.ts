/** Lateral buckling, sag and the pressure on the tops (docs/mechanics-tipping.md, S5 to S7). */

import type { SectionSegment, SectionStrength, StandId } from "../../plan";
import type { StepLevel } from "../answers";
import { staticsTolerance } from "../constants";
import type { StepModel } from "../model";
import { answerOf, type Governing, given, type Look, type StrengthAnswer } from "./sections";

/**
 * S5: the length up to which a bent beam keeps its full strength without being held sideways, m (AISC 360-22 F2-5):
 * L_p = 1.76·r_y·√(E ÷ F_y).
 */
export function fullStrengthLength({
  radiusOfGyrationY,
  E,
  yield: yieldStress,
}: Required<Pick<SectionStrength, "radiusOfGyrationY" | "E" | "yield">>): number {
  return 1.76 * radiusOfGyrationY * Math.sqrt(E / yieldStress);
}

/**
 * The greatest distance between neighbouring bearing stands against L_p, m. Past it the check does not fail: a
 * qualified person has to look at it. Every section on the span counts.
 *
 * @param levels the level solution and those at the witnesses; the worst counts.
 */
export function lateralBuckling(
  sections: readonly SectionSegment[],
  model: StepModel,
  levels: readonly StepLevel[],
): StrengthAnswer {
  return answerOf(
    levels.flatMap((level) =>
      spansOf(model, level).flatMap(({ from, to }) =>
        sections
          .filter((section) => section.from < to && section.to > from)
          .map((section): Look => {
            const data = given(section, ["radiusOfGyrationY", "E", "yield"]);
            if (!data.whole) return { missing: data.missing };
            return { value: to - from, limit: fullStrengthLength(data.section), s: (from + to) / 2 };
          }),
      ),
    ),
  );
}

/** The spans between neighbouring bearing stands of each part, m. */
function spansOf(model: StepModel, level: StepLevel): { readonly from: number; readonly to: number }[] {
  return model.parts.flatMap((_, part) => {
    const weight = level.parts[part]?.resultant.force ?? 0;
    const places = model.stands
      .filter((stand, i) => {
        const reaction = level.stands[i]?.reaction ?? 0;
        return reaction > staticsTolerance.bears * weight && stand.intervals.some((interval) => interval.part === part);
      })
      .map((stand) => stand.s)
      .sort((a, b) => a - b);
    return places.slice(1).map((to, i) => ({ from: places[i]!, to }));
  });
}

/**
 * S6: the greatest deflection from the straight line through the outermost two bearing stands against the job's own
 * limit, m; null where no part has two bearing stands, or the step is unstable. 0 for a rigid piece.
 */
export function sag(levels: readonly StepLevel[], factor: number, sagLimit: number): Governing | null {
  const looks = levels.flatMap(({ parts }) =>
    parts.flatMap(({ deflection }) =>
      deflection === null
        ? []
        : [deflection.most, deflection.least].map(({ value, s }) => ({
            value: factor * Math.abs(value),
            limit: sagLimit,
            s,
          })),
    ),
  );
  const first = looks[0];
  return first === undefined ? null : looks.reduce((worst, look) => (look.value > worst.value ? look : worst), first);
}

/**
 * S7: pressure on a stand's top, Pa: the greatest over its contacts where its reaction is greatest, × set-down factor;
 * null where the step is unstable.
 *
 * @param atMost the level solution at the stand's `mostAt`.
 */
export function topPressure(atMost: StepLevel, stand: StandId, factor: number): number | null {
  const pressure = atMost.stands.find((one) => one.stand === stand)?.bearingPressure ?? null;
  return pressure === null ? null : factor * pressure;
}
