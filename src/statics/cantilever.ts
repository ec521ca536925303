import type { BeamSegment } from "./model";

/**
 * A stretch of beam clamped at its left end, and how far every place of it moves under a unit force, a unit couple on ψ
 * or a unit couple on θ at its right end (docs/mechanics.md, M9). Rigid where a stiffness is Infinity.
 *
 * `moveTo(s)` finds the place; the fields then hold its motions: v upward, m, and the rotations, rad.
 */
export class Cantilever {
  readonly from: number;
  readonly to: number;
  /** True where nothing in it yields. */
  readonly rigid: boolean;
  /** Under 1 N upward at the end: v, m/N, and ψ, 1/N. */
  vForce = 0;
  psiForce = 0;
  /** Under 1 N·m on ψ at the end: v, 1/N, and ψ, 1/(N·m). */
  vCouple = 0;
  psiCouple = 0;
  /** Under 1 N·m on θ at the end: θ, 1/(N·m). */
  theta = 0;
  /** The segments within it, ascending, with the motions where they begin. */
  private readonly segments: readonly BeamSegment[];
  private readonly first: number;
  private readonly starts: readonly (readonly number[])[];

  constructor(segments: readonly BeamSegment[], from: number, to: number) {
    this.from = from;
    this.to = to;
    this.segments = segments;
    this.first = Math.max(
      0,
      segments.findIndex((segment) => segment.to > from),
    );
    const starts = [[from, 0, 0, 0, 0, 0]];
    this.starts = starts;
    let rigid = true;
    for (let index = this.first; index < segments.length && segments[index]!.from < to; index++) {
      const { EI, kGA, GJ, to: end } = segments[index]!;
      rigid &&= EI === Infinity && kGA === Infinity && GJ === Infinity;
      if (end < to) {
        this.within(index - this.first, end);
        starts.push([end, this.vForce, this.psiForce, this.vCouple, this.psiCouple, this.theta]);
      }
    }
    this.rigid = rigid;
  }

  moveTo(s: number): void {
    let index = this.starts.length - 1;
    while (index > 0 && this.starts[index]![0]! > s) index--;
    this.within(index, s);
  }

  /** The places between `from` and `to` where its stiffness changes. */
  get joints(): readonly number[] {
    return this.starts.slice(1).map((start) => start[0]!);
  }

  private within(index: number, s: number): void {
    const [start, vForce, psiForce, vCouple, psiCouple, theta] = this.starts[index]!;
    const { EI, kGA, GJ } = this.segments[this.first + index]!;
    const z = s - start!;
    const rest = this.to - start!;
    // M9: M = F·(b − s) + C, V = −F;  ψ' = M/EI,  v' = ψ − V/kGA,  θ' = T/GJ
    this.psiForce = psiForce! + (rest - z / 2) * (z / EI);
    this.vForce = vForce! + psiForce! * z + (rest / 2 - z / 6) * ((z * z) / EI) + z / kGA;
    this.psiCouple = psiCouple! + z / EI;
    this.vCouple = vCouple! + psiCouple! * z + (z * z) / (2 * EI);
    this.theta = theta! + z / GJ;
  }
}
