import { expect, test } from "@playwright/test";
import {
  cameraOf,
  drag,
  expectLevel,
  levelOf,
  numberIn,
  onElevation,
  onPlan,
  openPage,
  openWith,
  placeOf,
  showStands,
} from "./page";
import { g, twoStands } from "./plans";

/** Weight of the beam, N: 10 m of 200 kg/m. */
const W = 2000 * g;

test("a stand dragged by the mouse: its reaction, worked out by hand, is on the page; it is there again after a reload", async ({
  page,
}) => {
  await openWith(page, twoStands);
  // Stands at 1 m and 9 m, the weight at 5 m between them: half each, 2000·9.80665/2 = 9 806.65 N.
  await expectLevel(page, "A", 9806.65);
  await expectLevel(page, "B", 9806.65);

  await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5));
  const b = await placeOf(page, "B");
  expect(Math.abs(b - 7)).toBeLessThan(0.05);
  // Moments about A: R_B·(b − 1) = W·(5 − 1), so R_B = 4·W/(b − 1); with b = 7 m 2/3·W = 13 075.5 N. R_A = W − R_B.
  await expectLevel(page, "B", (4 * W) / (b - 1));
  await expectLevel(page, "A", W - (4 * W) / (b - 1));

  await expect(page.getByText("Kept", { exact: false })).toBeVisible();
  await page.reload();
  await showStands(page);
  expect(await placeOf(page, "B")).toBe(b);
  await expectLevel(page, "B", (4 * W) / (b - 1));
});

test("the reaction follows every move of the pointer, before the button is let go", async ({ page }) => {
  await openWith(page, twoStands);
  const from = await onElevation(page, 9, 0.7);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const s of [8, 7, 6]) {
    const to = await onElevation(page, s, 0.7);
    await page.mouse.move(to.x, to.y, { steps: 4 });
    await expect.poll(async () => Math.abs((await placeOf(page, "B")) - s)).toBeLessThan(0.05);
    await expectLevel(page, "B", (4 * W) / ((await placeOf(page, "B")) - 1));
  }
  await page.mouse.up();
});

