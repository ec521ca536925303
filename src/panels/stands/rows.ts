/** What the stands table and the inspector show of each stand in the step in view. */

import { type Finding, type StepReport, type VerdictSoFar, worstOf } from "../../checks";
import { type Placement, type Plan, type StandType, type Step, setDownFactorOf, typeOf } from "../../plan";
import type { StandLevel } from "../../statics";
import type { BandNumbers } from "../../ui";

export interface StandRow {
  readonly placement: Placement;
  readonly type: StandType;
  /** null while the level answer is not there. */
  readonly level: StandLevel | null;
  readonly band: BandNumbers;
  /** The bounds shown are of an earlier plan, or none have come yet. */
  readonly pending: boolean;
  /** % of rating as a fraction; null without a rating or bounds. */
  readonly utilisation: number | null;
  /** The worst of the findings that name this stand. */
  readonly verdict: VerdictSoFar;
  readonly findings: readonly Finding[];
}

/** One row a placement, in the order of the layout. */
export function standRows(plan: Plan, step: Step, report: StepReport): readonly StandRow[] {
  const setDownFactor = setDownFactorOf(plan, step);
  const level = report.level.status === "known" ? report.level.value : null;
  const bounds =
    report.bounds.status === "known"
      ? report.bounds.value
      : report.bounds.status === "pending"
        ? report.bounds.last
        : null;
  return report.placements.map((placement, index) => {
    const { stand } = placement;
    const type = typeOf(plan, stand);
    const answer = level?.stands[index] ?? null;
    const bound = bounds?.stands?.find((one) => one.stand === stand) ?? null;
    const findings = report.findings.filter((finding) => finding.stand === stand);
    const rated = findings.find((finding) => ratingShare(finding) !== null);
    return {
      placement,
      type,
      level: answer,
      band: {
        level: answer?.reaction ?? null,
        least: bound?.over?.least ?? null,
        most: bound?.over?.most ?? null,
        staticsLeast: bound?.staticsLeast ?? null,
        staticsMost: bound?.staticsMost ?? null,
        rating: type.ratedLoad,
        setDownFactor,
      },
      pending: report.bounds.status === "pending",
      utilisation: rated === undefined ? null : ratingShare(rated),
      verdict: worstOf(findings.map(({ verdict }) => verdict)),
      findings,
    };
  });
}

/** The share of its rating that a finding says a stand is used to; null for other findings and without a rating. */
export function ratingShare({ code, value, limit }: Pick<Finding, "code" | "value" | "limit">): number | null {
  return code === "stand-over-rating" && value !== null && limit !== null && limit > 0 ? value / limit : null;
}
