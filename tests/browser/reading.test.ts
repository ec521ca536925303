import { expect, type Page, test } from "@playwright/test";
import type { PlanDocument } from "../../src/plan";
import { cameraOf, expectLevel, levelOf, numberIn, onElevation, onPlan, openWith } from "./page";
import { g, twoStands } from "./plans";

/** Weight of the beam, N, and its share a metre. */
const W = 2000 * g;
const w = W / 10;
const rating = 12_000;

const standing = (page: Page) => page.getByTestId("standing-place");

async function showMap(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Where a person may stand" }).click();
  const bar = page.getByRole("region", { name: "Where a person may stand" });
  await expect(bar).toBeVisible();
  await expect(bar.getByText("being computed")).toHaveCount(0);
}

/** Red, green, blue and opacity of a layer of the plan view at (s, t). */
async function inkAt(page: Page, layer: number, s: number, t: number): Promise<readonly number[]> {
  const { x, y } = await onPlan(page, s, t);
  return page.locator("[data-drawing=plan]").evaluate(
    (element, { x, y, layer }) => {
      const canvas = element.querySelectorAll("canvas")[layer]!;
      const box = canvas.getBoundingClientRect();
      const ratio = canvas.width / box.width;
      const at = [(x - box.left) * ratio, (y - box.top) * ratio].map(Math.floor) as [number, number];
      return [...canvas.getContext("2d")!.getImageData(at[0], at[1], 1, 1).data];
    },
    { x, y, layer },
  );
}
const objects = 1;
const overlay = 2;

/** The quantity in a text that follows some words. */
function after(text: string, words: RegExp): number {
  const found = text.match(new RegExp(`${words.source} ([−-]?[\\d\\s.,]+)`));
  expect(found, text).not.toBeNull();
  return numberIn(found![1]!);
}

test.describe("where a person may stand", () => {
  // B carries W/2 + P·(s − 1)/8, A carries W/2 + P·(9 − s)/8: the stand that is nearer passes its rating first, at
  // P = (rating − W/2)·8 ÷ (arm), 2 193.35 N·8 ÷ arm.
  const spare = rating - W / 2;
  const takes = (s: number): number => (spare * 8) / Math.max(s - 1, 9 - s);

  test("the contour of a force lies where statics puts it; pointing and keys tell what a place takes", async ({
    page,
  }) => {
    await openWith(page, twoStands);
    await showMap(page);
    // Between 1 949.6 N at the ends and 4 386.7 N in the middle lies one round multiple of a person's 1 334 N: 2 668 N.
    const bar = page.getByRole("region", { name: "Where a person may stand" });
    await expect(bar).toContainText("less than 1334 N");
    await expect(bar).toContainText("2668 N or more");
    // Its contour: arm = 2 193.35·8 ÷ 2 668 = 6.5768 m, so s from 9 − 6.5768 to 1 + 6.5768.
    const arm = (spare * 8) / 2668;
    const inside = await inkAt(page, objects, 5, 0.1);
    const outside = await inkAt(page, objects, 9.6, 0.1);
    expect(inside).not.toEqual(outside);
    for (const [end, inward] of [
      [1 + arm, -1],
      [9 - arm, 1],
    ] as const) {
      expect(await inkAt(page, objects, end + 0.04 * inward, 0.1)).toEqual(inside);
      expect(await inkAt(page, objects, end - 0.04 * inward, 0.1)).toEqual(outside);
    }

    const near = await onPlan(page, 9.97, 0);
    await page.mouse.move(near.x, near.y);
    await expect(standing(page)).toContainText(/passes its rating at|goes light at/);
    await page.getByRole("application").focus();
    await page.keyboard.press(".");
    // At the far end: tips about B when P·1 m = W·4 m; B passes its rating at 2 193.35·8 ÷ 9 = 1 949.6 N.
    await expect(standing(page)).toContainText(/10.?000 mm along/);
    const said = (await standing(page).textContent())!;
    expect(after(said, /tips at/)).toBe(Math.round(4 * W));
    expect(Math.abs(after(said, /(?:passes its rating|goes light) at/) - takes(10))).toBeLessThanOrEqual(0.5);

    await page.keyboard.press("w");
    await expect(bar).toHaveCount(0);
    await expect(standing(page)).toHaveCount(0);
  });

  test("a stand over its rating leaves no place; what tips is told all the same", async ({ page }) => {
    const [layout] = twoStands.layouts;
    const over = {
      ...twoStands,
      // B at 7 m carries 4·W/6 = 13 075.5 N.
      layouts: [{ ...layout!, placements: [layout!.placements[0]!, { ...layout!.placements[1]!, s: 7 }] }],
    };
    await openWith(page, over);
    await showMap(page);
    const at = await onPlan(page, 5, 0.1);
    await page.mouse.move(at.x, at.y);
    await expect(standing(page)).toContainText("no weight tips it here; stand B is over its rating without any weight");
    expect(await inkAt(page, objects, 5, 0.1)).toEqual(await inkAt(page, objects, 9.6, 0.1));
  });

  test.describe("by touch", () => {
    test.use({ hasTouch: true });
    test("a touched place tells what it takes", async ({ page }) => {
      await openWith(page, twoStands);
      await showMap(page);
      const { x, y } = await onPlan(page, 4, 0);
      await page.touchscreen.tap(x, y);
      await expect(standing(page)).toContainText(/passes its rating at|goes light at/);
      const said = (await standing(page).textContent())!;
      const s = numberIn(said.split("along")[0]!) / 1000;
      expect(Math.abs(s - 4)).toBeLessThan(0.02);
      expect(Math.abs(after(said, /(?:passes its rating|goes light) at/) - takes(s))).toBeLessThanOrEqual(1.5);
    });
  });
});

