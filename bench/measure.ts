/** What the benchmarks share: medians, the power that a cost grows with, and the report with machine and commit. */

import { execSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";

/** Median of repeated runs after as many to warm up, ms. */
export function median(run: () => unknown, budget = 400, fewest = 10): number {
  const times: number[] = [];
  const end = performance.now() + budget;
  while (times.length < fewest || performance.now() < end) {
    const start = performance.now();
    run();
    times.push(performance.now() - start);
  }
  const warm = times.slice(times.length >> 1).sort((a, b) => a - b);
  return warm[warm.length >> 1]!;
}

/** Processor time that this process has used so far, ms. */
function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Processor time of one run, ms: the least of several batches, which a machine busy with other things disturbs least. */
export function processorTime(run: () => unknown, batches = 15, batch = 20): number {
  const once = (count: number) => {
    const before = used();
    for (let n = 0; n < count; n++) run();
    return used() - before;
  };
  let count = 1;
  while (once(count) < batch) count *= 2;
  return Math.min(...Array.from({ length: batches }, () => once(count) / count));
}

/** Slope of log time over log size, by least squares over the upper half, where set-up no longer counts. */
export function exponent(points: readonly (readonly [number, number])[]): number {
  const logs = points.slice(points.length >> 1).map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const [mx, my] = [0, 1].map((k) => logs.reduce((sum, log) => sum + log[k]!, 0) / logs.length) as [number, number];
  const above = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return above / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

/** The machine that a benchmark ran on, in words. */
export const machine = `${cpus()[0]?.model ?? "unknown"}, ${cpus().length} cores, Node ${process.version}`;

/** Writes reports/NAME.json: the figures with machine and commit. */
export function writeReport(name: string, figures: object): void {
  mkdirSync("reports", { recursive: true });
  const commit = execSync("git rev-parse --short HEAD").toString().trim();
  writeFileSync(`reports/${name}.json`, `${JSON.stringify({ commit, machine, ...figures }, null, 2)}\n`);
}
