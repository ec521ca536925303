/** A 12 m lifting beam on four horses, from the empty plan to a verdict: docs/guide/lifting-beam.md. */

import { expect, type Page, test } from "@playwright/test";
import { type Hand, handNames, handOf, machines } from "./guideHands";
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
  pageOf,
  side,
  unfold,
} from "./guideSteps";
import { placeOf } from "./page";
import { g } from "./plans";

/** An I of plates, 300 × 20, 600 × 10 and 300 × 20 mm, of steel of 7850 kg/m³, kg/m: 0.018 m² of it. */
const beam = 7850 * (2 * 0.3 * 0.02 + 0.6 * 0.01);
/** The beam is 12 m long and joined at 6 m. A lug of 450 kg sits 0.4 m from each end, one of 900 kg over the joint, kg. */
const half = 6 * beam;
const endLug = 450;
const middleLug = 900;

async function addLug(hand: Hand, name: string, weight: string, from: string): Promise<void> {
  const panel = side(hand.page);
  await hand.press(button(panel, "At a point"));
  const lug = panel.locator("details").filter({ has: button(hand.page, "Remove Weight") });
  await hand.type(field(lug, "Weight"), weight);
  await hand.type(field(lug, "From end A"), from);
  await hand.choose(field(lug, "Known by"), "calculation");
  await hand.type(field(lug, "Name"), name);
}

async function makeBeam(hand: Hand): Promise<void> {
  const { page } = hand;
  await newPlan(
    hand,
    {
      kind: "a long member",
      name: "Lifting beam LB-12",
      sizes: ["12 m", "300 mm", "640 mm"],
      count: 4,
      stand: "Horse, 762 mm",
      plate: { typed: "90 kN", per: "on a pair" },
      tops: "shimmed until they touch",
    },
    () => picture(hand, "beam-new-plan"),
  );
  await openTab(hand, "Piece");
  await unfold(hand, side(page), "Stiffness and section");
  await hand.press(button(page, "Pick a section for the piece"));
  const picker = pageOf(page, "Pick a section");
  await hand.pick(picker.getByRole("radiogroup", { name: "Kind of section" }), "I of plates");
  await hand.choose(field(picker, "Steel"), "S355");
  await picture(hand, "beam-section");
  await hand.press(button(picker, /^Pick I of plates/));
  await expect(page.getByText("1 stretch", { exact: true })).toBeVisible();
  await addLug(hand, "Lug, end A", `${endLug} kg`, "400 mm");
  await addLug(hand, "Lug, end B", `${endLug} kg`, "11.6 m");
  await addLug(hand, "Lug, middle", `${middleLug} kg`, "6 m");
  await picture(hand, "beam-weights");
}

/** First tacked, with the joint open and the middle lug not there; then welded, with both. */
async function makeSteps(hand: Hand): Promise<void> {
  const { page } = hand;
  await openTab(hand, "Steps");
  const tack = page.getByRole("region", { name: "Step 1" });
  await hand.type(field(tack, "Name"), "Tack");
  await hand.press(button(page, "Add after this one"));
  const weld = page.getByRole("region", { name: "Step 2" });
  await hand.type(field(weld, "Name"), "Welded");
  await hand.press(page.getByRole("navigation", { name: "Steps of the job" }).getByRole("button", { name: /Tack/ }));
  await unfold(hand, tack, "Weights that are there");
  await hand.press(tack.getByRole("checkbox", { name: "Lug, middle" }));
  await unfold(hand, tack, "Parts that are there");
  await hand.press(button(tack, "Open the joint here"));
  await expect(tack.getByText("2 parts", { exact: true })).toBeVisible();
  await picture(hand, "beam-steps");
}

/** What else the findings ask for: what the plate says of the middle of the top, and bracing against rolling over. */
async function settle(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.press(page.getByRole("button", { name: /^Horse, 762 mm/ }));
  const type = pageOf(page, "Stand type");
  await hand.type(field(type, "Load at its middle"), "60 kN");
  await hand.press(type.getByRole("button", { name: /^On a pair/ }));
  await expect(field(type, "Load at its middle")).toHaveValue("30 kN");
  await picture(hand, "beam-rating");
  await hand.press(button(type, "Close"));
  await openTab(hand, "Steps");
  await hand.press(
    page.getByRole("region", { name: "Step 1" }).getByRole("checkbox", { name: "Kept from rolling over" }),
  );
}

/**
 * While the joint is open each half stands on its own two horses, at a and b from the end, and is determinate:
 * R_b = (half·(3 − a) + lug·(0.4 − a))·g/(b − a), R_a the rest, N.
 */
function tacked(a: number, b: number): readonly [number, number] {
  const inner = ((half * (3 - a) + endLug * (0.4 - a)) * g) / (b - a);
  return [(half + endLug) * g - inner, inner];
}

/**
 * What keeps a half from tipping over its outer horse: the beam inside it, at 0.9 of its weight, to the overhang and the lug
 * at 1.1 of theirs and a person of 1334 N on the end.
 */
function reserve(a: number): number {
  const righting = 0.9 * beam * g * ((6 - a) ** 2 / 2);
  const overturning = 1.1 * (beam * (a ** 2 / 2) + endLug * (a - 0.4)) * g + 1334 * a;
  return righting / overturning;
}

async function expectReserve(page: Page, value: number): Promise<void> {
  const entry = side(page)
    .locator("dt")
    .filter({ hasText: /^Part 1: reserve against tipping$/ });
  await expect(entry.locator("xpath=following-sibling::dd")).toHaveText(value.toFixed(3));
}

for (const name of handNames)
  test.describe(`by ${name}`, () => {
    test.use(machines[name]);
    test("a lifting beam on four horses, tacked and then welded", async ({ page }) => {
      test.setTimeout(240_000);
      const hand = handOf(name, page);
      await makeBeam(hand);
      await makeSteps(hand);

      await expectCarries(hand, "H-1", kilonewtons(tacked(1.5, 4.5)[0]));
      await expectCarries(hand, "H-2", kilonewtons(tacked(1.5, 4.5)[1]));
      await openTab(hand, "Findings");
      await expectVerdict(page, /^fails/);
      await expect(findings(page)).toContainText("tip");
      await picture(hand, "beam-fails");

      // The end of each half is heavy: the outer horses go further out.
      expect(reserve(1.5)).toBeLessThan(1.5);
      await openTab(hand, "Stands");
      await hand.moveStand("H-1", 1);
      await hand.moveStand("H-4", 11);
      const [a, d] = [await placeOf(page, "H-1"), await placeOf(page, "H-4")];
      expect(Math.abs(a - 1)).toBeLessThan(0.1);
      expect(reserve(a)).toBeGreaterThan(1.5);
      await expectCarries(hand, "H-1", kilonewtons(tacked(a, 4.5)[0]));
      await expectCarries(hand, "H-2", kilonewtons(tacked(a, 4.5)[1]));
      await expectCarries(hand, "H-4", kilonewtons(tacked(12 - d, 4.5)[0]));
      await settle(hand);
      await openTab(hand, "Findings");
      await unfold(hand, side(page), "Weight, load centre, tipping");
      await expectReserve(page, reserve(a));
      await expectVerdict(page, /^close/);
      await picture(hand, "beam-holds");
    });
  });