test("a walkway's clear width is drawn across its pinch, with what it would be without legs; a blocked one at its start", async ({
  page,
}) => {
  const [type] = twoStands.standTypes;
  await openWith(page, {
    ...twoStands,
    standTypes: [{ ...type!, splay: { along: 22, across: 20 } }],
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [-4, -2],
        [14, -2],
        [14, 0.9],
        [-4, 0.9],
      ],
      walkways: [
        { name: "way out", from: [-3, -1], to: [13, -1], width: 1.1 },
        { name: "short cut", from: [5, 0], to: [13, -1] },
      ],
    },
  });
  // Legs: 0.6 + 0.762·tan 20° + 0.05 of the foot, and 0.05 for toes, from the axis; the wall is 2 m from it. Without
  // legs the ends of the tops are left, at 0.75.
  const clear = 2 - (0.6 + 0.762 * Math.tan((20 * Math.PI) / 180) + 0.05 + 0.05);
  const words = page.getByRole("list", { name: "Walkways" });
  await expect(words).toContainText(
    `way out: ${(clear * 1000).toFixed(0)} mm clear of 1100 mm: fails, 1250 mm without legs`,
  );
  await expect(words).toContainText("short cut: no way through");

  await page.getByRole("application").focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press("-");
  const { scale } = await cameraOf(page);
  const tall = (): Promise<number> =>
    page.locator("[data-drawing=plan]").evaluate((element, layer) => {
      const canvas = element.querySelectorAll("canvas")[layer]!;
      const ratio = canvas.width / canvas.getBoundingClientRect().width;
      const { data, width, height } = canvas.getContext("2d")!.getImageData(0, 0, canvas.width, canvas.height);
      // The longest upright stroke in the ink of a pinch.
      let longest = 0;
      for (let x = 0; x < width; x += 1) {
        let run = 0;
        for (let y = 0; y < height; y += 1) {
          const at = 4 * (y * width + x);
          const red = data[at]! > 150 && data[at + 1]! < 90 && data[at + 2]! < 80 && data[at + 3]! > 100;
          run = red ? run + 1 : 0;
          longest = Math.max(longest, run);
        }
      }
      return longest / ratio;
    }, overlay);
  await expect.poll(async () => Math.abs((await tall()) - clear * scale)).toBeLessThan(4);
});

test("the diagrams are read anywhere along the piece: by keys and by pointing", async ({ page }) => {
  await openWith(page, twoStands);
  const words = page.getByTestId("diagram-reading");
  // Between the stands V = W/2 − w·s, M = W/2·(s − 1) − w·s²/2.
  const expected = (s: number): readonly [number, number] => [W / 2 - w * s, (W / 2) * (s - 1) - (w * s * s) / 2];
  const check = async (tolerance: number): Promise<number> => {
    await expect(words).toContainText("moment");
    const said = (await words.textContent())!;
    const s = numberIn(said.split("along")[0]!) / 1000;
    const [shear, moment] = expected(s);
    expect(Math.abs(after(said, /shear/) - shear), said).toBeLessThanOrEqual(tolerance);
    // Told in kN·m to two decimals.
    expect(Math.abs(after(said, /moment/) * 1000 - moment), said).toBeLessThanOrEqual(tolerance * 3 + 5);
    return s;
  };
  await page.getByRole("application").focus();
  for (let press = 0; press <= 30; press += 1) await page.keyboard.press(".");
  await expect(words).toContainText("3000 mm along");
  // V(3) = 3 922.66 N, M(3) = 10 787.3 N·m.
  expect(await check(1)).toBe(3);
  await page.keyboard.press(">");
  await expect(words).toContainText("3001 mm along");

  const lane = await onElevation(page, 6.2, 0);
  const box = (await page.locator("[data-drawing=elevation]").boundingBox())!;
  await page.mouse.move(lane.x, box.y + box.height - 20);
  await expect(words).not.toContainText("3001 mm along");
  await expect(words).toContainText("6");
  // What is told is rounded to a millimetre: 2 N of shear.
  expect(Math.abs((await check(2.5)) - 6.2)).toBeLessThan(0.02);
});

