/**
 * The contact problem once more, written another way than the engine does it: unknown displacements of beam elements
 * (Hermite cubics, linear twist) instead of flexibilities, as a model for HiGHS. Bernoulli beams and rigid pieces, one part.
 */

import loadHighs, { type Model } from "highs";
import type { Mass } from "../../../src/plan";
import type { LoadItem, PartModel, StepModel } from "../../../src/statics";
import type { BoxVariable } from "../../../src/statics/bounds/variables";

export const highs = await loadHighs();

type Vector = Map<number, number>;

/** A vector over the degrees of freedom. */
function add(vector: Vector, dof: number, value: number): void {
  if (value !== 0) vector.set(dof, (vector.get(dof) ?? 0) + value);
}

interface Discretised {
  readonly dofs: number;
  readonly stiffness: readonly Vector[];
  /** Upward displacement at (s, t). */
  readonly displacement: (s: number, t: number) => Vector;
  /** Section rotation v′ at a node. */
  readonly slope: (s: number) => Vector;
  /** Twist at s. */
  readonly twist: (s: number) => Vector;
  readonly breaks: readonly number[];
}

function discretise(part: PartModel): Discretised {
  const rigid = part.segments[0]!.EI === Number.POSITIVE_INFINITY;
  const pointLoads = part.loads.flatMap((load) => (load.kind === "point" ? [load.s] : []));
  const ends = [part.from, part.to, ...part.contacts.map(({ s }) => s), ...part.segments.map(({ to }) => to)];
  const breaks = [...new Set([...ends, ...pointLoads])].sort((a, b) => a - b);
  if (rigid) {
    return {
      dofs: 3,
      stiffness: [new Map(), new Map(), new Map()],
      displacement: (s, t) => new Map([[0, 1], [1, s - part.from], [2, t]]), // biome-ignore format: one row
      slope: () => new Map([[1, 1]]),
      twist: () => new Map([[2, 1]]),
      breaks,
    };
  }
  const twistRigid = part.segments.every(({ GJ }) => GJ === Number.POSITIVE_INFINITY);
  const nodes = breaks.length;
  const theta = (node: number) => (twistRigid ? 2 * nodes : 2 * nodes + node);
  const dofs = 2 * nodes + (twistRigid ? 1 : nodes);
  const stiffness: Vector[] = Array.from({ length: dofs }, () => new Map());
  for (let e = 0; e + 1 < nodes; e++) {
    const [a, b] = [breaks[e]!, breaks[e + 1]!];
    const { EI, GJ } = part.segments.find(({ from, to }) => from <= (a + b) / 2 && (a + b) / 2 <= to)!;
    const l = b - a;
    // Bernoulli beam element, any text on the finite element method
    const own = [2 * e, 2 * e + 1, 2 * e + 2, 2 * e + 3];
    const k = [
      [12, 6 * l, -12, 6 * l],
      [6 * l, 4 * l * l, -6 * l, 2 * l * l],
      [-12, -6 * l, 12, -6 * l],
      [6 * l, 2 * l * l, -6 * l, 4 * l * l],
    ];
    for (let i = 0; i < 4; i++)
      for (let j = 0; j < 4; j++) add(stiffness[own[i]!]!, own[j]!, (k[i]![j]! * EI) / l ** 3);
    if (twistRigid) continue;
    for (const [i, j] of [
      [e, e + 1],
      [e + 1, e],
    ] as const) {
      add(stiffness[theta(i)]!, theta(i), GJ / l);
      add(stiffness[theta(i)]!, theta(j), -GJ / l);
    }
  }
  const within = (s: number) => {
    const e = Math.min(
      nodes - 2,
      Math.max(
        0,
        breaks.findLastIndex((node) => node <= s),
      ),
    );
    const l = breaks[e + 1]! - breaks[e]!;
    return { e, l, x: (s - breaks[e]!) / l };
  };
  const twist = (s: number): Vector => {
    const { e, x } = within(s);
    const vector: Vector = new Map();
    add(vector, theta(e), 1 - x);
    add(vector, theta(e + 1), x);
    return vector;
  };
  return {
    dofs,
    stiffness,
    displacement(s, t) {
      const { e, l, x } = within(s);
      const vector: Vector = new Map();
      add(vector, 2 * e, 1 - 3 * x ** 2 + 2 * x ** 3);
      add(vector, 2 * e + 1, l * (x - 2 * x ** 2 + x ** 3));
      add(vector, 2 * e + 2, 3 * x ** 2 - 2 * x ** 3);
      add(vector, 2 * e + 3, l * (x ** 3 - x ** 2));
      for (const [dof, value] of twist(s)) add(vector, dof, t * value);
      return vector;
    },
    slope: (s) => new Map([[2 * breaks.indexOf(s) + 1, 1]]),
    twist,
    breaks,
  };
}

