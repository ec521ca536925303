/** A box that selects, and stands carried from the list onto the drawings, by mouse and by finger. */

import { expect, test } from "@playwright/test";
import { fingers } from "./fingers";
import { cameraOf, drag, expectLevel, onElevation, onPlan, openWith, placeOf, restingBox, showStands } from "./page";
import { g, twoStands } from "./plans";

const W = 2000 * g;

test("Shift and a drag over the paper select the stands the box touches; they move together", async ({ page }) => {
  await openWith(page, twoStands);
  const chosen = (stand: string) => page.getByRole("checkbox", { name: `Select stand ${stand}` });
  const before = await cameraOf(page);

  await page.keyboard.down("Shift");
  await drag(page, await onPlan(page, 0.4, -1), await onPlan(page, 1.5, 0.4));
  await page.keyboard.up("Shift");
  await expect(chosen("A")).toBeChecked();
  await expect(chosen("B")).not.toBeChecked();
  expect(await cameraOf(page)).toEqual(before);

  await page.keyboard.down("Shift");
  await drag(page, await onElevation(page, 8.4, 0.3), await onElevation(page, 9.4, 0.5));
  await page.keyboard.up("Shift");
  await expect(chosen("A")).toBeChecked();
  await expect(chosen("B")).toBeChecked();

  await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 8.5, 0.5));
  const [a, b] = [await placeOf(page, "A"), await placeOf(page, "B")];
  expect(b).toBeCloseTo(8.5, 1);
  expect(b - a).toBeCloseTo(8, 6);
  await expectLevel(page, "B", (W * (5 - a)) / (b - a));

  // Escape takes a running box back.
  await page.keyboard.press("Escape");
  await page.keyboard.down("Shift");
  const [from, to] = [await onPlan(page, a - 0.6, -1), await onPlan(page, a + 0.5, 0.4)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.keyboard.up("Shift");
  await expect(chosen("A")).toBeChecked();
  await page.keyboard.press("Escape");
  await expect(chosen("A")).not.toBeChecked();
  await page.mouse.up();
  await expect(chosen("A")).not.toBeChecked();
});

test("a free stand is dragged from the list onto the plan view, and a type onto the elevation", async ({ page }) => {
  await openWith(page, twoStands);
  const place = page.getByRole("button", { name: "Place", exact: true });
  const box = await restingBox(place);
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };

  // Let go beside the drawings it stays in the list.
  await drag(page, from, { x: from.x, y: from.y + 40 });
  await expect(place).toBeVisible();
  await drag(page, from, await onPlan(page, 7, 0));
  await expect(place).toHaveCount(0);
  expect(await placeOf(page, "C")).toBeCloseTo(7, 1);

  const type = page.getByRole("button", { name: /^Horse/ });
  await expect(page.getByRole("heading", { name: "Stand C", exact: true })).toBeVisible();
  const picture = await restingBox(type);
  await drag(page, { x: picture.x + 20, y: picture.y + 20 }, await onElevation(page, 3, 0.3));
  await expect(page.getByRole("dialog")).toHaveCount(0);
  await expect(page.getByLabel("H-4, distance from the datum end")).toHaveCount(1);
  expect(await placeOf(page, "H-4")).toBeCloseTo(3, 1);
});

test.describe("by finger", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test("a free stand is dragged from the list onto the plan view", async ({ page }) => {
    await openWith(page, twoStands);
    await showStands(page);
    const place = page.getByRole("button", { name: "Place", exact: true });
    const box = await restingBox(place);
    const hand = await fingers(page);
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await hand.slide([[from, await onPlan(page, 5, 0)]]);
    await expect(place).toHaveCount(0);
    expect(await placeOf(page, "C")).toBeCloseTo(5, 1);
  });
});
