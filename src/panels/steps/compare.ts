/** Layouts held against each other in one step: what each would carry where, and which stand governs. */

import { forFindings, type StepReport, stepReportOf, type VerdictSoFar } from "../../checks";
import { type Layout, type LayoutId, layoutOf, type Plan, type StandId, type Step } from "../../plan";
import { type StandRow, standRows } from "../stands/rows";

/** No more than these fit side by side. */
export const mostCompared = 3;

export interface ComparedLayout {
  readonly layout: Layout;
  readonly verdict: VerdictSoFar;
  readonly rows: readonly StandRow[];
  /** The stand nearest to its rating; null without ratings. */
  readonly governing: { readonly stand: StandId; readonly utilisation: number } | null;
  /** The heaviest reaction over the box, N; null where it is not known. */
  readonly heaviest: { readonly stand: StandId; readonly most: number } | null;
  /** The least reserve against tipping; null where nothing overturns. */
  readonly reserve: number | null;
}

/** The step as it would be on another layout. Bounds are computed, so it takes some tens of milliseconds. */
export function compared(plan: Plan, step: Step, id: LayoutId): ComparedLayout {
  const there: Step = { ...step, layout: id };
  const report = stepReportOf(plan, there, forFindings);
  const rows = standRows(plan, there, report);
  return {
    layout: layoutOf(plan, id),
    verdict: report.verdict,
    rows,
    governing: greatest(rows, ({ utilisation }) => utilisation, "utilisation"),
    heaviest: greatest(rows, ({ band }) => band.most, "most"),
    reserve: leastReserve(report),
  };
}

function greatest<Key extends string>(
  rows: readonly StandRow[],
  of: (row: StandRow) => number | null,
  key: Key,
): ({ readonly stand: StandId } & { readonly [K in Key]: number }) | null {
  let best: { stand: StandId; value: number } | null = null;
  for (const row of rows) {
    const value = of(row);
    if (value !== null && (best === null || value > best.value)) best = { stand: row.placement.stand, value };
  }
  return best === null ? null : ({ stand: best.stand, [key]: best.value } as never);
}

function leastReserve({ tipping }: StepReport): number | null {
  if (tipping.status !== "known") return null;
  const reserves = tipping.value.flatMap(({ edges }) =>
    edges.flatMap(({ reserve }) => (reserve === null ? [] : [reserve])),
  );
  return reserves.length === 0 ? null : Math.min(...reserves);
}

/** Every stand that any of the layouts uses, in the order in which they first appear. */
export function standsOf(layouts: readonly ComparedLayout[]): readonly StandId[] {
  return [...new Set(layouts.flatMap(({ rows }) => rows.map(({ placement }) => placement.stand)))];
}
