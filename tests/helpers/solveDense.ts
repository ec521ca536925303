/** Solves A·x = b by elimination with scaled partial pivoting and three rounds of refinement. */
export function solveDense(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = new Array<number>(right.length).fill(0);
  for (let round = 0; round < 4; round++) {
    const lacking = right.map((value, i) => value - matrix[i]!.reduce((sum, entry, j) => sum + entry * x[j]!, 0));
    for (const [i, value] of eliminate(matrix, lacking).entries()) x[i]! += value;
  }
  return x;
}

function eliminate(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = right.length;
  const rows = matrix.map((row, i) => {
    const scale = row.reduce((most, entry) => Math.max(most, Math.abs(entry)), 0);
    return [...row, right[i]!].map((entry) => entry / scale);
  });
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    for (let i = k + 1; i < size; i++) {
      const factor = rows[i]![k]! / rows[k]![k]!;
      if (factor === 0) continue;
      for (let j = k; j <= size; j++) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  const x = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let sum = rows[i]![size]!;
    for (let j = i + 1; j < size; j++) sum -= rows[i]![j]! * x[j]!;
    x[i] = sum / rows[i]![i]!;
  }
  return x;
}
