/** What the drawings say of each stand: the worst finding on it in the step in view. */

import { type Finding, rankOf, type StepReport, type VerdictSoFar } from "../checks";
import { memo, type StandId } from "../plan";
import { type EditorState, reportInView } from "../store";

const worstByStand = memo((report: StepReport): ReadonlyMap<StandId, Finding> => {
  const worst = new Map<StandId, Finding>();
  for (const finding of report.findings) {
    if (finding.stand === null) continue;
    const before = worst.get(finding.stand);
    if (before === undefined || rankOf(finding.verdict) < rankOf(before.verdict)) worst.set(finding.stand, finding);
  }
  return worst;
});

/** The worst verdict on a stand; null where nothing is known of it. */
export function standVerdict(state: EditorState, stand: StandId): VerdictSoFar | null {
  return worstByStand(reportInView(state)).get(stand)?.verdict ?? null;
}
