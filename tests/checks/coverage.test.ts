/** Every code has rows: one that raises it, one just inside, and one that leaves out what it needs, where it can be. */

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type FindingCode, findingCodes } from "../../src/plan";

const sources = readdirSync(new URL(".", import.meta.url))
  .filter((file) => file.endsWith(".test.ts"))
  .map((file) => readFileSync(new URL(file, import.meta.url), "utf8"))
  .join("\n");

/** The text of a code's rows. */
function rowsOf(code: FindingCode): string {
  const from = sources.indexOf(`rowsOf("${code}", [`);
  return from < 0 ? "" : sources.slice(from, sources.indexOf("\n]);", from));
}

/** Codes that need no optional data: nothing can be left out. */
const alwaysKnown = new Set<FindingCode>([
  "tips",
  "tilts",
  "tip-reserve",
  "stand-never-bears",
  "stand-lifts-off",
  "stand-tips-over",
  "slides",
  "not-under-piece",
  "heights-mismatch",
  "bearing-pressure",
  "stands-overlap",
]);

const codes = findingCodes.filter((code) => code !== "readings-disagree");

describe("the rows of every code", () => {
  it.each(codes)("%s is raised", (code) => expect(rowsOf(code)).toMatch(/verdict: "(fails|close)"/));
  it.each(codes)("%s is not raised just inside", (code) => expect(rowsOf(code)).toContain('verdict: "holds"'));
  it.each(codes.filter((code) => !alwaysKnown.has(code)))("%s is left out, or does not apply", (code) => {
    expect(rowsOf(code)).toMatch(/verdict: "(unknown|not checked|not listed)"/);
  });
});
