/** Where the Chromium of the tests and of the benchmarks is, and the flags that make it behave on a machine without a screen. */
import { existsSync } from "node:fs";

/** Path of the Chromium to drive: `CHROMIUM_PATH`, or where Debian puts it; null where there is none. */
export function chromiumPath() {
  const candidates = [process.env.CHROMIUM_PATH, "/usr/bin/chromium", "/usr/bin/chromium-browser"];
  return candidates.find((path) => path !== undefined && existsSync(path)) ?? null;
}

export const chromiumFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
