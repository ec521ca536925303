/** One row a layout: where it is used, its worst verdict, and the stand that governs. */

import { type Report, type VerdictSoFar, worstOf } from "../../checks";
import { type Layout, type Plan, type StandId, setDownFactorOf, stepOf, typeOf } from "../../plan";

export interface LayoutRow {
  readonly layout: Layout;
  /** How many steps use it. */
  readonly steps: number;
  /** null where no step uses it. */
  readonly verdict: VerdictSoFar | null;
  /** The stand nearest to its rating in any step; null without ratings or bounds. */
  readonly governing: { readonly stand: StandId; readonly most: number; readonly utilisation: number } | null;
}

export function layoutRows(plan: Plan, report: Report): readonly LayoutRow[] {
  return plan.layouts.map((layout) => {
    const steps = report.steps.filter((step) => step.layout === layout.id);
    let governing: LayoutRow["governing"] = null;
    for (const { step, bounds } of steps) {
      if (bounds.status !== "known") continue;
      const factor = setDownFactorOf(plan, stepOf(plan, step));
      for (const { stand, over } of bounds.value.stands ?? []) {
        const { ratedLoad } = typeOf(plan, stand);
        if (over === null || ratedLoad === null) continue;
        const utilisation = (over.most * factor) / ratedLoad;
        if (governing === null || utilisation > governing.utilisation)
          governing = { stand, most: over.most, utilisation };
      }
    }
    return {
      layout,
      steps: steps.length,
      verdict: steps.length === 0 ? null : worstOf(steps.map(({ verdict }) => verdict)),
      governing,
    };
  });
}
