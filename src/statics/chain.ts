/**
 * A part of beam condensed to its contact sections: what happens between two of them is a flexibility and the effect of
 * the loads there (docs/mechanics.md, M8 to M11). Numbers only, made once, read by every solve.
 *
 * Within the chain lengths are divided by the part's length l: motions of a section are (v, l·ψ, l·θ) in m, what works
 * on them (force, couple/l, couple/l) in N, so all flexibilities are in m/N and all stiffnesses in N/m.
 */

import { Cantilever } from "./cantilever";
import type { LineLoad, LoadItem, PartModel, PointLoad } from "./model";
import { Numbers } from "./numbers";
import { resultantOf } from "./resultant";

/** Numbers of the effect of loads on one stretch: three resultants about its left end, three motions of its right end. */
export const effectSize = 6;

export interface Chain {
  /** Length of the part, m. */
  readonly length: number;
  /** s of every node, ascending: the different s of the contacts, m. */
  readonly nodes: Float64Array;
  /** Contacts of node i: first[i] ≤ j < first[i + 1]. */
  readonly first: Int32Array;
  /** t/l of every contact. */
  readonly arm: Float64Array;
  /** (s − s of the first node)/l of every node. */
  readonly place: Float64Array;
  /** (s of the next node − s)/l, by node but the last. */
  readonly span: Float64Array;
  /** M9: flexibility of the stretch after each node but the last, clamped at its left end: vv, vψ, ψψ, θθ, m/N. */
  readonly flexibility: Float64Array;
  readonly patterns: number;
  /**
   * M10: effect of one load pattern (factor 1) on a stretch, six numbers each, by pattern and then by stretch: the stretch
   * after each node but the last, then what lies left of the first node, then what lies right of the last.
   */
  readonly effects: Float64Array;
  /** M7: W, W·(s_R − from), W·t_R of each load pattern, N and N·m. */
  readonly resultants: Float64Array;
}

/** Load items whose factor is one and the same. */
export type LoadPattern = readonly LoadItem[];

/** Condenses a part; `patterns` are the load items that vary together (all loads of the part as one, if left out). */
export function chainOf(
  part: PartModel,
  patterns: readonly LoadPattern[] = [part.loads],
  numbers = new Numbers(),
): Chain {
  const { contacts, segments } = part;
  const length = part.to - part.from;
  const count = contacts.length;
  const nodes: number[] = [];
  const first: number[] = [];
  const arm = numbers.take(count);
  for (let j = 0; j < count; j++) {
    const { s, t } = contacts[j]!;
    if (s !== nodes[nodes.length - 1]) {
      nodes.push(s);
      first.push(j);
    }
    arm[j] = t / length;
  }
  first.push(count);
  const stretches = Math.max(0, nodes.length - 1);
  const span = numbers.take(stretches);
  const flexibility = numbers.take(4 * stretches);
  const cantilevers: Cantilever[] = [];
  for (let i = 0; i < stretches; i++) {
    const cantilever = new Cantilever(segments, nodes[i]!, nodes[i + 1]!);
    cantilevers.push(cantilever);
    span[i] = (nodes[i + 1]! - nodes[i]!) / length;
    cantilever.moveTo(nodes[i + 1]!);
    flexibility[4 * i] = cantilever.vForce;
    flexibility[4 * i + 1] = cantilever.psiForce * length;
    flexibility[4 * i + 2] = cantilever.psiCouple * length * length;
    flexibility[4 * i + 3] = cantilever.theta * length * length;
  }
  const chain: Chain = {
    length,
    nodes: numbers.from(nodes, (s) => s),
    first: Int32Array.from(first),
    arm,
    place: numbers.from(nodes, (s) => (s - nodes[0]!) / length),
    span,
    flexibility,
    patterns: patterns.length,
    effects: numbers.take(effectSize * patterns.length * (stretches + 2)),
    resultants: numbers.take(3 * patterns.length),
  };
  const effects = new LoadEffects(chain, cantilevers, part.from);
  for (const [index, pattern] of patterns.entries()) effects.add(index, pattern);
  return chain;
}

