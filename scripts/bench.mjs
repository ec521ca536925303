/** Runs every benchmark of `bench/` in turn (or those whose names hold the words given): `npm run bench -- level`. */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const words = process.argv.slice(2);
mkdirSync(join(root, "reports"), { recursive: true });

const chosen = readdirSync(join(root, "bench"))
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => words.length === 0 || words.some((word) => name.includes(word)))
  .sort();
if (chosen.length === 0) {
  console.error("No benchmark has such a name.");
  process.exit(1);
}
let failed = 0;
for (const name of chosen) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync(process.execPath, ["--expose-gc", "--import", "tsx", join("bench", name)], {
    cwd: root,
    stdio: "inherit",
  });
  if (status !== 0) failed += 1;
}
process.exit(failed === 0 ? 0 : 1);