test("Escape takes a running drag back; no entry is made", async ({ page }) => {
  await openWith(page, twoStands);
  const [from, to] = [await onPlan(page, 9, 0.5), await onPlan(page, 6, 0.5)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await expect.poll(() => levelOf(page, "B")).toBeGreaterThan(15_000);
  await page.keyboard.press("Escape");
  await expectLevel(page, "B", W / 2);
  await page.mouse.up();
  expect(await placeOf(page, "B")).toBe(9);
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
});

test("a stand over its rating is said, and undo takes it back", async ({ page }) => {
  await openWith(page, twoStands);
  await page.getByRole("tab", { name: "Findings", exact: true }).click();
  const over = page.getByText(/^Stand B .*109 % of its rating/);
  await expect(over).toHaveCount(0);
  await drag(page, await onPlan(page, 9, 0.5), await onPlan(page, 7, 0.5));
  // 13 075.5 N of 12 000 N: 109 %.
  await expect(over).toBeVisible();
  await expect(
    page
      .getByRole("complementary")
      .getByText(/^fails/)
      .first(),
  ).toBeVisible();
  await page.getByRole("button", { name: "Undo: Move B" }).click();
  await expect(over).toHaveCount(0);
  await page.getByRole("button", { name: "Redo: Move B" }).click();
  await expect(over).toBeVisible();
});

test("a stand is turned by its handle", async ({ page }) => {
  await openWith(page, twoStands);
  const centre = await onPlan(page, 9, 0);
  const end = await onPlan(page, 9, 0.75);
  await page.mouse.click(centre.x, centre.y);
  const reach = centre.y - end.y + 34;
  // The handle lies along the top, (−sin a, cos a) from its middle: at 30° half the reach to the left.
  const angle = (30 * Math.PI) / 180;
  await drag(
    page,
    { x: centre.x, y: centre.y - reach },
    { x: centre.x - reach * Math.sin(angle), y: centre.y - reach * Math.cos(angle) },
  );
  expect(numberIn(await page.getByLabel("B, angle from square").inputValue())).toBe(30);
});

test("a dimension is typed by touching it", async ({ page }) => {
  await openWith(page, twoStands);
  const plan = (await page.locator("[data-drawing=plan]").boundingBox())!;
  const { x } = await onPlan(page, 9, 0);
  await page.mouse.click(x, plan.y + plan.height - 25);
  const field = page.getByRole("application").getByLabel("B from datum end");
  await field.fill("7.4 m");
  await field.press("Enter");
  await expect.poll(() => placeOf(page, "B")).toBe(7.4);
  // R_B = 4·W/(7.4 − 1) = 0.625·W
  await expectLevel(page, "B", 0.625 * W);
});

test("the first start shows the example beam with what is wrong with it", async ({ page }) => {
  await openPage(page);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("12,700 lb beam on four 10,000 lb horses");
  await showStands(page);
  await expect(page.getByTestId("level-H-03")).toHaveText("9,422 lb");
});

test("the piece is moved and turned in the bay by its handles; the stands travel with it", async ({ page }) => {
  await openWith(page, {
    ...twoStands,
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [-4, -4],
        [16, -4],
        [16, 8],
        [-4, 8],
      ],
    },
  });
  await page.getByRole("tab", { name: "Piece", exact: true }).click();
  const pose = async () => {
    const [x, y, heading] = await Promise.all(
      ["datum end, x", "datum end, y", "Heading from +x"].map(async (label) =>
        numberIn(await page.getByLabel(label, { exact: true }).inputValue()),
      ),
    );
    return { x: x! / 1000, y: y! / 1000, heading: heading! };
  };
  // Pressed between the stands, the piece is chosen; its handle is at the middle.
  const beside = await onPlan(page, 4, 0);
  await page.mouse.click(beside.x, beside.y);
  const middle = await onPlan(page, 5, 0);
  const { scale } = await cameraOf(page);
  await drag(page, middle, { x: middle.x - 1.5 * scale, y: middle.y - 0.5 * scale });
  const moved = await pose();
  expect(moved.x).toBeCloseTo(-1.5, 1);
  expect(moved.y).toBeCloseTo(0.5, 1);
  expect(moved.heading).toBe(0);
  // It is seen where it was let go: the middle lies under the pointer.
  const after = await onPlan(page, 5, 0);
  expect(Math.abs(after.x - (middle.x - 1.5 * scale))).toBeLessThan(2);
  expect(Math.abs(after.y - (middle.y - 0.5 * scale))).toBeLessThan(2);

  // The turning handle stands 34 px beyond the far end; pulled round by 90° about the middle of the piece.
  const end = await onPlan(page, 10, 0);
  await drag(page, { x: end.x + 34, y: end.y }, { x: after.x, y: after.y - 120 });
  const turned = await pose();
  expect(turned.heading).toBe(90);
  // The middle stays: (x, y) + R(90°)·(5, 0) = (x, y + 5), which was (−1.5 + 5, 0.5).
  expect(turned.x).toBeCloseTo(moved.x + 5, 2);
  expect(turned.y + 5).toBeCloseTo(moved.y, 2);
  await showStands(page);
  expect(await placeOf(page, "B")).toBe(9);
  await expectLevel(page, "B", W / 2);
});

test("a stand of the plan is placed and takes its share; taken away, it is there to be placed again", async ({
  page,
}) => {
  await openWith(page, twoStands);
  await page.getByRole("row", { name: /^C\b/ }).getByRole("button", { name: "Place" }).click();
  await expect.poll(() => levelOf(page, "C")).toBeGreaterThan(0);
  // A rigid beam on three stands as stiff as each other: they carry the weight and its moment together.
  const [a, b, c] = [await levelOf(page, "A"), await levelOf(page, "B"), await levelOf(page, "C")];
  const s = await placeOf(page, "C");
  expect(Math.abs(a + b + c - W)).toBeLessThan(2);
  expect(Math.abs(a * 1 + b * 9 + c * s - W * 5)).toBeLessThan(12);
  await page.getByRole("button", { name: "Take C away" }).first().click();
  await expectLevel(page, "A", W / 2);
  await expect(page.getByRole("row", { name: /^C\b/ }).getByRole("button", { name: "Place" })).toBeVisible();
});