/** Gauss–Legendre rule of three points on [0, 1]: exact to the fifth degree, and load × motion is of the fourth. */
const gauss = [
  { at: (1 - Math.sqrt(3 / 5)) / 2, weight: 5 / 18 },
  { at: 1 / 2, weight: 8 / 18 },
  { at: (1 + Math.sqrt(3 / 5)) / 2, weight: 5 / 18 },
] as const;

/** Puts the loads of a pattern on the stretches they lie on. */
class LoadEffects {
  private readonly chain: Chain;
  private readonly cantilevers: readonly Cantilever[];
  private readonly origin: number;

  constructor(chain: Chain, cantilevers: readonly Cantilever[], origin: number) {
    this.chain = chain;
    this.cantilevers = cantilevers;
    this.origin = origin;
  }

  add(pattern: number, items: LoadPattern): void {
    const { force, momentS, momentT } = resultantOf(items, this.origin);
    this.chain.resultants.set([force, momentS, momentT], 3 * pattern);
    if (this.chain.nodes.length === 0) return;
    for (const item of items) {
      if (item.kind === "point") this.point(pattern, item);
      else this.line(pattern, item);
    }
  }

  /** Index of the stretch at s: between nodes, or left of all, or right of all. */
  private stretchAt(s: number): number {
    const { nodes } = this.chain;
    const last = nodes.length - 1;
    if (s < nodes[0]!) return last;
    if (s >= nodes[last]!) return last + 1;
    let [low, high] = [0, last];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (nodes[middle]! <= s) low = middle;
      else high = middle;
    }
    return low;
  }

  private line(pattern: number, item: LineLoad): void {
    const { nodes } = this.chain;
    const last = nodes.length - 1;
    if (item.from < nodes[0]!) this.stretchOfLine(pattern, last, item, item.from, Math.min(item.to, nodes[0]!));
    if (item.to > nodes[last]!) this.stretchOfLine(pattern, last + 1, item, Math.max(item.from, nodes[last]!), item.to);
    const firstStretch = item.from <= nodes[0]! ? 0 : this.stretchAt(item.from);
    for (let i = firstStretch; i < last && nodes[i]! < item.to; i++) {
      let from = Math.max(item.from, nodes[i]!);
      for (const joint of this.cantilevers[i]!.joints) {
        if (joint <= from || joint >= item.to) continue;
        this.stretchOfLine(pattern, i, item, from, joint);
        from = joint;
      }
      this.stretchOfLine(pattern, i, item, from, Math.min(item.to, nodes[i + 1]!));
    }
  }

  /** A line load on [from, to], within one stretch and one stiffness. */
  private stretchOfLine(pattern: number, stretch: number, item: LineLoad, from: number, to: number): void {
    const [q0, q1] = item.intensity;
    const slope = (q1 - q0) / (item.to - item.from);
    for (const { at, weight } of gauss) {
      const s = from + at * (to - from);
      const down = (q0 + slope * (s - item.from)) * weight * (to - from);
      this.force(pattern, stretch, s, down, 0, down * item.t);
    }
  }

  private point(pattern: number, { s, down, momentS, momentT }: PointLoad): void {
    this.force(pattern, this.stretchAt(s), s, down, momentS, momentT);
  }

  /** M10: down, N, and the couples −momentS on ψ and −momentT on θ, N·m, at s of a stretch. */
  private force(pattern: number, stretch: number, s: number, down: number, momentS: number, momentT: number): void {
    const { effects, nodes, length } = this.chain;
    const last = nodes.length - 1;
    const at = effectSize * (pattern * (last + 2) + stretch);
    const left = stretch === last ? nodes[0]! : stretch > last ? nodes[last]! : nodes[stretch]!;
    effects[at]! -= down;
    effects[at + 1]! -= (down * (s - left) + momentS) / length;
    effects[at + 2]! -= momentT / length;
    const cantilever = this.cantilevers[stretch];
    if (cantilever === undefined || cantilever.rigid) return;
    cantilever.moveTo(s);
    // Maxwell and Betti: the end moves under a load at s as s moves under that load at the end.
    effects[at + 3]! -= down * cantilever.vForce + momentS * cantilever.psiForce;
    effects[at + 4]! -= (down * cantilever.vCouple + momentS * cantilever.psiCouple) * length;
    effects[at + 5]! -= momentT * cantilever.theta * length;
  }
}
