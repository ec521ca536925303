/** The piece's own strength and shape, the pressure on the tops, and the slab under the feet. */

import type { FindingCode } from "../../plan";
import type { Governing, StrengthAnswer } from "../../statics";
import { upper, useOfUpper } from "../compare";
import type { StandContext, StepContext } from "../context";
import type { Basis, Fact, FactOf } from "../facts";
import { knownValue, type StepStrength } from "../parts";
import type { Verdict, VerdictSoFar } from "../report";
import { byCriterion, byText, type LeftOut, nowhere, type Outcome, worstFact } from "./fact";

const pieceCodes = ["bending", "shear", "lateral-buckling"] as const;
const webCodes = ["web-yielding", "web-crippling"] as const;
type SectionCode = (typeof pieceCodes)[number] | (typeof webCodes)[number];

const bases: Readonly<Record<SectionCode, Basis>> = {
  bending: { kind: "text", text: "allowable share of the yield stress", changedBy: "allowableStressFactor" },
  shear: byText("0.4 of the yield stress, AISC 360 G2.1 with a safety factor of 1.5"),
  "web-yielding": byText("AISC 360 J10.2 with a safety factor of 1.5"),
  "web-crippling": byText("AISC 360 J10.3 with a safety factor of 2"),
  "lateral-buckling": byText("AISC 360 F2-5: 1.76·r_y·√(E/F_y)"),
};

export function strengthChecks(context: StepContext): Outcome {
  const leftOut: LeftOut[] = [];
  const facts: Fact[] = [];
  const strength = knownValue(context.strength);
  const add = (outcome: Outcome) => {
    facts.push(...outcome.facts);
    leftOut.push(...outcome.leftOut);
  };
  if (context.plan.piece.section === null) {
    for (const code of [...pieceCodes, ...webCodes]) leftOut.push({ code, why: "the piece gives no section" });
  } else if (!context.noReactions) {
    add(sectionChecks(context, strength));
  }
  add(sagCheck(context, strength));
  add(slabCheck(context));
  if (!context.noReactions) facts.push(...context.stands.map((stand) => pressureOn(context, stand, strength)));
  return { facts, leftOut };
}

/** What is not computed yet is pending; what could not be computed is unknown. */
const notYet = (context: StepContext): VerdictSoFar => (context.strength.status === "pending" ? "pending" : "unknown");

const ofStand = (stand: StandContext) => ({ stand: stand.placement.stand, at: stand.at });

function sectionChecks(context: StepContext, strength: StepStrength | null): Outcome {
  const facts: Fact[] = [];
  const leftOut: LeftOut[] = [];
  const consider = (code: SectionCode, answer: StrengthAnswer | null, stand: StandContext | null) => {
    if (answer?.status === "not-checked") {
      leftOut.push({ code, why: "the piece gives no section where the check would look" });
    } else {
      facts.push(sectionFact(context, code, answer, stand));
    }
  };
  consider("bending", strength?.bending ?? null, null);
  consider("shear", strength?.shear ?? null, null);
  consider("lateral-buckling", strength?.lateralBuckling ?? null, null);
  for (const stand of context.stands) {
    if (stand.level.contact.length === 0) continue;
    const answer = strength?.stands[stand.index];
    consider("web-yielding", answer?.webYielding ?? null, stand);
    consider("web-crippling", answer?.webCrippling ?? null, stand);
  }
  return { facts, leftOut };
}

function sectionFact(
  context: StepContext,
  code: SectionCode,
  answer: Exclude<StrengthAnswer, { status: "not-checked" }> | null,
  stand: StandContext | null,
): Fact {
  const worst = answer?.worst ?? null;
  const found = worst === null ? null : judge(context, code, worst);
  // What is known to fail fails, whatever else is missing.
  const known = answer?.status === "known" || found === "fails" ? found : "unknown";
  return {
    code,
    verdict: answer === null ? notYet(context) : (known ?? "unknown"),
    value: worst?.value ?? null,
    limit: worst?.limit ?? null,
    unit: code === "lateral-buckling" ? "m" : code === "bending" || code === "shear" ? "Pa" : "N",
    use: worst === null ? 0 : useOfUpper(worst.value, worst.limit),
    stand: stand?.placement.stand ?? null,
    at: worst === null ? (stand?.at ?? null) : { s: worst.s, t: stand?.placement.t ?? 0 },
    basis: bases[code],
    details: { missing: answer?.status === "unknown" ? answer.missing : [] },
  };
}

