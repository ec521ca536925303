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
  /** The derivative last asked for, its slope to the right, and the kink last found: kept here, no number is boxed. */
  private readonly found = new Float64Array(3);

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

  /** The step, ≥ 0; 1 is the whole of it. Put into `into[0]`. */
  exactStep(into: Float64Array): void {
    const { found } = this;
    this.derivative(0);
    let low = 0;
    let atLow = found[0]!;
    let slopeAtLow = found[1]!;
    into[0] = 0;
    if (atLow >= 0) return;
    let high = Infinity;
    let atHigh = 0;
    let step = 1;
    // Each turn leaves out at least the kink it tries.
    for (let turn = 0; turn <= this.depth.length + 1; turn++) {
      this.derivative(step);
      const value = found[0]!;
      const slope = found[1]!;
      if (value < 0) {
        low = step;
        atLow = value;
        slopeAtLow = slope;
      } else {
        high = step;
        atHigh = value;
      }
      this.kinkNear(slope > 0 ? step - value / slope : step, low, high);
      step = found[2]!;
      if (step === 0) break;
    }
    if (high < Infinity) into[0] = low + ((high - low) * atLow) / (atLow - atHigh);
    else into[0] = slopeAtLow > 0 ? low - atLow / slopeAtLow : low;
  }

  /** M17: dφ/dα = Σ δu·(r̂ + α·δr̂ − k·max(0, h − u − α·δu)), and its slope to the right. */
  private derivative(step: number): void {
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
    this.found[0] = value;
    this.found[1] = slope;
  }

  /** The kink nearest to a guess, strictly between two steps; 0 if there is none. */
  private kinkNear(guess: number, low: number, high: number): void {
    const { depth, rise, found } = this;
    let distance = Infinity;
    found[2] = 0;
    for (let j = 0; j < depth.length; j++) {
      const kink = depth[j]! / rise[j]!;
      if (kink > low && kink < high && Math.abs(kink - guess) < distance) {
        found[2] = kink;
        distance = Math.abs(kink - guess);
      }
    }
  }
}
