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

/** 20 t, taken to be in the middle of 2.4 m, N and m. */
const W = 20_000 * g;
const middle = 1.2;
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
      test.setTimeout(120_000);
      const hand = handOf(name, page);
      await newPlan(
        hand,
        {
          kind: "a die",
          name: "Die 714",
          sizes: ["2.4 m", "2 m", "900 mm"],
          weight: { typed: "20 t", knownBy: "a guess" },
          count: 3,
          stand: "Die stand, 457 mm, plastic top",
          plate: { typed: "360 kN", per: "on a pair" },
          tops: "set by laser",
        },
        () => picture(hand, "die-new-plan"),
      );

      await openTab(hand, "Stands");
      for (const [label, text] of [
        ["D-1, across from the middle line", "-500 mm"],
        ["D-2, distance from the datum end", "500 mm"],
        ["D-2, across from the middle line", "500 mm"],
        ["D-1, distance from the datum end", "500 mm"],
      ] as const)
        await hand.type(field(side(page), label), text);
      await expectCarries(page, "D-3", kilonewtons(shares(2).third));
      await expectCarries(page, "D-1", kilonewtons(shares(2).each));
      await expectCarries(page, "D-2", kilonewtons(shares(2).each));

      await drawOnPiece(hand, "Keep off", [1.95, -0.2], [2.25, 0.2]);
      await drawOnPiece(hand, "Keep clear for work", [1, -1], [1.2, -0.7]);
      await openTab(hand, "Findings");
      await expectVerdict(page, /^fails/);
      await expect(findings(page)).toContainText("keep-off");
      await picture(hand, "die-fails");

      await openTab(hand, "Stands");
      await hand.moveStand("D-3", 1.75);
      const third = await placeOf(page, "D-3");
      expect(Math.abs(third - 1.75)).toBeLessThan(0.05);
      await expectCarries(page, "D-3", kilonewtons(shares(third).third));
      await expectCarries(page, "D-1", kilonewtons(shares(third).each));

      // A guess may be a quarter wrong; the crane's hook scale is within 2 %, and the balance point is found by lifting.
      await openTab(hand, "Piece");
      await unfold(hand, side(page), "Die 714");
      await hand.choose(field(side(page), "Known by"), "the crane's hook scale");
      await hand.type(field(side(page), "Centre within ±, along"), "50 mm");
      await hand.type(field(side(page), "Centre within ±, across"), "50 mm");
      await picture(hand, "die-weighed");
      await openTab(hand, "Findings");
      await expectVerdict(page, /^(holds|close)/);
      await picture(hand, "die-holds");
    });
  });
