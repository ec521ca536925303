/** Pictures for the guide, taken by its tests where TAKE_PICTURES=1 is set; else nothing is written. */

import type { Hand } from "./guideHands";

/** Takes a picture of the page as it stands, once for all hands: with the mouse. */
export async function picture(hand: Hand, name: string): Promise<void> {
  if (process.env.TAKE_PICTURES !== "1" || hand.name !== "mouse") return;
  await hand.page.waitForTimeout(1500);
  await hand.page.screenshot({ path: `${process.env.SHOTS ?? "docs/pictures"}/${name}.png` });
}
