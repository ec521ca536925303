/**
 * The Saint-Venant torsion constant of any section without holes, by finite differences: independent of every formula
 * in the library. Prandtl's Δφ = −2 with φ = 0 on the outline, J = 2·∫φ dA; square grid, at the outline the true distance
 * to it (Shortley and Weller), successive over-relaxation.
 */

type P = readonly [number, number];

/** @param step of the grid, in the unit of the outline; a tenth of the thinnest wall gives some thousandths. */
export function torsionByDifferences(outline: readonly P[], step: number): number {
  const [ys, zs] = [outline.map((p) => p[0]), outline.map((p) => p[1])];
  const [y0, z0] = [Math.min(...ys) - 0.317 * step, Math.min(...zs) - 0.443 * step];
  const columns = Math.ceil((Math.max(...ys) - y0) / step) + 1;
  const rows = Math.ceil((Math.max(...zs) - z0) / step) + 1;
  const acrossRow = Array.from({ length: rows }, (_, j) => crossings(outline, 1, z0 + j * step));
  const upColumn = Array.from({ length: columns }, (_, i) => crossings(outline, 0, y0 + i * step));

  const index = new Int32Array(rows * columns).fill(-1);
  const nodes: { readonly i: number; readonly j: number; readonly arms: readonly number[] }[] = [];
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const horizontal = armsAt(acrossRow[j]!, y0 + i * step, step);
      const vertical = armsAt(upColumn[i]!, z0 + j * step, step);
      if (horizontal === null || vertical === null) continue;
      index[j * columns + i] = nodes.length;
      nodes.push({ i, j, arms: [...horizontal, ...vertical] });
    }

  // −φ″ ≈ (2/(a+b))·((φ − φ_a)/a + (φ − φ_b)/b), both ways, = 2; a missing neighbour is the outline, where φ = 0.
  const count = nodes.length;
  const neighbours = new Int32Array(4 * count);
  const weights = new Float64Array(4 * count);
  const diagonal = new Float64Array(count);
  nodes.forEach(({ i, j, arms }, k) => {
    const beside = [index[j * columns + i - 1], index[j * columns + i + 1]];
    const above = [index[(j - 1) * columns + i], index[(j + 1) * columns + i]];
    [...beside, ...above].forEach((neighbour, d) => {
      const pair = d < 2 ? arms[0]! + arms[1]! : arms[2]! + arms[3]!;
      const weight = 2 / (pair * arms[d]!);
      diagonal[k]! += weight;
      // The last place of φ stays 0.
      neighbours[4 * k + d] = arms[d]! < step ? count : (neighbour ?? count);
      weights[4 * k + d] = weight;
    });
  });
  const phi = new Float64Array(count + 1);
  const relaxation = 1.7;
  for (let sweep = 0; sweep < 4000; sweep++) {
    let change = 0;
    let greatest = 0;
    for (let k = 0; k < count; k++) {
      let sum = 2;
      for (let d = 4 * k; d < 4 * k + 4; d++) sum += weights[d]! * phi[neighbours[d]!]!;
      const by = relaxation * (sum / diagonal[k]! - phi[k]!);
      phi[k]! += by;
      change = Math.max(change, Math.abs(by));
      greatest = Math.max(greatest, phi[k]!);
    }
    if (change < 1e-8 * greatest) break;
  }
  return 2 * step * step * phi.reduce((sum, value) => sum + value, 0);
}

/** Where the outline crosses the line coordinate[axis] = value, ascending. */
function crossings(outline: readonly P[], axis: 0 | 1, value: number): number[] {
  return outline
    .flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      if (a[axis] > value === b[axis] > value) return [];
      const share = (value - a[axis]) / (b[axis] - a[axis]);
      return [a[1 - axis]! + share * (b[1 - axis]! - a[1 - axis]!)];
    })
    .sort((a, b) => a - b);
}

/** Distances from a point on a line to the neighbours on it, or to the outline if that is nearer; null outside. */
function armsAt(cuts: readonly number[], at: number, step: number): [number, number] | null {
  for (let k = 0; k + 1 < cuts.length; k += 2)
    if (cuts[k]! < at && at < cuts[k + 1]!) return [Math.min(step, at - cuts[k]!), Math.min(step, cuts[k + 1]! - at)];
  return null;
}