/** Consistent upward forces of a load on the degrees of freedom. */
function forcesOf(load: LoadItem, piece: Discretised): Vector {
  const vector: Vector = new Map();
  const put = (of: Vector, factor: number) => {
    for (const [dof, value] of of) add(vector, dof, factor * value);
  };
  if (load.kind === "point") {
    put(piece.displacement(load.s, 0), -load.down);
    put(piece.slope(load.s), -load.momentS);
    put(piece.twist(load.s), -load.momentT);
    return vector;
  }
  const stops = [load.from, ...piece.breaks.filter((s) => s > load.from && s < load.to), load.to];
  for (let i = 0; i + 1 < stops.length; i++) {
    const [a, b] = [stops[i]!, stops[i + 1]!];
    // Gauss's rule of four points is exact for a cubic times a straight line
    const [near, far] = [Math.sqrt(3 / 7 - (2 / 7) * Math.sqrt(6 / 5)), Math.sqrt(3 / 7 + (2 / 7) * Math.sqrt(6 / 5))];
    const [heavy, light] = [(18 + Math.sqrt(30)) / 36, (18 - Math.sqrt(30)) / 36];
    for (const [x, weight] of [
      [-far, light],
      [-near, heavy],
      [near, heavy],
      [far, light],
    ] as const) {
      // biome-ignore format: one row
      const s = (a + b) / 2 + (x * (b - a)) / 2;
      const q = load.intensity[0] + ((s - load.from) / (load.to - load.from)) * (load.intensity[1] - load.intensity[0]);
      put(piece.displacement(s, load.t), (-q * weight * (b - a)) / 2);
    }
  }
  return vector;
}

/**
 * Displacements of the contacts under forces on the degrees of freedom, m, the part resting on its outermost contacts and
 * kept from rolling at the first.
 */
function restingResponse(piece: Discretised, contacts: PartModel["contacts"]): (forces: Vector) => number[] {
  const rows = contacts.map(({ s, t }) => piece.displacement(s, t));
  if (piece.dofs === 3) return () => contacts.map(() => 0);
  const nodes = piece.breaks.length;
  const first = piece.breaks.indexOf(Math.min(...contacts.map(({ s }) => s)));
  const last = piece.breaks.indexOf(Math.max(...contacts.map(({ s }) => s)));
  const held = new Set([2 * first, 2 * last, piece.dofs === 2 * nodes + 1 ? 2 * nodes : 2 * nodes + first]);
  const free = Array.from({ length: piece.dofs }, (_, dof) => dof).filter((dof) => !held.has(dof));
  const inverse = inverted(free.map((i) => free.map((j) => piece.stiffness[i]!.get(j) ?? 0)));
  return (forces) => {
    const moved = new Map<number, number>();
    free.forEach((dof, i) => {
      let sum = 0;
      free.forEach((other, j) => {
        sum += inverse[i]![j]! * (forces.get(other) ?? 0);
      });
      moved.set(dof, sum);
    });
    return rows.map((row) => [...row].reduce((sum, [dof, value]) => sum + value * (moved.get(dof) ?? 0), 0));
  };
}

/** Inverse of a dense matrix by elimination with the largest pivot, rows and columns scaled by the diagonal first. */
function inverted(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const scale = matrix.map((row, i) => 1 / Math.sqrt(row[i]!));
  const work = matrix.map((row, i) => [
    ...row.map((value, j) => value * scale[i]! * scale[j]!),
    ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)),
  ]);
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let i = c + 1; i < n; i++) if (Math.abs(work[i]![c]!) > Math.abs(work[best]![c]!)) best = i;
    [work[c], work[best]] = [work[best]!, work[c]!];
    const pivot = work[c]![c]!;
    work[c] = work[c]!.map((value) => value / pivot);
    for (let i = 0; i < n; i++) {
      const factor = work[i]![c]!;
      if (i === c || factor === 0) continue;
      work[i] = work[i]!.map((value, j) => value - factor * work[c]![j]!);
    }
  }
  return work.map((row, i) => row.slice(n).map((value, j) => value * scale[i]! * scale[j]!));
}

