/** Whether the piece tips, leans, or stands too near a tipping line. */

import type { StandId } from "../../plan";
import { type BoxTip, beyond, diagramAt, type PartLevel, type PartTipping, type TippingEdge } from "../../statics";
import { lower, upper, useOfLower, useOfUpper } from "../compare";
import { bears, type StandContext, type StepContext } from "../context";
import type { Details, FactOf } from "../facts";
import type { Verdict } from "../report";
import { byCriterion, byText, condition, nowhere, type Outcome, worstFact } from "./fact";

/** A load centre this share of the polygon's breadth from a tipping line is near it (engine.md section 8). */
const shareOfBreadth = 0.05;

export function tippingChecks(context: StepContext): Outcome {
  const facts = [tips(context), tilts(context), tipReserve(context)];
  return { facts: facts.filter((fact) => fact !== null), leftOut: [] };
}

function tips(context: StepContext): FactOf<"tips"> {
  const { level, range } = context;
  const common = { code: "tips", ...condition, ...nowhere, basis: byText("statics") } as const;
  const nothing = { part: null, beyond: null, weights: [], centres: [], loads: [] } as const;
  if (!level.stable) {
    const { details, at } = unstable(context);
    return { ...common, verdict: "fails", at, details: { ...nothing, ...details } };
  }
  switch (range.kind) {
    case "known":
      return { ...common, verdict: "holds", details: { ...nothing, why: "stands" } };
    case "pending":
      return { ...common, verdict: "pending", details: { ...nothing, why: "stands" } };
    case "failed":
      return { ...common, verdict: "unknown", details: { ...nothing, why: "not-computed" } };
    case "tips":
      return {
        ...common,
        verdict: "fails",
        details: { ...nothing, ...named(context, range.tip), part: partOf(context, range.tip.part), why: "box" },
      };
  }
}

type TipsDetails = Details["tips"];

/** The unstable part whose load centre lies farthest out, or the first that has nothing to stand on. */
function unstable(context: StepContext): {
  readonly details: Pick<TipsDetails, "why" | "part" | "beyond">;
  readonly at: { readonly s: number; readonly t: number } | null;
} {
  let worst: ReturnType<typeof unstable> | null = null;
  let farthest = Number.NEGATIVE_INFINITY;
  for (const [index, part] of context.level.parts.entries()) {
    if (part.stable) continue;
    const { force, s, t } = part.resultant;
    const at = s === null || t === null ? null : { s, t };
    const edges = context.tipping[index]!.edges;
    const beyond = edges.length === 0 || at === null ? null : Math.max(...edges.map((edge) => -(edge.distance ?? 0)));
    const why = force <= 0 ? "no-weight" : beyond === null ? "on-a-line" : "outside";
    const distance = beyond ?? Number.POSITIVE_INFINITY;
    if (distance <= farthest) continue;
    farthest = distance;
    worst = { details: { why, part: partOf(context, index), beyond }, at };
  }
  if (worst === null) throw new Error("a step is unstable without a part that is");
  return worst;
}

/** Names of everything without which it would not tip; of all that does it where no single one is needed. */
function named(context: StepContext, { must, names }: BoxTip): Pick<TipsDetails, "weights" | "centres" | "loads"> {
  const causes = must.length > 0 ? must : names;
  const nameOfMass = (index: number) => {
    const mass = context.plan.piece.masses[index]!;
    return mass.name === "" ? mass.id : mass.name;
  };
  return {
    weights: causes.flatMap((cause) => (cause.kind === "mass" ? [nameOfMass(cause.mass)] : [])),
    centres: causes.flatMap((cause) => (cause.kind === "centre" ? [nameOfMass(cause.mass)] : [])),
    loads: causes.flatMap((cause) =>
      cause.kind === "load" ? [context.step.loads[cause.load]!.name || `number ${cause.load + 1}`] : [],
    ),
  };
}

/** The stretch of a part; null where the piece is one. */
function partOf(context: StepContext, index: number): readonly [number, number] | null {
  const { parts } = context.level;
  const part = parts[index];
  return parts.length > 1 && part !== undefined ? [part.from, part.to] : null;
}

