/** A girder beside a die in a tight bay, from the empty plan to a verdict: docs/guide/tight-bay.md. */

import { expect, type Page, test } from "@playwright/test";
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
import { numberIn, placeOf } from "./page";
import { g } from "./plans";

/** 3 t evenly over 10 m, N. */
const W = 3000 * g;
/** The wall behind end A, and where the girder's first end comes to lie, m. */
const wall = -1.2;
/** How far a horse's legs reach from its middle, to the edge of the plate on the floor: half its top, 762 mm at 15°, half a plate. */
const legs = 0.203 / 2 + 0.762 * Math.tan(Math.PI / 12) + 0.15 / 2;
/** Toes keep off by so much, m. */
const toes = 0.05;

async function drawInBay(hand: Hand, what: string, from: Place, to: Place, name: string): Promise<void> {
  const { page } = hand;
  await hand.press(button(page, "Draw"));
  await hand.press(page.getByRole("menuitem", { name: what, exact: true }));
  await hand.drawRectangle(from, to);
  await hand.type(field(page.getByRole("region", { name: "Drawing by hand" }), "Name"), name);
  await hand.press(button(page, "Done"));
}

async function makeBay(hand: Hand): Promise<void> {
  const { page } = hand;
  const panel = side(page);
  await openTab(hand, "Plan");
  await hand.press(button(panel, "Add a bay round the piece"));
  const bay = page.getByRole("region", { name: "Bay", exact: true });
  await unfold(hand, bay, "Outline");
  for (const [label, text] of [
    ["Corner 1, x", `${wall} m`],
    ["Corner 4, x", `${wall} m`],
    ["Corner 2, x", "10.8 m"],
    ["Corner 3, x", "10.8 m"],
  ] as const)
    await hand.type(field(bay, label), text);
  await drawInBay(hand, "Obstacle or column", [9.2, 1.2], [10.6, 2.6], "die 714 on its stands");
  await drawInBay(hand, "Obstacle or column", [4, -2.6], [4.4, -2.2], "column B3");
  await drawInBay(hand, "No-foot zone", [8, -2.8], [8.4, 2.8], "trench");
  await hand.press(button(page.getByRole("region", { name: "Walkways" }), "Add"));
  const way = page.getByRole("region", { name: "Walkways" });
  await unfold(hand, way, "walkway");
  for (const [label, text] of [
    ["From, x", "-0.5 m"],
    ["From, y", "-2.4 m"],
    ["To, x", "-0.5 m"],
    ["To, y", "2.4 m"],
    ["Clear width needed", "1.1 m"],
    ["Name", "exit route"],
  ] as const)
    await hand.type(field(way, label), text);
}

const read = async (page: Page, what: string): Promise<number> => {
  const entry = page
    .getByRole("region", { name: "Walkways" })
    .locator("dt")
    .filter({ hasText: new RegExp(`^${what}$`) });
  return numberIn((await entry.locator("xpath=following-sibling::dd").textContent()) ?? "") / 1000;
};

/** The way's width with the legs and without them, m: to 2 mm. */
async function expectWidths(hand: Hand, clear: number, withoutLegs: number): Promise<void> {
  const { page } = hand;
  await openTab(hand, "Plan");
  await unfold(hand, page.getByRole("region", { name: "Walkways" }), "exit route");
  await expect
    .poll(async () => Math.abs((await read(page, "Clear width")) - clear), { timeout: 20_000 })
    .toBeLessThan(0.003);
  expect(Math.abs((await read(page, "Without the legs")) - withoutLegs)).toBeLessThan(0.003);
}

for (const name of handNames)
  test.describe(`by ${name}`, () => {
    test.use(machines[name]);
    test("a girder in a tight bay, the way out kept clear", async ({ page }) => {
      test.setTimeout(240_000);
      const hand = handOf(name, page);
      await newPlan(hand, {
        kind: "a long member",
        name: "Girder G2",
        sizes: ["10 m", "300 mm", "500 mm"],
        weight: { typed: "3 t", knownBy: "a scale" },
        centre: "in the middle, both halves are alike",
        count: 2,
        stand: "Horse, 762 mm",
        plate: { typed: "60 kN", per: "on one stand" },
        tops: "set by laser",
      });
      await makeBay(hand);

      // The end is to be welded from underneath: the first horse goes close to it, the second to about 8 m.
      await openTab(hand, "Stands");
      await hand.type(field(side(page), "H-1, distance from the datum end"), "200 mm");
      await expectCarries(hand, "H-1", kilonewtons((W * (7.8 - 5)) / (7.8 - 0.2)));
      // Its legs stand out under the end, into the way.
      await expectWidths(hand, 0.2 - legs - toes - wall, -wall);
      await openTab(hand, "Findings");
      await expectVerdict(page, /^fails/);
      await expect(findings(page)).toContainText("exit route");
      await expect(findings(page)).toContainText("trench");
      await picture(hand, "bay-fails");

      await openTab(hand, "Stands");
      await hand.moveStand("H-1", 1);
      await hand.moveStand("H-2", 7.4);
      const [a, b] = [await placeOf(page, "H-1"), await placeOf(page, "H-2")];
      expect(b + legs).toBeLessThan(8);
      await expectCarries(hand, "H-1", kilonewtons((W * (b - 5)) / (b - a)));
      await openTab(hand, "Piece");
      await hand.type(field(side(page), "end A, x"), "100 mm");
      await hand.type(field(side(page), "Heading from +x"), "2");
      // Turned about end A by 2°, the near corner of its end swings toward the wall by half its width × sin 2°.
      const corner = 0.1 - 0.15 * Math.sin((2 * Math.PI) / 180);
      await expectWidths(hand, corner - wall, corner - wall);
      await picture(hand, "bay-widths");
      await openTab(hand, "Findings");
      await expectVerdict(page, /^close/);
      await picture(hand, "bay-holds");
    });
  });
