/** What the tasks of the guide have in common, in the words of the page. */

import { expect, type Locator, type Page } from "@playwright/test";
import type { Hand } from "./guideHands";
import { openPage } from "./page";

export const side = (page: Page): Locator => page.getByRole("complementary", { name: "Findings and lists" });

export const button = (within: Page | Locator, name: string | RegExp): Locator =>
  within.getByRole("button", { name, exact: true });

export const field = (within: Page | Locator, label: string): Locator => within.getByLabel(label, { exact: true });

/** The heading of something that folds out, by the words that it begins with. */
export const fold = (within: Page | Locator, words: string): Locator =>
  within.locator("summary").filter({ hasText: words });

export async function openTab(hand: Hand, name: "Findings" | "Stands" | "Piece" | "Steps" | "Plan"): Promise<void> {
  const tab = hand.page.getByRole("tab", { name, exact: true });
  await hand.press(tab);
  await expect(tab).toHaveAttribute("aria-selected", "true");
}

/** Folds something out; what is open stays so. */
export async function unfold(hand: Hand, within: Page | Locator, words: string): Promise<void> {
  const heading = fold(within, words);
  const open = () => heading.evaluate((summary) => (summary.parentElement as HTMLDetailsElement).open);
  if (await open()) return;
  await hand.press(heading);
  await expect.poll(open).toBe(true);
}

/** What a new plan asks; left out = "don't know". */
export interface Answers {
  readonly kind: "a long member" | "a die" | "a plate";
  readonly name: string;
  readonly sizes: readonly [string, string, string];
  readonly weight?: { readonly typed: string; readonly knownBy: string };
  readonly centre?: "in the middle, both halves are alike";
  readonly count: 2 | 3 | 4 | 5;
  readonly stand: string;
  readonly plate?: { readonly typed: string; readonly per: "on one stand" | "on a pair" };
  readonly tops: "shimmed until they touch" | "set by laser" | "set by tape";
}

/** From the program as it opens to a plan of one's own, in millimetres and kilograms. */
export async function newPlan(hand: Hand, answers: Answers, look?: () => Promise<void>): Promise<void> {
  const { page } = hand;
  await openPage(page);
  await hand.press(button(page, "My piece"));
  const form = page.getByRole("dialog");
  const choice = (name: string) => form.getByRole("radio", { name, exact: true });
  await hand.press(choice("millimetres and kilograms"));
  await hand.press(choice(answers.kind));
  await hand.type(field(form, "What is it called?"), answers.name);
  for (const [index, label] of ["Length", "Width", "Height"].entries())
    await hand.type(field(form, label), answers.sizes[index]!);
  if (answers.weight !== undefined) {
    await hand.type(field(form, "Weight"), answers.weight.typed);
    await hand.press(choice(answers.weight.knownBy));
  }
  if (answers.centre !== undefined) await hand.press(choice(answers.centre));
  await hand.press(choice(String(answers.count)));
  await hand.press(choice(answers.stand));
  if (answers.plate !== undefined) {
    await hand.type(field(form, "What does the plate on the stand say?"), answers.plate.typed);
    await hand.press(choice(answers.plate.per));
  }
  await hand.press(choice(answers.tops));
  await look?.();
  await hand.press(button(page, "Make the plan"));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(answers.name);
}

/** The findings that do not hold, worst first. */
export const findings = (page: Page): Locator => page.getByRole("list", { name: "Findings, worst first" });

/** Waits until the verdict of the plan is told, and is this. */
export async function expectVerdict(page: Page, verdict: RegExp): Promise<void> {
  await expect(side(page).getByTestId("verdict")).toHaveText(verdict, { timeout: 30_000 });
}

/** What a stand carries as planned, in the words of the table, which is opened for it. */
export async function expectCarries(hand: Hand, stand: string, words: string): Promise<void> {
  const tab = hand.page.getByRole("tab", { name: "Stands", exact: true });
  if ((await tab.getAttribute("aria-selected")) !== "true") await openTab(hand, "Stands");
  await expect(hand.page.getByTestId(`level-${stand}`)).toHaveText(words);
}

/** A force as the page writes it, kN: two decimals, from 100 kN up one. */
export const kilonewtons = (newtons: number): string => `${(newtons / 1000).toFixed(newtons < 1e5 ? 2 : 1)} kN`;

/** A dialogue by its heading. */
export const pageOf = (page: Page, title: string): Locator => page.getByRole("dialog", { name: title });
