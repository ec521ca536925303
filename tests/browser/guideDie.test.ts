/** A 20 t die on three stands, from the empty plan to a verdict: docs/guide/die.md. */

import { expect, test } from "@playwright/test";
import { type Hand, handNames, handOf, machines, type Place } from "./guideHands";
import { picture } from "./guidePictures";
import {
  button,
  expectCarries,
  expectVerdict,
  field,
  findings,
  kilonewtons,
  newPlan,
  openTab,
  side,
  unfold,
} from "./guideSteps";
import { placeOf } from "./page";
import { g } from "./plans";

/** 20 t, taken to be in the middle of 3 m, N and m. */
const W = 20_000 * g;
const middle = 1.5;
/** Two stands side by side, so far from end A, m. */
const pair = 0.5;

/** The third stand by moments about the pair; the pair shares the rest evenly, being as far off the middle line. */
function shares(third: number): { readonly third: number; readonly each: number } {
  const alone = (W * (middle - pair)) / (third - pair);
  return { third: alone, each: (W - alone) / 2 };
}

async function drawOnPiece(hand: Hand, what: string, from: Place, to: Place): Promise<void> {
  const { page } = hand;
  await hand.press(button(page, "Draw"));
  await hand.press(page.getByRole("menuitem", { name: what, exact: true }));
  await hand.drawRectangle(from, to);
  await hand.press(button(page, "Done"));
}

for (const name of handNames)
  test.describe(`by ${name}`, () => {
    test.use(machines[name]);
    test("a 20 t die on three stands, its weight guessed and then weighed", async ({ page }) => {
      test.setTimeout(240_000);
      const hand = handOf(name, page);
      await newPlan(
        hand,
        {
          kind: "a die",
          name: "Die 714",
          sizes: ["3 m", "2.5 m", "900 mm"],
          weight: { typed: "20 t", knownBy: "a guess" },
          count: 3,
          stand: "Low horse, 610 mm",
          plate: { typed: "700 kN", per: "on a pair" },
          tops: "shimmed until they touch",
        },
        () => picture(hand, "die-new-plan"),
      );

      await openTab(hand, "Stands");
      for (const [label, text] of [
        ["L-1, across from the middle line", "-620 mm"],
        ["L-2, distance from the datum end", "500 mm"],
        ["L-2, across from the middle line", "620 mm"],
        ["L-1, distance from the datum end", "500 mm"],
      ] as const)
        await hand.type(field(side(page), label), text);
      await expectCarries(hand, "L-3", kilonewtons(shares(2.5).third));
      await expectCarries(hand, "L-1", kilonewtons(shares(2.5).each));
      await expectCarries(hand, "L-2", kilonewtons(shares(2.5).each));

      await drawOnPiece(hand, "Keep off", [2.42, -0.2], [2.72, 0.2]);
      await drawOnPiece(hand, "Keep clear for work", [1.2, -1.2], [1.5, -0.8]);
      await openTab(hand, "Findings");
      await expectVerdict(page, /^fails/);
      await expect(findings(page)).toContainText("marked keep off");
      await picture(hand, "die-fails");

      await openTab(hand, "Stands");
      await hand.moveStand("L-3", 2.2);
      const third = await placeOf(page, "L-3");
      expect(Math.abs(third - 2.2)).toBeLessThan(0.05);
      await expectCarries(hand, "L-3", kilonewtons(shares(third).third));
      await expectCarries(hand, "L-1", kilonewtons(shares(third).each));

      // A guess may be a quarter wrong; the crane's hook scale is within 2 %, and the balance point is found by lifting.
      await openTab(hand, "Piece");
      await unfold(hand, side(page), "Die 714");
      await hand.choose(field(side(page), "Known by"), "the crane's hook scale");
      await hand.type(field(side(page), "Centre within ±, along"), "50 mm");
      await hand.type(field(side(page), "Centre within ±, across"), "50 mm");
      await picture(hand, "die-weighed");
      await openTab(hand, "Findings");
      await expectVerdict(page, /^close/);
      // Heaviest: 2 % more than weighed, and its centre 50 mm nearer; how level the tops are does not come into it.
      const most = (1.02 * W * (middle + 0.05 - pair)) / (third - pair);
      await openTab(hand, "Stands");
      await expect(page.locator("tr[data-stand='L-3']").getByRole("cell").nth(5)).toHaveText(kilonewtons(most));
      await openTab(hand, "Findings");
      await picture(hand, "die-holds");
    });
  });
