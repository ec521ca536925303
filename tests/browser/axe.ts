/** What axe-core finds on the page as it stands. */

import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** Both themes, both widths: what depends on the one does not depend on the other. */
export const looks = [
  { scheme: "light", width: 1440 },
  { scheme: "dark", width: 390 },
] as const;

export async function putOn(page: Page, { scheme, width }: (typeof looks)[number]): Promise<void> {
  await page.setViewportSize({ width, height: 844 });
  await page.emulateMedia({ colorScheme: scheme, reducedMotion: "reduce" });
}

/** No finding, however small: on the whole page, or within what a selector names, where the rest was looked at before. */
export async function expectClean(page: Page, where: string, within?: string): Promise<void> {
  // Without frames in the page nothing is left out so, and no second page is opened to gather what was found.
  const builder = new AxeBuilder({ page }).setLegacyMode();
  if (within !== undefined) builder.include(within);
  const { violations, passes } = await builder.analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(" | ")}`);
  expect(found, where).toEqual([]);
  expect(passes.length, where).toBeGreaterThan(0);
}
