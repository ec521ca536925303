/**
 * Published and derived values that the program is held against. Each check asserts, and leaves a row for
 * docs/verification.md in reports/published, one file a test file, one row a line.
 */

import { mkdirSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { afterAll, expect } from "vitest";

/** How near the computed value must be: the greater of what is given counts. */
export type Tolerance =
  | { readonly relative: number; readonly absolute?: number }
  | { readonly absolute: number; readonly relative?: number };

export interface PublishedCheck {
  /** Title, edition, table or equation; "common practice, no source" or "from memory" where that is so. */
  readonly source: string;
  /** What the value is, with its unit. */
  readonly item: string;
  readonly expected: number;
  readonly computed: number;
  readonly tolerance: Tolerance;
}

/** Half a unit in the last of so many printed decimals. */
export function printedTo(decimals: number): Tolerance {
  return { absolute: 0.5 * 10 ** -decimals };
}

/** Asserts that a computed value is the published one and keeps the row. */
export function published({ source, item, expected, computed, tolerance }: PublishedCheck): void {
  const { relative = 0, absolute = 0 } = tolerance;
  rows.push(JSON.stringify({ source, item, expected, computed, tolerance: inWords(tolerance) }));
  expect(computed, `${source}: ${item}`).toBeTypeOf("number");
  const error = Math.abs(computed - expected);
  const allowed = Math.max(absolute, relative * Math.abs(expected));
  expect(error, `${source}: ${item}: expected ${expected}, computed ${computed}`).toBeLessThanOrEqual(allowed);
}

const rows: string[] = [];
const folder = new URL("../../reports/published/", import.meta.url);

afterAll(() => {
  const file = basename(expect.getState().testPath ?? "unknown").replace(/\.test\.ts$/, "");
  mkdirSync(folder, { recursive: true });
  writeFileSync(new URL(`${file}.json`, folder), `${rows.join("\n")}\n`);
});

function inWords({ relative, absolute }: Tolerance): string {
  const words = [];
  if (relative !== undefined) words.push(`${relative} of it`);
  if (absolute !== undefined) words.push(`± ${Number(absolute.toPrecision(6))}`);
  return words.join(" or ");
}
