/**
 * The contact problem of one part while it is being solved: motions of the chain, contact forces, and how far both are
 * from equilibrium and from the contact law (docs/mechanics.md, M16 to M19). Nothing is allocated after construction.
 *
 * The forces are kept beside the motions and not derived from them: they balance the loads to rounding, however stiff
 * the stands. Every step is an increment that undoes what is still wrong, so errors of one step are mended by the next.
 */

import { type Chain, chainOf, effectSize, type LoadPattern } from "./chain";
import type { PartModel } from "./model";
import { Numbers } from "./numbers";
import { Support } from "./support";
import { Sweep } from "./sweep";

/** What counts as rounding; none of it may be changed by a plan. All relative to W, without a unit. */
export const rounding = {
  /** A force that moves nothing. */
  force: 1e-14,
  /** A contact so far off its law obeys it, and a step that changes no force by more is the last. */
  law: 1e-13,
  /** Rounding of the heights times stiffness, above which they are levelled out. */
  heights: 1e-11,
} as const;

export class ContactProblem {
  readonly chain: Chain;
  readonly support: Support;
  /** h_j by contact of the part, m. */
  readonly heights: Float64Array;
  /** k_j by contact, N/m. */
  readonly stiffness: Float64Array;
  /** Factor on each load pattern. */
  readonly factors: Float64Array;
  /** W, W·(s_R − from), W·t_R with the present factors, N and N·m. */
  readonly resultant: Float64Array;

  /** 1 where a contact is taken to bear. */
  readonly bearing: Uint8Array;
  /** v, l·ψ, l·θ of every node over the plane taken out of the heights, m. */
  readonly motions: Float64Array;
  /** Contact forces, N; they balance the loads after every whole step. */
  readonly force: Float64Array;
  /** h_j − u_j, m, after `unbalance`. */
  readonly depth: Float64Array;
  /** How the last `increment` would change forces and u_j at the contacts, N and m. */
  readonly growth: Float64Array;
  readonly rise: Float64Array;
  /** How far a contact force may be off its law and still be right to rounding, N. */
  readonly slack: Float64Array;
  /** How much of the last increment to go, and the greatest change of a contact force in the whole of it, N. */
  readonly progress: Float64Array;
  /** Sweeps since `reset`. */
  sweeps = 0;

  private readonly sweep: Sweep;
  /** Σ factor·effect by stretch. */
  private readonly effects: Float64Array;
  /** Heights over the plane taken out of them, m. */
  private readonly unevenness: Float64Array;
  /** That plane: v, l·ψ, l·θ at the first node, m. */
  private readonly plane: Float64Array;
  private readonly push: Float64Array;
  private readonly jump: Float64Array;
  private readonly end: Float64Array;
  private readonly shift: Float64Array;

  constructor(part: PartModel, patterns?: readonly LoadPattern[]) {
    const numbers = new Numbers();
    const chain = chainOf(part, patterns, numbers);
    const count = part.contacts.length;
    const nodes = chain.nodes.length;
    this.chain = chain;
    this.resultant = numbers.take(3);
    this.plane = numbers.take(3);
    this.end = numbers.take(4);
    this.shift = numbers.take(3);
    this.progress = numbers.take(2);
    this.support = new Support(part);
    this.heights = numbers.from(part.contacts, (contact) => contact.height);
    this.stiffness = numbers.from(part.contacts, (contact) => contact.stiffness);
    this.factors = numbers.take(chain.patterns).fill(1);
    this.bearing = new Uint8Array(count).fill(1);
    this.motions = numbers.take(3 * nodes);
    this.force = numbers.take(count);
    this.depth = numbers.take(count);
    this.growth = numbers.take(count);
    this.rise = numbers.take(count);
    this.slack = numbers.take(count);
    this.sweep = new Sweep(chain, numbers);
    this.effects = numbers.take(effectSize * (nodes + 1));
    this.unevenness = numbers.take(count);
    this.push = numbers.take(count);
    this.jump = numbers.take(3 * nodes);
  }

