/** Half-built pieces: stretches that are there in a step, and the cuts between them that carry nothing. */

import { type Plan, type PlanDocument, pieceLength, type Step, type StepId } from "../../plan";
import { changed, mapped } from "../change";

export type Stretch = readonly [number, number];

/** A cut at s: the stretch that holds it becomes two. null (the whole piece) is one stretch over the length. */
export function cutAt(parts: readonly Stretch[] | null, length: number, s: number): readonly Stretch[] | null {
  const before = parts ?? [[0, length] as const];
  const after = before.flatMap(([from, to]): readonly Stretch[] =>
    s > from && s < to
      ? [
          [from, s],
          [s, to],
        ]
      : [[from, to]],
  );
  return tidied(after, length);
}

/** The joint between stretch `index` and the next one is made: from this step on it carries. Only where they touch. */
export function joinAfter(parts: readonly Stretch[], length: number, index: number): readonly Stretch[] | null {
  const [left, right] = [parts[index], parts[index + 1]];
  if (left === undefined || right === undefined || left[1] !== right[0]) return parts;
  return tidied([...parts.slice(0, index), [left[0], right[1]], ...parts.slice(index + 2)], length);
}

/** The whole piece as one stretch is written as null. */
export function tidied(parts: readonly Stretch[], length: number): readonly Stretch[] | null {
  const [only] = parts;
  return parts.length === 1 && only?.[0] === 0 && only[1] === length ? null : parts;
}

/** Places nearer than this are one joint, m. */
const sameJoint = 1e-6;

/** The stretch that ends at an open joint, and its index; null where none is open there. */
export function openJointAt(parts: readonly Stretch[] | null, s: number): number | null {
  const index = (parts ?? []).findIndex(
    ([, to], at) => Math.abs(to - s) < sameJoint && Math.abs((parts?.[at + 1]?.[0] ?? Infinity) - s) < sameJoint,
  );
  return index < 0 ? null : index;
}

export interface JointSpot {
  /** m from the datum end. */
  readonly s: number;
  /** It carries nothing in the step. */
  readonly open: boolean;
}

/** Where the piece is or may be jointed: at every end of a part in any step, and where its section changes; ascending. */
export function jointSpots(plan: Pick<Plan, "piece" | "steps">, step: Pick<Step, "parts">): readonly JointSpot[] {
  const length = pieceLength(plan.piece);
  const { stiffness } = plan.piece;
  const ends = [
    ...plan.steps.flatMap(({ parts }) => (parts ?? []).flat()),
    ...(stiffness === "rigid" ? [] : stiffness.flatMap(({ from, to }) => [from, to])),
  ];
  const stretches = step.parts ?? [[0, length] as const];
  const there = (s: number): boolean => stretches.some(([from, to]) => s > from - sameJoint && s < to + sameJoint);
  const inside = ends.filter((s) => s > sameJoint && s < length - sameJoint && there(s)).sort((a, b) => a - b);
  return inside
    .filter((s, index) => index === 0 || s - inside[index - 1]! > sameJoint)
    .filter((s) => openJointAt(step.parts, s) !== null || stretches.some(([from, to]) => s > from && s < to))
    .map((s) => ({ s, open: openJointAt(step.parts, s) !== null }));
}

/**
 * Opens the joint at s in a step; one that is open there is welded, in that step and in those after it: what has been
 * welded carries from then on.
 */
export function toggledJoint(document: PlanDocument, step: StepId, s: number): PlanDocument {
  const length = pieceLength(document.piece);
  const at = document.steps.findIndex(({ id }) => id === step);
  const welds = openJointAt(document.steps[at]?.parts ?? null, s) !== null;
  const steps = mapped(document.steps, (one) => {
    const index = document.steps.indexOf(one);
    const parts = one.parts ?? null;
    if (!welds) return index === at ? withParts(one, cutAt(parts, length, s)) : one;
    const joint = openJointAt(parts, s);
    return index < at || joint === null || parts === null ? one : withParts(one, joinAfter(parts, length, joint));
  });
  return changed(document, { steps });
}

type StepOf = PlanDocument["steps"][number];
function withParts(step: StepOf, parts: readonly Stretch[] | null): StepOf {
  return parts === (step.parts ?? null) ? step : changed(step, { parts });
}
