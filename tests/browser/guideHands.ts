/** Three ways to work the page, each by itself: the mouse, a finger, and the keyboard alone. */

import { type CDPSession, expect, type Locator, type Page } from "@playwright/test";
import { settled } from "./byHand";
import { drag, onPlan, placeOf } from "./page";

/** A place in metres: of the piece, (s, t). */
export type Place = readonly [number, number];

export interface Hand {
  readonly page: Page;
  readonly name: HandName;
  /** A button, a tab, an item of a menu, a choice, a box to tick, a heading that folds out. */
  press(target: Locator): Promise<void>;
  /** Puts a text into a field in place of what it holds, and is done with it. */
  type(field: Locator, text: string): Promise<void>;
  /** One word of a list. */
  choose(list: Locator, word: string): Promise<void>;
  /** One of the words in a row of which one is chosen. */
  pick(row: Locator, word: string): Promise<void>;
  /** Takes a stand along the drawing, to about so far from the datum end, m: a hand is not exact. */
  moveStand(stand: string, s: number): Promise<void>;
  /**
   * With a tool in hand that draws rectangles: one corner and the one opposite, m. While the piece lies at the bay's
   * zero, not turned, places of the piece and of the bay are the same.
   */
  drawRectangle(from: Place, to: Place): Promise<void>;
}

export type HandName = "mouse" | "touch" | "keyboard";

/** What the browser is told about the machine, by hand: touch is a tablet, the others stand on a desk. */
export const machines = {
  mouse: {},
  touch: { viewport: { width: 1180, height: 820 }, hasTouch: true, isMobile: true },
  keyboard: {},
} as const;

export const handNames = ["mouse", "touch", "keyboard"] as const satisfies readonly HandName[];

export function handOf(name: HandName, page: Page): Hand {
  switch (name) {
    case "mouse":
      return mouse(page);
    case "touch":
      return finger(page);
    case "keyboard":
      return keyboard(page);
  }
}

/** Where a stand is gripped: on its top, beside the middle line, where no handle and no weight lies. */
const gripAcross = 0.3;

