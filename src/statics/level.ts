/** The level answer of a step: reactions with all errors 0, weights and loads nominal. */

import type { Mass, Plan, Step } from "../plan";
import type { PartLevel, Residual, StandLevel, StepLevel } from "./answers";
import { assembledStep } from "./assemble";
import { staticsTolerance } from "./constants";
import { diagramCells, type Section } from "./diagramCells";
import {
  type Chord,
  chordThrough,
  curvesOf,
  deflectionAt,
  extremesOfDeflection,
  extremesOfForce,
  extremesOfTwist,
} from "./diagrams";
import type { PartModel, StandModel, StepModel } from "./model";
import { PartSolver } from "./partSolver";
import { residualOf, worstResidual } from "./residual";
import { type Resultant, resultantOf } from "./resultant";

/** A part with its solution; `reactions` and `depth` by contact, N and m. */
interface SolvedPart {
  readonly part: PartModel;
  readonly resultant: Resultant;
  readonly stable: boolean;
  readonly reactions: Float64Array;
  readonly depth: Float64Array;
  readonly solver: PartSolver;
}

/**
 * The level answer of a step. Remembered by the identity of what it reads: a step, or a plan, changed in anything else
 * gives the same object. Diagrams are found when they are first asked for.
 */
export function solveStep(plan: Plan, step: Step): StepLevel {
  const assembled = assembledStep(plan, step);
  assembled.level ??= levelAt(assembled.model, plan.piece.masses);
  return assembled.level;
}

/**
 * The level answer of an assembled step.
 *
 * @param masses of the piece, which the model's loads name by index: for the weight and the centre of gravity.
 */
export function levelAt(model: StepModel, masses: readonly Mass[]): StepLevel {
  const parts = model.parts.map(solvePart);
  const stable = parts.every((part) => part.stable);
  const shares = stable ? sharesOf(model, parts) : null;
  return {
    ...weightOf(model, masses),
    stable,
    estimated: model.stands.filter((stand) => stand.estimated).map((stand) => stand.stand),
    residual: stable ? residualOfParts(parts) : null,
    stands: model.stands.map((stand, index) => standLevel(stand, shares && shares[index]!)),
    parts: parts.map((part) => partLevel(part, stable)),
  };
}

function solvePart(part: PartModel): SolvedPart {
  const solver = new PartSolver(part);
  const stable = solver.solve() !== "unstable";
  const resultant = resultantOf(part.loads, part.from);
  return { part, resultant, stable, reactions: solver.reactions, depth: solver.depth, solver };
}

function residualOfParts(parts: readonly SolvedPart[]): Residual {
  return worstResidual(
    parts.map(({ part, resultant, reactions, depth }) => residualOf(part, resultant, reactions, depth)),
  );
}

/** Weight of the masses that are there, N, and their centre of gravity. */
function weightOf(model: StepModel, masses: readonly Mass[]): Pick<StepLevel, "weight" | "cg"> {
  let [weight, s, t, z] = [0, 0, 0, 0];
  for (const { loads } of model.parts) {
    for (const load of loads) {
      if (load.source.kind !== "mass") continue;
      const { force, momentS, momentT } = resultantOf([load], 0);
      weight += force;
      s += momentS;
      t += momentT;
      z += force * masses[load.source.index]!.z;
    }
  }
  return { weight, cg: weight > 0 ? { s: s / weight, t: t / weight, z: z / weight } : null };
}

/** What a step's contacts come to on one stand. */
interface Share {
  reaction: number;
  momentS: number;
  momentT: number;
  /** About the middle of the top, along it. */
  momentC: number;
  /** Greatest r ÷ (share of the stiffness, and so of the bearing length). */
  greatest: number;
  /** Greatest h − u. */
  deepest: number;
}

function sharesOf(model: StepModel, parts: readonly SolvedPart[]): readonly Share[] {
  const shares = model.stands.map(
    (): Share => ({ reaction: 0, momentS: 0, momentT: 0, momentC: 0, greatest: 0, deepest: -Infinity }),
  );
  for (const { part, reactions, depth } of parts) {
    for (const [index, { stand, s, t, c, stiffness }] of part.contacts.entries()) {
      const share = shares[stand]!;
      const force = reactions[index]!;
      share.reaction += force;
      share.momentS += force * s;
      share.momentT += force * t;
      share.momentC += force * c;
      share.greatest = Math.max(share.greatest, (force * model.stands[stand]!.stiffness) / stiffness);
      share.deepest = Math.max(share.deepest, depth[index]!);
    }
  }
  return shares;
}

