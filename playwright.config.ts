import { defineConfig } from "@playwright/test";
import { chromiumFlags, chromiumPath } from "./scripts/chromium.mjs";

const port = 4919;
const executablePath = chromiumPath();

export default defineConfig({
  testDir: "tests/browser",
  timeout: 60_000,
  expect: { timeout: 10_000 },
  fullyParallel: true,
  workers: 2,
  reporter: [["list"], ["json", { outputFile: "reports/browser.json" }]],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      args: chromiumFlags,
      ...(executablePath === null ? {} : { executablePath }),
    },
  },
  projects: [{ name: "chromium" }],
  webServer: {
    command: `npx --no-install vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: true,
    stdout: "ignore",
  },
});
