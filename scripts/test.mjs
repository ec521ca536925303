/**
 * Runs every check of the project: format and arrows, types, engine tests, the build, browser tests.
 * Each runner writes a JSON report into `reports/`, which `scripts/count.mjs` sums up.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const reports = join(root, "reports");
rmSync(reports, { recursive: true, force: true });
mkdirSync(join(reports, "published"), { recursive: true });

const checks = [
  ["npm", "run", "--silent", "lint"],
  ["npm", "run", "--silent", "typecheck"],
  ["npm", "run", "--silent", "build"],
  [
    "npx",
    "--no-install",
    "vitest",
    "run",
    "--reporter=default",
    "--reporter=json",
    "--outputFile.json=reports/engine.json",
  ],
  ["node", "scripts/verification.mjs"],
  ["npx", "--no-install", "playwright", "test"],
];

let failed = 0;
for (const [command, ...args] of checks) {
  console.log(`\n> ${command} ${args.join(" ")}`);
  const { status } = spawnSync(command, args, { cwd: root, stdio: "inherit" });
  if (status !== 0) failed += 1;
}
process.exit(failed === 0 ? 0 : 1);
