/**
 * A dense dictionary for linear programmes with bounded variables: every basic variable as a linear combination of the
 * nonbasic ones, x_B = T·x_N. Three ways to move in it serve the bounds (docs/mechanics-bounds.md, B9 to B12): up along edges that keep
 * every contact complementary, up along any edge, and back to feasibility by dual steps after a bound has closed.
 *
 * Source: V. Chvátal, Linear Programming, 1983, chapters 2, 8 and 10 (dictionaries, bounded variables, dual simplex).
 */

/** All without a unit: the contact problem is scaled by weight and length before it gets here. */
export const simplexTolerances = {
  /** How far a variable may pass its bound and still count as within it. */
  feasible: 1e-9,
  /** A reduced cost below this improves nothing. */
  reducedCost: 1e-9,
  /** Least element that a pivot may have. */
  pivot: 1e-9,
  /** A step shorter than this makes no progress. */
  step: 1e-12,
  /** Steps of no length in a row (times the rows, when climbing) before another choice is made or it is given up. */
  idle: 8,
} as const;

export type Outcome =
  /** No edge improves any more. */
  | "optimal"
  /** Dual steps took the bound below the cut-off: nothing better than that is left here. */
  | "below cut-off"
  /** No point satisfies all bounds. */
  | "infeasible"
  /** The objective grows without end. */
  | "unbounded"
  /** The allowed number of pivots is used up. */
  | "out of pivots";

export class Dictionary {
  readonly rows: number;
  readonly columns: number;
  /** Row-major, one row a basic variable and a last one for the objective. */
  readonly T: Float64Array;
  readonly basic: Int32Array;
  readonly nonbasic: Int32Array;
  /** Values of the basic variables, and last of the objective. */
  readonly value: Float64Array;
  /** Values of the nonbasic variables. */
  readonly at: Float64Array;
  /** Bounds by variable. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** How far each basic variable is above its lower and, next to that, below its upper bound, as last measured. */
  readonly rooms: Float64Array;
  /** Where a variable is: its row, or −1 − its column. */
  readonly place: Int32Array;
  /** Exchanges since it was made or copied into. */
  pivots = 0;

  constructor(rows: number, columns: number, variables: number) {
    this.rows = rows;
    this.columns = columns;
    this.T = new Float64Array((rows + 1) * columns);
    this.basic = new Int32Array(rows);
    this.nonbasic = new Int32Array(columns);
    this.value = new Float64Array(rows + 1);
    this.at = new Float64Array(columns);
    this.low = new Float64Array(variables);
    this.high = new Float64Array(variables);
    this.rooms = new Float64Array(2 * rows);
    this.place = new Int32Array(variables);
  }

  copyFrom(other: Dictionary): this {
    this.T.set(other.T);
    this.basic.set(other.basic);
    this.nonbasic.set(other.nonbasic);
    this.value.set(other.value);
    this.at.set(other.at);
    this.low.set(other.low);
    this.high.set(other.high);
    this.place.set(other.place);
    this.pivots = 0;
    return this;
  }

  copy(): Dictionary {
    return new Dictionary(this.rows, this.columns, this.low.length).copyFrom(this);
  }

  valueOf(variable: number): number {
    const place = this.place[variable]!;
    return place >= 0 ? this.value[place]! : this.at[-1 - place]!;
  }

  get objective(): number {
    return this.value[this.rows]!;
  }

  /** Values of all basic variables and of the objective afresh from the nonbasic ones: x_B = T·x_N. */
  refresh(): void {
    const { T, at, columns } = this;
    for (let i = 0, k = 0; i <= this.rows; i++) {
      let sum = 0;
      for (let c = 0; c < columns; c++, k++) sum += T[k]! * at[c]!;
      this.value[i] = sum;
    }
  }

  /** Sets the objective Σ weight·variable, whatever is basic. */
  maximise(variables: readonly number[], weights: readonly number[]): void {
    const { T, columns } = this;
    const last = this.rows * columns;
    T.fill(0, last);
    variables.forEach((variable, index) => {
      const weight = weights[index]!;
      const place = this.place[variable]!;
      if (place < 0) T[last - 1 - place]! += weight;
      else for (let c = 0, k = place * columns; c < columns; c++, k++) T[last + c]! += weight * T[k]!;
    });
    let sum = 0;
    for (let c = 0; c < columns; c++) sum += T[last + c]! * this.at[c]!;
    this.value[this.rows] = sum;
  }