/** The linear part of the problem in HiGHS: three rigid motions, reactions, variables of the box; gaps are rows. */
export class DisplacementModel {
  readonly model: Model;
  readonly force: number;
  readonly contacts: PartModel["contacts"];
  private readonly floors: readonly number[];
  /** Unit of displacement, m: how far the weight bends the piece and presses a contact, lest numbers lie too far apart. */
  private readonly unit: number;
  private columns = 0;
  private readonly firstReaction = 3;
  private readonly firstGap = 3;

  constructor(step: StepModel, box: readonly BoxVariable[], masses: readonly Mass[]) {
    const part = step.parts[0]!;
    const piece = discretise(part);
    const { contacts, loads } = part;
    const respond = restingResponse(piece, contacts);
    this.contacts = contacts;
    this.force = loads.reduce((sum, load) => sum + downOf(load), 0);
    this.model = highs.createModel();
    this.model.options.set({ output_flag: false });
    const { infinity } = highs;
    const firstVariable = this.firstReaction + contacts.length;
    for (let motion = 0; motion < 3; motion++) this.addColumn(-infinity, infinity);
    for (const _ of contacts) this.addColumn(0, infinity);
    const half = box.map(({ from, to }) => (to - from) / 2);
    box.forEach(({ from, to, nominal }, k) => {
      this.addColumn((from - nominal) / half[k]!, (to - nominal) / half[k]!);
    });

    const nominal = summed(loads.map((load) => forcesOf(load, piece)));
    const changes = box.map((variable, k) =>
      summed(loads.map((load) => changeOf(load, variable, masses, piece))).map((value) => value * half[k]!),
    );
    function summed(vectors: readonly Vector[]): number[] {
      const sum = new Array<number>(piece.dofs).fill(0);
      for (const vector of vectors) for (const [dof, value] of vector) sum[dof]! += value;
      return sum;
    }

    // Rigid motions do no work: Σ r·m = −F·m − Σ x·F_x·m for rise, turn about the left end, and roll
    const motions = [0, 1, 2].map((motion) => rigidMotion(piece, part.from, motion));
    motions.forEach((moved, motion) => {
      const row: Vector = new Map();
      contacts.forEach(({ s, t }, j) => {
        add(row, this.firstReaction + j, [1, s - part.from, t][motion]!);
      });
      const work = (forces: readonly number[]) => forces.reduce((sum, value, dof) => sum + value * moved[dof]!, 0);
      changes.forEach((change, k) => {
        add(row, firstVariable + k, work(change) / this.force);
      });
      this.addRow(row, -work(nominal) / this.force, -work(nominal) / this.force);
    });

    // w = q·m + F·r + u₀ + r/k − h ≥ 0
    const asVector = (forces: readonly number[]) => new Map(forces.map((value, dof) => [dof, value]));
    const underContact = contacts.map(({ s, t }) => respond(piece.displacement(s, t)));
    const underLoad = respond(asVector(nominal));
    const unit = Math.max(
      ...underContact.flat().map((value) => Math.abs(value) * this.force),
      ...contacts.map(({ stiffness }) => this.force / stiffness),
    );
    this.unit = unit;
    const underChange = changes.map((change) => respond(asVector(change)));
    const ground = contacts[0]!.height;
    this.floors = contacts.map(({ height }, j) => (height - ground - underLoad[j]!) / unit);
    contacts.forEach(({ s, t, c, bow, stand, stiffness }, j) => {
      const row: Vector = new Map();
      [1, s - part.from, t].forEach((value, motion) => {
        add(row, motion, value);
      });
      contacts.forEach((_, l) => {
        const yields = underContact[l]![j]! + (l === j ? 1 / stiffness : 0);
        add(row, this.firstReaction + l, (yields * this.force) / unit);
      });
      box.forEach((variable, k) => {
        const size = half[k]! / unit;
        add(row, firstVariable + k, underChange[k]![j]! / unit);
        if (variable.kind === "height" && variable.stand === stand) add(row, firstVariable + k, -size);
        if (variable.kind === "tilt" && variable.stand === stand) add(row, firstVariable + k, -c * size);
        if (variable.kind === "bow") add(row, firstVariable + k, bow * size);
      });
      this.addRow(row, this.floors[j]!, infinity);
    });
  }