/** One stand's answer; `share` null in an unstable step. */
function standLevel(stand: StandModel, share: Share | null): StandLevel {
  const known = {
    stand: stand.stand,
    s: stand.s,
    t: stand.t,
    contact: stand.intervals.map(({ from, to }) => [from, to] as const),
    estimated: stand.estimated,
  };
  if (share === null) {
    const none = { reaction: null, centre: null, legFrames: null, settlement: null, gap: null, bearingPressure: null };
    return { ...known, ...none };
  }
  const { reaction, momentS, momentT, momentC, greatest, deepest } = share;
  const bearingLength = stand.intervals.reduce((sum, { from, to }) => sum + to - from, 0);
  // The lever rule between the frames at ±legSpacing/2.
  const lever = momentC / stand.legSpacing;
  return {
    ...known,
    reaction,
    centre: reaction > 0 ? { s: momentS / reaction, t: momentT / reaction } : null,
    legFrames: [reaction / 2 - lever, reaction / 2 + lever],
    settlement: Math.max(0, deepest),
    gap: deepest === -Infinity ? null : Math.max(0, -deepest),
    bearingPressure: greatest > 0 ? greatest / (bearingLength * stand.topWidth) : 0,
  };
}

function partLevel(solved: SolvedPart, stepStable: boolean): PartLevel {
  const { part, resultant, stable } = solved;
  const { force, momentS, momentT } = resultant;
  // A force that all but vanishes acts nowhere.
  const at = (moment: number) => (force > 0 && Number.isFinite(moment / force) ? moment / force : null);
  const alongS = at(momentS);
  const known = {
    from: part.from,
    to: part.to,
    stable,
    weight: resultantOf(
      part.loads.filter((load) => load.source.kind === "mass"),
      part.from,
    ).force,
    resultant: { force, s: alongS === null ? null : part.from + alongS, t: at(momentT) },
  };
  if (!stepStable) {
    const none = { moment: null, shear: null, torque: null, deflection: null, droop: null, twist: null };
    return { ...known, ...none, curves: null, cells: null };
  }
  return withDiagrams(known, solved);
}

/** Diagrams, each found when it is first read: a search over thousands of steps reads none. */
function withDiagrams(
  known: Pick<PartLevel, "from" | "to" | "stable" | "weight" | "resultant">,
  solved: SolvedPart,
): PartLevel {
  const shape = once(() => shapeOf(solved));
  const found = {
    moment: once(() => extremesOfForce(shape().cells, "moment")),
    shear: once(() => extremesOfForce(shape().cells, "shear")),
    torque: once(() => extremesOfForce(shape().cells, "torque")),
    deflection: once(() => shape().chord && extremesOfDeflection(shape().cells, shape().chord!)),
    twist: once(() => extremesOfTwist(shape().cells, shape().bearing[0])),
    curves: once(() => curvesOf(shape().cells, shape().chord)),
  };
  return {
    ...known,
    get moment() {
      return found.moment();
    },
    get shear() {
      return found.shear();
    },
    get torque() {
      return found.torque();
    },
    get deflection() {
      return found.deflection();
    },
    get droop() {
      const { cells, chord } = shape();
      return chord && ([deflectionAt(cells, chord, known.from), deflectionAt(cells, chord, known.to)] as const);
    },
    get twist() {
      return found.twist();
    },
    get curves() {
      return found.curves();
    },
    get cells() {
      return shape().cells;
    },
  };
}

function once<Value>(compute: () => Value): () => Value {
  let kept: { readonly value: Value } | null = null;
  return () => {
    kept ??= { value: compute() };
    return kept.value;
  };
}

/** The cells of a part and the line that its deflection is measured from. */
function shapeOf({ part, resultant, reactions, solver }: SolvedPart): {
  readonly cells: NonNullable<PartLevel["cells"]>;
  readonly chord: Chord | null;
  /** Least and greatest s at which the forces of bearing stands act. */
  readonly bearing: readonly [number, number];
} {
  const cells = diagramCells(part, reactions, sectionsOf(solver));
  const places = bearingPlaces(part, reactions, staticsTolerance.bears * resultant.force);
  const bearing = [Math.min(...places), Math.max(...places)] as const;
  return { cells, bearing, chord: chordThrough(cells, ...bearing) };
}

/** s at which the forces of each stand that bears on the part act. */
function bearingPlaces({ contacts }: PartModel, reactions: Float64Array, least: number): number[] {
  const forces = new Map<number, { force: number; moment: number }>();
  for (const [index, { stand, s }] of contacts.entries()) {
    const sum = forces.get(stand) ?? { force: 0, moment: 0 };
    sum.force += reactions[index]!;
    sum.moment += reactions[index]! * s;
    forces.set(stand, sum);
  }
  return [...forces.values()].filter(({ force }) => force > least).map(({ force, moment }) => moment / force);
}

/** Motions where the contacts are, over z = 0. */
function sectionsOf({ problem, heights }: PartSolver): Section[] {
  const { chain, motions } = problem;
  return Array.from(chain.nodes, (s, index) => ({
    s,
    v: heights[0]! + motions[3 * index]!,
    psi: motions[3 * index + 1]! / chain.length,
    theta: motions[3 * index + 2]! / chain.length,
  }));
}