  /** Moves nonbasic column `c` by `step`; basics follow. */
  move(c: number, step: number): void {
    const { T, columns, value } = this;
    for (let i = 0, k = c; i <= this.rows; i++, k += columns) value[i]! += T[k]! * step;
    this.at[c]! += step;
  }

  measureRooms(): void {
    const { rooms, value, basic, low, high } = this;
    for (let i = 0; i < this.rows; i++) {
      rooms[2 * i] = value[i]! - low[basic[i]!]!;
      rooms[2 * i + 1] = high[basic[i]!]! - value[i]!;
    }
  }

  /** Exchanges the basic variable of row `r` with the nonbasic one of column `c`; no value changes. */
  exchange(r: number, c: number): void {
    const { T, columns, rows } = this;
    const start = r * columns;
    const inverse = 1 / T[start + c]!;
    // x_r = Σ T_rk·x_k  →  x_c = (x_r − Σ_{k≠c} T_rk·x_k)/T_rc
    for (let k = start; k < start + columns; k++) T[k]! *= -inverse;
    T[start + c] = inverse;
    for (let i = 0, base = 0; i <= rows; i++, base += columns) {
      if (i === r) continue;
      const factor = T[base + c]!;
      if (factor === 0) continue;
      T[base + c] = 0;
      // Most of all work is here: four at a time take two thirds of the time of one at a time.
      let to = base;
      let from = start;
      for (const last = base + columns - 3; to < last; to += 4, from += 4) {
        T[to]! += factor * T[from]!;
        T[to + 1]! += factor * T[from + 1]!;
        T[to + 2]! += factor * T[from + 2]!;
        T[to + 3]! += factor * T[from + 3]!;
      }
      for (; to < base + columns; to++, from++) T[to]! += factor * T[from]!;
    }
    const leaving = this.basic[r]!;
    const entering = this.nonbasic[c]!;
    const leavingValue = this.value[r]!;
    this.value[r] = this.at[c]!;
    this.at[c] = leavingValue;
    this.basic[r] = entering;
    this.nonbasic[c] = leaving;
    this.place[entering] = r;
    this.place[leaving] = -1 - c;
    this.pivots++;
  }

  /** Fills in an empty dictionary. */
  assign(
    basic: readonly number[],
    nonbasic: readonly number[],
    entry: (row: number, nonbasic: number) => number,
  ): void {
    this.basic.set(basic);
    this.nonbasic.set(nonbasic);
    basic.forEach((unknown, row) => {
      this.place[unknown] = row;
    });
    nonbasic.forEach((unknown, c) => {
      this.place[unknown] = -1 - c;
    });
    for (let i = 0; i < this.rows; i++)
      for (let c = 0; c < this.columns; c++) this.T[i * this.columns + c] = entry(i, nonbasic[c]!);
  }

  /** Makes the one list nonbasic and the other basic, by the largest elements first. */
  exchangeAll(leaving: readonly number[], entering: readonly number[]): void {
    const rest = new Set(entering);
    const rows = new Set(leaving.map((unknown) => this.place[unknown]!));
    while (rest.size > 0) {
      let [best, row, column] = [0, -1, -1];
      for (const r of rows)
        for (const unknown of rest) {
          const c = -1 - this.place[unknown]!;
          const size = Math.abs(this.T[r * this.columns + c]!);
          if (size > best) [best, row, column] = [size, r, c];
        }
      if (row < 0) throw new Error("the unknowns asked for are no basis");
      rest.delete(this.nonbasic[column]!);
      rows.delete(row);
      this.exchange(row, column);
    }
  }

  /** The same dictionary without some unknowns, basic ones with their row, nonbasic ones (at 0) with their column. */
  without(unknowns: readonly number[]): Dictionary {
    const gone = new Set(unknowns);
    const rows = [...this.basic.keys()].filter((i) => !gone.has(this.basic[i]!));
    const columns = [...this.nonbasic.keys()].filter((c) => !gone.has(this.nonbasic[c]!));
    const rest = new Dictionary(rows.length, columns.length, this.low.length);
    rest.assign(
      rows.map((i) => this.basic[i]!),
      columns.map((c) => this.nonbasic[c]!),
      (row, unknown) => this.T[rows[row]! * this.columns - 1 - this.place[unknown]!]!,
    );
    rest.low.set(this.low);
    rest.high.set(this.high);
    for (let c = 0; c < rest.columns; c++) rest.at[c] = this.at[columns[c]!]!;
    rest.refresh();
    return rest;
  }

  /** Puts a nonbasic variable at a value. */
  set(unknown: number, value: number): void {
    const c = -1 - this.place[unknown]!;
    this.move(c, value - this.at[c]!);
  }
}
