/** The built page, served to a browser as the tests use it. Needs `npm run build` first. */

import { join } from "node:path";
import { type Browser, chromium } from "playwright";
import { preview } from "vite";
import { chromiumFlags, chromiumPath } from "../scripts/chromium.mjs";

export const root = join(import.meta.dirname, "..");

export async function servePage(): Promise<{ readonly browser: Browser; readonly address: string }> {
  const server = await preview({ root, logLevel: "warn", preview: { host: "127.0.0.1", port: 4931 } });
  const executablePath = chromiumPath();
  const browser = await chromium.launch({
    args: chromiumFlags,
    ...(executablePath === null ? {} : { executablePath }),
  });
  return { browser, address: server.resolvedUrls!.local[0]! };
}
