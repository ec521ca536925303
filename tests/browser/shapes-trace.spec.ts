/** A picture and a page of a PDF under the plan view: scaled by two points and a typed length, traced, kept. */
import { expect, type Page, test } from "@playwright/test";
import { bar, done, draw, press, savedPlan, startPlan } from "./byHand";
import { cameraOf, drag, numberIn, onPlan } from "./page";
import { pdf } from "./pdf";

const dialog = (page: Page) => page.getByRole("dialog", { name: "Trace over a picture or a PDF page" });

async function chooseFile(page: Page, name: string, mimeType: string, buffer: Buffer): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await dialog(page)
    .getByRole("button", { name: /^Choose/ })
    .click();
  await (await chooser).setFiles({ name, mimeType, buffer });
}

/** A PNG file: white, with the outline of a rectangle in it, in px. */
async function png(
  page: Page,
  width: number,
  height: number,
  box: readonly [number, number, number, number],
): Promise<Buffer> {
  const address = await page.evaluate(
    ([w, h, x, y, dx, dy]) => {
      const canvas = document.createElement("canvas");
      canvas.width = w;
      canvas.height = h;
      const paper = canvas.getContext("2d")!;
      paper.fillStyle = "#fff";
      paper.fillRect(0, 0, w, h);
      paper.lineWidth = 6;
      paper.strokeRect(x, y, dx, dy);
      return canvas.toDataURL("image/png");
    },
    [width, height, ...box] as const,
  );
  return Buffer.from(address.split(",")[1]!, "base64");
}

/** Whether something dark is drawn near a place of the plan view, m. */
async function isInked(page: Page, x: number, y: number): Promise<boolean> {
  const at = await onPlan(page, x, y);
  const shot = await page.screenshot({ clip: { x: at.x - 4, y: at.y - 4, width: 8, height: 8 } });
  return page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: "image/png" }));
      const canvas = document.createElement("canvas");
      canvas.width = bitmap.width;
      canvas.height = bitmap.height;
      const paper = canvas.getContext("2d")!;
      paper.drawImage(bitmap, 0, 0);
      const { data } = paper.getImageData(0, 0, canvas.width, canvas.height);
      let darkest = 255;
      for (let at = 0; at < data.length; at += 4) darkest = Math.min(darkest, data[at]!);
      return darkest < 160;
    },
    [...shot],
  );
}

test("a picture: two points and a length scale it, a drag moves it, a bay is traced over it, and it is there again", async ({
  page,
}) => {
  await startPlan(page);
  // 1000 by 500 px with a hall of 800 by 300 px in it, from 100 px left and below.
  const picture = await png(page, 1000, 500, [100, 100, 800, 300]);
  await draw(page, "Trace over a picture or a PDF page");
  await chooseFile(page, "hall.png", "image/png", picture);
  await dialog(page).getByRole("button", { name: "Put it under the plan" }).click();
  await expect(bar(page)).toContainText("Touch one end of a length that you know.");
  // Unscaled it is laid about the piece, 6 m long: 1.2 times as wide, 7.2 m, its middle at (3, 0). A pixel is 7.2 mm.
  const pixel = 7.2 / 1000;
  const corner = (i: number, j: number): readonly [number, number] => [3 + (i - 500) * pixel, (j - 250) * pixel];
  expect(await isInked(page, ...corner(300, 100))).toBe(true);
  expect(await isInked(page, ...corner(300, 60))).toBe(false);
  await press(page, corner(100, 100), corner(900, 100));
  await expect(bar(page)).toContainText("Type how long that is in truth.");
  await bar(page).getByLabel("True length").fill("16 m");
  await bar(page).getByLabel("True length").press("Enter");
  // 800 px are 16 m now, 20 mm a pixel, and the first point stayed where it was.
  const [fixedX, fixedY] = corner(100, 100);
  const scaled = (i: number, j: number): readonly [number, number] => [
    fixedX + (i - 100) * 0.02,
    fixedY + (j - 100) * 0.02,
  ];
  await expect.poll(() => isInked(page, ...scaled(700, 400))).toBe(true);
  expect(await isInked(page, ...scaled(700, 350))).toBe(false);

  // Its lower left corner is put at (−2, −2) by numbers: the hall's corner comes to (0, 0).
  await bar(page).getByLabel("Lower left, x").fill("-2 m");
  await bar(page).getByLabel("Lower left, x").press("Enter");
  await bar(page).getByLabel("Lower left, y").fill("-2 m");
  await bar(page).getByLabel("Lower left, y").press("Enter");
  await drag(page, await onPlan(page, 8, 3), await onPlan(page, 8, 4));
  await drag(page, await onPlan(page, 8, 4), await onPlan(page, 8, 3));
  await done(page);
  await draw(page, "Outline of the bay");
  expect(await isInked(page, 10, 6)).toBe(true);
  await press(page, [0, 0], [16, 6]);
  await done(page);
  const { bay } = await savedPlan(page);
  for (const [index, [x, y]] of (
    [
      [0, 0],
      [16, 0],
      [16, 6],
      [0, 6],
    ] as const
  ).entries()) {
    expect(Math.abs(bay!.outline[index]![0] - x)).toBeLessThan(0.25);
    expect(Math.abs(bay!.outline[index]![1] - y)).toBeLessThan(0.25);
  }
  // No word of it in the plan file; but it lies there again after a reload, until it is removed.
  expect(JSON.stringify(await savedPlan(page))).not.toContain("hall");
  await page.waitForTimeout(700);
  await page.reload();
  await expect(page.getByRole("button", { name: "Draw", exact: true })).toBeVisible();
  await draw(page, "Move or scale the traced picture");
  // Dragged there and back it lies within a pixel or two of where it was put.
  const left = numberIn(await bar(page).getByLabel("Lower left, x").inputValue());
  expect(Math.abs(left + 2000)).toBeLessThan(60);
  await bar(page).getByRole("button", { name: "Remove picture" }).click();
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await expect(page.getByRole("menuitem", { name: "Move or scale the traced picture" })).toHaveCount(0);
});

