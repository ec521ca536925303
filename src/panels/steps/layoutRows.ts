/** One row a layout: where it is used, its worst verdict, and the stand that governs. */

import { type Report, type VerdictSoFar, worstOf } from "../../checks";
import type { Layout, Plan, StandId } from "../../plan";
import { ratingShare } from "../stands/rows";

export interface LayoutRow {
  readonly layout: Layout;
  /** How many steps use it. */
  readonly steps: number;
  /** null where no step uses it. */
  readonly verdict: VerdictSoFar | null;
  /** The stand nearest to its rating in any step; null without ratings. */
  readonly governing: { readonly stand: StandId; readonly utilisation: number } | null;
}

export function layoutRows(plan: Plan, report: Pick<Report, "steps">): readonly LayoutRow[] {
  return plan.layouts.map((layout) => {
    const steps = report.steps.filter((step) => step.layout === layout.id);
    let governing: LayoutRow["governing"] = null;
    for (const finding of steps.flatMap(({ findings }) => findings)) {
      const utilisation = ratingShare(finding);
      if (finding.stand === null || utilisation === null) continue;
      if (governing === null || utilisation > governing.utilisation) governing = { stand: finding.stand, utilisation };
    }
    return {
      layout,
      steps: steps.length,
      verdict: steps.length === 0 ? null : worstOf(steps.map(({ verdict }) => verdict)),
      governing,
    };
  });
}
