/** The same by fingers, on a phone: taps place corners, a finger drags them, two fingers only move the paper. */
import { expect, test } from "@playwright/test";
import { bar, draw, savedPlan, settled, startPlan } from "./byHand";
import { fingers } from "./fingers";
import { cameraOf, onPlan } from "./page";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

test("a bay, a column and a zone by taps; a corner dragged; two fingers place nothing", async ({ page }) => {
  await startPlan(page);
  const tap = async (s: number, t: number): Promise<void> => {
    const { x, y } = await onPlan(page, s, t);
    await page.touchscreen.tap(x, y);
  };
  await draw(page, "Outline of the bay");
  await tap(-2, -2.5);
  await tap(8, 2.5);
  await expect(bar(page).getByRole("button", { name: "Done" })).toBeVisible();
  const { bay } = await savedPlan(page);
  for (const [index, corner] of (
    [
      [-2, -2.5],
      [8, -2.5],
      [8, 2.5],
      [-2, 2.5],
    ] as const
  ).entries())
    for (const axis of [0, 1] as const) expect(bay?.outline[index]?.[axis]).toBeCloseTo(corner[axis], 0);

  await draw(page, "Obstacle or column");
  const { slide } = await fingers(page);
  // Two fingers zoom in on the place; no corner is drawn by that.
  const before = await cameraOf(page);
  const middle = await onPlan(page, 7, 1.5);
  await slide([
    [
      { x: middle.x - 30, y: middle.y },
      { x: middle.x - 90, y: middle.y },
    ],
    [
      { x: middle.x + 30, y: middle.y },
      { x: middle.x + 90, y: middle.y },
    ],
  ]);
  await expect.poll(async () => (await cameraOf(page)).scale).toBeGreaterThan(2 * before.scale);
  await settled(page);
  await expect(bar(page)).toContainText("Touch one corner");
  // One finger from corner to corner.
  await slide([[await onPlan(page, 6.6, 1), await onPlan(page, 7.4, 2)]]);
  await expect(bar(page).getByLabel("Name")).toHaveValue("column 1");
  const column = (await savedPlan(page)).bay?.obstacles?.[0]?.polygon;
  expect(column?.[0]?.[0]).toBeCloseTo(6.6, 1);
  expect(column?.[2]?.[1]).toBeCloseTo(2, 1);

  // A corner is grabbed 14 px beside it and dragged.
  const corner = await onPlan(page, column![2]![0], column![2]![1]);
  const to = await onPlan(page, 7.9, 2.2);
  await slide([
    [
      { x: corner.x + 10, y: corner.y + 10 },
      { x: to.x, y: to.y },
    ],
  ]);
  const after = (await savedPlan(page)).bay?.obstacles?.[0]?.polygon;
  expect(after?.[2]?.[0]).toBeCloseTo(7.9, 0);
  expect(after?.[0]).toEqual(column?.[0]);
  await bar(page).getByRole("button", { name: "Done" }).tap();
  await expect(bar(page)).toHaveCount(0);
});

test("the piece is moved and turned in the bay by a finger", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Outline of the bay");
  await bar(page).getByLabel("x", { exact: true }).fill("-1 m");
  await bar(page).getByLabel("y", { exact: true }).fill("-2 m");
  await bar(page).getByRole("button", { name: "Set corner" }).tap();
  await bar(page).getByLabel("x", { exact: true }).fill("7 m");
  await bar(page).getByLabel("y", { exact: true }).fill("2 m");
  await bar(page).getByRole("button", { name: "Set corner" }).tap();
  await bar(page).getByRole("button", { name: "Done" }).tap();
  await expect(bar(page)).toHaveCount(0);
  // The bay has come into sight; the piece is shown as large as it was.
  await page.getByRole("button", { name: /^Show all/ }).tap();
  await settled(page);
  const { slide } = await fingers(page);
  const [{ piece }] = [await savedPlan(page)];
  const length = Math.max(...piece.outline.map(([s]) => s));
  // By the far end, out of a finger's reach of the stand at 0.78 of the length.
  const place = await onPlan(page, length * 0.96, 0);
  await page.touchscreen.tap(place.x, place.y);
  const knob = await onPlan(page, length / 2, 0);
  await slide([[knob, { x: knob.x + 30, y: knob.y - 12 }]]);
  const moved = (await savedPlan(page)).piece.pose!;
  expect(moved.x).toBeGreaterThan(0.2);
  expect(moved.y).toBeGreaterThan(0.1);
  expect(moved.heading).toBe(0);

  // Its turning handle stands 34 px beyond the far end, or 18 px from the edge of the paper; a finger 10 px beside it
  // turns the piece to 30° about its middle.
  await settled(page);
  const centre = await onPlan(page, length / 2, 0);
  const end = await onPlan(page, length, 0);
  const paper = (await page.locator("[data-drawing=plan]").boundingBox())!;
  const reach = Math.min(end.x + 34, paper.x + paper.width - 18) - centre.x;
  const turn = Math.PI / 6;
  await slide([
    [
      { x: centre.x + reach, y: centre.y + 10 },
      { x: centre.x + reach * Math.cos(turn), y: centre.y - reach * Math.sin(turn) },
    ],
  ]);
  const turned = (await savedPlan(page)).piece.pose!;
  expect(turned.heading).toBe(30);
  // The middle stays: (x, y) + R(heading)·(length/2, 0) is the same before and after, to the micrometre it is kept to.
  expect(turned.x + (length / 2) * Math.cos(turn)).toBeCloseTo(moved.x + length / 2, 5);
  expect(turned.y + (length / 2) * Math.sin(turn)).toBeCloseTo(moved.y, 5);
});
