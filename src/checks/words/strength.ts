/** Sentences on the piece's own strength, the tops and the slab. */

import type { FactOf } from "../facts";
import type { Say } from "./say";
import { overOrWithin, type SentencesOf } from "./sentence";

type SectionCode = "bending" | "shear" | "web-yielding" | "web-crippling" | "lateral-buckling";

export const strengthSentences: SentencesOf<SectionCode | "bearing-pressure" | "sag" | "slab"> = {
  bending: (fact, say) =>
    withData(fact, "Bending", () =>
      limited(fact, `Bending reaches ${say.pressure(fact.value!)}`, say.pressure(fact.limit!), {
        remedy: "Move the stands to even out the bending, or add one",
      }),
    ),

  shear: (fact, say) =>
    withData(fact, "Shear", () =>
      limited(fact, `Shear reaches ${say.pressure(fact.value!)}`, say.pressure(fact.limit!), {
        remedy: "Spread the load over more stands",
      }),
    ),

  "web-yielding": (fact, say) => web(fact, "local yielding", say),
  "web-crippling": (fact, say) => web(fact, "crippling", say),

  "lateral-buckling": (fact, say) =>
    withData(fact, "Lateral buckling", () => {
      const span = `The piece spans ${say.length(fact.value!)} between neighbouring stands`;
      const limit = say.length(fact.limit!);
      if (fact.verdict === "holds") return `${span}; up to ${limit} it cannot buckle sideways.`;
      return `${span}, over the ${limit} up to which it cannot buckle sideways. Have that checked, hold the piece sideways, or add a stand.`;
    }),

  "bearing-pressure": (fact, say) => {
    const top = `the ${fact.details.material} top of stand ${fact.stand}`;
    if (fact.value === null) return waiting(fact, `The pressure on ${top}`);
    return limited(fact, `The pressure on ${top} reaches ${say.pressure(fact.value)}`, say.pressure(fact.limit!), {
      remedy: "Spread the load by packing or take a harder top",
    });
  },

  sag: (fact, say) => {
    if (fact.value === null) return waiting(fact, "How far the piece sags");
    return limited(fact, `The piece sags ${say.length(fact.value)} from a straight line`, say.length(fact.limit!), {
      remedy: "Move the stands towards the least sag, or add one",
    });
  },

  slab: (fact, say) => {
    const { place, jointsKnown } = fact.details;
    if (fact.value === null) return waiting(fact, "The stress in the slab");
    const where = place === null || place === "interior" ? "" : ` at the ${place}`;
    const stress = `Under the feet of stand ${fact.stand} the slab is stressed${where} to ${say.pressure(fact.value)}`;
    if (fact.verdict === "unknown" && !jointsKnown) {
      return `${stress} of ${say.pressure(fact.limit!)} away from joints; where its joints are is not known. Find them and mark them in the plan.`;
    }
    return limited(fact, stress, say.pressure(fact.limit!), {
      remedy: "Put plates under the feet or move them from joints",
    });
  },
};

interface Limited {
  readonly verdict: string;
}

function limited(fact: Limited, value: string, limit: string, { remedy }: { readonly remedy: string }): string {
  const compared = `${value}, ${overOrWithin(fact.verdict)} the ${limit} allowed`;
  return fact.verdict === "holds" ? `${compared}.` : `${compared}. ${remedy}.`;
}

function waiting(fact: Limited, what: string): string {
  return fact.verdict === "pending" ? `${what} is still being computed.` : `${what} could not be computed.`;
}

function withData(fact: FactOf<SectionCode>, what: string, say: () => string): string {
  const { missing } = fact.details;
  if (fact.verdict === "unknown" && missing.length > 0) {
    return missing.includes("webs")
      ? `${what} cannot be told here: the formula is for one web, and this section has two. Have the two webs checked at each stand by hand, or fit stiffeners there.`
      : `${what} cannot be told: the section gives no ${missing.join(", ")}. Add what is missing.`;
  }
  if (fact.value === null || fact.limit === null) return waiting(fact, what);
  return say();
}

function web(fact: FactOf<"web-yielding" | "web-crippling">, what: string, say: Say): string {
  return withData(fact, `Web ${what} over stand ${fact.stand}`, () => {
    const force = `The web takes ${say.force(fact.value!)} over stand ${fact.stand}`;
    const limit = `${say.force(fact.limit!)} that it is good for against ${what}`;
    const presumed = "as long as the piece is kept from rolling";
    const compared = `${force}, ${overOrWithin(fact.verdict)} the ${limit}, ${presumed}`;
    return fact.verdict === "holds"
      ? `${compared}.`
      : `${compared}. Fit a stiffener, use a wider top, or take load off this stand.`;
  });
}
