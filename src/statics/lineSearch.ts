/**
 * The step along a direction at which the energy is least (docs/mechanics.md, M17). Its derivative there is piecewise
 * linear and never falls, with a kink where a contact opens or closes, so the step is found exactly: the kinks between
 * the bounds are tried, nearest to the guess first, until none is left. At most one evaluation a contact, and two more.
 */
export class LineSearch {
  private readonly stiffness: Float64Array;
  /** h − u of every contact, m, and how much of it the whole step takes away. */
  private readonly depth: Float64Array;
  private readonly rise: Float64Array;
  /** Balanced contact forces, N, and their growth over the whole step. */
  private readonly force: Float64Array;
  private readonly growth: Float64Array;
  /** Of the derivative at the place last asked for. */
  private slope = 0;

  constructor(
    stiffness: Float64Array,
    depth: Float64Array,
    rise: Float64Array,
    force: Float64Array,
    growth: Float64Array,
  ) {
    this.stiffness = stiffness;
    this.depth = depth;
    this.rise = rise;
    this.force = force;
    this.growth = growth;
  }

  /** The step, ≥ 0; 1 is the whole of it. */
  exactStep(): number {
    let low = 0;
    let atLow = this.derivative(0);
    let slopeAtLow = this.slope;
    if (atLow >= 0) return 0;
    let high = Infinity;
    let atHigh = 0;
    let guess = 1;
    // Each turn leaves out at least the kink it tries.
    for (let turn = 0; turn <= this.depth.length + 1; turn++) {
      const step = turn === 0 ? 1 : this.kinkNear(guess, low, high);
      if (step === 0) break;
      const value = this.derivative(step);
      if (value === 0) return step;
      guess = this.slope > 0 ? step - value / this.slope : step;
      if (value < 0) {
        low = step;
        atLow = value;
        slopeAtLow = this.slope;
      } else {
        high = step;
        atHigh = value;
      }
    }
    if (high < Infinity) return low + ((high - low) * atLow) / (atLow - atHigh);
    return slopeAtLow > 0 ? low - atLow / slopeAtLow : low;
  }

  /** M17: dφ/dα = Σ δu·(r̂ + α·δr̂ − k·max(0, h − u − α·δu)); keeps its slope to the right. */
  private derivative(step: number): number {
    const { stiffness, depth, rise, force, growth } = this;
    let value = 0;
    let slope = 0;
    for (let j = 0; j < depth.length; j++) {
      const du = rise[j]!;
      let lack = force[j]! + step * growth[j]!;
      let steepness = growth[j]!;
      const pressed = depth[j]! - step * du;
      if (pressed > 0 || (pressed === 0 && du < 0)) {
        lack -= stiffness[j]! * pressed;
        steepness += stiffness[j]! * du;
      }
      value += du * lack;
      slope += du * steepness;
    }
    this.slope = slope;
    return value;
  }

  /** The kink nearest to a guess, strictly between two steps; 0 if there is none. */
  private kinkNear(guess: number, low: number, high: number): number {
    let nearest = 0;
    let distance = Infinity;
    for (let j = 0; j < this.depth.length; j++) {
      const kink = this.depth[j]! / this.rise[j]!;
      if (kink > low && kink < high && Math.abs(kink - guess) < distance) {
        nearest = kink;
        distance = Math.abs(kink - guess);
      }
    }
    return nearest;
  }
}
