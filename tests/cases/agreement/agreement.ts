/**
 * Compares a result with the reference's answers by the table of tests/cases/reference/README.md, row by row. What
 * disagrees is collected, so that a failing case shows all of it at once.
 */

export class Agreement {
  readonly disagreements: string[] = [];

  /** |got − expected| ≤ tolerance; two nulls agree, one does not. */
  near(what: string, got: number | null | undefined, expected: number | null, tolerance: number): void {
    if (got === null && expected === null) return;
    if (typeof got !== "number" || expected === null || !(Math.abs(got - expected) <= tolerance)) {
      this.disagreements.push(`${what}: got ${got}, expected ${expected} ± ${tolerance}`);
    }
  }

  same(what: string, got: unknown, expected: unknown): void {
    if (JSON.stringify(got) !== JSON.stringify(expected)) {
      this.disagreements.push(`${what}: got ${JSON.stringify(got)}, expected ${JSON.stringify(expected)}`);
    }
  }

  holds(what: string, condition: boolean): void {
    if (!condition) this.disagreements.push(what);
  }

  /** Both present or both null; says so where not, and runs the comparison where both are there. */
  both<Got, Wanted>(
    what: string,
    got: Got | null | undefined,
    expected: Wanted | null,
    compare: (got: Got, expected: Wanted) => void,
  ): void {
    if (expected === null) {
      this.same(what, got ?? null, null);
      return;
    }
    if (got === null || got === undefined) this.disagreements.push(`${what}: missing`);
    else compare(got, expected);
  }
}