test("the second page of a PDF, with nothing fetched from anywhere else", async ({ page, baseURL }) => {
  const elsewhere: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(baseURL!) && !url.startsWith("blob:") && !url.startsWith("data:")) elsewhere.push(url);
  });
  await startPlan(page);
  await draw(page, "Trace over a picture or a PDF page");
  await chooseFile(
    page,
    "hall.pdf",
    "application/pdf",
    pdf([
      [10, 10, 20, 20],
      [100, 100, 600, 300],
    ]),
  );
  await expect(dialog(page).getByText("Page 1 of 2")).toBeVisible();
  await dialog(page).getByRole("button", { name: "Next page" }).click();
  await expect(dialog(page).getByText("Page 2 of 2")).toBeVisible();
  await dialog(page).getByRole("button", { name: "Put it under the plan" }).click();
  // 842 points wide on 7.2 m about (3, 0); 595 points high. The rectangle begins at (100, 100).
  const point = 7.2 / 842;
  const at = (i: number, j: number): readonly [number, number] => [3 + (i - 421) * point, (j - 297.5) * point];
  await expect.poll(() => isInked(page, ...at(250, 100))).toBe(true);
  await expect.poll(() => isInked(page, ...at(250, 400))).toBe(true);
  expect(await isInked(page, ...at(250, 60))).toBe(false);
  expect(elsewhere).toEqual([]);
});

test("by the keyboard alone: two points typed, then a length", async ({ page }) => {
  await startPlan(page);
  const picture = await png(page, 600, 300, [50, 50, 500, 200]);
  await draw(page, "Trace over a picture or a PDF page");
  await chooseFile(page, "hall.png", "image/png", picture);
  const put = dialog(page).getByRole("button", { name: "Put it under the plan" });
  await expect(put).toBeEnabled();
  await put.focus();
  await page.keyboard.press("Enter");
  await expect(bar(page)).toBeFocused();
  const before = await cameraOf(page);
  await bar(page).getByLabel("x", { exact: true }).focus();
  for (const [x, y] of [
    ["0", "-1 m"],
    ["6 m", "-1 m"],
  ] as const) {
    await page.keyboard.type(x);
    await page.keyboard.press("Tab");
    await page.keyboard.type(y);
    await page.keyboard.press("Enter");
    if (x === "0") await bar(page).getByLabel("x", { exact: true }).focus();
  }
  await bar(page).getByLabel("True length").focus();
  await page.keyboard.type("12 m");
  await page.keyboard.press("Enter");
  // Twice as large, and seen whole: the scale of the view has gone down.
  await expect(bar(page)).toContainText("Drag it to its place");
  await expect.poll(async () => (await cameraOf(page)).scale).toBeLessThan(before.scale);
  const left = async (): Promise<string> => bar(page).getByLabel("Lower left, x").inputValue();
  const start = await left();
  await page.getByRole("application").focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(left).not.toBe(start);
});

test("what is no picture is refused with one sentence", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Trace over a picture or a PDF page");
  await chooseFile(page, "notes.png", "image/png", Buffer.from("not a picture"));
  await expect(dialog(page).getByRole("alert")).toHaveText(
    "notes.png is not a picture that this browser can show; take a PNG or a JPEG file.",
  );
  await chooseFile(page, "notes.pdf", "application/pdf", Buffer.from("not a PDF"));
  await expect(dialog(page).getByRole("alert")).toHaveText(
    "notes.pdf could not be read as a PDF; export it again, or take a picture of the page.",
  );
  await expect(dialog(page).getByRole("button", { name: "Put it under the plan" })).toBeDisabled();
});
