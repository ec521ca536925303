/**
 * Dense linear equations in double-double arithmetic (about 32 digits), for oracles. Sums and products of two doubles are
 * split into the rounded result and its error: T. J. Dekker, Numerische Mathematik 18 (1971) 224–242.
 */

/** A number as an unevaluated sum. */
type Pair = readonly [high: number, low: number];

function sum(a: number, b: number): Pair {
  const s = a + b;
  const t = s - a;
  return [s, a - (s - t) + (b - t)];
}

function split(a: number): Pair {
  const c = 134217729 * a;
  const high = c - (c - a);
  return [high, a - high];
}

function product(a: number, b: number): Pair {
  const p = a * b;
  const [a1, a2] = split(a);
  const [b1, b2] = split(b);
  return [p, a1 * b1 - p + a1 * b2 + a2 * b1 + a2 * b2];
}

const add = ([a, al]: Pair, [b, bl]: Pair): Pair => {
  const [s, e] = sum(a, b);
  return sum(s, e + al + bl);
};
const times = ([a, al]: Pair, [b, bl]: Pair): Pair => {
  const [p, e] = product(a, b);
  return sum(p, e + a * bl + al * b);
};
const minus = ([a, al]: Pair): Pair => [-a, -al];

function over(a: Pair, b: Pair): Pair {
  const q = a[0] / b[0];
  const rest = add(a, minus(times([q, 0], b)));
  const q2 = rest[0] / b[0];
  const rest2 = add(rest, minus(times([q2, 0], b)));
  return add(sum(q, q2), [rest2[0] / b[0], 0]);
}

/** Solves A·x = b by elimination with the greatest scaled pivot; null where A is singular to 28 digits. */
export function solveDoubleDouble(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const size = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!].map((entry): Pair => [entry, 0]));
  const scale = matrix.map((row) => row.reduce((most, entry) => Math.max(most, Math.abs(entry)), 0));
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(rows[i]![k]![0]) * scale[pivot]! > Math.abs(rows[pivot]![k]![0]) * scale[i]!) pivot = i;
    }
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    [scale[k], scale[pivot]] = [scale[pivot]!, scale[k]!];
    if (Math.abs(rows[k]![k]![0]) <= 1e-28 * scale[k]!) return null;
    for (let i = k + 1; i < size; i++) {
      if (rows[i]![k]![0] === 0) continue;
      const factor = minus(over(rows[i]![k]!, rows[k]![k]!));
      for (let j = k; j <= size; j++) rows[i]![j] = add(rows[i]![j]!, times(factor, rows[k]![j]!));
    }
  }
  const x: Pair[] = new Array<Pair>(size).fill([0, 0]);
  for (let i = size - 1; i >= 0; i--) {
    let rest = rows[i]![size]!;
    for (let j = i + 1; j < size; j++) rest = add(rest, minus(times(rows[i]![j]!, x[j]!)));
    x[i] = over(rest, rows[i]![i]!);
  }
  return x.map(([high, low]) => high + low);
}
