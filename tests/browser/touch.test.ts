import { type CDPSession, expect, type Page, test } from "@playwright/test";
import { cameraOf, drag, expectLevel, onPlan, openWith, placeOf } from "./page";
import { g, twoStands } from "./plans";

const W = 2000 * g;

test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true });

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** Fingers on the glass, through the browser's own input. */
async function touch(page: Page) {
  const session: CDPSession = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchMove" | "touchEnd", fingers: readonly Finger[]) =>
    session.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: fingers.map(({ x, y }, id) => ({ x, y, id })),
    });
  const between = (a: Finger, b: Finger, share: number): Finger => ({
    x: a.x + (b.x - a.x) * share,
    y: a.y + (b.y - a.y) * share,
  });
  return {
    /** Each finger from its first place to its second. */
    slide: async (paths: readonly (readonly [Finger, Finger])[], steps = 10) => {
      await send(
        "touchStart",
        paths.slice(0, 1).map(([from]) => from),
      );
      if (paths.length > 1)
        await send(
          "touchStart",
          paths.map(([from]) => from),
        );
      for (let step = 1; step <= steps; step += 1)
        await send(
          "touchMove",
          paths.map(([from, to]) => between(from, to, step / steps)),
        );
      await send("touchEnd", []);
    },
  };
}

test("a finger drags a stand, grabbed 18 px beside its top", async ({ page }) => {
  await openWith(page, twoStands);
  const { slide } = await touch(page);
  const { scale } = await cameraOf(page);
  const grab = await onPlan(page, 9, 0.4);
  const beside = { x: grab.x + (0.1 * scale + 18), y: grab.y };
  const to = await onPlan(page, 7, 0.4);
  await slide([[beside, { x: to.x + (0.1 * scale + 18), y: to.y }]]);
  const b = await placeOf(page, "B");
  expect(Math.abs(b - 7)).toBeLessThan(0.12);
  await expectLevel(page, "B", (4 * W) / (b - 1));
});

test("two fingers zoom about the place between them and move the paper; no stand moves", async ({ page }) => {
  await openWith(page, twoStands);
  const { slide } = await touch(page);
  const before = await cameraOf(page);
  const middle = await onPlan(page, 9, 0);
  await slide([
    [
      { x: middle.x - 40, y: middle.y },
      { x: middle.x - 100, y: middle.y + 30 },
    ],
    [
      { x: middle.x + 40, y: middle.y },
      { x: middle.x + 100, y: middle.y + 30 },
    ],
  ]);
  const after = await cameraOf(page);
  expect(after.scale / before.scale).toBeCloseTo(2.5, 1);
  const there = await onPlan(page, 9, 0);
  expect(Math.abs(there.x - middle.x)).toBeLessThan(3);
  expect(Math.abs(there.y - middle.y - 30)).toBeLessThan(3);
  expect(await placeOf(page, "B")).toBe(9);
});

test("what is dragged on empty paper is the paper", async ({ page }) => {
  await openWith(page, twoStands);
  const before = await cameraOf(page);
  const empty = await onPlan(page, 5, 0.9);
  await drag(page, empty, { x: empty.x + 60, y: empty.y - 20 });
  const after = await cameraOf(page);
  expect(after.s).toBeCloseTo(before.s - 60 / before.scale, 2);
  expect(after.t).toBeCloseTo(before.t - 20 / before.scale, 2);
  expect(after.scale).toBe(before.scale);
});
