/** Saint-Venant torsion constants (docs/mechanics-tipping.md, L1 to L4). Any one unit of length in, its fourth power out. */

/** Terms after which the series of a rectangle are exact to rounding: n⁻⁵ is then under 1e-9, 1/cosh far under that. */
const terms = 64;

export interface RectangleTorsion {
  /** J = β·b·t³. */
  readonly constant: number;
  /** τ_max = T ÷ modulus, modulus = α·b·t². */
  readonly modulus: number;
}

/**
 * L1: a solid rectangle, exact. Timoshenko and Goodier, Theory of Elasticity, §109:
 * β = ⅓·[1 − (192/π⁵)·(t/b)·Σ n⁻⁵·tanh(nπb/2t)], τ_max = (T·t/J)·[1 − (8/π²)·Σ n⁻²/cosh(nπb/2t)], n odd, t ≤ b.
 */
export function rectangleTorsion(side: number, other: number): RectangleTorsion {
  const [b, t] = side >= other ? [side, other] : [other, side];
  let ends = 0;
  let middle = 0;
  for (let n = 1; n < 2 * terms; n += 2) {
    const argument = (n * Math.PI * b) / (2 * t);
    ends += Math.tanh(argument) / n ** 5;
    middle += 1 / (n ** 2 * Math.cosh(argument));
  }
  const beta = (1 - ((192 / Math.PI ** 5) * t * ends) / b) / 3;
  const constant = beta * b * t ** 3;
  return { constant, modulus: constant / (t * (1 - (8 / Math.PI ** 2) * middle)) };
}

export interface Junction {
  /** Thickness of the flange and of the web that meets it, and the radius of the fillets between them. */
  readonly flange: number;
  readonly web: number;
  readonly fillet: number;
}

/**
 * L3: what a flange adds to Σ b·t³/3 because it meets the web, less what it lacks at its two ends:
 * α·D⁴ − 0.21·t_f⁴, D the greatest circle in the junction. I. A. El Darwish and B. G. Johnston, Torsion of structural
 * shapes, Journal of the Structural Division, ASCE 91 (1965) ST1.
 */
export function flangeJunction({ flange: tf, web: tw, fillet: r }: Junction): number {
  const [w, f] = [tw / tf, r / tf];
  const alpha = -0.042 + 0.2204 * w + 0.1355 * f - 0.0865 * w * f - 0.0725 * w ** 2;
  // D = [(t_f + r)² + t_w·(r + t_w/4)] ÷ (2r + t_f)
  const D = ((tf + r) ** 2 + tw * (r + tw / 4)) / (2 * r + tf);
  return alpha * D ** 4 - 0.21 * tf ** 4;
}

export interface OpenPlate {
  readonly width: number;
  readonly thickness: number;
}

/** L2: an I of three plates: Σ b·t³/3 and the two junctions. `web.width` is the clear height between the flanges. */
export function iTorsion(top: OpenPlate, web: OpenPlate, bottom: OpenPlate, fillet: number): number {
  const thin = [top, web, bottom].reduce((sum, { width, thickness }) => sum + (width * thickness ** 3) / 3, 0);
  const junction = ({ thickness }: OpenPlate) => flangeJunction({ flange: thickness, web: web.thickness, fillet });
  return thin + junction(top) + junction(bottom);
}

/**
 * L4: one closed cell of thin walls (Bredt): J = 4·A_m² ÷ ∮ ds/t.
 *
 * @param enclosed A_m, area within the middle line of the walls.
 * @param walls their lengths along the middle line and thicknesses.
 */
export function cellTorsion(enclosed: number, walls: readonly OpenPlate[]): number {
  const round = walls.reduce((sum, { width, thickness }) => sum + width / thickness, 0);
  return (4 * enclosed ** 2) / round;
}
