/** Runs the rows of one code. */

import { describe, expect, it } from "vitest";
import type { FindingCode } from "../../src/plan";
import { foundBy, planWith, type Row } from "./base";

export function rowsOf(code: FindingCode, rows: readonly Row[]): void {
  describe(code, () => {
    it.each(rows.map((row) => [row.verdict, row.name, row] as const))("%s: %s", (_verdict, _name, row) => {
      const { verdict, finding, notChecked } = foundBy(code, planWith(row.change));
      expect(verdict, finding?.message ?? notChecked?.why).toBe(row.verdict);
      if (row.value !== undefined) near(finding!.value, row.value);
      if (row.limit !== undefined) near(finding!.limit, row.limit);
      if (row.stand !== undefined) expect(finding!.stand).toBe(row.stand);
      for (const words of row.says ?? []) expect(finding?.message ?? notChecked?.why).toContain(words);
    });
  });
}

/** Within a ten-thousandth: the hand calculations carry six figures. */
function near(computed: number | null, byHand: number): void {
  expect(computed).not.toBeNull();
  expect(Math.abs(computed! - byHand)).toBeLessThanOrEqual(1e-4 * Math.abs(byHand));
}
