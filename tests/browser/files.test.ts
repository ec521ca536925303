import { readFileSync } from "node:fs";
import { expect, test } from "@playwright/test";
import { read, write } from "../../src/plan";
import { drag, dropPlan, onPlan, openPlan, openWith, placeOf } from "./page";
import { twoStands } from "./plans";

test("what is saved to a file is the plan as the command line writes it, with what was done", async ({ page }) => {
  await openWith(page, twoStands);
  await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5));
  const b = await placeOf(page, "B");
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Plan file" }).click();
  await page.getByRole("menuitem", { name: "Save to a plan file" }).click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe("plan.json");
  const text = readFileSync(await saved.path(), "utf8");
  const answer = read(text);
  if (!answer.ok) throw new Error(answer.message);
  expect(write(answer.document)).toBe(text);
  expect(answer.document).toEqual({
    ...twoStands,
    layouts: [
      {
        ...twoStands.layouts[0]!,
        placements: [twoStands.layouts[0]!.placements[0], { ...twoStands.layouts[0]!.placements[1]!, s: b }],
      },
    ],
  });
});

const refused: readonly (readonly [string, string, RegExp])[] = [
  ["cut off in the middle", JSON.stringify(twoStands).slice(0, 400), /./],
  [
    "a stand placed that is not there",
    JSON.stringify(twoStands).replace('"stand":"B"', '"stand":"Z"'),
    /layouts\[0\]\.placements\[1\]\.stand/,
  ],
  [
    "a weight below nothing",
    JSON.stringify(twoStands).replace("[200,200]", "[-200,200]"),
    /piece\.masses\[0\]\.massPerLength/,
  ],
];

for (const [what, text, where] of refused)
  test(`a file that is refused (${what}) is said in one sentence with its place, and nothing is lost`, async ({
    page,
  }) => {
    await openWith(page, twoStands);
    await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5));
    const b = await placeOf(page, "B");
    await openPlan(page, text, "broken.json");
    const notice = page.getByRole("alert");
    await expect(notice).toContainText("broken.json was not opened.");
    await expect(notice).toContainText(where);
    expect(await placeOf(page, "B")).toBe(b);
    await expect(page.getByRole("button", { name: "Undo: Move B" })).toBeEnabled();
    await notice.getByRole("button", { name: "Close this message" }).click();
    await expect(notice).toHaveCount(0);
  });

test("a file dropped on the page is opened", async ({ page }) => {
  await openWith(page, twoStands);
  await dropPlan(page, { ...twoStands, title: "Dropped plan" }, () =>
    expect(page.locator("[data-dropping=true]")).toHaveCount(1),
  );
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Dropped plan");
});

test("an edit that could not be read back is refused, and the number stays as it was", async ({ page }) => {
  await openWith(page, twoStands);
  const field = page.getByLabel("B, height");
  await field.fill("-5 m");
  await field.press("Enter");
  await expect(page.getByText(/layouts\[0\]\.placements\[1\]\.height/)).toBeVisible();
  await field.press("Escape");
  await expect(field).toHaveValue("762 mm");
});
