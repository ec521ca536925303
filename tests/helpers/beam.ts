/** Straight pieces on stands, put into a plan as a user would, for checks against handbooks. SI. */

import { complete, type Plan, type PlanDocument } from "../../src/plan";
import { gravity, type StandLevel, type StepLevel, solveStep } from "../../src/statics";

export interface Support {
  readonly s: number;
  readonly t?: number;
  /** N/m. */
  readonly k: number;
  /** How much lower its top is than the others, m. */
  readonly lower?: number;
  /** Length of its top, m; the width of the piece if left out. */
  readonly top?: number;
  /** Degrees. */
  readonly angle?: number;
}

export interface Beam {
  readonly length: number;
  readonly width?: number;
  /** Left out = rigid. */
  readonly EI?: number;
  readonly kGA?: number;
  readonly GJ?: number;
  /** N/m downward; the whole length where no ends are given. */
  readonly lines?: readonly { readonly w: number; readonly from?: number; readonly to?: number; readonly t?: number }[];
  /** N downward. */
  readonly points?: readonly { readonly s: number; readonly t?: number; readonly P: number }[];
  readonly supports: readonly Support[];
}

export function planOf({ length, width = 0.4, EI, kGA, GJ, lines = [], points = [], supports }: Beam): Plan {
  const lowest = Math.max(...supports.map(({ lower = 0 }) => lower));
  const document = {
    format: "trestleboard-plan",
    version: 1,
    title: "beam",
    piece: {
      name: "beam",
      outline: [
        [0, -width / 2],
        [length, -width / 2],
        [length, width / 2],
        [0, width / 2],
      ],
      depth: 0.5,
      stiffness: EI === undefined ? "rigid" : [{ from: 0, to: length, EI, kGA: kGA ?? null, GJ: GJ ?? null }],
      masses: [
        ...lines.map(({ w, from = 0, to = length, t = 0 }, index) => ({
          id: `line ${index}`,
          name: "line",
          kind: "line",
          from,
          to,
          massPerLength: [w / gravity, w / gravity],
          t,
          z: 0.25,
        })),
        ...points.map(({ s, t = 0, P }, index) => ({
          id: `point ${index}`,
          name: "point",
          kind: "point",
          s,
          t,
          z: 0.25,
          mass: P / gravity,
        })),
      ],
    },
    standTypes: supports.map(({ k, top = width }, index) => ({
      id: `type ${index}`,
      name: "support",
      legs: "vertical",
      height: { min: 0.001, max: 2, increment: 0 },
      top: { length: top, width: 0.1, material: "steel" },
      legSpacing: top,
      splay: { along: 0, across: 0 },
      foot: { length: 0.1, width: 0.1 },
      stiffness: k,
      selfMass: 50,
    })),
    stands: supports.map((_, index) => ({ id: `S${index}`, type: `type ${index}`, condition: "in-service" })),
    layouts: [
      {
        id: "A",
        name: "A",
        placements: supports.map(({ s, t = 0, lower = 0, angle = 0 }, index) => ({
          stand: `S${index}`,
          s,
          t,
          angle,
          height: lowest + 0.001 - lower,
        })),
      },
    ],
    steps: [{ id: "only", name: "only", layout: "A" }],
  };
  return complete(document as unknown as PlanDocument);
}

export interface Solved {
  readonly level: StepLevel;
  readonly stands: readonly StandLevel[];
  /** N, in the order of the supports. */
  readonly reactions: readonly number[];
  readonly part: StepLevel["parts"][number];
}

export function solve(beam: Beam): Solved {
  const plan = planOf(beam);
  const level = solveStep(plan, plan.steps[0]!);
  if (!level.stable) throw new Error("the beam is unstable");
  return {
    level,
    stands: level.stands,
    reactions: level.stands.map(({ reaction }) => reaction!),
    part: level.parts[0]!,
  };
}

/**
 * Reactions as if the supports could pull as well: a load Q over every one of equal supports presses the piece down
 * evenly and adds Q to every reaction, so that none lifts off; then Q is taken off again.
 */
export function solveTwoWay(beam: Beam, Q: number): Solved & { readonly twoWay: readonly number[] } {
  const extra = beam.supports.map(({ s, t = 0 }) => ({ s, t, P: Q }));
  const solved = solve({ ...beam, points: [...(beam.points ?? []), ...extra] });
  return { ...solved, twoWay: solved.reactions.map((reaction) => reaction - Q) };
}
