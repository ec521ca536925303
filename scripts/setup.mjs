/**
 * Sets the project up where that is needed: packages as the lock file says, and for tests a Chromium.
 * Uses Node's built-ins alone, so that it runs on a fresh clone.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromiumPath } from "./chromium.mjs";

const root = join(import.meta.dirname, "..");
const stampFile = join(root, "node_modules", ".trestleboard-setup");

/** Runs a command with its output shown; ends the process with its status when it fails. */
function run(command, args) {
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: "inherit" });
  if (error !== undefined || status !== 0) {
    console.error(`Set-up stopped: "${command} ${args.join(" ")}" did not succeed.`);
    process.exit(status ?? 1);
  }
}

function setUpPackages() {
  const stamp = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .update(process.version)
    .digest("hex");
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return;
  run("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"]);
  writeFileSync(stampFile, stamp);
}

function setUpBrowser() {
  if (chromiumPath() !== null) return;
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !existsSync("/usr/bin/apt-get")) {
    console.error("The browser tests need Chromium. Install it, then test again:  sudo apt-get install chromium");
    process.exit(1);
  }
  run("apt-get", ["update", "-qq"]);
  run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu-core"]);
}

const [major] = process.versions.node.split(".").map(Number);
if (major < 20) {
  console.error(`Trestleboard needs Node 20 or newer; this is ${process.version}.`);
  process.exit(1);
}
setUpPackages();
if (process.argv.includes("--browser")) setUpBrowser();
