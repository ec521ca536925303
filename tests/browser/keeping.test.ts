import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, expect, type Page, test } from "@playwright/test";
import { chromiumFlags, chromiumPath } from "../../scripts/chromium.mjs";
import { drag, expectLevel, onPlan, openPage, openPlan, openWith, placeOf, showStands } from "./page";
import { g, twoStands } from "./plans";

const W = 2000 * g;

/** A browser of our own with a profile that outlives it, so that it can be killed like a machine that loses power. */
async function startBrowser(profile: string): Promise<{ browser: Browser; page: Page; process: ChildProcess }> {
  const child = spawn(
    chromiumPath() ?? "chromium",
    [...chromiumFlags, "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"],
    { stdio: ["ignore", "ignore", "pipe"], detached: true },
  );
  const address = await new Promise<string>((resolve, reject) => {
    let said = "";
    child.stderr?.on("data", (chunk: Buffer) => {
      said += chunk.toString();
      const found = said.match(/DevTools listening on (ws:\S+)/);
      if (found?.[1] !== undefined) resolve(found[1]);
    });
    child.once("exit", () => reject(new Error(`the browser ended: ${said}`)));
  });
  const browser = await chromium.connectOverCDP(address);
  const context = browser.contexts()[0]!;
  return { browser, page: context.pages()[0] ?? (await context.newPage()), process: child };
}

/** Kills the browser and all its processes at once, giving them no time for anything. */
async function kill(child: ChildProcess): Promise<void> {
  const gone = new Promise((resolve) => child.once("exit", resolve));
  process.kill(-(child.pid as number), "SIGKILL");
  await gone;
}

test("a gesture finished 500 ms before the browser is killed is there again", async ({ baseURL }) => {
  const profile = mkdtempSync(join(tmpdir(), "trestleboard-profile-"));
  try {
    const first = await startBrowser(profile);
    await first.page.setViewportSize({ width: 1440, height: 900 });
    await first.page.goto(baseURL!);
    await first.page.evaluate(() => Object.assign(window, { showOpenFilePicker: undefined }));
    await openPlan(first.page, twoStands);
    await expect(first.page.getByRole("heading", { level: 1 })).toHaveText("Two stands");
    await showStands(first.page);
    await drag(first.page, await onPlan(first.page, 9, 0.5), await onPlan(first.page, 7, 0.5));
    const finished = Date.now();
    const b = await placeOf(first.page, "B");
    expect(Math.abs(b - 7)).toBeLessThan(0.05);
    await new Promise((resolve) => setTimeout(resolve, Math.max(0, finished + 500 - Date.now())));
    await kill(first.process);

    const second = await startBrowser(profile);
    await second.page.setViewportSize({ width: 1440, height: 900 });
    await second.page.goto(baseURL!);
    await showStands(second.page);
    expect(await placeOf(second.page, "B")).toBe(b);
    await expectLevel(second.page, "B", (4 * W) / (b - 1));
    await kill(second.process);
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
});

test("a second window of the same plan keeps nothing and says so, and takes over when the first has gone", async ({
  page,
  context,
}) => {
  await openWith(page, twoStands);
  const other = await context.newPage();
  await openPage(other);
  await expect(other.getByText("open in another window")).toBeVisible();
  await expect(page.getByText("open in another window")).toHaveCount(0);

  await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5));
  const b = await placeOf(page, "B");
  await expect(page.getByText("Kept")).toBeVisible();
  await page.close();
  await expect(other.getByText("open in another window")).toHaveCount(0);
  await showStands(other);
  await expect.poll(() => placeOf(other, "B")).toBe(b);
});

test("while a gesture runs nothing is written: what was before it is what is kept", async ({ page }) => {
  await openWith(page, twoStands);
  await expect(page.getByText("Kept")).toBeVisible();
  const [from, to] = [await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 5 });
  await expect.poll(() => placeOf(page, "B")).toBeLessThan(8);
  await page.reload();
  await showStands(page);
  expect(await placeOf(page, "B")).toBe(9);
});
