/** What a push does: rolling over, sliding, a stand about its own feet; and one stand gone. */

import type { CriterionKey } from "../../plan";
import {
  extentAcross,
  lesserBreadth,
  pushForce,
  rollOvers,
  type Sliding,
  standReserve,
  standsNotToLose,
} from "../../statics";
import { lower, useOfLower } from "../compare";
import type { StandContext, StepContext } from "../context";
import type { Fact, FactOf } from "../facts";
import { pushHeight, slidingOf, slopeOf, standOnFeet } from "../push";
import { byCriterion, byText, condition, type LeftOut, nowhere, type Outcome, worstFact } from "./fact";

/** Depth ÷ breadth over which a piece may not stand free, by analogy with 29 CFR 1926.451(c)(1). */
const slenderestPiece = 4;
/** Half the lesser breadth of a stand's base ÷ its height under which a set-down may knock it over (section 8). */
const slenderestStand = 0.5;
/** A leg frame's share is negative below this share of the weight: rounding is not. */
const pulledFrame = 1e-9;

export function stabilityChecks(context: StepContext): Outcome {
  const facts: (Fact | null)[] = [];
  const leftOut: LeftOut[] = [];
  if (context.step.braced) leftOut.push({ code: "rolls-over", why: "the step says that the piece is braced" });
  else facts.push(rollsOver(context));
  if (context.step.peopleUnder) facts.push(singleStandLoss(context));
  if (!context.noReactions) {
    const push = slidingOf(context);
    facts.push(...context.stands.map((stand) => standTipsOver(context, stand, push)), slides(context, push));
    if (context.step.chocked) {
      leftOut.push({ code: "slides", why: "what chocks the piece on its tops is for somebody to design" });
    }
  }
  return { facts: facts.filter((fact) => fact !== null), leftOut };
}

const reserveKey = (context: StepContext): CriterionKey & ("tipReserve" | "tipReserveUnder") =>
  context.step.peopleUnder ? "tipReserveUnder" : "tipReserve";

function rollsOver(context: StepContext): FactOf<"rolls-over"> | null {
  const { criteria, plan, step, level, tipping } = context;
  const key = reserveKey(context);
  const facts = tipping.flatMap(({ edges }, index): FactOf<"rolls-over">[] => {
    const part = level.parts[index]!;
    if (!part.stable || edges.length === 0) return [];
    const push = pushForce(part.resultant.force, slopeOf(context), criteria);
    const z = pushHeight(context, index);
    const details = { push, peopleUnder: step.peopleUnder };
    const common = { code: "rolls-over", stand: null } as const;
    const ofEdges = rollOvers(edges, push, z).flatMap(({ from, to, reserve }): FactOf<"rolls-over">[] => {
      if (reserve === null) return [];
      return [
        {
          ...common,
          verdict: lower(reserve, criteria[key], criteria.closeFraction),
          value: reserve,
          limit: criteria[key],
          unit: "1",
          use: useOfLower(reserve, criteria[key]),
          at: { s: (from[0] + to[0]) / 2, t: (from[1] + to[1]) / 2 },
          basis: byCriterion(key),
          details: { ...details, why: "reserve" },
        },
      ];
    });
    const slenderness = plan.piece.depth / extentAcross(edges);
    if (slenderness <= slenderestPiece) return ofEdges;
    const slender: FactOf<"rolls-over"> = {
      ...common,
      verdict: "fails",
      value: slenderness,
      limit: slenderestPiece,
      unit: "1",
      use: slenderness / slenderestPiece,
      at: null,
      basis: byText("by analogy with 29 CFR 1926.451(c)(1)"),
      details: { ...details, why: "slender" },
    };
    return [...ofEdges, slender];
  });
  return worstFact(facts);
}

/** On its tops, and each stand on the floor; where the piece is chocked on its tops, the feet alone. */
function slides(context: StepContext, { push, shares, onTops, onFloor }: Sliding): FactOf<"slides"> | null {
  const { slideReserve, closeFraction } = context.criteria;
  const fact = (
    value: number | null,
    ofPush: number,
    where: "tops" | "floor",
    stand: StandContext | null,
  ): FactOf<"slides"> => ({
    code: "slides",
    verdict: value === null ? "holds" : lower(value, slideReserve, closeFraction),
    value,
    limit: slideReserve,
    unit: "1",
    use: value === null ? 0 : useOfLower(value, slideReserve),
    stand: stand?.placement.stand ?? null,
    at: stand?.at ?? null,
    basis: byCriterion("slideReserve"),
    details: { where, stand: stand?.placement.stand ?? null, push: ofPush },
  });
  const feet = context.stands.flatMap((stand, index) => {
    const reserve = onFloor[index] ?? null;
    return reserve === null ? [] : [fact(reserve, shares[index]!, "floor", stand)];
  });
  return worstFact(context.step.chocked ? feet : [fact(onTops, push, "tops", null), ...feet]);
}

/** A stand about its own feet: a frame pulled up, its reserve under its share of the push, and how slender it is. */
function standTipsOver(context: StepContext, stand: StandContext, push: Sliding): FactOf<"stand-tips-over"> {
  const { criteria, step } = context;
  const { placement, level } = stand;
  const key = reserveKey(context);
  const onFeet = standOnFeet(stand);
  const reserve = standReserve(onFeet, push.shares[stand.index]!);
  const slenderness = lesserBreadth(onFeet.feet) / 2 / onFeet.height;
  const common = {
    code: "stand-tips-over",
    stand: placement.stand,
    at: stand.at,
  } as const;
  const details = { peopleUnder: step.peopleUnder, slenderness, reserve };
  const facts: FactOf<"stand-tips-over">[] = [
    {
      ...common,
      verdict: reserve === null ? "holds" : lower(reserve, criteria[key], criteria.closeFraction),
      value: reserve,
      limit: criteria[key],
      unit: "1",
      use: reserve === null ? 0 : useOfLower(reserve, criteria[key]),
      basis: byCriterion(key),
      details: { ...details, why: "reserve" },
    },
  ];
  const leastFrame = Math.min(...(level.legFrames ?? [0, 0]));
  if (leastFrame < -pulledFrame * stand.weight) {
    facts.push({
      ...common,
      verdict: "fails",
      value: leastFrame,
      limit: 0,
      unit: "N",
      use: Number.POSITIVE_INFINITY,
      basis: byText("a leg frame cannot be pulled up"),
      details: { ...details, why: "frame" },
    });
  }
  if (step.setDown && slenderness < slenderestStand) {
    facts.push({
      ...common,
      verdict: "close",
      value: slenderness,
      limit: slenderestStand,
      unit: "1",
      use: useOfLower(slenderness, slenderestStand),
      basis: byText("this tool"),
      details: { ...details, why: "slender" },
    });
  }
  return worstFact(facts)!;
}

function singleStandLoss(context: StepContext): FactOf<"single-stand-loss"> {
  const stands = standsNotToLose(context.model, context.level);
  return {
    code: "single-stand-loss",
    verdict: stands.length > 0 ? "close" : "holds",
    ...condition,
    ...nowhere,
    basis: byText("one stand bumped, kicked or sunk"),
    details: { stands },
  };
}
