/**
 * Time to refuse files of the greatest size a plan may have, made to be slow to refuse, and to read an ordinary
 * plan. The longest of three runs, ms, beside the two seconds that no refusal may take, and the
 * processor time of that run, which a busy machine does not stretch. Prints a table and writes reports/hostile.json.
 */

import { execSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { mostBytes, read } from "../src/plan";
import { hostileFiles } from "../tests/plan/file/hostileFiles";
import { wholePlan } from "../tests/plan/file/wholePlan";

const limit = 2000;

interface Times {
  readonly ms: number;
  readonly processorMs: number;
}

function longest(content: string | Uint8Array, path: string | null): Times {
  let most: Times = { ms: 0, processorMs: 0 };
  for (let run = 0; run < 3; run += 1) {
    const usage = process.cpuUsage();
    const begun = performance.now();
    const answer = read(content);
    const ms = performance.now() - begun;
    const { user, system } = process.cpuUsage(usage);
    if (ms > most.ms) most = { ms, processorMs: (user + system) / 1000 };
    const as = answer.ok ? null : answer.path;
    if (as !== path) throw new Error(`refused at ${as}, not at ${path}`);
  }
  return most;
}

const encoder = new TextEncoder();
const rows = [
  { name: "an ordinary plan, read", ...longest(encoder.encode(wholePlan), null) },
  ...hostileFiles(mostBytes).map(({ name, path, content }) => ({
    name,
    ...longest(typeof content === "string" ? encoder.encode(content) : content, path),
  })),
];
for (const { name, ms, processorMs } of rows)
  console.log(`${ms.toFixed(1).padStart(9)} ms ${processorMs.toFixed(1).padStart(9)} ms of processor  ${name}`);
const worst = Math.max(...rows.map(({ ms }) => ms));
console.log(`the slowest takes ${((100 * worst) / limit).toFixed(0)} % of ${limit} ms`);

mkdirSync("reports", { recursive: true });
const commit = execSync("git rev-parse --short HEAD").toString().trim();
writeFileSync(
  "reports/hostile.json",
  `${JSON.stringify({ commit, machine: cpus()[0]?.model, node: process.version, limit, rows }, null, 2)}\n`,
);
