/**
 * A part cut where anything begins, ends or acts: between two cuts shear, moment, torque and the motions are polynomials
 * (docs/mechanics.md, M21 to M23).
 */

import type { DiagramCell } from "./answers";
import type { LoadItem, PartModel } from "./model";
import { evaluate } from "./polynomial";

/** Motion of the section at s: v in m, ψ and θ in rad. */
export interface Section {
  readonly s: number;
  readonly v: number;
  readonly psi: number;
  readonly theta: number;
}

/**
 * The cells of a solved part, ascending, without gaps. Forces are summed up from the left end; motions start anew at
 * every contact section, so that no error grows along the part.
 *
 * @param reactions of the part's contacts, N.
 * @param sections motions at the different s of the contacts, ascending; at least one.
 */
export function diagramCells(
  part: PartModel,
  reactions: ArrayLike<number>,
  sections: readonly Section[],
): readonly DiagramCell[] {
  const cells = forcesOf(part, reactions);
  const known = new Map(sections.map((section) => [section.s, section]));
  const first = cells.findIndex((cell) => known.has(cell.from));
  // What lies left of the first contact section hangs on it; a part whose only one is its right end hangs on that.
  let end = known.get(first < 0 ? part.to : cells[first]!.from)!;
  for (let index = (first < 0 ? cells.length : first) - 1; index >= 0; index--) {
    begin(cells[index]!, 0, 0, 0);
    const moved = endOf(cells[index]!);
    const length = cells[index]!.to - cells[index]!.from;
    const psi = end.psi - moved.psi;
    end = { s: cells[index]!.from, psi, v: end.v - moved.v - psi * length, theta: end.theta - moved.theta };
    begin(cells[index]!, end.v, end.psi, end.theta);
  }
  for (let index = Math.max(0, first); first >= 0 && index < cells.length; index++) {
    const { v, psi, theta } = known.get(cells[index]!.from) ?? endOf(cells[index - 1]!);
    begin(cells[index]!, v, psi, theta);
  }
  return cells;
}

/** A cell while its motions are being filled in. */
interface OpenCell extends DiagramCell {
  readonly psi: number[];
  readonly v: number[];
  readonly theta: number[];
  /** V/kGA where the cell begins. */
  readonly slip: number;
}

function begin(cell: OpenCell, v: number, psi: number, theta: number): void {
  cell.psi[0] = psi;
  cell.v[0] = v;
  cell.v[1] = psi - cell.slip;
  cell.theta[0] = theta;
}

function endOf({ from, to, psi, v, theta }: DiagramCell): Section {
  const length = to - from;
  return { s: to, v: evaluate(v, length), psi: evaluate(psi, length), theta: evaluate(theta, length) };
}

/** The cells with their forces, and with motions as they are where a cell begins at rest. */
function forcesOf(part: PartModel, reactions: ArrayLike<number>): OpenCell[] {
  const cuts = cutsOf(part);
  const jumps = jumpsOf(part, reactions);
  const cells: OpenCell[] = [];
  let [shear, moment, torque] = [0, 0, 0];
  let [jump, segment] = [0, 0];
  for (let index = 0; index + 1 < cuts.length; index++) {
    const [from, to] = [cuts[index]!, cuts[index + 1]!];
    for (; jump < jumps.length && jumps[jump]!.s <= from; jump++) {
      shear += jumps[jump]!.shear;
      moment += jumps[jump]!.moment;
      torque += jumps[jump]!.torque;
    }
    while (part.segments[segment]!.to <= from) segment++;
    const { EI, kGA, GJ } = part.segments[segment]!;
    const [q0, q1, m0, m1] = lineLoadAt(part.loads, from, to);
    // M21: V' = −q, M' = V, T' = q·t
    const V = [shear, -q0, -q1 / 2];
    const M = integral(V, moment);
    const T = [torque, m0, m1 / 2];
    // M22: ψ' = M/EI, v' = ψ − V/kGA, θ' = T/GJ
    const psi = integral(divided(M, EI), 0);
    const slip = divided(V, kGA);
    const v = integral(
      psi.map((coefficient, power) => coefficient - (slip[power] ?? 0)),
      0,
    );
    cells.push({
      from,
      to,
      shear: V,
      moment: M,
      torque: T,
      psi,
      v,
      theta: integral(divided(T, GJ), 0),
      slip: slip[0]!,
    });
    shear = evaluate(V, to - from);
    moment = evaluate(M, to - from);
    torque = evaluate(T, to - from);
  }
  return cells;
}

function integral(coefficients: readonly number[], start: number): number[] {
  return [start, ...coefficients.map((coefficient, power) => coefficient / (power + 1))];
}

function divided(coefficients: readonly number[], by: number): number[] {
  return coefficients.map((coefficient) => coefficient / by);
}

/** Everything that a polynomial cannot run across, ascending. */
function cutsOf({ from, to, segments, contacts, loads }: PartModel): number[] {
  const cuts = new Set([from, to]);
  for (const segment of segments) cuts.add(segment.to);
  for (const contact of contacts) cuts.add(contact.s);
  for (const load of loads) {
    if (load.kind === "point") cuts.add(load.s);
    else cuts.add(load.from).add(load.to);
  }
  return [...cuts].sort((a, b) => a - b);
}

interface Jump {
  readonly s: number;
  readonly shear: number;
  readonly moment: number;
  readonly torque: number;
}

/** What acts at one section, ascending in s: T is minus the sum of what works on θ to the left. */
function jumpsOf({ contacts, loads }: PartModel, reactions: ArrayLike<number>): Jump[] {
  const jumps: Jump[] = [];
  for (const [index, { s, t }] of contacts.entries()) {
    const force = reactions[index]!;
    if (force > 0) jumps.push({ s, shear: force, moment: 0, torque: -force * t });
  }
  for (const load of loads) {
    if (load.kind === "point") {
      jumps.push({ s: load.s, shear: -load.down, moment: load.momentS, torque: load.momentT });
    }
  }
  return jumps.sort((a, b) => a.s - b.s);
}

/** Σ q and Σ q·t on a cell: their values where it begins, and their growth along it. */
function lineLoadAt(loads: readonly LoadItem[], from: number, to: number): [number, number, number, number] {
  let [q0, q1, m0, m1] = [0, 0, 0, 0];
  for (const load of loads) {
    if (load.kind !== "line" || load.from > from || load.to < to) continue;
    const growth = (load.intensity[1] - load.intensity[0]) / (load.to - load.from);
    const start = load.intensity[0] + growth * (from - load.from);
    q0 += start;
    q1 += growth;
    m0 += start * load.t;
    m1 += growth * load.t;
  }
  return [q0, q1, m0, m1];
}
