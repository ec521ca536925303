/** What the drawings say of each stand in the step in view. */

import { type Finding, rankOf, type StepReport, type VerdictSoFar } from "../checks";
import { type FindingCode, memo, type StandId } from "../plan";
import { type EditorState, reportInView } from "../store";

/** Findings that speak of what a stand carries; the others that name a stand speak of its place, the piece or the floor. */
const ofReactions: ReadonlySet<FindingCode> = new Set<FindingCode>([
  "stand-never-bears",
  "stand-lifts-off",
  "stand-over-rating",
  "rating-centre",
  "casters-still-down",
  "stand-tips-over",
]);

function worstByStand(findings: readonly Finding[]): ReadonlyMap<StandId, VerdictSoFar> {
  const worst = new Map<StandId, VerdictSoFar>();
  for (const { stand, verdict } of findings) {
    if (stand === null) continue;
    const before = worst.get(stand);
    if (before === undefined || rankOf(verdict) < rankOf(before)) worst.set(stand, verdict);
  }
  return worst;
}

const overall = memo((report: StepReport) => worstByStand(report.findings));
const onReactions = memo((report: StepReport) =>
  worstByStand(report.findings.filter(({ code }) => ofReactions.has(code))),
);

/** The worst verdict on a stand; null where nothing is known of it. */
export function standVerdict(state: EditorState, stand: StandId): VerdictSoFar | null {
  return overall(reportInView(state)).get(stand) ?? null;
}

/** The worst verdict on what a stand carries; null where nothing is known of it. */
export function reactionVerdict(state: EditorState, stand: StandId): VerdictSoFar | null {
  return onReactions(reportInView(state)).get(stand) ?? null;
}
