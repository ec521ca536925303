/** The panels, worked as a person works them. */

import { expect, type Page, test } from "@playwright/test";
import { expectLevel, openPage, openWith, placeOf, showStands } from "./page";
import { g, twoStands } from "./plans";

const W = 2000 * g;

const tab = (page: Page, name: string) => page.getByRole("tab", { name, exact: true }).click();

test.describe("findings", () => {
  test("the demo's first finding offers to take the shim out, and done, nothing fails", async ({ page }) => {
    await openPage(page);
    const findings = page.getByRole("list", { name: "Findings, worst first" });
    await expect(findings.getByRole("listitem").first()).toContainText("H-03");
    const offer = findings.getByRole("button", { name: /^Take the .* shim out of H-03$/ }).first();
    await offer.click({ timeout: 30_000 });
    await expect(page.getByRole("complementary")).not.toContainText("fails");
    // look.md: 3,345, 3,005, 3,005 and 3,345 lb once the shim is out.
    await showStands(page);
    for (const [stand, pounds] of [
      ["H-01", "3,345"],
      ["H-02", "3,005"],
      ["H-03", "3,005"],
      ["H-04", "3,345"],
    ] as const)
      await expect(page.getByTestId(`level-${stand}`)).toHaveText(`${pounds} lb`);
    await page.keyboard.press("Control+z");
    await expect(page.getByTestId("level-H-03")).toHaveText("9,422 lb");
  });

  test("choosing a finding shows its stands, choosing it again lets go", async ({ page }) => {
    await openPage(page);
    const first = page.getByRole("list", { name: "Findings, worst first" }).getByRole("button").first();
    await first.click();
    await expect(first).toHaveAttribute("aria-pressed", "true");
    await first.click();
    await expect(first).toHaveAttribute("aria-pressed", "false");
  });
});

test.describe("numbers", () => {
  test("what cannot be read keeps its text, says why, and changes nothing", async ({ page }) => {
    await openWith(page, twoStands);
    const field = page.getByLabel("A, distance from the datum end");
    await field.fill("2 furlongs");
    await field.press("Enter");
    await expect(field).toHaveValue("2 furlongs");
    await expect(field).toHaveAttribute("aria-invalid", "true");
    await expectLevel(page, "B", W / 2);
    await field.press("Escape");
    await expect(field).toHaveValue("1000 mm");
    await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
  });

  for (const [typed, metres] of [
    [`6' 6-3/4"`, 2.00025],
    ["2.25 m", 2.25],
    ["78 in", 1.9812],
  ] as const)
    test(`${typed} is read as people write it`, async ({ page }) => {
      await openWith(page, twoStands);
      const field = page.getByLabel("A, distance from the datum end");
      await field.fill(typed);
      await field.press("Enter");
      await expect.poll(() => placeOf(page, "A")).toBeCloseTo(metres, 9);
      // R_B = W·(5 − a)/(9 − a)
      await expectLevel(page, "B", (W * (5 - metres)) / (9 - metres));
    });

  test("the help on a number evaluates to the digits shown", async ({ page }) => {
    await openWith(page, twoStands);
    await page.getByLabel("Select stand A").check();
    await tab(page, "Findings");
    await page.getByText("Weight, load centre, tipping").click();
    await page.getByText("Reserve, feet and pressure").click();
    await expect(page.getByText("Push reckoned with")).toBeVisible();
    await expect(page.getByText("Most loaded foot")).toBeVisible();
    const asked = page.getByTitle("How this comes about");
    const labels: string[] = [];
    // Good up to comes later than the rest: counted anew each time.
    for (let index = 0; index < (await asked.count()); index += 1) {
      await asked.nth(index).click();
      labels.push((await page.getByRole("dialog").getByRole("heading").textContent()) ?? "");
      const text = (await page.getByTestId("help-text").textContent()) ?? "";
      const shown = Number(await page.getByTestId("help-value").textContent());
      expect(text).toMatch(/^[\d\s.e+*/(),a-z-]+$/);
      // Arithmetic alone, as the pattern above says.
      const value = Number(new Function(`const { min, max, sqrt, hypot, log10, abs } = Math; return ${text};`)());
      expect(Number(value.toPrecision(5)), `${labels.at(-1)}: ${text}`).toBe(shown);
      await page.keyboard.press("Escape");
      await expect(page.getByRole("dialog")).toHaveCount(0);
    }
    expect(labels).toContain("as planned");
    expect(labels).toContain("% of rating");
    expect(labels).toContain("margin against tipping");
    expect(labels).toContain("heaviest, whatever the floor");
    expect(labels).toContain("the stand's own reserve against tipping over");
    expect(labels.length).toBeGreaterThanOrEqual(25);
  });
});

