/** Drawing by hand as a person does it: from the empty program to a plan file that can be read. */

import { readFile } from "node:fs/promises";
import { expect, type Page } from "@playwright/test";
import type { PlanDocument } from "../../src/plan";
import { cameraOf, onPlan, openPage } from "./page";

/** From the empty program: a new plan with every question left at "don't know", in millimetres, called by a name. */
export async function startPlan(page: Page): Promise<void> {
  await openPage(page);
  await page.getByRole("button", { name: "Plan file" }).click();
  await page.getByRole("menuitem", { name: "My piece: a new plan" }).click();
  await page.getByRole("radio", { name: "millimetres and kilograms" }).check();
  await page.getByRole("button", { name: "Make the plan" }).click();
  await expect(page.getByRole("button", { name: "Draw", exact: true })).toBeVisible();
  await expect(page.getByRole("dialog")).toHaveCount(0);
}

/** The plan as it is saved to a file. */
export async function savedPlan(page: Page): Promise<PlanDocument> {
  await page.getByRole("button", { name: "Plan file" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("menuitem", { name: "Save to a plan file" }).click();
  const text = await readFile(await (await download).path(), "utf8");
  // The line that says so would leave the drawings lower than they were.
  await page.getByRole("button", { name: "Close this message" }).click();
  return JSON.parse(text) as PlanDocument;
}

/** Waits until the sheet lies still: it makes room for whoever begins to draw, and takes it back afterwards. */
export async function settled(page: Page): Promise<void> {
  let before = "";
  await expect
    .poll(async () => {
      const now = JSON.stringify([await cameraOf(page), await page.locator("[data-drawing=plan]").boundingBox()]);
      const same = now === before;
      before = now;
      return same;
    })
    .toBe(true);
}

/** Takes something of the Draw menu. */
export async function draw(page: Page, what: string | RegExp): Promise<void> {
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await page.getByRole("menuitem", { name: what }).click();
  if ((await page.getByRole("dialog").count()) === 0) await settled(page);
}

/** The same by keys: opens the menu, goes down to the entry and takes it. */
export async function menuByKeys(page: Page, what: string): Promise<void> {
  await page.getByRole("button", { name: "Draw", exact: true }).focus();
  await page.keyboard.press("Enter");
  const item = page.getByRole("menuitem", { name: what, exact: true });
  await expect(item).toBeVisible();
  for (let presses = 0; presses < 20; presses += 1) {
    await page.keyboard.press("ArrowDown");
    if (await item.evaluate((element) => element === document.activeElement)) break;
  }
  await page.keyboard.press("Enter");
}

export const bar = (page: Page) => page.getByRole("region", { name: "Drawing by hand" });

/** Presses on places of the piece, m, with the mouse. The bay of a new plan has the same numbers. */
export async function press(page: Page, ...places: readonly (readonly [number, number])[]): Promise<void> {
  for (const [s, t] of places) {
    const { x, y } = await onPlan(page, s, t);
    await page.mouse.move(x, y, { steps: 3 });
    await page.mouse.click(x, y);
  }
}

/** Ends what is in hand. */
export async function done(page: Page): Promise<void> {
  await bar(page).getByRole("button", { name: "Done" }).click();
  await expect(bar(page)).toHaveCount(0);
  await settled(page);
}

/** Types a corner into the bar. */
export async function typeCorner(page: Page, first: string, second: string): Promise<void> {
  const fields = bar(page).getByRole("textbox");
  await fields.nth(0).fill(first);
  await fields.nth(1).fill(second);
  await fields.nth(1).press("Enter");
}

/** What an undo would take back. */
export const undoes = (page: Page, what: string) => page.getByRole("button", { name: `Undo: ${what}`, exact: true });