  /** Says which contacts bear (true: gap 0, false: reaction 0), null = not decided. */
  decide(states: readonly (boolean | null)[]): void {
    const { infinity } = highs;
    states.forEach((bears, j) => {
      this.model.changeColBounds(this.firstReaction + j, 0, bears === false ? 0 : infinity);
      this.model.changeRowBounds(this.firstGap + j, this.floors[j]!, bears === true ? this.floors[j]! : infinity);
    });
  }

  /** Adds a yes-or-no variable to each contact: it bears, or it is clear by no more than `most` m. Exact to 2e-4 of the weight. */
  decideByIntegers(most: number): void {
    const { infinity } = highs;
    this.model.options.set({ mip_abs_gap: 2e-4 });
    this.contacts.forEach((_, j) => {
      const bears = this.addColumn(0, 1);
      this.model.changeColIntegrality(bears, highs.constants.variableType.integer);
      // r ≤ 2·bears, w ≤ most·(1 − bears)
      this.addRow(new Map([[this.firstReaction + j, 1], [bears, -2]]), -infinity, 0); // biome-ignore format: one row
      const gap = new Map([...this.rows[this.firstGap + j]!, [bears, most / this.unit] as const]);
      this.addRow(gap, -infinity, this.floors[j]! + most / this.unit);
    });
  }

  /** Greatest Σ weight·r in units of the weight; null where nothing is feasible. */
  greatest(weights: readonly number[]): number | null {
    const { model } = this;
    weights.forEach((weight, j) => {
      model.changeColCost(this.firstReaction + j, -weight);
    });
    model.run();
    let status = model.getModelStatus();
    // Started from the last set of contacts HiGHS sometimes cannot tell; from nothing, or by another method, it can.
    for (const solver of ["simplex", "ipm"]) {
      if (status !== highs.constants.modelStatus.unknown) break;
      model.clearSolver();
      model.options.set({ solver });
      model.run();
      status = model.getModelStatus();
    }
    model.options.set({ solver: "choose" });
    if (status === highs.constants.modelStatus.infeasible) return null;
    if (status !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS ended with status ${status}`);
    return -model.getObjectiveValue();
  }

  private readonly rows: Vector[] = [];

  private addColumn(low: number, high: number): number {
    this.model.addVar(low, high);
    return this.columns++;
  }

  private addRow(row: Vector, low: number, high: number): void {
    this.rows.push(row);
    this.model.addRow(low, high, { indices: [...row.keys()], values: [...row.values()] });
  }
}

/** The degrees of freedom in a rise by 1, a turn by 1 about the left end, a roll by 1. */
function rigidMotion(piece: Discretised, from: number, motion: number): number[] {
  if (piece.dofs === 3) return [0, 1, 2].map((dof) => (dof === motion ? 1 : 0));
  const nodes = piece.breaks.length;
  return Array.from({ length: piece.dofs }, (_, dof) => {
    if (dof >= 2 * nodes) return motion === 2 ? 1 : 0;
    const s = piece.breaks[dof >> 1]! - from;
    if (motion === 2) return 0;
    return dof % 2 === 0 ? [1, s][motion]! : motion;
  });
}

function downOf(load: LoadItem): number {
  return load.kind === "point" ? load.down : ((load.intensity[0] + load.intensity[1]) / 2) * (load.to - load.from);
}

/** What a unit of a variable adds to the forces of one load. */
function changeOf(load: LoadItem, variable: BoxVariable, masses: readonly Mass[], piece: Discretised): Vector {
  const { source } = load;
  if (variable.kind === "mass" && source.kind === "mass" && source.index === variable.mass)
    return forcesOf(load, piece);
  if (variable.kind === "load" && source.kind === "load" && source.index === variable.load)
    return forcesOf(load, piece);
  if (variable.kind !== "centre" || source.kind !== "mass" || source.index !== variable.mass) return new Map();
  const mass = masses[variable.mass]!;
  if (load.kind !== "point" || mass.kind !== "point") return new Map();
  const couple = mass.mass * (1 + mass.uncertainty) * 9.80665;
  const unitCouple = { ...load, down: 0, momentS: 0, momentT: 0 };
  return forcesOf({ ...unitCouple, [variable.axis === "s" ? "momentS" : "momentT"]: couple }, piece);
}
