/** Moment, shear, torque and shape of a solved part: extremes, curves for drawing, and values under a pointer. */

import type { Curves, DiagramCell, Extreme, Extremes } from "./answers";
import { staticsTolerance } from "./constants";
import { derivativeOf, evaluate, signChanges } from "./polynomial";

/** The diagrams that a cell holds as polynomials. */
type Kind = "shear" | "moment" | "torque" | "v" | "theta";

/** A straight line: its value at s = 0 and its rise per metre. */
export interface Chord {
  readonly at0: number;
  readonly rise: number;
}

/** Extremes of moment, shear or torque: at and between cuts, both sides of every jump, 0 beyond both ends. */
export function extremesOfForce(cells: readonly DiagramCell[], kind: "shear" | "moment" | "torque"): Extremes {
  const found = new Extent({ value: 0, s: cells[0]!.from });
  for (const cell of cells) found.along(cell, cell[kind]);
  found.take({ value: 0, s: cells.at(-1)!.to });
  return found.extremes;
}

/** The straight line through v at two places; null where they are one. */
export function chordThrough(cells: readonly DiagramCell[], from: number, to: number): Chord | null {
  if (!(to - from > staticsTolerance.place)) return null;
  const rise = (at(cells, "v", to) - at(cells, "v", from)) / (to - from);
  return { at0: at(cells, "v", from) - rise * from, rise };
}

/** Extremes of v less a straight line, m. */
export function extremesOfDeflection(cells: readonly DiagramCell[], chord: Chord): Extremes {
  const found = new Extent(null);
  for (const cell of cells) found.along(cell, deflectionIn(cell, chord));
  return found.extremes;
}

/** v less a straight line at s, m. */
export function deflectionAt(cells: readonly DiagramCell[], chord: Chord, s: number): number {
  const cell = cellAt(cells, s);
  return evaluate(deflectionIn(cell, chord), s - cell.from);
}

/** Extremes of θ less its value at a place, degrees. */
export function extremesOfTwist(cells: readonly DiagramCell[], from: number): Extremes {
  const start = at(cells, "theta", from);
  const found = new Extent(null);
  for (const cell of cells) {
    const [theta0, ...rest] = cell.theta;
    found.along(cell, [theta0! - start, ...rest]);
  }
  const { most, least } = found.extremes;
  const degrees = ({ value, s }: Extreme): Extreme => ({ value: (value * 180) / Math.PI, s });
  return { most: degrees(most), least: degrees(least) };
}

/** Everything that the diagrams show at s; where there is a jump, the value just after it. */
export function diagramAt(
  cells: readonly DiagramCell[],
  s: number,
): {
  readonly shear: number;
  readonly moment: number;
  readonly torque: number;
  readonly v: number;
  readonly theta: number;
} {
  return {
    shear: at(cells, "shear", s),
    moment: at(cells, "moment", s),
    torque: at(cells, "torque", s),
    v: at(cells, "v", s),
    theta: at(cells, "theta", s),
  };
}

/** Stations over the length of a part, for drawing; every cut and every extreme is one besides. */
const stationsOverLength = 80;

/** Curves for drawing. @param chord what deflection is measured from, or null. */
export function curvesOf(cells: readonly DiagramCell[], chord: Chord | null): Curves {
  const length = cells.at(-1)!.to - cells[0]!.from;
  const curves: Record<Kind | "s", number[]> = { s: [], moment: [], shear: [], torque: [], v: [], theta: [] };
  const deflection: number[] = [];
  for (const cell of cells) {
    const line = chord && deflectionIn(cell, chord);
    const end = cell.to - cell.from;
    const count = Math.max(1, Math.ceil((stationsOverLength * end) / length));
    const stations = [
      ...Array.from({ length: count + 1 }, (_, index) => (index === count ? end : (end * index) / count)),
      ...signChanges(cell.shear, end),
      ...(line === null ? [] : signChanges(derivativeOf(line), end)),
    ];
    for (const x of stations.sort((a, b) => a - b)) {
      curves.s.push(x === end ? cell.to : cell.from + x);
      for (const kind of kinds) curves[kind].push(evaluate(cell[kind], x));
      if (line !== null) deflection.push(evaluate(line, x));
    }
  }
  return { ...curves, deflection: chord ? deflection : null };
}
const kinds = ["moment", "shear", "torque", "v", "theta"] as const;

function deflectionIn({ from, v }: DiagramCell, { at0, rise }: Chord): number[] {
  const [v0, v1, ...rest] = v;
  return [v0! - (at0 + rise * from), v1! - rise, ...rest];
}

function at(cells: readonly DiagramCell[], kind: Kind, s: number): number {
  const cell = cellAt(cells, s);
  return evaluate(cell[kind], s - cell.from);
}

/** The cell that s lies in; where two meet, the right one. */
function cellAt(cells: readonly DiagramCell[], s: number): DiagramCell {
  let [low, high] = [0, cells.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (cells[middle]!.from <= s) low = middle;
    else high = middle;
  }
  return cells[low]!;
}

/** The least and the greatest of what it is shown. */
class Extent {
  private most: Extreme | null;
  private least: Extreme | null;

  constructor(first: Extreme | null) {
    this.most = first;
    this.least = first;
  }

  take(extreme: Extreme): void {
    if (this.most === null || extreme.value > this.most.value) this.most = extreme;
    if (this.least === null || extreme.value < this.least.value) this.least = extreme;
  }

  /** A polynomial over a cell: its ends and wherever its derivative changes sign. */
  along({ from, to }: DiagramCell, coefficients: readonly number[]): void {
    this.take({ value: coefficients[0]!, s: from });
    for (const x of signChanges(derivativeOf(coefficients), to - from)) {
      this.take({ value: evaluate(coefficients, x), s: from + x });
    }
    this.take({ value: evaluate(coefficients, to - from), s: to });
  }

  get extremes(): Extremes {
    return { most: this.most!, least: this.least! };
  }
}
