/** The history outlives the page: what was done is undone after a reload, and what was undone is done again. */

import { expect, type Page, test } from "@playwright/test";
import { numberIn, openWith, showStands } from "./page";
import { twoStands } from "./plans";

const heightOf = async (page: Page) => numberIn(await page.getByLabel("B, height").inputValue());

test("undo and redo go on after a reload, through every step", async ({ page }) => {
  await openWith(page, twoStands);
  const field = page.getByLabel("B, height");
  for (const s of ["700", "650", "800"]) {
    await field.fill(s);
    await field.press("Enter");
    await expect.poll(() => heightOf(page)).toBe(Number(s));
  }
  const undo = page.getByRole("button", { name: /^Undo/ });
  const redo = page.getByRole("button", { name: /^Redo/ });
  await undo.click();
  await expect.poll(() => heightOf(page)).toBe(650);
  await expect(page.getByText("Kept", { exact: false }).first()).toBeVisible();
  // The history is written after the plan.
  await page.waitForTimeout(300);

  await page.reload();
  await showStands(page);
  expect(await heightOf(page)).toBe(650);
  await expect(redo).toBeEnabled();
  await redo.click();
  await expect.poll(() => heightOf(page)).toBe(800);
  for (const s of [650, 700, 762]) {
    await undo.click();
    await expect.poll(() => heightOf(page)).toBe(s);
  }
  await expect(undo).toBeDisabled();

  // Done anew, it takes the place of what was undone, and that too is kept.
  await field.fill("880");
  await field.press("Enter");
  await expect(redo).toBeDisabled();
  await page.waitForTimeout(300);
  await page.reload();
  await showStands(page);
  expect(await heightOf(page)).toBe(880);
  await expect(undo).toBeEnabled();
  await undo.click();
  await expect.poll(() => heightOf(page)).toBe(762);
  await expect(undo).toBeDisabled();
});
