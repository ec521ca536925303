/** Shapes drawn on the plan view by the mouse, from an empty plan; what comes out is read off the saved plan file. */
import { expect, test } from "@playwright/test";
import { bar, done, draw, press, savedPlan, startPlan, typeCorner, undoes } from "./byHand";
import { drag, onPlan } from "./page";

test("the outline of the piece, corner by corner, closed on its first corner", async ({ page }) => {
  await startPlan(page);
  const before = await savedPlan(page);
  await draw(page, "Outline of the piece");
  await bar(page).getByText("Corner by corner").click();
  await press(page, [0, -0.5], [5, -0.5], [5, 0.5], [2, 0.5]);
  // Back over the first edge: refused with one sentence, and the four corners stay.
  await press(page, [1, -1]);
  await expect(bar(page).getByRole("alert")).toHaveText(
    "This edge would cross or touch the one from corner 1 to corner 2.",
  );
  await press(page, [2, 0.35], [0, 0.35]);
  await expect(bar(page).getByRole("alert")).toHaveCount(0);
  await press(page, [0, -0.5]);
  await expect(undoes(page, "Draw the outline of the piece")).toBeVisible();
  const { piece } = await savedPlan(page);
  expect(piece.outline).toEqual([
    [0, -0.5],
    [5, -0.5],
    [5, 0.5],
    [2, 0.5],
    [2, 0.35],
    [0, 0.35],
  ]);

  await page.getByRole("button", { name: "Undo: Draw the outline of the piece" }).click();
  await expect(page.getByRole("button", { name: "Redo: Draw the outline of the piece" })).toBeVisible();
  expect((await savedPlan(page)).piece).toEqual(before.piece);
});

test("zones on the piece: a rectangle in one drag, named, changed by a corner, removed", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Outline of the piece");
  await press(page, [0, -0.5]);
  await typeCorner(page, "6 m", "500 mm");
  await done(page);

  await draw(page, "Keep off");
  await drag(page, await onPlan(page, 2, -0.5), await onPlan(page, 3, 0.5));
  await bar(page).getByLabel("Name").fill("machined pad");
  await bar(page).getByLabel("Name").press("Enter");
  await draw(page, "Keep clear for work");
  await press(page, [4, -0.5], [5, 0]);
  await bar(page).getByLabel("Clearance").fill("250");
  await bar(page).getByLabel("Clearance").press("Enter");
  await draw(page, "Bearing area");
  await press(page, [0, -0.5], [1, 0.5]);
  const drawn = await savedPlan(page);
  expect(drawn.piece.noRestZones).toEqual([
    {
      name: "machined pad",
      polygon: [
        [2, -0.5],
        [3, -0.5],
        [3, 0.5],
        [2, 0.5],
      ],
    },
  ]);
  expect(drawn.piece.workWindows).toEqual([
    {
      name: "work 1",
      polygon: [
        [4, -0.5],
        [5, -0.5],
        [5, 0],
        [4, 0],
      ],
      clearance: 0.25,
    },
  ]);
  expect(drawn.piece.restZones).toEqual([
    [
      [0, -0.5],
      [1, -0.5],
      [1, 0.5],
      [0, 0.5],
    ],
  ]);

  // A corner of the pad is dragged to 3.5 m, where it keeps to the upper edge of the outline.
  await done(page);
  await press(page, [2.5, -0.5]);
  await expect(bar(page).getByLabel("Name")).toHaveValue("machined pad");
  await drag(page, await onPlan(page, 3, 0.5), await onPlan(page, 3.5, 0.49));
  await expect(undoes(page, "Move a corner of machined pad")).toBeVisible();
  expect((await savedPlan(page)).piece.noRestZones?.[0]?.polygon[2]).toEqual([3.5, 0.5]);
  // The handle in the middle of an edge makes a corner.
  await drag(page, await onPlan(page, 2.5, -0.5), await onPlan(page, 2.5, 0));
  expect((await savedPlan(page)).piece.noRestZones?.[0]?.polygon).toHaveLength(5);
  // A corner dragged over the opposite edge stays at the last place where the zone could stand.
  await drag(page, await onPlan(page, 2, -0.5), await onPlan(page, 4.5, 0.3), 20);
  await expect(bar(page).getByRole("alert")).toContainText("would cross or touch");
  await bar(page).getByLabel("Corner", { exact: true }).selectOption("the whole");
  await bar(page).getByRole("button", { name: "Remove keep-off zone" }).click();
  expect((await savedPlan(page)).piece.noRestZones).toEqual([]);
});

test("the bay with what is in it, and the piece put in its place by numbers", async ({ page }) => {
  await startPlan(page);
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await expect(page.getByRole("menuitem", { name: "Obstacle or column" })).toBeDisabled();
  await page.getByRole("menuitem", { name: "Outline of the bay" }).click();
  await press(page, [-2, -3]);
  await typeCorner(page, "16000", "5000");
  await draw(page, "Obstacle or column");
  await drag(page, await onPlan(page, 3, 3), await onPlan(page, 3.4, 3.4));
  await bar(page).getByLabel("Name").fill("column B3");
  await bar(page).getByLabel("Name").press("Enter");
  await draw(page, "No-foot zone");
  await press(page, [6, -3], [6.5, 5]);
  await draw(page, "Walkway");
  await press(page, [-1.5, -2.5], [15.5, -2.5]);
  await bar(page).getByLabel("Name").fill("exit route");
  await bar(page).getByLabel("Name").press("Enter");
  await bar(page).getByLabel("Clear width").fill("900");
  await bar(page).getByLabel("Clear width").press("Enter");
  await draw(page, "Painted lane of exit route");
  await press(page, [-2, -3], [16, -2]);
  await done(page);

  await page.getByRole("tab", { name: "Piece", exact: true }).click();
  for (const [label, value] of [
    [/, x$/, "1 m"],
    [/, y$/, "1.5 m"],
    ["Heading from +x", "90"],
  ] as const) {
    await page.getByLabel(label).fill(value);
    await page.getByLabel(label).press("Enter");
  }
  const { bay, piece } = await savedPlan(page);
  expect(bay).toEqual({
    floor: { slope: [0, 0] },
    outline: [
      [-2, -3],
      [16, -3],
      [16, 5],
      [-2, 5],
    ],
    obstacles: [
      {
        name: "column B3",
        polygon: [
          [3, 3],
          [3.4, 3],
          [3.4, 3.4],
          [3, 3.4],
        ],
      },
    ],
    noFootZones: [
      {
        name: "no feet 1",
        polygon: [
          [6, -3],
          [6.5, -3],
          [6.5, 5],
          [6, 5],
        ],
      },
    ],
    walkways: [
      {
        name: "exit route",
        from: [-1.5, -2.5],
        to: [15.5, -2.5],
        width: 0.9,
        lane: [
          [-2, -3],
          [16, -3],
          [16, -2],
          [-2, -2],
        ],
      },
    ],
  });
  expect(piece.pose).toEqual({ x: 1, y: 1.5, heading: 90 });
});

test("what is not finished is dropped by Escape, and taken back corner by corner", async ({ page }) => {
  await startPlan(page);
  await draw(page, "Outline of the bay");
  await bar(page).getByText("Corner by corner").click();
  await press(page, [0, -2], [4, -2], [4, 2]);
  await page.keyboard.press("Control+z");
  await expect(bar(page)).toContainText("Touch corner 3.");
  await page.keyboard.press("Backspace");
  await expect(bar(page)).toContainText("Touch corner 2.");
  await page.keyboard.press("Escape");
  await expect(bar(page)).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
});
