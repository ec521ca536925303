/**
 * Linear equilibrium of a chain with a given set of bearing contacts, by one sweep from left to right and one back
 * (docs/mechanics.md, M12 to M15).
 *
 * What is left of a section is a stiffness S = Rᵀ·R, and it is R that is carried along, so that very stiff contacts on a
 * very soft beam cost half as many digits as S would. The flexibility of a stretch enters, not its stiffness: rigid,
 * shear-rigid, twist-rigid and vanishingly short stretches are nothing special.
 *
 * All arrays are made once; `factor` and `solve` allocate nothing.
 */

import type { Chain } from "./chain";
import { Numbers } from "./numbers";

/**
 * A motion holds by nothing where its root stiffness is under this × that of all contacts (no unit): contacts on one
 * line within 1e-11 of the part's length, far under the distance at which a part is called unstable.
 */
const nothing = 1e-11;

/** Squares of smaller numbers lose digits, N^½/m^½: sections 1e-140 m apart are at one place. */
const underflow = 1e-140;

export class Sweep {
  /** Increments of the motions (v, l·ψ, l·θ) of every node, m. */
  readonly motions: Float64Array;
  private readonly chain: Chain;
  private readonly count: number;
  /** C = L·Lᵀ of every stretch: l₁₁, l₂₁, l₂₂ of bending and l₃₃ of torsion. */
  private readonly roots: Float64Array;
  /** S of all that is left of a node, its own contacts excluded: 11 12 13 22 23 33. */
  private readonly before: Float64Array;
  /** Inner forces carried to a node, unyielding, and the motion that is made up of flexibility. */
  private readonly carried: Float64Array;
  private readonly yielded: Float64Array;
  /** R of everything at the last node, contacts included: 11 12 13 22 23 33; then the least root that holds a motion. */
  private readonly whole: Float64Array;

  constructor(chain: Chain, numbers = new Numbers()) {
    const { flexibility } = chain;
    this.chain = chain;
    this.count = chain.nodes.length;
    this.motions = numbers.take(3 * this.count);
    this.before = numbers.take(6 * this.count);
    this.carried = numbers.take(3 * this.count);
    this.yielded = numbers.take(3 * this.count);
    this.roots = numbers.take(flexibility.length);
    this.whole = numbers.take(7);
    for (let c = 0; c < flexibility.length; c += 4) {
      const l11 = Math.sqrt(flexibility[c]!);
      const l21 = l11 > 0 ? flexibility[c + 1]! / l11 : 0;
      this.roots[c] = l11;
      this.roots[c + 1] = l21;
      this.roots[c + 2] = Math.sqrt(Math.max(0, flexibility[c + 2]! - l21 * l21));
      this.roots[c + 3] = Math.sqrt(flexibility[c + 3]!);
    }
  }