  /** Takes in heights, stiffnesses and factors; the piece unloaded at the first contact's height. */
  reset(): void {
    const { effects, resultants, patterns } = this.chain;
    const { factors, resultant, heights } = this;
    const size = this.effects.length;
    this.effects.fill(0);
    resultant.fill(0);
    for (let p = 0; p < patterns; p++) {
      const factor = factors[p]!;
      for (let i = 0; i < size; i++) this.effects[i]! += factor * effects[size * p + i]!;
      for (let i = 0; i < 3; i++) resultant[i]! += factor * resultants[3 * p + i]!;
    }
    for (let j = 0; j < heights.length; j++) this.unevenness[j] = heights[j]! - heights[0]!;
    this.setSlack();
    this.plane.fill(0);
    this.motions.fill(0);
    this.force.fill(0);
    this.sweeps = 0;
  }

  /**
   * Moves the resultant by a hair, in fractions of the part's length, and back with the opposite sign: a load exactly on
   * the line of two contacts leaves a motion that nothing decides.
   */
  nudge(alongS: number, alongT: number): void {
    const right = effectSize * this.chain.nodes.length;
    this.effects[right + 1]! -= alongS * this.resultant[0]!;
    this.effects[right + 2]! -= alongT * this.resultant[0]!;
  }

  /** M12, M13 for the contacts that bear now. */
  factor(): void {
    this.sweep.factor(this.stiffness, this.bearing);
  }

  /** M19: depths of the present motions, and what the stretches and the right end lack under the present forces. */
  unbalance(): void {
    const { first, arm, span, flexibility } = this.chain;
    const { unevenness, depth, motions, effects, force, jump, end } = this;
    const last = this.chain.nodes.length - 1;
    // Left of the first node the inner force balances the loads there.
    let g1 = -effects[6 * last]!;
    let g2 = -effects[6 * last + 1]!;
    let g3 = -effects[6 * last + 2]!;
    for (let i = 0; ; i++) {
      const v = motions[3 * i]!;
      const psi = motions[3 * i + 1]!;
      const theta = motions[3 * i + 2]!;
      for (let j = first[i]!; j < first[i + 1]!; j++) {
        depth[j] = unevenness[j]! - (v + arm[j]! * theta);
        g1 -= force[j]!;
        g3 -= force[j]! * arm[j]!;
      }
      if (i === last) break;
      const e = 6 * i;
      const c = 4 * i;
      const n = 3 * i;
      g1 -= effects[e]!;
      g2 -= effects[e + 1]! + span[i]! * g1;
      g3 -= effects[e + 2]!;
      // H·q₀ + C·g + e − q: what the right end still has to move
      jump[n] =
        v + span[i]! * psi - motions[n + 3]! + flexibility[c]! * g1 + flexibility[c + 1]! * g2 + effects[e + 3]!;
      jump[n + 1] = psi - motions[n + 4]! + flexibility[c + 1]! * g1 + flexibility[c + 2]! * g2 + effects[e + 4]!;
      jump[n + 2] = theta - motions[n + 5]! + flexibility[c + 3]! * g3 + effects[e + 5]!;
    }
    const r = 6 * last + 6;
    end[0] = effects[r]! - g1;
    end[1] = effects[r + 1]! - g2;
    end[2] = effects[r + 2]! - g3;
  }

  /** One sweep: the increments that bring equilibrium with the contacts last factored. */
  increment(): void {
    const { first, arm, nodes } = this.chain;
    const { rise, growth, push, bearing, stiffness, depth, force } = this;
    const { motions } = this.sweep;
    // What each contact lacks to its law; one that does not bear gives up its force.
    for (let j = 0; j < force.length; j++) push[j] = (bearing[j] === 1 ? stiffness[j]! * depth[j]! : 0) - force[j]!;
    this.end[3] = rounding.force * this.resultant[0]!;
    this.sweep.solve(push, this.jump, this.end);
    this.sweeps++;
    for (let i = 0; i < nodes.length; i++) {
      for (let j = first[i]!; j < first[i + 1]!; j++) {
        const up = motions[3 * i]! + arm[j]! * motions[3 * i + 2]!;
        rise[j] = up;
        growth[j] = push[j]! - (bearing[j] === 1 ? stiffness[j]! * up : 0);
      }
    }
  }