test.describe("by touch", () => {
  test.use({ hasTouch: true });
  test("a touch on the diagrams reads them there, and the reading stays", async ({ page }) => {
    await openWith(page, twoStands);
    const { x } = await onElevation(page, 4, 0);
    const box = (await page.locator("[data-drawing=elevation]").boundingBox())!;
    await page.touchscreen.tap(x, box.y + box.height - 20);
    const words = page.getByTestId("diagram-reading");
    await expect(words).toContainText("shear");
    const said = (await words.textContent())!;
    const s = numberIn(said.split("along")[0]!) / 1000;
    expect(Math.abs(s - 4)).toBeLessThan(0.02);
    expect(Math.abs(after(said, /shear/) - (W / 2 - w * s))).toBeLessThanOrEqual(2.5);
  });
});

test("a joint is opened by a key and welded by a touch, from that step on; each half is computed as what it is", async ({
  page,
}) => {
  const [layout] = twoStands.layouts;
  const [step] = twoStands.steps;
  const place = (stand: string, s: number) => ({ ...layout!.placements[0]!, stand, s });
  const plan = {
    ...twoStands,
    stands: ["A", "B", "C", "D"].map((id) => ({ ...twoStands.stands[0]!, id })),
    layouts: [{ ...layout!, placements: [place("A", 1), place("B", 3.5), place("C", 6), place("D", 9)] }],
    steps: [
      { ...step!, id: "fit", name: "Fitted" },
      { ...step!, id: "part", name: "Half of it", parts: [[0, 5]] },
      { ...step!, id: "weld", name: "Welded" },
    ],
  } as unknown as PlanDocument;
  await openWith(page, plan);
  const whole = await levelOf(page, "A");
  const drawing = page.getByRole("application");
  await drawing.focus();
  expect((await inkAt(page, objects, 5, 0.1))[3]).toBeGreaterThan(0);
  for (let press = 0; press <= 50; press += 1) await page.keyboard.press(".");
  await page.keyboard.press("j");
  // The left half, W/2 at 2.5 m on 1 and 3.5 m: 0.4 and 0.6 of it; the right one at 7.5 m on 6 and 9 m: half each.
  await expectLevel(page, "A", 0.4 * (W / 2));
  await expectLevel(page, "B", 0.6 * (W / 2));
  await expectLevel(page, "C", W / 4);
  await expectLevel(page, "D", W / 4);
  // The joint shows as a gap.
  expect((await inkAt(page, objects, 5, 0.1))[3]).toBe(0);
  expect((await inkAt(page, objects, 5.2, 0.1))[3]).toBeGreaterThan(0);

  // In the step after it only the left half is there; the other is drawn thin.
  await page.keyboard.press("PageDown");
  await expectLevel(page, "A", 0.4 * (W / 2));
  await expectLevel(page, "D", 0);
  expect((await inkAt(page, objects, 7.5, 0.1))[3]).toBe(0);

  // In the last step the piece is whole; a joint opened there is another one, and a touch on its mark welds it again.
  await page.keyboard.press("PageDown");
  await expect.poll(() => levelOf(page, "A")).toBe(whole);
  await page.keyboard.press("PageUp");
  await page.keyboard.press("PageUp");
  await expectLevel(page, "B", 0.6 * (W / 2));
  await page.keyboard.press("p");
  const edge = await onPlan(page, 5, 0.2);
  await page.mouse.click(edge.x, edge.y - 14);
  await expect.poll(() => levelOf(page, "A")).toBe(whole);
  await page.getByRole("button", { name: "Undo: Weld the joint at 5000 mm" }).click();
  await expectLevel(page, "B", 0.6 * (W / 2));
});
