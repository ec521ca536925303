/** Polynomials of low degree, coefficients ascending: p(x) = c₀ + c₁·x + c₂·x² + … */

/** p(x), by Horner's rule. */
export function evaluate(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) value = value * x + coefficients[power]!;
  return value;
}

/** Coefficients of p'. */
export function derivativeOf(coefficients: readonly number[]): number[] {
  return coefficients.slice(1).map((coefficient, index) => coefficient * (index + 1));
}

/**
 * The places strictly between 0 and `to` where p changes sign, ascending, to rounding.
 *
 * Between neighbouring roots of p' the polynomial is monotone, so at most one change of sign lies there and halving
 * finds it: no formula for cubics and quartics loses digits.
 */
export function signChanges(coefficients: readonly number[], to: number): number[] {
  if (coefficients.length < 2) return [];
  const turns = signChanges(derivativeOf(coefficients), to);
  const ends = [0, ...turns, to];
  const found: number[] = [];
  for (let index = 0; index + 1 < ends.length; index++) {
    const root = rootBetween(coefficients, ends[index]!, ends[index + 1]!);
    if (root !== null && root > 0 && root < to) found.push(root);
  }
  return found;
}

/** Where a polynomial that is monotone on [low, high] passes 0, by halving until no number lies between; null if nowhere. */
function rootBetween(coefficients: readonly number[], low: number, high: number): number | null {
  const rising = evaluate(coefficients, high) > 0;
  if (rising === evaluate(coefficients, low) > 0) return null;
  let [left, right] = [low, high];
  for (;;) {
    const middle = (left + right) / 2;
    if (middle <= left || middle >= right) return middle;
    if (evaluate(coefficients, middle) > 0 === rising) right = middle;
    else left = middle;
  }
}