  /** M12, M13: the stiffness of what is left of each node. @param bearing 1 where a contact bears, else 0. */
  factor(stiffness: Float64Array, bearing: Uint8Array): void {
    const { first, arm, span } = this.chain;
    const { before, roots, whole } = this;
    let r11 = 0;
    let r12 = 0;
    let r13 = 0;
    let r22 = 0;
    let r23 = 0;
    let r33 = 0;
    let all = 0;
    for (let i = 0; ; i++) {
      // M12: the bearing contacts of a node are the rows √K·(1, 0, τ) and √Σk(t − τ)²·(0, 0, 1), τ their common arm.
      let sum = 0;
      let moment = 0;
      for (let j = first[i]!; j < first[i + 1]!; j++) {
        all += stiffness[j]!;
        if (bearing[j] === 0) continue;
        sum += stiffness[j]!;
        moment += stiffness[j]! * arm[j]!;
      }
      if (sum > 0) {
        const middle = moment / sum;
        let spread = 0;
        for (let j = first[i]!; j < first[i + 1]!; j++) {
          if (bearing[j] === 1) spread += stiffness[j]! * (arm[j]! - middle) * (arm[j]! - middle);
        }
        // Two plane rotations bring them into R.
        const root = Math.sqrt(sum);
        const d11 = Math.sqrt(r11 * r11 + sum);
        const c1 = r11 / d11;
        const s1 = root / d11;
        const row2 = -s1 * r12;
        const row3 = root * middle * c1 - s1 * r13;
        r11 = d11;
        r12 *= c1;
        r13 = c1 * r13 + s1 * root * middle;
        const d22 = Math.sqrt(r22 * r22 + row2 * row2);
        const turns = d22 > underflow;
        const c2 = turns ? r22 / d22 : 1;
        const s2 = turns ? row2 / d22 : 0;
        const rest = c2 * row3 - s2 * r23;
        r22 = d22;
        r23 = c2 * r23 + s2 * row3;
        r33 = Math.sqrt(r33 * r33 + rest * rest + spread);
      }
      if (i === this.count - 1) break;
      // M13: R' = R·H⁻¹, v = v₀ + λ·ψ₀
      r12 -= span[i]! * r11;
      const l11 = roots[4 * i]!;
      const l33 = roots[4 * i + 3]!;
      if (l11 > 0 || l33 > 0) {
        // M13: R ← T⁻¹·R', T·Tᵀ = 1 + G·Gᵀ, G = R'·L; T is upper triangular, found column by column from the last.
        const l21 = roots[4 * i + 1]!;
        const l22 = roots[4 * i + 2]!;
        const g11 = r11 * l11 + r12 * l21;
        const g12 = r12 * l22;
        const g21 = r22 * l21;
        const g22 = r22 * l22;
        const g33 = r33 * l33;
        const t33 = Math.sqrt(1 + g33 * g33);
        const g13 = (r13 * l33) / t33;
        const g23 = (r23 * l33) / t33;
        const t13 = g13 * g33;
        const t23 = g23 * g33;
        const t22 = Math.sqrt(1 + g21 * g21 + g22 * g22 + g23 * g23);
        const t12 = (g11 * g21 + g12 * g22 + g13 * g23) / t22;
        const share = t12 / t22;
        const h1 = g11 - share * g21;
        const h2 = g12 - share * g22;
        const h3 = g13 - share * g23;
        const t11 = Math.sqrt(1 + share * share + h1 * h1 + h2 * h2 + h3 * h3);
        r33 /= t33;
        r23 = (r23 - t23 * r33) / t22;
        r22 /= t22;
        r13 = (r13 - t12 * r23 - t13 * r33) / t11;
        r12 = (r12 - t12 * r22) / t11;
        r11 /= t11;
      }
      const b = 6 * i + 6;
      before[b] = r11 * r11;
      before[b + 1] = r11 * r12;
      before[b + 2] = r11 * r13;
      before[b + 3] = r12 * r12 + r22 * r22;
      before[b + 4] = r12 * r13 + r22 * r23;
      before[b + 5] = r13 * r13 + r23 * r23 + r33 * r33;
    }
    whole[0] = r11;
    whole[1] = r12;
    whole[2] = r13;
    whole[3] = r22;
    whole[4] = r23;
    whole[5] = r33;
    whole[6] = nothing * Math.sqrt(all);
  }

