/** Assembled steps made by hand: supports as points, a load or two, a box of one's own. */

import type { Plan, StandId } from "../../../src/plan";
import type { BeamSegment, LoadItem, StepBounds, StepModel } from "../../../src/statics";
import { searchOf } from "../../../src/statics/bounds/bounds";
import { ended } from "../../../src/statics/bounds/pauses";
import type { BoxVariable } from "../../../src/statics/bounds/variables";

/** A support bears at one or more points, sharing its stiffness k evenly. */
export interface Support {
  readonly k: number;
  readonly points: readonly (readonly [s: number, t: number])[];
}

export function modelOf(
  [from, to]: readonly [number, number],
  beam: Pick<BeamSegment, "EI" | "GJ">,
  supports: readonly Support[],
  loads: readonly LoadItem[],
): StepModel {
  return {
    stands: supports.map(({ k, points }, index) => ({
      stand: `support ${index}` as StandId,
      s: points[0]![0],
      t: 0,
      along: [0, 1],
      stiffness: k,
      estimated: false,
      topWidth: 0.1,
      legSpacing: 1,
      intervals: [{ from: -1, to: 1, part: 0 }],
    })),
    parts: [
      {
        from,
        to,
        segments: [{ from, to, kGA: Number.POSITIVE_INFINITY, ...beam }],
        contacts: supports
          .flatMap(({ k, points }, stand) =>
            points.map(([s, t], _, { length }) => ({
              stand,
              interval: 0,
              s,
              t,
              c: t,
              stiffness: k / length,
              height: 0,
              bow: 0,
            })),
          )
          .sort((a, b) => a.s - b.s),
        loads,
      },
    ],
  };
}

export const rigid = { EI: Number.POSITIVE_INFINITY, GJ: Number.POSITIVE_INFINITY };

/** A weight at a point, as the mass of that index. */
export function weightAt(s: number, t: number, force: number, index = 0): LoadItem {
  return { kind: "point", source: { kind: "mass", index }, s, down: force, momentS: 0, momentT: force * t };
}

/** Height of one support between two values. */
export function heightOf(stand: number, from: number, to: number): BoxVariable {
  return { kind: "height", stand, from, to, nominal: 0 };
}

type Bounded = Extract<StepBounds, { status: "bounded" }>["stands"];

/** Proved bounds of a model made by hand. */
export function boundsIn(model: StepModel, box: readonly BoxVariable[]): Bounded {
  const plan = { piece: { masses: [{ id: "weight" }, { id: "more" }] } } as unknown as Plan;
  const bounds = ended(searchOf(plan, model, box, true));
  if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
  return bounds.stands;
}
