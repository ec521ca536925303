/** A bay that is added comes into sight whole; the piece is shown large again on request. */

import { expect, test } from "@playwright/test";
import { cameraOf, drawings, numberIn, onPlan, openWith } from "./page";
import { twoStands } from "./plans";

test("a bay added round the piece is seen whole, and so is what is made beyond the paper", async ({ page }) => {
  await openWith(page, twoStands);
  const before = await cameraOf(page);
  await page.getByRole("tab", { name: "Plan", exact: true }).click();
  await page.getByRole("button", { name: "Add a bay round the piece" }).click();
  await expect(page.getByRole("heading", { name: "Bay" })).toBeVisible();
  await expect.poll(async () => (await cameraOf(page)).scale).toBeLessThan(before.scale);

  const paper = (await page.locator("[data-drawing=plan]").boundingBox())!;
  const inSight = async (s: number, t: number) => {
    const { x, y } = await onPlan(page, s, t);
    return x >= paper.x && x <= paper.x + paper.width && y >= paper.y && y <= paper.y + paper.height;
  };
  await page.getByText("Outline", { exact: true }).click();
  await expect(page.getByLabel("Corner 1, x")).toBeVisible();
  const metres = async (label: RegExp) =>
    Promise.all((await page.getByLabel(label).all()).map(async (field) => numberIn(await field.inputValue()) / 1000));
  const [xs, ys] = [await metres(/^Corner \d+, x$/), await metres(/^Corner \d+, y$/)];
  expect(xs.length).toBeGreaterThanOrEqual(4);
  // The piece lies in the bay's axes with its datum end at the origin: (x, y) are (s, t).
  for (const x of xs) for (const y of ys) expect(await inSight(x, y)).toBe(true);

  await drawings(page).click({ position: { x: 5, y: 5 } });
  await page.keyboard.press("0");
  await expect.poll(async () => (await cameraOf(page)).scale).toBeCloseTo(before.scale, 6);

  // A corner set far away: the bay has grown off the paper, and is brought back.
  const corner = page.getByLabel("Corner 1, x");
  await corner.fill(String(1000 * (xs[0]! - 10)));
  await corner.press("Enter");
  await expect.poll(async () => (await cameraOf(page)).scale).toBeLessThan(before.scale);
  expect(await inSight(xs[0]! - 10, ys[0]!)).toBe(true);

  // Asked for everything once more, the bay is shown.
  await drawings(page).click({ position: { x: 5, y: 5 } });
  const around = (await cameraOf(page)).scale;
  await page.keyboard.press("0");
  await expect.poll(async () => (await cameraOf(page)).scale).toBeCloseTo(before.scale, 6);
  await page.keyboard.press("0");
  await expect.poll(async () => (await cameraOf(page)).scale).toBeCloseTo(around, 6);
});
