import { expect, type Page, test } from "@playwright/test";
import { drag, onPlan, openWith } from "./page";
import { twoStands } from "./plans";

/**
 * Counts what React renders, through the hook that it offers to its own developer tools: how often each component that
 * is given a stand was rendered, by that stand's id, and how often the drawing of the bay.
 */
async function countRenders(page: Page): Promise<void> {
  await page.addInitScript(() => {
    interface Fiber {
      readonly child: Fiber | null;
      readonly sibling: Fiber | null;
      readonly alternate: Fiber | null;
      readonly flags: number;
      readonly memoizedProps: Record<string, unknown> | null;
      readonly type: unknown;
    }
    const counts: Record<string, number> = {};
    const performedWork = 1;
    const isComponent = ({ type }: Fiber): boolean =>
      typeof type === "function" || (typeof type === "object" && type !== null);
    const visit = (fiber: Fiber, before: Fiber | null): void => {
      if (isComponent(fiber) && (before === null || (fiber.flags & performedWork) !== 0)) {
        const { stand, bay } = fiber.memoizedProps ?? {};
        const name =
          typeof stand === "string"
            ? stand
            : bay === undefined || !("map" in (fiber.memoizedProps ?? {}))
              ? "other"
              : "bay";
        counts[name] = (counts[name] ?? 0) + 1;
      }
      if (before !== null && fiber.child === before.child) return;
      for (let child = fiber.child; child !== null; child = child.sibling) {
        const was = child.alternate;
        if (was === child) continue;
        visit(child, was);
      }
    };
    Object.assign(window, {
      renders: counts,
      __REACT_DEVTOOLS_GLOBAL_HOOK__: {
        supportsFiber: true,
        isDisabled: false,
        renderers: new Map(),
        inject: () => 1,
        onCommitFiberUnmount: () => {},
        onPostCommitFiberRoot: () => {},
        onCommitFiberRoot: (_: number, root: { readonly current: Fiber }) =>
          visit(root.current, root.current.alternate),
      },
    });
  });
}

const rendersOf = (page: Page) =>
  page.evaluate(() => ({ ...(window as never as { renders: Record<string, number> }).renders }));

test("dragging one stand renders that stand again, and nothing of the other stand or the bay", async ({ page }) => {
  await countRenders(page);
  await openWith(page, {
    ...twoStands,
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [-2, -3],
        [14, -3],
        [14, 3],
        [-2, 3],
      ],
    },
  });
  await page.getByRole("tab", { name: "Plan", exact: true }).click();
  // Selected first, so that the change of selection is not counted.
  const from = await onPlan(page, 9, 0.5);
  await page.mouse.click(from.x, from.y);
  await page.waitForTimeout(400);
  const before = await rendersOf(page);
  expect(before.A).toBeGreaterThan(0);
  await drag(page, from, await onPlan(page, 7, 0.5), 30);
  await page.waitForTimeout(400);
  const after = await rendersOf(page);
  const more = (name: string): number => (after[name] ?? 0) - (before[name] ?? 0);
  expect(more("B")).toBeGreaterThan(5);
  expect(more("A")).toBe(0);
  expect(more("bay")).toBe(0);
});
