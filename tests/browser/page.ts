/** Working the page as a person does: files through the file dialogue, the mouse on the drawings, numbers off the table. */

import { expect, type Locator, type Page } from "@playwright/test";
import type { PlanDocument } from "../../src/plan";

/** Opens the page with upload and download in place of the system's file pickers, which no test can press. */
export async function openPage(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.assign(window, { showOpenFilePicker: undefined, showSaveFilePicker: undefined });
  });
  await page.goto("/");
  await expect(drawings(page)).toBeVisible();
}

export const drawings = (page: Page) => page.locator("[data-scale]");

/** Opens a plan file through the menu. */
export async function openPlan(page: Page, plan: PlanDocument | string, name = "plan.json"): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Plan file" }).click();
  await page.getByRole("menuitem", { name: "Open a plan file" }).click();
  const text = typeof plan === "string" ? plan : JSON.stringify(plan);
  await (await chooser).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

/** Drops a plan file on the drawings; `look` sees the page while the file is held over them. */
export async function dropPlan(page: Page, plan: PlanDocument, look?: () => Promise<void>): Promise<void> {
  const transfer = await page.evaluateHandle((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], "plan.json", { type: "application/json" }));
    return data;
  }, JSON.stringify(plan));
  await page.dispatchEvent("[data-drawing=plan]", "dragover", { dataTransfer: transfer });
  await look?.();
  await page.dispatchEvent("[data-drawing=plan]", "drop", { dataTransfer: transfer });
}

/** Opens the page with a plan and its table of stands. */
export async function openWith(page: Page, plan: PlanDocument): Promise<void> {
  await openPage(page);
  await dropPlan(page, plan);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(plan.title);
  await showStands(page);
}

/** Shows the table of stands, the twin of the drawings. */
export async function showStands(page: Page): Promise<void> {
  await page.getByRole("tab", { name: "Stands", exact: true }).click();
}

/** Where an element lies once it has come to rest in sight: what loads above it may push it down. */
export async function restingBox(element: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  await element.scrollIntoViewIfNeeded();
  let before = "";
  await expect
    .poll(async () => {
      const last = before;
      before = JSON.stringify(await element.boundingBox());
      return before === last && before !== "null";
    })
    .toBe(true);
  return JSON.parse(before);
}

/** Where a place of the piece, (s, t) in m, lies on the page, px: on the plan view. */
export async function onPlan(page: Page, s: number, t: number): Promise<{ x: number; y: number }> {
  const camera = await cameraOf(page);
  const box = (await page.locator("[data-drawing=plan]").boundingBox())!;
  return {
    x: box.x + box.width / 2 + (s - camera.s) * camera.scale,
    y: box.y + box.height / 2 - (t - camera.t) * camera.scale,
  };
}

/** Where a place of the piece, (s, z) in m, lies on the page, px: on the elevation. */
export async function onElevation(page: Page, s: number, z: number): Promise<{ x: number; y: number }> {
  const camera = await cameraOf(page);
  const element = page.locator("[data-drawing=elevation]");
  const box = (await element.boundingBox())!;
  const height = box.height - 1 - Number(await element.getAttribute("data-lanes"));
  return {
    x: box.x + box.width / 2 + (s - camera.s) * camera.scale,
    y: box.y + 1 + height / 2 - (z - camera.z) * camera.scale,
  };
}

export async function cameraOf(page: Page): Promise<{ scale: number; s: number; t: number; z: number }> {
  return drawings(page).evaluate(({ dataset }) => ({
    scale: Number((dataset as DOMStringMap).scale),
    s: Number((dataset as DOMStringMap).s),
    t: Number((dataset as DOMStringMap).t),
    z: Number((dataset as DOMStringMap).z),
  }));
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Presses, moves in steps and lets go, with the mouse. */
export async function drag(page: Page, from: Spot, to: Spot, steps = 12): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps });
  await page.mouse.up();
}

/** The number in a text, without what parts thousands. */
export function numberIn(text: string): number {
  return Number(text.replace(/[^\d.−-]/g, "").replace("−", "-"));
}

/** What a stand carries as planned, N, off the table. */
export async function levelOf(page: Page, stand: string): Promise<number> {
  return numberIn((await page.getByTestId(`level-${stand}`).textContent()) ?? "");
}

/** Where a stand is, m from the datum end, off the table (shown in mm). */
export async function placeOf(page: Page, stand: string): Promise<number> {
  return numberIn(await page.getByLabel(`${stand}, distance from the datum end`).inputValue()) / 1000;
}

/** Waits until the table says that a stand carries so many newtons, to the last newton shown. */
export async function expectLevel(page: Page, stand: string, newtons: number): Promise<void> {
  await expect.poll(() => levelOf(page, stand)).toBe(Math.round(newtons));
}
