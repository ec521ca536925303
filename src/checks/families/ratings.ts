/** What the stands are rated for, and whether they may be used. */

import { upper, useOfUpper } from "../compare";
import { bears, boundsOf, type StandContext, type StepContext } from "../context";
import type { Fact, FactOf } from "../facts";
import { knownValue } from "../parts";
import type { VerdictSoFar } from "../report";
import { shimTooThick } from "../shims";
import { byText, condition, type LeftOut, type Outcome } from "./fact";

/** A height agrees with its range and its holes within this, m (engine.md section 8). */
const heightTolerance = 1e-6;

export function ratingChecks(context: StepContext): Outcome {
  const facts: Fact[] = [];
  const leftOut: LeftOut[] = [];
  for (const stand of context.stands) {
    facts.push(inService(stand), heightFits(stand));
    if (context.noReactions) continue;
    facts.push(overRating(context, stand), ...ratedUnder(context, stand));
    if (stand.type.ratedLoad !== null) facts.push(ratingCentre(context, stand, stand.type.ratedLoad));
  }
  const unrated = context.stands.filter(({ type }) => type.ratedLoad === null).map(({ placement }) => placement.stand);
  if (unrated.length > 0)
    leftOut.push({
      code: "rating-centre",
      why: `no rated load: ${unrated.length === 1 ? "stand" : "stands"} ${unrated.join(", ")}`,
    });
  const { craneHolds, peopleUnder } = context.step;
  if (craneHolds) {
    facts.push({
      code: "crane-holds",
      verdict: peopleUnder ? "fails" : "holds",
      ...condition,
      stand: null,
      at: null,
      basis: byText("no one under a suspended load"),
      details: { peopleUnder },
    });
  }
  return { facts, leftOut };
}

const ofStand = (stand: StandContext) => ({ stand: stand.placement.stand, at: stand.at });

/**
 * The reaction that counts against the rating, N, without the set-down factor: the greatest, or twice the greater leg
 * frame's if that is more. As planned while the bounds are not known.
 */
function governing(
  context: StepContext,
  stand: StandContext,
): { readonly force: number; readonly most: number; readonly byLegFrame: boolean; readonly asPlanned: boolean } {
  const bounds = boundsOf(context, stand.index);
  const most = bounds?.most ?? stand.level.reaction ?? 0;
  const frames = bounds?.legFramesMost ?? stand.level.legFrames ?? [0, 0];
  const twice = 2 * Math.max(...frames);
  return { force: Math.max(most, twice), most, byLegFrame: twice > most, asPlanned: bounds === null };
}

/** max(most, 2·greater leg frame)·setDownFactor ÷ ratedLoad; null without a rating or without bounds. */
export function utilisationOf(context: StepContext, stand: StandContext): number | null {
  const { ratedLoad } = stand.type;
  if (ratedLoad === null || context.noReactions || boundsOf(context, stand.index) === null) return null;
  return (governing(context, stand).force * context.setDownFactor) / ratedLoad;
}

/** A verdict from the as-planned number: what already fails fails, all else waits for the bounds. */
function soFar(verdict: VerdictSoFar, asPlanned: boolean, { range }: StepContext): VerdictSoFar {
  if (!asPlanned || verdict === "fails") return verdict;
  return range.kind === "pending" ? "pending" : "unknown";
}

