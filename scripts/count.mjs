/** Sums the runners' JSON reports into one last line, `N passed, N failed`; fails when one failed, a report is missing or none ran. */
import { readFileSync } from "node:fs";
import { join } from "node:path";

const reports = join(import.meta.dirname, "..", "reports");

function report(name) {
  try {
    return JSON.parse(readFileSync(join(reports, name), "utf8"));
  } catch {
    return null;
  }
}

const engine = report("engine.json");
const browser = report("browser.json");
let passed = 0;
let failed = 0;
if (engine !== null) {
  passed += engine.numPassedTests;
  failed += engine.numFailedTests;
  // A file that does not load counts no test of its own.
  failed += engine.testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0).length;
}
if (browser !== null) {
  passed += browser.stats.expected + browser.stats.flaky;
  failed +=
    browser.stats.unexpected + (browser.stats.expected + browser.stats.unexpected === 0 ? browser.errors.length : 0);
}
for (const [name, found] of [
  ["engine", engine],
  ["browser", browser],
]) {
  if (found === null) console.log(`The report of the ${name} tests is missing.`);
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 || engine === null || browser === null ? 1 : 0);
