/** What a plan's report holds. Made by `reportOf`; the result file, the page and the sheet all read it. */

import type { FindingCode, LayoutId, Placement, StandId, StepId } from "../plan";
import type { LayoutParts, StepParts } from "./parts";

/** From worst to best. Pending is none of these: it never counts as `holds`. */
export type Verdict = "fails" | "unknown" | "close" | "holds";
export const verdictsWorstFirst: readonly Verdict[] = ["fails", "unknown", "close", "holds"];

/** The unit of a finding's two numbers; "1" for a ratio or a slope. */
export type FindingUnit = "1" | "N" | "m" | "Pa";

export interface Finding {
  readonly code: FindingCode;
  readonly verdict: Verdict;
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
  /** True where the plan changes the criterion that the limit comes from. */
  readonly changed: boolean;
  /** True while a part that this check needs is pending and the as-planned number stands in for it. */
  readonly provisional: boolean;
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
  /** The worst of its own findings and of its layout's floor findings; null while that cannot be told (something pending and nothing fails). */
  readonly verdict: Verdict | null;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

export interface LayoutReport extends LayoutParts {
  readonly findings: readonly Finding[];
  readonly notChecked: readonly NotChecked[];
}

export interface Report {
  /** null while something is pending and nothing fails. */
  readonly verdict: Verdict | null;
  /** Something is still being computed. */
  readonly pending: boolean;
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
