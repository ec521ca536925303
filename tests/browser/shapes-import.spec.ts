/** A DXF drawing taken over: the die of dxf.ts, upright in millimetres with a gap, and a bay in metres. */
import { expect, type Page, test } from "@playwright/test";
import { polygonArea } from "../../src/geometry";
import { bar, draw, menuByKeys, savedPlan, startPlan, undoes } from "./byHand";
import { die, dxf, hall } from "./dxf";

const dialog = (page: Page) => page.getByRole("dialog", { name: "Import a DXF drawing" });

async function chooseFile(page: Page, name: string, text: string | Buffer): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await dialog(page)
    .getByRole("button", { name: /^Choose/ })
    .click();
  await (await chooser).setFiles({ name, mimeType: "image/vnd.dxf", buffer: Buffer.from(text) });
}

test("the piece from a drawing of forty layers without units: asked, confirmed by one true size, its gap joined", async ({
  page,
}) => {
  await startPlan(page);
  const before = await savedPlan(page);
  await draw(page, "Import a DXF drawing");
  await chooseFile(page, "die.dxf", die(null));
  await expect(dialog(page).getByText("40 layers")).toBeVisible();
  // The layer of the greatest loop is proposed; the holes lie on another.
  await expect(dialog(page).getByRole("checkbox", { name: "OUTLINE" })).toBeChecked();
  await expect(dialog(page).getByLabel("HOLES")).not.toBeChecked();
  await dialog(page).getByLabel("HOLES").check();
  const take = dialog(page).getByRole("button", { name: "Take it over" });
  await expect(take).toBeDisabled();
  await expect(dialog(page).getByRole("status")).toHaveText("Say what its numbers are.");
  await dialog(page).getByLabel("The file does not say.").selectOption("millimetres");

  // The outline is open by 3 mm: two ends are listed, and only the holes close.
  await expect(dialog(page).getByText("2 ends meet no other")).toBeVisible();
  await expect(dialog(page).getByRole("listitem").filter({ hasText: "3 mm from the next end" })).toHaveCount(2);
  await dialog(page).getByRole("button", { name: "Join gaps up to 3 mm" }).click();
  await expect(dialog(page).getByText("None: every line closes.")).toBeVisible();
  await expect(dialog(page).getByText("An outline of 4 corners, 2 holes as keep-off zones.")).toBeVisible();

  // 1200 by 3000 as drawn, laid along its longer side. A size that differs is said, and the drawing rescaled by it.
  await expect(take).toBeDisabled();
  const size = dialog(page).getByLabel("Drawn as 3000 mm, in truth");
  await size.fill("3300");
  await size.press("Enter");
  await expect(dialog(page).getByRole("alert")).toContainText(
    "The drawing gives 3000 mm, you typed 3300 mm: 1.1 times as much.",
  );
  await expect(take).toBeDisabled();
  await dialog(page).getByRole("button", { name: "Rescale the drawing to 3300 mm" }).click();
  await expect(dialog(page).getByText("The size is confirmed.")).toBeVisible();
  await take.click();
  await expect(dialog(page)).toHaveCount(0);
  await expect(undoes(page, "Take the outline over from a drawing")).toBeVisible();

  const { piece } = await savedPlan(page);
  const corners = [...piece.outline].map(([s, t]) => `${s} ${t}`).sort();
  expect(corners).toEqual(["0 -0.66", "0 0.66", "3.3 -0.66", "3.3 0.66"]);
  expect(piece.noRestZones?.map(({ name }) => name)).toEqual(["hole 1", "hole 2"]);
  // 0.6 m by 0.3 m and a circle of 0.15 m, both 1.1 times as large; chords of the circle lose less than 1 %.
  const [rectangle, circle] = piece.noRestZones!.map(({ polygon }) => polygonArea(polygon)) as [number, number];
  expect(rectangle).toBeCloseTo(0.18 * 1.21, 9);
  expect(circle / (Math.PI * 0.165 ** 2)).toBeGreaterThan(0.99);
  expect(circle / (Math.PI * 0.165 ** 2)).toBeLessThanOrEqual(1);
  // What lay on the piece kept its share of the length: the middle stays the middle.
  expect(piece.masses[0]).toMatchObject({ kind: "point", s: 1.65 });

  await page.getByRole("button", { name: "Undo: Take the outline over from a drawing" }).click();
  await expect(page.getByRole("button", { name: /^Redo/ })).toBeEnabled();
  expect(await savedPlan(page)).toEqual(before);
});

test("a size between two corners of the picture, the other way round and mirrored, by the mouse", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Import a DXF drawing");
  // An L of 2 by 1 m in inches that says so: 78.74 by 39.37.
  const corner = (x: number, y: number): readonly [number, number] => [x / 0.0254, y / 0.0254];
  const ring = [corner(0, 0), corner(2, 0), corner(2, 0.5), corner(1, 0.5), corner(1, 1), corner(0, 1)];
  await chooseFile(page, "ell.dxf", dxf([{ name: "0", rings: [ring] }], 1));
  await expect(dialog(page).getByLabel("The file says inches")).toBeVisible();
  await dialog(page).getByLabel("A true size that you know").selectOption("between two corners");
  const picture = dialog(page).getByRole("img", { name: "The drawing as it will lie" });
  const box = (await picture.boundingBox())!;
  // The upper and the lower corner at the datum end, 1 m apart.
  await picture.click({ position: { x: 40, y: box.height * 0.35 } });
  await picture.click({ position: { x: 40, y: box.height * 0.65 } });
  const size = dialog(page).getByLabel("Drawn as 1000 mm, in truth");
  await size.fill("1 m");
  await size.press("Enter");
  await expect(dialog(page).getByText("The size is confirmed.")).toBeVisible();
  await dialog(page).getByRole("button", { name: "Turn by 90°" }).click();
  await dialog(page).getByRole("button", { name: "Turn by 90°" }).click();
  await dialog(page).getByRole("button", { name: "Mirrored, as seen from below" }).click();
  await dialog(page).getByRole("button", { name: "Take it over" }).click();
  await expect(dialog(page)).toHaveCount(0);
  const { outline } = (await savedPlan(page)).piece;
  // Mirrored the arm of the L points down, turned half round it points up at the far end.
  expect([...outline].map(([s, t]) => `${s} ${t}`).sort()).toEqual([
    "0 -0.5",
    "0 0",
    "1 0",
    "1 0.5",
    "2 -0.5",
    "2 0.5",
  ]);
});