test.describe("the piece", () => {
  test("a section picked from the library bends the piece and adds its weight in one step", async ({ page }) => {
    await openWith(page, twoStands);
    await tab(page, "Piece");
    await page.getByText("Stiffness and section").click();
    await page.getByRole("button", { name: "Pick a section for the piece" }).click();
    await page.getByLabel("Family").selectOption("W");
    await page.getByLabel("Section", { exact: true }).selectOption("W18×50");
    await page.getByRole("button", { name: "Pick W18×50" }).click();
    await expect(page.getByText("1 stretch")).toBeVisible();
    // W18×50 weighs 50 lb/ft by name: 74.4 kg/m, 10 m of it on 2000 kg; the table's area gives it within 1 %.
    await tab(page, "Stands");
    await expect
      .poll(async () => Number(((await page.getByTestId("level-A").textContent()) ?? "").replace(/\D/g, "")))
      .toBeGreaterThan(((2000 + 736) * g) / 2);
    await page.keyboard.press("Control+z");
    await expectLevel(page, "A", W / 2);
  });

  test("a block from its sizes weighs density times volume", async ({ page }) => {
    await openWith(page, twoStands);
    await tab(page, "Piece");
    await page.getByRole("button", { name: "A block or plate, from its size" }).click();
    const form = page.getByRole("group", { name: "A block or plate, from its size" });
    for (const [label, value] of [
      ["From, off", "4 m"],
      ["To, off", "6 m"],
      ["Width, across", "500 mm"],
      ["Height", "100 mm"],
    ] as const) {
      await form.getByLabel(label).fill(value);
      await form.getByLabel(label).press("Enter");
    }
    await form.getByRole("button", { name: "Add it" }).click();
    // 7850 kg/m³ × 2 × 0.5 × 0.1 m³ = 785 kg, in the middle: half on each stand.
    await showStands(page);
    await expectLevel(page, "A", ((2000 + 785) * g) / 2);
  });

  test("a corner typed in the outline makes the piece longer", async ({ page }) => {
    await openWith(page, twoStands);
    await tab(page, "Piece");
    await page.getByText("Outline", { exact: true }).click();
    for (const corner of [2, 3]) {
      const field = page.getByLabel(`Corner ${corner}, along`);
      await field.fill("12 m");
      await field.press("Enter");
    }
    await expect(page.getByText(/^12\s?000 mm long, 4 corners$/)).toBeVisible();
  });
});

test("a joint opened in a step leaves parts that must stand by themselves", async ({ page }) => {
  await openWith(page, twoStands);
  await tab(page, "Steps");
  await page.getByText("Parts that are there").click();
  await page.getByRole("button", { name: "Open the joint here" }).click();
  // Half of the beam, 0 to 5 m, stands on A alone at 1 m, and tips.
  await expect(page.getByRole("complementary")).toContainText("fails");
  await page.getByRole("button", { name: /^Weld the joint/ }).click();
  await showStands(page);
  await expectLevel(page, "A", W / 2);
});

