/** Fingers on the glass, through the browser's own input. */

import type { CDPSession, Page } from "@playwright/test";

export interface Finger {
  readonly x: number;
  readonly y: number;
}

export async function fingers(page: Page) {
  const session: CDPSession = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchMove" | "touchEnd", down: readonly Finger[]) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: down.map(({ x, y }, id) => ({ x, y, id })) });
  const between = (a: Finger, b: Finger, share: number): Finger => ({
    x: a.x + (b.x - a.x) * share,
    y: a.y + (b.y - a.y) * share,
  });
  return {
    /** Each finger from its first place to its second; the second finger comes down after the first. */
    slide: async (paths: readonly (readonly [Finger, Finger])[], steps = 10): Promise<void> => {
      for (let down = 1; down <= paths.length; down += 1)
        await send(
          "touchStart",
          paths.slice(0, down).map(([from]) => from),
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