function overRating(context: StepContext, stand: StandContext): FactOf<"stand-over-rating"> {
  const { setDownFactor, criteria, range } = context;
  const { ratedLoad } = stand.type;
  const { force, most, byLegFrame, asPlanned } = governing(context, stand);
  const value = force * setDownFactor;
  const level = stand.level.reaction ?? 0;
  const verdict = ratedLoad === null ? "unknown" : upper(value, ratedLoad, criteria.closeFraction);
  return {
    code: "stand-over-rating",
    verdict: ratedLoad === null ? "unknown" : soFar(verdict, asPlanned, context),
    value,
    limit: ratedLoad,
    unit: "N",
    use: ratedLoad === null ? 0 : useOfUpper(value, ratedLoad),
    ...ofStand(stand),
    basis: byText(
      byLegFrame
        ? `rated load of stand ${stand.placement.stand}, spread evenly: half of it on each leg frame`
        : `rated load of stand ${stand.placement.stand}`,
    ),
    details: {
      ratedLoad,
      most,
      level,
      asPlanned,
      setDownFactor,
      byLegFrame,
      share: stand.weight > 0 ? level / stand.weight : 0,
      staticsMost: range.kind === "known" ? (range.stands[stand.index]?.staticsMost ?? null) : null,
      levelWithin: knownValue(context.margins)?.level ?? stand.placement.levelTolerance ?? criteria.levelTolerance,
      shimTooThick: () => shimTooThick(context.plan, context.step, stand.placement.stand, asPlanned),
    },
  };
}

function ratingCentre(context: StepContext, stand: StandContext, ratedLoad: number): FactOf<"rating-centre"> {
  const { criteria, setDownFactor } = context;
  const { ratedLoadCentre, legSpacing } = stand.type;
  const bounds = boundsOf(context, stand.index);
  const value = (bounds?.most ?? stand.level.reaction ?? 0) * setDownFactor;
  const bearing = stand.level.contact.reduce((sum, [from, to]) => sum + (to - from), 0);
  const spread = Math.min(1, bearing / legSpacing);
  // Where the middle rating is not known, half the spread one is what a plain beam between two frames would have.
  const atCentre = ratedLoadCentre ?? ratedLoad / 2;
  // 1/P = (1 − q)/P_c + q/ratedLoad
  const limit = 1 / ((1 - spread) / atCentre + spread / ratedLoad);
  const compared = upper(value, limit, criteria.closeFraction);
  const unproved: VerdictSoFar = compared === "fails" ? "unknown" : "holds";
  const verdict = ratedLoadCentre === null ? unproved : compared;
  return {
    code: "rating-centre",
    verdict: bounds === null && verdict !== "unknown" ? soFar(verdict, true, context) : verdict,
    value,
    limit,
    unit: "N",
    use: useOfUpper(value, limit),
    ...ofStand(stand),
    basis: byText(
      ratedLoadCentre === null
        ? `half the rated load of stand ${stand.placement.stand}, taken for its middle`
        : `rated load of stand ${stand.placement.stand} at the middle of its top`,
    ),
    details: { ratedLoadCentre, ratedLoad, spread, setDownFactor },
  };
}

function inService(stand: StandContext): FactOf<"stand-not-in-service"> {
  const { condition: state } = stand.stand;
  const verdicts = { "in-service": "holds", inspect: "unknown", "out-of-service": "fails" } as const;
  return {
    code: "stand-not-in-service",
    verdict: verdicts[state],
    ...condition,
    ...ofStand(stand),
    basis: byText("the stand's own record"),
    details: { condition: state },
  };
}

function ratedUnder(context: StepContext, stand: StandContext): FactOf<"stand-not-rated-under">[] {
  if (!context.step.peopleUnder || !bears(stand)) return [];
  const rated = stand.type.ratedForWorkUnder;
  return [
    {
      code: "stand-not-rated-under",
      verdict: rated === null ? "unknown" : rated ? "holds" : "fails",
      ...condition,
      ...ofStand(stand),
      basis: byText("what the stand's maker allows"),
      details: { rated },
    },
  ];
}

function heightFits(stand: StandContext): FactOf<"heights-mismatch"> {
  const { min, max, increment } = stand.type.height;
  const { height } = stand.placement;
  const inRange = height >= min - heightTolerance && height <= max + heightTolerance;
  const holes = increment > 0 ? Math.round((height - min) / increment) : 0;
  const onHole = increment === 0 || Math.abs(height - min - holes * increment) <= heightTolerance;
  const why = !inRange ? "range" : !onHole ? "increment" : "fits";
  return {
    code: "heights-mismatch",
    verdict: why === "fits" ? "holds" : "fails",
    ...condition,
    ...ofStand(stand),
    basis: byText("heights that the stand's type can have"),
    details: { why, min, max, increment, height },
  };
}