test("the bay from a drawing, layer by layer, by the keyboard alone", async ({ page }) => {
  await startPlan(page);
  await menuByKeys(page, "Import a DXF drawing");
  const chooser = page.waitForEvent("filechooser");
  await dialog(page).getByRole("button", { name: "Choose a DXF file" }).focus();
  await page.keyboard.press("Enter");
  await (await chooser).setFiles({ name: "hall.dxf", mimeType: "image/vnd.dxf", buffer: Buffer.from(hall) });
  await dialog(page).getByRole("radio", { name: "Outline of the piece" }).focus();
  await page.keyboard.press("ArrowRight");
  for (const [layer, first] of [
    ["COLUMNS", "o"],
    ["TRENCH", "n"],
  ] as const) {
    await dialog(page).getByLabel(layer).focus();
    await page.keyboard.type(first);
  }
  await expect(dialog(page).getByLabel("COLUMNS")).toHaveValue("obstacles");
  await expect(dialog(page).getByLabel("TRENCH")).toHaveValue("noFoot");
  await expect(dialog(page).getByText("An outline of 4 corners, 2 obstacles, 1 no-foot zone.")).toBeVisible();
  await dialog(page)
    .getByLabel(/^Drawn as 20/)
    .focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("20 m");
  await page.keyboard.press("Enter");
  await dialog(page).getByRole("button", { name: "Take it over" }).focus();
  await page.keyboard.press("Enter");
  await expect(dialog(page)).toHaveCount(0);
  const { bay, piece } = await savedPlan(page);
  expect(bay?.outline).toEqual([
    [0, 0],
    [20, 0],
    [20, 9],
    [0, 9],
  ]);
  expect(bay?.obstacles).toEqual([
    {
      name: "COLUMNS 1",
      polygon: [
        [5, 8],
        [5.4, 8],
        [5.4, 8.4],
        [5, 8.4],
      ],
    },
    {
      name: "COLUMNS 2",
      polygon: [
        [15, 8],
        [15.4, 8],
        [15.4, 8.4],
        [15, 8.4],
      ],
    },
  ]);
  expect(bay?.noFootZones).toEqual([
    {
      name: "TRENCH 1",
      polygon: [
        [3, 0.5],
        [17, 0.5],
        [17, 1],
        [3, 1],
      ],
    },
  ]);
  // The piece, 6 m long and heading along x, lies in the middle of the bay.
  expect(piece.pose).toEqual({ x: 7, y: 4.5, heading: 0 });
});

test("a drawing by fingers on a phone", async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  await startPlan(page);
  await page.getByRole("button", { name: "Draw", exact: true }).tap();
  await page.getByRole("menuitem", { name: "Import a DXF drawing" }).tap();
  await chooseFile(page, "die.dxf", die(4));
  await dialog(page).getByRole("button", { name: "Join gaps up to 3 mm" }).tap();
  await dialog(page).getByLabel("Drawn as 3000 mm, in truth").fill("3 m");
  await dialog(page).getByLabel("Drawn as 3000 mm, in truth").press("Enter");
  await dialog(page).getByRole("button", { name: "Take it over" }).tap();
  await expect(dialog(page)).toHaveCount(0);
  expect((await savedPlan(page)).piece.outline).toHaveLength(4);
  await context.close();
});

test("what cannot be read is refused with one sentence, and nothing is lost", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Import a DXF drawing");
  await chooseFile(page, "letter.dxf", "Dear sirs");
  await expect(dialog(page).getByRole("alert")).toHaveText(
    "This file could not be read as a DXF drawing; export it again as ASCII DXF.",
  );
  // Two lines that close nothing; and an outline that crosses itself.
  await chooseFile(
    page,
    "open.dxf",
    dxf(
      [
        {
          name: "A",
          lines: [
            [
              [0, 0],
              [1000, 0],
            ],
            [
              [1000, 0],
              [1000, 500],
            ],
          ],
        },
      ],
      4,
    ),
  );
  await expect(dialog(page).getByRole("status")).toHaveText(
    "Nothing on these layers closes to an outline; join the gaps or choose other layers.",
  );
  await chooseFile(
    page,
    "bow.dxf",
    dxf(
      [
        {
          name: "A",
          rings: [
            [
              [0, 0],
              [1000, 500],
              [1000, 0],
              [0, 600],
            ],
          ],
        },
      ],
      4,
    ),
  );
  await expect(dialog(page).getByRole("status")).toContainText("This outline will not do: the edge from corner");
  await dialog(page).getByRole("button", { name: "Close" }).click();
  await expect(bar(page)).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
});
