/** What takes longer than a second says how far it has come, and can be stopped. */

import { expect, test } from "@playwright/test";
import { openPage } from "./page";

test("good up to is stopped and goes on", async ({ page }) => {
  await openPage(page);
  const findings = page.getByRole("tabpanel", { name: "Findings" });
  const value = findings.getByRole("button", { name: /^× / });
  await expect(findings.getByRole("progressbar", { name: "Answers that have come" })).toBeVisible();
  await findings.getByRole("button", { name: "Stop", exact: true }).click();
  const goOn = findings.getByRole("button", { name: "Go on", exact: true });
  await expect(goOn).toBeVisible();
  // Longer than the whole of it takes.
  await page.waitForTimeout(5000);
  await expect(value).toHaveCount(0);
  await goOn.click();
  await expect(value).toBeVisible({ timeout: 20_000 });
  await expect(goOn).toHaveCount(0);
});