function judge(context: StepContext, code: SectionCode, { value, limit }: Governing): Verdict {
  // Past the length that needs no holding sideways, somebody has to look; it is not known to fail.
  if (code === "lateral-buckling") return value <= limit ? "holds" : "close";
  return upper(value, limit, context.criteria.closeFraction);
}

function sagCheck(context: StepContext, strength: StepStrength | null): Outcome {
  const { sagLimit, closeFraction } = context.criteria;
  if (sagLimit === null) return { facts: [], leftOut: [{ code: "sag", why: "the plan gives no limit for the sag" }] };
  if (context.noReactions || (strength !== null && strength.sag === null)) return { facts: [], leftOut: [] };
  const sag = strength?.sag ?? null;
  const fact: FactOf<"sag"> = {
    code: "sag",
    verdict: sag === null ? notYet(context) : upper(sag.value, sagLimit, closeFraction),
    value: sag?.value ?? null,
    limit: sagLimit,
    unit: "m",
    use: sag === null ? 0 : useOfUpper(sag.value, sagLimit),
    stand: null,
    at: sag === null ? null : { s: sag.s, t: 0 },
    basis: byCriterion("sagLimit"),
    details: null,
  };
  return { facts: [fact], leftOut: [] };
}

function pressureOn(
  context: StepContext,
  stand: StandContext,
  strength: StepStrength | null,
): FactOf<"bearing-pressure"> {
  const { bearingPressure, closeFraction } = context.criteria;
  const { material } = stand.type.top;
  const limit = bearingPressure[material];
  const value = strength === null ? null : (strength.stands[stand.index]?.pressure ?? 0);
  return {
    code: "bearing-pressure",
    verdict: value === null ? notYet(context) : upper(value, limit, closeFraction),
    value,
    limit,
    unit: "Pa",
    use: value === null ? 0 : useOfUpper(value, limit),
    ...ofStand(stand),
    basis: byCriterion("bearingPressure", material),
    details: { material },
  };
}

function slabCheck(context: StepContext): Outcome {
  const code: FindingCode = "slab";
  const { bay } = context.plan;
  if (bay === null) return { facts: [], leftOut: [{ code, why: "the plan gives no bay" }] };
  if (bay.slab === null) return { facts: [], leftOut: [{ code, why: "the bay gives no slab" }] };
  if (context.noReactions) return { facts: [], leftOut: [] };
  const jointsKnown = bay.slab.joints !== null;
  const common = {
    code: "slab",
    unit: "Pa",
    basis: { kind: "text", text: "rupture stress of the concrete ÷ slabFactor", changedBy: "slabFactor" },
  } as const;
  const slab = knownValue(context.slab);
  if (slab === null) {
    const verdict = context.slab.status === "pending" ? "pending" : "unknown";
    const details = { place: null, jointsKnown };
    return {
      facts: [{ ...common, ...nowhere, verdict, value: null, limit: null, use: 0, details }],
      leftOut: [],
    };
  }
  const facts = context.stands.flatMap((stand) =>
    (slab.stands[stand.index]?.feet ?? []).map((foot): FactOf<"slab"> => {
      const verdict = upper(foot.greatest, slab.allowed, context.criteria.closeFraction);
      const place = foot.greatest === foot.interior ? "interior" : foot.greatest === foot.edge ? "edge" : "corner";
      return {
        ...common,
        ...ofStand(stand),
        // Joints that are not known may bring more than the interior shows.
        verdict: jointsKnown || verdict === "fails" ? verdict : "unknown",
        value: foot.greatest,
        limit: slab.allowed,
        use: useOfUpper(foot.greatest, slab.allowed),
        details: { place, jointsKnown },
      };
    }),
  );
  const worst = worstFact(facts);
  return { facts: worst === null ? [] : [worst], leftOut: [] };
}
