/**
 * Writes docs/verification.md from the rows that the published tests left in reports/published: every check with its
 * source, what was expected, what was computed and the relative error.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const folder = join(root, "reports", "published");

const rows = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .flatMap((name) =>
    readFileSync(join(folder, name), "utf8")
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line)),
  );
if (rows.length === 0) {
  console.error("No published check left a row in reports/published: run the engine tests first.");
  process.exit(1);
}

const number = (value) => (value === null ? "–" : Number(value.toPrecision(9)).toString());
const cell = (text) => String(text).replaceAll("|", "\\|");
/** Below 1e-12 the digits are rounding and differ between machines. */
function relativeError({ expected, computed }) {
  const scale = Math.abs(expected) > 0 ? Math.abs(expected) : 1;
  const error = Math.abs(computed - expected) / scale;
  return error < 1e-12 ? "< 1e-12" : error.toExponential(1);
}

const bySource = new Map();
for (const row of rows) bySource.set(row.source, [...(bySource.get(row.source) ?? []), row]);
const lines = [
  "# Verification",
  "",
  "Written by the tests (`npm test`); not edited by hand. Each row is one published or derived value that the program was",
  "held against: where it comes from, what it says, what the program computes. A source marked *from memory* was not",
  "read again and is to be confirmed before it is quoted. The tolerance is the one the test asserts.",
  "",
  `${rows.length} checks from ${bySource.size} sources.`,
];
for (const [source, group] of [...bySource].sort(([a], [b]) => (a < b ? -1 : 1))) {
  lines.push(
    "",
    `## ${source}`,
    "",
    "| check | expected | computed | relative error | tolerance |",
    "|---|---:|---:|---:|---:|",
  );
  for (const row of group) {
    lines.push(
      `| ${cell(row.item)} | ${number(row.expected)} | ${number(row.computed)} | ${relativeError(row)} | ${cell(row.tolerance)} |`,
    );
  }
}
writeFileSync(join(root, "docs", "verification.md"), `${lines.join("\n")}\n`);
console.log(`docs/verification.md: ${rows.length} checks from ${bySource.size} sources`);