  /** Goes `progress[0]` of the last increment, and measures what is still lacking. */
  go(): void {
    const { force, growth, motions, progress } = this;
    const step = progress[0]!;
    let greatest = 0;
    for (let j = 0; j < force.length; j++) {
      greatest = Math.max(greatest, Math.abs(growth[j]!));
      force[j]! += step * growth[j]!;
    }
    for (let i = 0; i < motions.length; i++) motions[i]! += step * this.sweep.motions[i]!;
    progress[1] = greatest;
    this.unbalance();
  }

  /** Whether after the whole of the last increment every contact obeys r = k·max(0, h − u). */
  obeysAfterWhole(): boolean {
    const { depth, rise, force, growth, stiffness, slack } = this;
    for (let j = 0; j < force.length; j++) {
      const lawful = stiffness[j]! * Math.max(0, depth[j]! - rise[j]!);
      if (!(Math.abs(force[j]! + growth[j]! - lawful) <= slack[j]!)) return false;
    }
    return true;
  }

  private setSlack(): void {
    const { slack, stiffness, unevenness } = this;
    const ofForces = rounding.law * this.resultant[0]!;
    for (let j = 0; j < slack.length; j++) {
      slack[j] = ofForces + 4 * Number.EPSILON * stiffness[j]! * Math.abs(unevenness[j]!);
    }
  }

  /**
   * Where stiff stands at uneven heights carry little, the heights' own rounding hides the forces. The plane that the
   * piece lies in were it rigid is then taken out of them. False where nothing is to be gained.
   */
  levelOut(): boolean {
    const { first, arm, place } = this.chain;
    const { bearing, unevenness, stiffness, motions, plane, shift } = this;
    let hidden = 0;
    let left = -1;
    let right = -1;
    for (let i = 0; i < place.length; i++) {
      for (let j = first[i]!; j < first[i + 1]!; j++) {
        if (bearing[j] === 0) continue;
        hidden = Math.max(hidden, Number.EPSILON * stiffness[j]! * Math.abs(unevenness[j]!));
        if (left < 0) left = i;
        right = i;
      }
    }
    if (hidden <= rounding.heights * this.resultant[0]!) return false;
    const apart = place[right]! - place[left]!;
    shift[1] = apart > 0 ? (motions[3 * right]! - motions[3 * left]!) / apart : motions[3 * left + 1]!;
    shift[0] = motions[3 * left]! - shift[1] * place[left]!;
    shift[2] = motions[3 * left + 2]!;
    for (let i = 0; i < place.length; i++) {
      const height = shift[0] + shift[1] * place[i]!;
      for (let j = first[i]!; j < first[i + 1]!; j++) unevenness[j]! -= height + arm[j]! * shift[2];
    }
    for (let axis = 0; axis < 3; axis++) plane[axis]! += shift[axis]!;
    this.setSlack();
    this.tilt(shift, -1);
    this.unbalance();
    return true;
  }

  /** Puts back what `levelOut` took out: the motions are again those over the first contact's height. */
  restorePlane(): void {
    this.tilt(this.plane, 1);
  }

  /** Moves the whole part as if it were rigid: v, l·ψ, l·θ at the first node, or back. */
  private tilt(by: Float64Array, sign: 1 | -1): void {
    const { place } = this.chain;
    for (let i = 0; i < place.length; i++) {
      this.motions[3 * i]! += sign * (by[0]! + by[1]! * place[i]!);
      this.motions[3 * i + 1]! += sign * by[1]!;
      this.motions[3 * i + 2]! += sign * by[2]!;
    }
  }
}
