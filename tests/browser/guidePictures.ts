/** Pictures for the guide, taken by its tests where TAKE_PICTURES=1 is set; else nothing is written. */

import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, type Page } from "@playwright/test";
import type { Hand } from "./guideHands";
import { smallPng } from "./guidePng";

const folder = join(import.meta.dirname, "../../docs/pictures");

/** Takes a picture of the page as it stands, once for all hands: with the mouse. */
export async function picture(hand: Hand, name: string): Promise<void> {
  if (hand.name === "mouse") await takePicture(hand.page, name);
}

export async function takePicture(page: Page, name: string): Promise<void> {
  if (process.env.TAKE_PICTURES !== "1") return;
  // What is still being computed is dimmed, or said to be: the picture waits for the slow answers.
  await expect(page.locator("[data-pending='true']").or(page.getByText(/computing|being computed/))).toHaveCount(0, {
    timeout: 60_000,
  });
  await page.waitForTimeout(500);
  await writeFile(join(folder, `${name}.png`), smallPng(await page.screenshot()));
}
