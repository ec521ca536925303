/** Sentences on tipping, leaning and the tipping lines. */

import type { FactOf } from "../facts";
import { list, type Say } from "./say";
import type { SentencesOf } from "./sentence";

export const tippingSentences: SentencesOf<"tips" | "tilts" | "tip-reserve"> = {
  tips: (fact, say) => {
    const { why, part, beyond } = fact.details;
    const piece = part === null ? "The piece" : `The part from ${say.length(part[0])} to ${say.length(part[1])}`;
    switch (why) {
      case "stands":
        return fact.verdict === "pending"
          ? `${piece} stands as planned; whether something that is not known tips it is still being computed.`
          : `${piece} stands, whatever its weights, centres and loads turn out to be within what is said of them.`;
      case "not-computed":
        return `${piece} stands as planned; whether something that is not known tips it could not be computed.`;
      case "outside":
        return `${piece} tips: its load centre lies ${say.length(beyond ?? 0)} outside the tipping lines. Move a stand out beyond it, or keep the piece in the crane.`;
      case "on-a-line":
        return `${piece} tips: it rests on nothing, or on tops that lie on one line. Set a stand to the side of that line.`;
      case "no-weight":
        return `${piece} lifts off: its loads pull up as much as it weighs. Take loads away or hold it down.`;
      case "box":
        return `${piece} stands as weighed but tips within what is not known about ${unknowns(fact)}. Find that out before setting down, or set the stands farther out.`;
    }
  },

  tilts: (fact, say) => {
    const across = fact.details.of === "width";
    const where = across ? `across at stand ${fact.stand}` : "along";
    const lean = `The piece leans ${say.slope(fact.value ?? 0)} ${where}`;
    const limit = say.slope(fact.limit ?? 0);
    if (fact.verdict === "holds") return `${lean}, within ${limit}.`;
    const past = fact.verdict === "fails" ? `more than the ${limit} allowed` : `close to the ${limit} allowed`;
    return `${lean}, ${past}. Bring the tops level with each other by height or shims.`;
  },

  "tip-reserve": (fact, say) => {
    const line = lineThrough(fact, say);
    if (fact.details.of === "distance") {
      const inside = `The load centre lies ${say.length(fact.value ?? 0)} inside the tipping line ${line}`;
      const needed = say.length(fact.limit ?? 0);
      if (fact.verdict === "holds") return `${inside}; ${needed} is needed.`;
      if ((fact.value ?? 0) < 0) {
        const outside = say.length(-(fact.value ?? 0));
        return `The load centre lies ${outside} outside the tipping line ${line}; it has to be ${needed} inside. Move a stand out beyond it.`;
      }
      return `${inside}; ${needed} is needed${nearly(fact)}. Set the stands farther out.`;
    }
    const under = fact.details.peopleUnder ? " with people under it" : "";
    const reserve = `The reserve against tipping over the line ${line} is ${say.ratio(fact.value ?? 0)}`;
    const needed = `${say.ratio(fact.limit ?? 0)} is needed${under}`;
    if (fact.verdict === "holds") return `${reserve}; ${needed}.`;
    return `${reserve}; ${needed}${nearly(fact)}. Set the stands farther out, or keep people and loads off the overhang.`;
  },
};

const nearly = (fact: { readonly verdict: string }) => (fact.verdict === "close" ? ", so it is close" : "");

function unknowns({ details }: FactOf<"tips">): string {
  const of = (what: string, names: readonly string[]) => (names.length === 0 ? [] : [`${what} ${list(names)}`]);
  return list([
    ...of("the weight of", details.weights),
    ...of("the centre of", details.centres),
    ...of("the load", details.loads),
  ]);
}

function lineThrough({ details }: FactOf<"tip-reserve">, say: Say): string {
  const { line } = details;
  return line.length === 1 ? `along stand ${line[0]}` : `through stands ${say.list(line)}`;
}
