/** Layouts side by side: as large as the window allows, at one scale, with the governing stand named. */

import { expect, test } from "@playwright/test";
import type { PlanDocument } from "../../src/plan";
import { openWith } from "./page";
import { twoStands } from "./plans";

const [first] = twoStands.layouts;
/** The beam of 2000 kg on stands at 1 m and 9 m, or at 1 m and 6 m: W·(5 − 1)/(6 − 1) = 15.69 kN on the second. */
const plan = {
  ...twoStands,
  layouts: [
    first,
    { ...first, id: "M", name: "Nearer", placements: [first!.placements[0], { ...first!.placements[1]!, s: 6 }] },
  ],
} as PlanDocument;

for (const { name, width, height, least } of [
  { name: "in an office", width: 1440, height: 900, least: 1200 },
  { name: "on a phone", width: 390, height: 844, least: 340 },
])
  test(`two layouts side by side ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openWith(page, plan);
    await page.getByRole("tab", { name: "Steps", exact: true }).click();
    await page.getByRole("button", { name: "Side by side" }).click();
    const dialog = page.getByRole("dialog", { name: "Layouts side by side" });
    const pictures = ["As set", "Nearer"].map((layout) => dialog.getByRole("img", { name: `${layout} from above` }));
    for (const picture of pictures) {
      await expect(picture).toBeVisible();
      expect((await picture.boundingBox())!.width).toBeGreaterThan(least);
    }
    // Both are seen at once, one under the other, the piece as long in both.
    const outlines = await Promise.all(pictures.map(async (p) => (await p.locator("polygon").first().boundingBox())!));
    expect(outlines[0]!.width).toBeCloseTo(outlines[1]!.width, 3);
    expect(outlines[0]!.x).toBeCloseTo(outlines[1]!.x, 3);
    expect(outlines[1]!.y + outlines[1]!.height).toBeLessThan(height);
    // Half the weight each, and four fifths on the second: 16 kN of 19.61 kN is over the 12 kN that it is rated for.
    await expect(pictures[0]!.getByText("9807 N").first()).toBeVisible();
    await expect(pictures[1]!.getByText("15 691 N")).toBeVisible();
    await expect(dialog.getByText("B governs, 131 % of rating")).toBeVisible();
    expect(await dialog.evaluate((element) => element.scrollWidth - element.clientWidth)).toBeLessThanOrEqual(0);
  });