/** Slope along the piece between its outermost bearing stands, and turn across it at each bearing stand. */
function tilts(context: StepContext): FactOf<"tilts"> | null {
  if (context.noReactions) return null;
  const { criteria, level } = context;
  const { tiltLimit: limit, closeFraction } = criteria;
  const fact = (value: number, of: "length" | "width", stand: StandId | null): FactOf<"tilts"> => ({
    code: "tilts",
    verdict: upper(value, limit, closeFraction),
    value,
    limit,
    unit: "1",
    use: useOfUpper(value, limit),
    stand,
    at: null,
    basis: byCriterion("tiltLimit"),
    details: { of },
  });
  const facts = level.parts.flatMap((part, index) => {
    const { cells, from, to } = part;
    if (cells === null) return [];
    const along = slopeOfLine(part);
    const across = context.stands.filter(bearsOn(context, index)).map((stand) => {
      const s = Math.min(to, Math.max(from, stand.level.centre!.s));
      return fact(Math.abs(diagramAt(cells, s).theta), "width", stand.placement.stand);
    });
    return along === null ? across : [fact(Math.abs(along), "length", null), ...across];
  });
  return worstFact(facts);
}

/** Whether a stand bears, and can bear on a part. */
const bearsOn =
  ({ model }: StepContext, part: number) =>
  (stand: StandContext) =>
    bears(stand) && model.stands[stand.index]!.intervals.some((interval) => interval.part === part);

/** Slope of the straight line that deflection is measured from, m/m: v less the droop at both ends lies on it. */
function slopeOfLine({ from, to, cells, droop }: PartLevel): number | null {
  if (cells === null || droop === null) return null;
  const [start, end] = [diagramAt(cells, from).v - droop[0], diagramAt(cells, to).v - droop[1]];
  return (end - start) / (to - from);
}

function tipReserve(context: StepContext): FactOf<"tip-reserve"> | null {
  return worstFact(context.tipping.flatMap((part) => part.edges.flatMap((edge) => edgeFacts(context, part, edge))));
}

function edgeFacts(context: StepContext, part: PartTipping, edge: TippingEdge): FactOf<"tip-reserve">[] {
  const { criteria, step } = context;
  const { closeFraction, cgMargin } = criteria;
  const common = {
    code: "tip-reserve",
    stand: null,
    at: { s: (edge.from[0] + edge.to[0]) / 2, t: (edge.from[1] + edge.to[1]) / 2 },
  } as const;
  const details = { line: standsOn(context, edge), peopleUnder: step.peopleUnder };
  const against = (value: number, limit: number): { verdict: Verdict; value: number; limit: number; use: number } => ({
    verdict: lower(value, limit, closeFraction),
    value,
    limit,
    use: useOfLower(value, limit),
  });
  const facts: FactOf<"tip-reserve">[] = [];
  if (edge.reserve !== null) {
    const key = step.peopleUnder ? "tipReserveUnder" : "tipReserve";
    facts.push({
      ...common,
      ...against(edge.reserve, criteria[key]),
      unit: "1",
      basis: byCriterion(key),
      details: { ...details, of: "reserve", byBreadth: false },
    });
  }
  if (edge.distance !== null) {
    const breadth = Math.max(...part.edges.map((other) => -beyond(edge, other.from[0], other.from[1])));
    const byBreadth = shareOfBreadth * breadth > cgMargin;
    facts.push({
      ...common,
      ...against(edge.distance, Math.max(cgMargin, shareOfBreadth * breadth)),
      unit: "m",
      basis: byBreadth ? byText("this tool: 5 % of the breadth between the tipping lines") : byCriterion("cgMargin"),
      details: { ...details, of: "distance", byBreadth },
    });
  }
  return facts;
}

/** The stands at the two ends of a tipping line. */
function standsOn(context: StepContext, edge: TippingEdge): StandId[] {
  const nearest = [edge.from, edge.to].map(([s, t]) => {
    let found: StandId | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const part of context.model.parts)
      for (const contact of part.contacts) {
        const distance = Math.hypot(contact.s - s, contact.t - t);
        if (distance >= least) continue;
        least = distance;
        found = context.model.stands[contact.stand]!.stand;
      }
    return found;
  });
  return [...new Set(nearest)].filter((stand) => stand !== null);
}
