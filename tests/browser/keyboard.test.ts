import { expect, test } from "@playwright/test";
import { expectLevel, openWith, placeOf } from "./page";
import { g, twoStands } from "./plans";

const W = 2000 * g;

test("stands are reached, moved and taken away by keys alone", async ({ page }) => {
  await openWith(page, twoStands);
  const drawing = page.getByRole("application");
  await drawing.focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  for (let press = 0; press < 20; press += 1) await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Shift+ArrowLeft");
  // 20 × 10 mm and 1 mm from 9 m.
  await expect.poll(() => placeOf(page, "B")).toBe(8.799);
  await expectLevel(page, "B", (4 * W) / (8.799 - 1));

  await page.keyboard.press("Delete");
  await expect(page.getByTestId("level-B")).toHaveCount(0);
  await page.keyboard.press("Control+z");
  await expectLevel(page, "B", (4 * W) / (8.799 - 1));
  // Presses in quick succession are one entry; on a slow machine some come late and make their own.
  const undo = page.getByRole("button", { name: /^Undo/ });
  while (await undo.isEnabled()) await page.keyboard.press("Control+z");
  await expect.poll(() => placeOf(page, "B")).toBe(9);
  await page.keyboard.press("Control+Shift+z");
  await expect.poll(() => placeOf(page, "B")).toBeLessThan(9);
});

test("Tab goes through the stands and then on; nothing holds the keyboard", async ({ page }) => {
  await openWith(page, twoStands);
  const drawing = page.getByRole("application");
  await drawing.focus();
  await page.keyboard.press("Tab");
  await expect(page.getByLabel("Select stand A")).toBeChecked();
  await page.keyboard.press("Tab");
  await expect(page.getByLabel("Select stand B")).toBeChecked();
  await expect(drawing).toBeFocused();
  await page.keyboard.press("Tab");
  await expect(drawing).not.toBeFocused();
});

test("a number typed in the table moves the stand", async ({ page }) => {
  await openWith(page, twoStands);
  const field = page.getByLabel("A, distance from the datum end");
  await field.fill("2");
  await field.press("Enter");
  // A bare number is in mm here: 2 mm from the end. R_B = W·(5 − 0.002)/(9 − 0.002).
  await expectLevel(page, "B", (W * 4.998) / 8.998);
  await field.fill("2 m");
  await field.press("Enter");
  await expectLevel(page, "B", (W * 3) / 7);
});