  /**
   * M14, M15: the increments of motion that undo an unbalance, with the contacts of the last `factor`. False where some
   * motion is held by nothing: it then goes far, but downhill.
   *
   * @param push what the contacts lack at unchanged motion, N, upward, by contact.
   * @param jump what the right end of each stretch must move beyond its own yielding, three numbers by stretch, m.
   * @param end what lacks beyond the last node, three numbers, N, and the force that is rounding: smaller ones move
   *   nothing that nothing holds.
   */
  solve(push: Float64Array, jump: Float64Array, end: Float64Array): boolean {
    const { first, arm, span, flexibility } = this.chain;
    const { before, carried, yielded, motions } = this;
    const last = this.count - 1;
    let p1 = 0;
    let p2 = 0;
    let p3 = 0;
    for (let i = 0; ; i++) {
      for (let j = first[i]!; j < first[i + 1]!; j++) {
        p1 -= push[j]!;
        p3 -= push[j]! * arm[j]!;
      }
      if (i === last) break;
      // M14: y = H⁻ᵀ·p,  p ← y − S·(C·y + e)
      p2 -= span[i]! * p1;
      const n = 3 * i + 3;
      const c = 4 * i;
      const b = 6 * i + 6;
      const d1 = flexibility[c]! * p1 + flexibility[c + 1]! * p2 + jump[3 * i]!;
      const d2 = flexibility[c + 1]! * p1 + flexibility[c + 2]! * p2 + jump[3 * i + 1]!;
      const d3 = flexibility[c + 3]! * p3 + jump[3 * i + 2]!;
      carried[n] = p1;
      carried[n + 1] = p2;
      carried[n + 2] = p3;
      yielded[n] = d1;
      yielded[n + 1] = d2;
      yielded[n + 2] = d3;
      p1 -= before[b]! * d1 + before[b + 1]! * d2 + before[b + 2]! * d3;
      p2 -= before[b + 1]! * d1 + before[b + 3]! * d2 + before[b + 4]! * d3;
      p3 -= before[b + 2]! * d1 + before[b + 4]! * d2 + before[b + 5]! * d3;
    }
    motions[3 * last] = end[0]! - p1;
    motions[3 * last + 1] = end[1]! - p2;
    motions[3 * last + 2] = end[2]! - p3;
    const held = this.lastMotions(end);
    for (let i = last; i > 0; i--) {
      // M15: d = q − C·y − e,  q₀ = H⁻¹·(d − C·S·d)
      const n = 3 * i;
      const c = 4 * i - 4;
      const b = 6 * i;
      const d1 = motions[n]! - yielded[n]!;
      const d2 = motions[n + 1]! - yielded[n + 1]!;
      const d3 = motions[n + 2]! - yielded[n + 2]!;
      const g1 = before[b]! * d1 + before[b + 1]! * d2 + before[b + 2]! * d3;
      const g2 = before[b + 1]! * d1 + before[b + 3]! * d2 + before[b + 4]! * d3;
      const g3 = before[b + 2]! * d1 + before[b + 4]! * d2 + before[b + 5]! * d3;
      const psi = d2 - flexibility[c + 1]! * g1 - flexibility[c + 2]! * g2;
      motions[n - 3] = d1 - flexibility[c]! * g1 - flexibility[c + 1]! * g2 - span[i - 1]! * psi;
      motions[n - 2] = psi;
      motions[n - 1] = d3 - flexibility[c + 3]! * g3;
    }
    return held;
  }

  /** Rᵀ·R·q = f at the last node, in place. */
  private lastMotions(end: Float64Array): boolean {
    const { whole, motions } = this;
    const at = 3 * this.count - 3;
    const r12 = whole[1]!;
    const r13 = whole[2]!;
    const r23 = whole[4]!;
    const least = whole[6]!;
    const noise = end[3]!;
    const f1 = motions[at]!;
    const r11 = Math.max(whole[0]!, least);
    const r22 = Math.max(whole[3]!, least);
    const r33 = Math.max(whole[5]!, least);
    const y1 = (r11 === least && Math.abs(f1) <= noise ? 0 : f1) / r11;
    const l2 = motions[at + 1]! - r12 * y1;
    const y2 = (r22 === least && Math.abs(l2) <= noise ? 0 : l2) / r22;
    const l3 = motions[at + 2]! - r13 * y1 - r23 * y2;
    const y3 = (r33 === least && Math.abs(l3) <= noise ? 0 : l3) / r33;
    const q3 = y3 / r33;
    const q2 = (y2 - r23 * q3) / r22;
    motions[at + 2] = q3;
    motions[at + 1] = q2;
    motions[at] = (y1 - r12 * q2 - r13 * q3) / r11;
    return r11 > least && r22 > least && r33 > least;
  }
}
