import { defineConfig } from "@playwright/test";
import { chromiumFlags, chromiumPath } from "./scripts/chromium.mjs";

/** A server of its own, of the build as it is now: two runs at once each need a port. */
const port = Number(process.env.TEST_PORT ?? 4919);
const executablePath = chromiumPath();
/** The build that is served; another one than `dist` where that may be built again during the run. */
const build = process.env.TEST_BUILD ?? "dist";

export default defineConfig({
  testDir: "tests/browser",
  timeout: 60_000,
  expect: { timeout: 10_000 },
  fullyParallel: true,
  workers: 2,
  // An answer that comes just then may push what is pressed along; a test that needed its second try is listed as flaky.
  retries: 1,
  reporter: [["list"], ["json", { outputFile: "reports/browser.json" }]],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    // Nothing that a person presses is waited for longer: what never comes is said soon.
    actionTimeout: 15_000,
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      args: chromiumFlags,
      ...(executablePath === null ? {} : { executablePath }),
    },
  },
  projects: [{ name: "chromium" }],
  webServer: {
    command: `npx --no-install vite preview --host 127.0.0.1 --port ${port} --strictPort --outDir ${build}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    stdout: "ignore",
  },
});
