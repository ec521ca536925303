/** The screens of the program, held against axe-core in both themes, wide and on a phone. */

import { expect, type Page, test } from "@playwright/test";
import { expectClean, looks, putOn } from "./axe";
import { openPage, openWith, showStands } from "./page";
import { twoStands } from "./plans";

const tab = (page: Page, name: string) => page.getByRole("tab", { name, exact: true }).click();
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).first().click();

/** A window over the page: looked at by itself, as what lies under it is hidden. */
const dialog = "[role='dialog']";

async function closeDialog(page: Page): Promise<void> {
  await page.getByRole("dialog").getByRole("button", { name: "Close", exact: true }).first().click();
  await expect(page.getByRole("dialog")).toHaveCount(0);
}

/** Opens everything that folds out in the column; twice, as a fold may hold folds. */
async function unfoldAll(page: Page): Promise<void> {
  const closed = page.locator("aside details:not([open]) > summary");
  for (let pass = 0; pass < 2; pass += 1) {
    await closed.evaluateAll((summaries) => {
      for (const { parentElement } of summaries) (parentElement as HTMLDetailsElement).open = true;
    });
    await expect(closed).toHaveCount(0);
  }
}

for (const look of looks) {
  const name = `${look.scheme}, ${look.width} px wide`;

  test(`no finding by axe-core in the panels, ${name}`, async ({ page }) => {
    test.setTimeout(120_000);
    await putOn(page, look);
    await openPage(page);
    await expectClean(page, "findings");
    for (const [panel, heading] of [
      ["Stands", "Stand types"],
      ["Piece", "Weight and centre of gravity"],
      ["Steps", "Layouts"],
      ["Plan", "History"],
    ] as const) {
      await tab(page, panel);
      await expect(page.getByRole("heading", { name: heading, exact: true })).toBeVisible();
      await unfoldAll(page);
      // The rest of the page was looked at with the findings.
      await expectClean(page, panel, "aside");
    }
  });

  test(`no finding by axe-core in windows, menus and help, ${name}`, async ({ page }) => {
    test.setTimeout(120_000);
    await putOn(page, look);
    await openPage(page);
    await page.keyboard.press("?");
    await expect(page.getByRole("listbox")).toBeVisible();
    await expectClean(page, "what can be done", dialog);
    await page.getByRole("combobox").fill("no such thing");
    await expect(page.getByText("Nothing of that name.")).toBeVisible();
    await expectClean(page, "nothing of that name", dialog);
    await closeDialog(page);

    await tab(page, "Stands");
    await press(page, /^Horse, 10,000 lb/);
    await expectClean(page, "stand type", dialog);
    await page
      .getByRole("dialog")
      .getByRole("button", { name: /^About/ })
      .first()
      .click();
    await expectClean(page, "help on a rating", dialog);
    // Escape closes the help alone.
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(1);
    await closeDialog(page);
    await press(page, "Add a type");
    await expectClean(page, "a stand to start from", dialog);
    await closeDialog(page);

    await tab(page, "Piece");
    await page.getByText("Stiffness and section").click();
    await press(page, "Pick a section for the piece");
    for (const kind of ["Standard", "I of plates", "Box of plates", "Solid"]) {
      await page.getByRole("dialog").getByText(kind, { exact: true }).click();
      await expectClean(page, `pick a section: ${kind}`, dialog);
    }
    await closeDialog(page);

    await tab(page, "Steps");
    await press(page, "Copy this one");
    await press(page, "Side by side");
    await expect(page.getByRole("dialog").getByRole("table")).toBeVisible();
    await expectClean(page, "layouts side by side", dialog);
    await closeDialog(page);

    await tab(page, "Plan");
    await page.keyboard.press("Control+z");
    await expect(page.locator("li[data-undone='true']")).toHaveCount(1);
    await expectClean(page, "history with something undone", "aside");

    await tab(page, "Findings");
    await page.getByText("Weight, load centre, tipping").click();
    await page.getByTitle("How this comes about").first().click();
    await expect(page.getByTestId("help-text")).toBeVisible();
    await expectClean(page, "help on a number", dialog);
    await page.keyboard.press("Escape");

    await press(page, "Units");
    await expectClean(page, "units", "[role='menu']");
    await page.keyboard.press("Escape");
    await press(page, "Plan file");
    await expectClean(page, "plan file", "[role='menu']");
    await page.getByRole("menuitem", { name: "Plans kept in this browser" }).click();
    await expectClean(page, "plans kept", dialog);
    await closeDialog(page);
    await press(page, "Plan file");
    await page.getByRole("menuitem", { name: /new plan/ }).click();
    await expect(page.getByRole("button", { name: "Make the plan" })).toBeVisible();
    await expectClean(page, "new plan", dialog);
    await page.getByLabel("What does the plate on the stand say?").fill("20 kip");
    await page.keyboard.press("Enter");
    await expect(page.getByRole("radio", { name: "on a pair" })).toBeVisible();
    await expectClean(page, "new plan: per stand or per pair", dialog);
  });

  test(`no finding by axe-core where something is refused, chosen or asked, ${name}`, async ({ page }) => {
    await putOn(page, look);
    await openWith(page, twoStands);
    await page.getByLabel("Select stand A").check();
    await page.getByLabel("Select stand B").check();
    const field = page.getByLabel("A, distance from the datum end");
    await field.fill("2 furlongs");
    await field.press("Enter");
    await expect(field).toHaveAttribute("aria-invalid", "true");
    await expectClean(page, "a number refused");
    await field.press("Escape");
    await press(page, "Where a person may stand");
    await expect(page.getByRole("region", { name: "Where a person may stand" })).toBeVisible();
    await page.getByRole("application").focus();
    await page.keyboard.press(".");
    await expect(page.getByTestId("standing-place")).toBeVisible();
    await expectClean(page, "where a person may stand", "main");
    await showStands(page);
  });
}
