/** What a plan's report holds. Made by `reportOf`; the result file, the page and the sheet all read it. */

import type { FindingCode, LayoutId, Placement, StandId, StepId } from "../plan";
import type { LayoutParts, StepParts } from "./parts";

/** What a finished check says, from worst to best. */
export type Verdict = "fails" | "unknown" | "close" | "holds";

/**
 * A verdict while the report is being computed. `pending`: nothing found against it so far, but a part that the check
 * needs has not come yet. It never counts as `holds`; the command line, which waits for every part, never sees it.
 */
export type VerdictSoFar = Verdict | "pending";

/** The unit of a finding's two numbers; "1" for a ratio or a slope. */
export type FindingUnit = "1" | "N" | "m" | "Pa";

export interface Finding {
  readonly code: FindingCode;
  readonly verdict: VerdictSoFar;
  /** null: a floor finding speaks of the whole layout. */
  readonly step: StepId | null;
  readonly layout: LayoutId;
  readonly stand: StandId | null;
  /** Where on the piece, m. */
  readonly at: { readonly s: number; readonly t: number } | null;
  /** One plain sentence in the plan's display units: the numbers and what to do. */
  readonly message: string;
  /** The two numbers compared, SI; both null for a condition. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly unit: FindingUnit | null;
  /** Where the limit comes from. */
  readonly basis: string;
  /** True where the plan changes the criterion that the limit comes from; `basis` says so too. */
  readonly changed: boolean;
  /** How much of the limit is used: 1 at the limit, more is worse; 0 for a condition that is met or not. */
  readonly use: number;
}

/** A check left out because optional data is null: one entry a code. */
export interface NotChecked {
  readonly check: FindingCode;
  readonly why: string;
}

export interface StepReport extends StepParts {
  readonly step: StepId;
  readonly layout: LayoutId;
  readonly placements: readonly Placement[];
  /** The worst of its own findings and of its layout's floor findings. */
  readonly verdict: VerdictSoFar;
  /** Its own findings. */
  readonly findings: readonly Finding[];
  /** Those of its layout's floor. */
  readonly floorFindings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

export interface LayoutReport extends LayoutParts {
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

export interface Report {
  readonly verdict: VerdictSoFar;
  readonly steps: readonly StepReport[];
  readonly layouts: readonly LayoutReport[];
  /** All of them, worst first. */
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

/** The same matter at several stands and steps of one layout: one line on screen and sheet. */
export interface FindingLine {
  readonly worst: Finding;
  readonly moreStands: number;
  readonly moreSteps: number;
  readonly all: readonly Finding[];
}

const worstFirst: readonly VerdictSoFar[] = ["fails", "pending", "unknown", "close", "holds"];

/** The worst of several verdicts; `holds` of none. What already fails fails, whatever is pending. */
export function worstOf(verdicts: Iterable<VerdictSoFar>): VerdictSoFar {
  let worst: VerdictSoFar = "holds";
  for (const verdict of verdicts) if (rankOf(verdict) < rankOf(worst)) worst = verdict;
  return worst;
}

/** Place of a verdict in the order worst first, from 0. */
export function rankOf(verdict: VerdictSoFar): number {
  return worstFirst.indexOf(verdict);
}