function mouse(page: Page): Hand {
  return {
    page,
    name: "mouse",
    press: (target) => target.click(),
    type: async (field, text) => {
      await field.click();
      await page.keyboard.press("Control+a");
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    choose: async (list, word) => {
      await list.selectOption({ label: word });
    },
    pick: (row, word) => row.locator("label").filter({ hasText: word }).click(),
    moveStand: async (stand, s) => {
      await settled(page);
      const from = await placeOf(page, stand);
      await drag(page, await onPlan(page, from, gripAcross), await onPlan(page, s, gripAcross));
    },
    drawRectangle: async (from, to) => {
      await settled(page);
      await drag(page, await onPlan(page, ...from), await onPlan(page, ...to));
    },
  };
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

function finger(page: Page): Hand {
  const session: Promise<CDPSession> = page.context().newCDPSession(page);
  const send = async (type: "touchStart" | "touchMove" | "touchEnd", spots: readonly Spot[]): Promise<void> => {
    await (await session).send("Input.dispatchTouchEvent", {
      type,
      touchPoints: spots.map(({ x, y }) => ({ x, y, id: 0 })),
    });
  };
  const slide = async (from: Spot, to: Spot): Promise<void> => {
    await send("touchStart", [from]);
    for (let step = 1; step <= 10; step += 1) {
      const share = step / 10;
      await send("touchMove", [{ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }]);
    }
    await send("touchEnd", []);
  };
  // Down and up in one go: where the page answers the first only after half a second, it would be a long press.
  const tap = async (target: Locator): Promise<void> => {
    await target.tap({ trial: true });
    const { x, y, width, height } = (await target.boundingBox())!;
    await Promise.all([send("touchStart", [{ x: x + width / 2, y: y + height / 2 }]), send("touchEnd", [])]);
  };
  /** A tap that must land: where an answer that comes just then pushes the page along under the finger, it is given again. */
  const press = async (target: Locator): Promise<void> => {
    for (let tries = 0; tries < mostTaps; tries += 1) {
      const landed = target.evaluate(landsOn, tapAnswered);
      await tap(target);
      if (await landed) return;
    }
    throw new Error(`${mostTaps} taps did not land on ${target}`);
  };
  return {
    page,
    name: "touch",
    press,
    type: async (field, text) => {
      await tap(field);
      await field.fill(text);
      await field.press("Enter");
    },
    choose: async (list, word) => {
      await tap(list);
      await list.selectOption({ label: word });
    },
    pick: (row, word) => press(row.locator("label").filter({ hasText: word })),
    moveStand: async (stand, s) => {
      await settled(page);
      const from = await placeOf(page, stand);
      await slide(await onPlan(page, from, gripAcross), await onPlan(page, s, gripAcross));
    },
    drawRectangle: async (from, to) => {
      await settled(page);
      await slide(await onPlan(page, ...from), await onPlan(page, ...to));
    },
  };
}

/** So often a tap is given that did not land. */
const mostTaps = 3;
/** A tap without a click by then was lost, ms. */
const tapAnswered = 3000;

/** In the page: whether the next click is on an element or on its label. */
function landsOn(element: Element, patience: number): Promise<boolean> {
  return new Promise((resolve) => {
    const answer = ({ target }: Event): void => {
      const hit = target as Element;
      const label = hit.closest("label");
      resolve(element.contains(hit) || (label !== null && (label.control === element || label.contains(element))));
    };
    addEventListener("click", answer, { capture: true, once: true });
    setTimeout(() => {
      removeEventListener("click", answer, { capture: true });
      resolve(false);
    }, patience);
  });
}

/** So many presses of Tab reach anything; what takes more cannot be reached. */
const mostPresses = 250;

/**
 * Which key leads from what has the focus to an element: arrows within a group, Tab from one to the next; and how many
 * presses of it at the least, as a group of choices and the stands on the drawing may take more.
 */
function wayTo(element: Element): { readonly key: string; readonly presses: number } | null {
  const now = document.activeElement;
  if (now === null || now === element) return null;
  const follows = (one: Element, other: Element) =>
    (one.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const after = follows(now, element);
  const group = (one: Element) => {
    if (one instanceof HTMLInputElement && one.type === "radio") return `radio ${one.name}`;
    const role = one.getAttribute("role");
    return role === "tab" || role === "menuitem" ? role : null;
  };
  const own = group(element);
  if (own === "menuitem") return { key: after ? "ArrowDown" : "ArrowUp", presses: 1 };
  if (own !== null && group(now) === own) return { key: after ? "ArrowRight" : "ArrowLeft", presses: 1 };
  const scope = element.closest("[role='dialog']") ?? document.body;
  const [first, last] = after ? [now, element] : [element, now];
  const between = [
    ...scope.querySelectorAll<HTMLElement>("a, button, input, select, textarea, summary, [tabindex]"),
  ].filter(
    (one) =>
      follows(first, one) &&
      follows(one, last) &&
      one.tabIndex >= 0 &&
      !one.matches(":disabled, input[type='radio']:not(:checked)") &&
      one.checkVisibility({ visibilityProperty: true }),
  );
  return { key: after ? "Tab" : "Shift+Tab", presses: between.length + 1 };
}

function keyboard(page: Page): Hand {
  const reach = async (target: Locator): Promise<void> => {
    await expect(target).toBeAttached();
    for (let presses = 0; presses < mostPresses; ) {
      const way = await target.evaluate(wayTo);
      if (way === null) return;
      for (let run = way.presses; run > 0; run -= 1, presses += 1) await page.keyboard.press(way.key);
    }
    throw new Error(`not reached in ${mostPresses} presses: ${target}`);
  };
  return {
    page,
    name: "keyboard",
    press: async (target) => {
      await reach(target);
      const ticked = await target.evaluate((element) => element instanceof HTMLInputElement);
      await page.keyboard.press(ticked ? "Space" : "Enter");
    },
    type: async (field, text) => {
      await reach(field);
      await page.keyboard.press("Control+a");
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    choose: async (list, word) => {
      await reach(list);
      const by = await list.evaluate((select, wanted) => {
        const { options, selectedIndex } = select as HTMLSelectElement;
        return [...options].findIndex(({ text }) => text === wanted) - selectedIndex;
      }, word);
      for (let left = Math.abs(by); left > 0; left -= 1) await page.keyboard.press(by > 0 ? "ArrowDown" : "ArrowUp");
      await expect(list.locator("option:checked")).toHaveText(word);
    },
    pick: (row, word) => reach(row.getByRole("radio", { name: word, exact: true })),
    moveStand: async (stand, s) => {
      const from = await placeOf(page, stand);
      await reach(page.getByRole("application"));
      // Tab goes on from the stand that is chosen, Shift+Tab back.
      const boxes = page.getByRole("checkbox", { name: /^Select stand/ });
      const wanted = page.getByLabel(`Select stand ${stand}`);
      const before = await boxes.evaluateAll((all, label) => {
        const chosen = all.findIndex((box) => (box as HTMLInputElement).checked);
        return chosen > all.findIndex((box) => box.getAttribute("aria-label") === label);
      }, `Select stand ${stand}`);
      for (let presses = 0; presses < 8 && !(await wanted.isChecked()); presses += 1)
        await page.keyboard.press(before ? "Shift+Tab" : "Tab");
      await expect(wanted).toBeChecked();
      await expect(page.getByRole("application")).toBeFocused();
      const key = s > from ? "ArrowRight" : "ArrowLeft";
      // An arrow key moves it 10 mm.
      for (let presses = Math.round(Math.abs(s - from) / 0.01); presses > 0; presses -= 1)
        await page.keyboard.press(key);
    },
    drawRectangle: async (from, to) => {
      for (const corner of [from, to]) {
        const bar = page.getByRole("region", { name: "Drawing by hand" });
        for (const axis of [0, 1] as const) {
          await reach(bar.getByRole("textbox").nth(axis));
          await page.keyboard.type(`${corner[axis]} m`);
        }
        await page.keyboard.press("Enter");
      }
    },
  };
}
