/** `npm run trestleboard -- check PLAN.json`: builds the command line where it is missing or older than its sources, then runs it. */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const built = join(root, "dist-cli", "main.js");

function newestChange(folder) {
  return readdirSync(folder, { recursive: true })
    .map((name) => statSync(join(folder, name)).mtimeMs)
    .reduce((newest, time) => Math.max(newest, time), 0);
}

if (!existsSync(built) || statSync(built).mtimeMs < newestChange(join(root, "src"))) {
  const { status } = spawnSync("npm", ["run", "--silent", "build:cli"], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit"],
  });
  if (status !== 0) process.exit(2);
}
const { status } = spawnSync(process.execPath, [built, ...process.argv.slice(2)], { stdio: "inherit" });
process.exit(status ?? 2);
