/** Whether each stand touches, bears and keeps bearing. */

import { overlap, rectangleIn, standFrame } from "../../geometry";
import { boundsOf, type StandContext, type StepContext } from "../context";
import type { Fact, FactOf } from "../facts";
import type { VerdictSoFar } from "../report";
import { byText, condition, type Outcome } from "./fact";

export function contactChecks(context: StepContext): Outcome {
  const facts = context.stands.flatMap((stand): Fact[] => [
    notUnderPiece(stand),
    ...noRestOverlap(context, stand),
    ...(context.noReactions ? [] : bearing(context, stand)),
  ]);
  return { facts, leftOut: [] };
}

function bearing(context: StepContext, stand: StandContext): Fact[] {
  return [
    neverBears(context, stand),
    liftsOff(context, stand),
    ...castersDown(context, stand),
    ...shimLoose(context, stand),
  ];
}

const ofStand = (stand: StandContext) => ({ stand: stand.placement.stand, at: stand.at });

function notUnderPiece(stand: StandContext): FactOf<"not-under-piece"> {
  const bears = stand.level.contact.length > 0;
  const verdict = bears ? "holds" : "fails";
  const basis = byText("a stand can bear only under the piece");
  return { code: "not-under-piece", verdict, ...condition, ...ofStand(stand), basis, details: null };
}

function noRestOverlap(context: StepContext, stand: StandContext): FactOf<"no-rest-overlap">[] {
  const { noRestZones } = context.plan.piece;
  if (noRestZones.length === 0) return [];
  const { width, length } = stand.type.top;
  const top = rectangleIn(standFrame(stand.placement), [0, 0], width, length);
  const zones = noRestZones.filter((zone) => overlap(top, zone.polygon)).map((zone) => zone.name);
  return [
    {
      code: "no-rest-overlap",
      verdict: zones.length > 0 ? "fails" : "holds",
      ...condition,
      ...ofStand(stand),
      basis: byText("the plan's keep-off zones"),
      details: { zones },
    },
  ];
}

/** Level under a limit fails, least under it is close. While the bounds are pending nothing holds yet. */
function againstLeast(
  level: number,
  least: number | null,
  limit: number,
  range: StepContext["range"],
): { readonly verdict: VerdictSoFar; readonly value: number } {
  if (level < limit) return { verdict: "fails", value: level };
  if (least !== null) return { verdict: least < limit ? "close" : "holds", value: least };
  return { verdict: range.kind === "pending" ? "pending" : "unknown", value: level };
}

function neverBears(context: StepContext, stand: StandContext): FactOf<"stand-never-bears"> {
  const most = boundsOf(context, stand.index)?.most ?? null;
  const pendingVerdict = context.range.kind === "pending" ? "pending" : "unknown";
  return {
    code: "stand-never-bears",
    verdict: most === null ? pendingVerdict : most < stand.nothing ? "fails" : "holds",
    value: most,
    limit: stand.nothing,
    unit: "N",
    use: 0,
    ...ofStand(stand),
    basis: byText("a millionth of the weight"),
    details: null,
  };
}

function liftsOff(context: StepContext, stand: StandContext): FactOf<"stand-lifts-off"> {
  const level = stand.level.reaction ?? 0;
  const least = boundsOf(context, stand.index)?.least ?? null;
  return {
    code: "stand-lifts-off",
    ...againstLeast(level, least, stand.nothing, context.range),
    limit: stand.nothing,
    unit: "N",
    // The clearer it is as planned, the worse.
    use: stand.level.gap ?? 0,
    ...ofStand(stand),
    basis: byText("a millionth of the weight"),
    details: { level, gap: stand.level.gap },
  };
}

function castersDown(context: StepContext, stand: StandContext): FactOf<"casters-still-down">[] {
  const { casters } = stand.type;
  if (casters === null) return [];
  const level = stand.level.reaction ?? 0;
  const least = boundsOf(context, stand.index)?.least ?? null;
  const limit = casters.retractLoad;
  const judged = againstLeast(level, least, limit, context.range);
  return [
    {
      code: "casters-still-down",
      ...judged,
      limit,
      unit: "N",
      use: 2 - judged.value / limit,
      ...ofStand(stand),
      basis: byText(`load at which the casters of stand ${stand.placement.stand} retract`),
      details: { level, least },
    },
  ];
}

function shimLoose(context: StepContext, stand: StandContext): FactOf<"shim-loose">[] {
  const { shim } = stand.placement;
  if (shim === 0) return [];
  const level = stand.level.reaction ?? 0;
  const least = boundsOf(context, stand.index)?.least ?? null;
  const judged = againstLeast(level, least, stand.nothing, context.range);
  return [
    {
      code: "shim-loose",
      // A loose shim is a nuisance, not a failure: as planned or not, it is close.
      verdict: judged.verdict === "fails" ? "close" : judged.verdict,
      value: judged.value,
      limit: stand.nothing,
      unit: "N",
      use: 0,
      ...ofStand(stand),
      basis: byText("a millionth of the weight"),
      details: { shim },
    },
  ];
}
