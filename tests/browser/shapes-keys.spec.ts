/** The same by the keyboard alone: menus by arrows, corners typed or aimed at with the arrow keys. */
import { expect, type Page, test } from "@playwright/test";
import { bar, menuByKeys, savedPlan, startPlan } from "./byHand";

/** Takes something to be drawn of the Draw menu. */
async function drawByKeys(page: Page, what: string): Promise<void> {
  await menuByKeys(page, what);
  await expect(bar(page)).toBeFocused();
}

/** Goes to the bar's field for the first coordinate. */
async function tabTo(page: Page, label: string): Promise<void> {
  for (let presses = 0; presses < 12; presses += 1) {
    await page.keyboard.press("Tab");
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      const input = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : null;
      return input ?? element?.getAttribute("aria-label") ?? element?.textContent ?? "";
    });
    if (focused === label) return;
  }
  throw new Error(`no field ${label}`);
}

async function typeBoth(page: Page, first: string, second: string): Promise<void> {
  await page.keyboard.type(first);
  await page.keyboard.press("Tab");
  await page.keyboard.type(second);
  await page.keyboard.press("Enter");
}

test("an outline by typed corners; an empty line closes it", async ({ page }) => {
  await startPlan(page);
  await drawByKeys(page, "Outline of the piece");
  await tabTo(page, "Along");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("ArrowRight");
  await tabTo(page, "Along");
  for (const [along, across] of [
    ["0", "-600"],
    ["2 m", "-0.6 m"],
    ["2000", "600"],
    ["500", "900"],
  ] as const)
    await typeBoth(page, along, across);
  await typeBoth(page, "5 m", "nothing");
  await expect(bar(page).getByRole("alert")).toContainText("Across");
  await page.keyboard.press("Control+a");
  await page.keyboard.press("Delete");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Control+a");
  await page.keyboard.press("Delete");
  await page.keyboard.press("Enter");
  await expect(bar(page).getByRole("button", { name: "Done" })).toBeVisible();
  expect((await savedPlan(page)).piece.outline).toEqual([
    [0, -0.6],
    [2, -0.6],
    [2, 0.6],
    [0.5, 0.9],
  ]);
});

test("a bay and a column aimed at with the arrow keys, moved by them, and removed", async ({ page }) => {
  await startPlan(page);
  await drawByKeys(page, "Outline of the bay");
  await tabTo(page, "x");
  await typeBoth(page, "-1000", "-2000");
  await typeBoth(page, "13 m", "2 m");
  await drawByKeys(page, "Obstacle or column");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Space");
  for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  const drawn = (await savedPlan(page)).bay?.obstacles?.[0]?.polygon;
  expect(drawn).toHaveLength(4);
  const [[x1, y1], , [x2, y2]] = drawn as [readonly [number, number], unknown, readonly [number, number], unknown];
  // Three steps up and one to the right: three times as high as wide, and round numbers all.
  expect((y2 - y1) / (x2 - x1)).toBeCloseTo(3, 9);
  for (const number of [x1, y1, x2, y2]) expect((number * 1000) % 10).toBeCloseTo(0, 6);

  // The new column is still in hand: an arrow key moves it by a whole step, Delete removes it.
  await page.getByRole("application").focus();
  await page.keyboard.press("ArrowRight");
  const moved = (await savedPlan(page)).bay?.obstacles?.[0]?.polygon;
  expect(moved?.[0]?.[0]).toBeCloseTo(x1 + 0.01, 9);
  expect(moved?.[2]?.[0]).toBeCloseTo(x2 + 0.01, 9);
  await page.getByRole("application").focus();
  await page.keyboard.press("Delete");
  expect((await savedPlan(page)).bay?.obstacles).toEqual([]);
});

test("a corner chosen and moved by numbers in the bar", async ({ page }) => {
  await startPlan(page);
  await drawByKeys(page, "Outline of the bay");
  await tabTo(page, "x");
  await typeBoth(page, "0", "0");
  await typeBoth(page, "10 m", "6 m");
  await bar(page).getByLabel("Corner", { exact: true }).focus();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await expect(bar(page).getByLabel("Corner", { exact: true })).toHaveValue("2");
  await page.keyboard.press("Tab");
  await page.keyboard.type("12 m");
  await page.keyboard.press("Enter");
  // Past corner 4, on the other side of it: the outline would cross its left edge.
  await page.keyboard.press("Control+a");
  await page.keyboard.type("-5 m");
  await page.keyboard.press("Enter");
  await expect(page.getByText(/would cross or touch/).first()).toBeVisible();
  await page.keyboard.press("Escape");
  expect((await savedPlan(page)).bay?.outline).toEqual([
    [0, 0],
    [10, 0],
    [12, 6],
    [0, 6],
  ]);
});