test("the rating is asked: per stand or per pair", async ({ page }) => {
  await openWith(page, twoStands);
  await page.getByRole("button", { name: /^Horse/ }).click();
  const dialog = page.getByRole("dialog");
  const rating = dialog.getByLabel("Load, spread over the top");
  await rating.fill("40 kN");
  await rating.press("Enter");
  await expect(dialog.getByText("is that on one stand, or on a pair?")).toBeVisible();
  await dialog.getByRole("button", { name: /^On a pair/ }).click();
  await expect(rating).toHaveValue("20000 N");
});

test("a criterion changed is marked and goes back", async ({ page }) => {
  await openWith(page, twoStands);
  await tab(page, "Plan");
  const field = page.getByLabel("Set-down factor");
  await field.fill("1.5");
  await field.press("Enter");
  const row = page.getByRole("listitem").filter({ has: field });
  await expect(row).toContainText("Changed.");
  await page.getByRole("button", { name: "Set-down factor: back to the default" }).click();
  await expect(field).toHaveValue("1.25");
  await expect(row).not.toContainText("Changed.");
});

test("the history lists what was done and goes anywhere in it", async ({ page }) => {
  await openWith(page, twoStands);
  for (const at of ["2 m", "3 m"]) {
    const field = page.getByLabel("A, distance from the datum end");
    await field.fill(at);
    await field.press("Enter");
    // Quick repeats on one field are one entry; these are two edits.
    await page.waitForTimeout(1100);
  }
  await tab(page, "Plan");
  const entries = page.getByRole("button", { name: /^Move A/ });
  await expect(entries).toHaveCount(2);
  await entries.last().click();
  await showStands(page);
  await expect.poll(() => placeOf(page, "A")).toBe(2);
});

test("says what changed to those who do not see it", async ({ page }) => {
  await openWith(page, twoStands);
  const field = page.getByLabel("A, distance from the datum end");
  await field.fill("2 m");
  await field.press("Enter");
  await expect(page.getByTestId("announcer")).toContainText("Move A");
});

test.describe("a new plan, one screen", () => {
  test.use({ hasTouch: true });

  test("from the page to a verdict in at most twelve touches besides typed values", async ({ page }) => {
    await openPage(page);
    let touches = 0;
    const touch = async (role: "button" | "menuitem" | "radio", name: string | RegExp) => {
      touches += 1;
      await page.getByRole(role, { name, exact: typeof name === "string" }).tap();
    };
    const type = async (label: string, text: string) => {
      await page.getByLabel(label, { exact: true }).fill(text);
    };
    await touch("button", "Plan file");
    await touch("menuitem", /new plan/);
    await touch("radio", "millimetres and kilograms");
    await touch("radio", "a long member");
    await type("What is it called?", "Girder G2");
    await type("Length", "8 m");
    await type("Width", "300 mm");
    await type("Height", "600 mm");
    await type("Weight", "4 t");
    await touch("radio", "a scale");
    await touch("radio", /in the middle/);
    await touch("radio", "2");
    await touch("radio", "Horse, 762 mm");
    await type("What does the plate on the stand say?", "40 kN");
    await page.keyboard.press("Enter");
    await touch("radio", "on one stand");
    await touch("radio", "set by laser");
    await touch("button", "Make the plan");
    expect(touches).toBeLessThanOrEqual(12);
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Girder G2");
    await showStands(page);
    // Two stands at equal distances from the middle: 4000 kg·g/2 each = 19.61 kN.
    await expect(page.getByTestId("level-H-1")).toHaveText("19.61 kN");
    await expect(page.getByRole("complementary")).toContainText(/holds|close|unknown|fails/);
  });

  test("with nothing known there is a plan, and its notes say what to find out", async ({ page }) => {
    await openPage(page);
    await page.getByRole("button", { name: "Plan file" }).tap();
    await page.getByRole("menuitem", { name: /new plan/ }).tap();
    await page.getByRole("button", { name: "Make the plan" }).tap();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Long member");
    await tab(page, "Plan");
    await expect(page.getByLabel("Notes")).toHaveValue(/Weigh it/);
  });
});
