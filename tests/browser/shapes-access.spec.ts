/** The screens of drawing by hand, held against axe-core in both themes, wide and on a phone. */
import { expect, type Page, test } from "@playwright/test";
import { expectClean, looks, putOn } from "./axe";
import { bar, draw, press, startPlan } from "./byHand";
import { die } from "./dxf";
import { pdf } from "./pdf";

async function choose(page: Page, button: RegExp, name: string, mimeType: string, buffer: Buffer): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("dialog").getByRole("button", { name: button }).click();
  await (await chooser).setFiles({ name, mimeType, buffer });
}

const drawingBar = "[aria-label='Drawing by hand']";
const dialog = "[role='dialog']";

for (const look of looks)
  test(`no finding by axe-core while drawing, ${look.scheme}, ${look.width} px wide`, async ({ page }) => {
    test.setTimeout(120_000);
    await putOn(page, look);
    const clean = (where: string, within?: string) => expectClean(page, where, within);
    await startPlan(page);
    await page.getByRole("button", { name: "Draw", exact: true }).click();
    await expect(page.getByRole("menuitem", { name: "Keep off" })).toBeVisible();
    await clean("the menu");
    await page.keyboard.press("Escape");

    await draw(page, "Outline of the bay");
    await bar(page).getByText("Corner by corner").click();
    await press(page, [-1, -1.5], [7, -1.5], [7, 1.5]);
    await press(page, [3, -2]);
    await expect(bar(page).getByRole("alert")).toBeVisible();
    await clean("drawing");
    await bar(page).getByRole("button", { name: "Close", exact: true }).click();
    await bar(page).getByLabel("Corner", { exact: true }).selectOption("2");
    await clean("a corner chosen", drawingBar);
    await draw(page, "Walkway");
    await press(page, [0, -1.2], [6, -1.2]);
    await clean("a walkway", drawingBar);
    await bar(page).getByRole("button", { name: "Done" }).click();

    await draw(page, "Trace over a picture or a PDF page");
    await choose(
      page,
      /^Choose/,
      "hall.pdf",
      "application/pdf",
      pdf([
        [100, 100, 600, 300],
        [10, 10, 20, 20],
      ]),
    );
    await expect(page.getByRole("button", { name: "Put it under the plan" })).toBeEnabled();
    await clean("choosing what is traced", dialog);
    await page.getByRole("button", { name: "Put it under the plan" }).click();
    await press(page, [0, 0], [3, 0]);
    await clean("the picture scaled", drawingBar);
    await bar(page).getByRole("button", { name: "Move", exact: true }).click();
    await clean("the picture moved", drawingBar);
    await bar(page).getByRole("button", { name: "Done" }).click();

    await draw(page, "Import a DXF drawing");
    await clean("an empty import", dialog);
    await choose(page, /^Choose/, "die.dxf", "image/vnd.dxf", Buffer.from(die(4)));
    await page.getByRole("checkbox", { name: "HOLES" }).check();
    const size = page.getByLabel(/^Drawn as/);
    await size.fill("2 m");
    await size.press("Enter");
    await expect(page.getByRole("button", { name: /^Rescale/ })).toBeVisible();
    await clean("a drawing for the piece", dialog);
    await page.getByText("The bay", { exact: true }).click();
    await expect(page.getByLabel("OUTLINE", { exact: true })).toBeVisible();
    await clean("a drawing for the bay", dialog);
  });
