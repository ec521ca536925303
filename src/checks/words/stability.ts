/** Sentences on pushes and on one stand gone. */

import type { FactOf } from "../facts";
import type { Say } from "./say";
import type { SentencesOf } from "./sentence";

export const stabilitySentences: SentencesOf<"stand-tips-over" | "rolls-over" | "slides" | "single-stand-loss"> = {
  "stand-tips-over": (fact, say) => {
    switch (fact.details.why) {
      case "frame":
        return `Stand ${fact.stand} itself tips: the piece bears outside its legs and pulls one leg frame up with ${say.force(-(fact.value ?? 0))}. Bring the load between its leg frames.`;
      case "slender":
        return `Stand ${fact.stand} is narrow for its height (half its base is ${say.ratio(fact.details.slenderness)} of it), and a set-down may knock it over. Guide the piece down or take a wider stand.`;
      case "reserve":
        return aboutItsFeet(fact, say);
    }
  },

  "rolls-over": (fact, say) => {
    const { why, push, peopleUnder } = fact.details;
    if (why === "slender") {
      return `The piece is ${say.ratio(fact.value ?? 0)} times as deep as its support is wide; over ${say.ratio(fact.limit ?? 0)} times it may not stand free. Brace it or widen its support.`;
    }
    const under = peopleUnder ? " with people under it" : "";
    const has = `Pushed with ${say.force(push)}, the piece has a reserve of ${say.ratio(fact.value ?? 0)} against rolling over; ${say.ratio(fact.limit ?? 0)} is needed${under}`;
    return fact.verdict === "holds" ? `${has}.` : `${has}. Brace it or widen its support.`;
  },

  slides: (fact, say) => {
    const { where, stand, push } = fact.details;
    if (fact.value === null) return "Nothing pushes the piece or its stands sideways.";
    const what = where === "tops" ? "the piece has a reserve" : `stand ${stand} has a reserve`;
    const on = where === "tops" ? "against sliding on its tops" : "against sliding on the floor";
    const has = `Pushed with ${say.force(push)}, ${what} of ${say.ratio(fact.value)} ${on}; ${say.ratio(fact.limit ?? 0)} is needed`;
    if (fact.verdict === "holds") return `${has}.`;
    return `${has}. ${where === "tops" ? "Chock the piece on its tops, or take tops that grip." : "Clean the floor, put grip under the feet, or brace the stand."}`;
  },

  "single-stand-loss": (fact, say) => {
    const { stands } = fact.details;
    if (stands.length === 0) return "The piece still stands when any one stand is gone.";
    const names = stands.length === 1 ? `stand ${stands[0]}` : `any one of stands ${say.list(stands)}`;
    return `People are to work under the piece, and without ${names} it tips. Add a stand or keep people out from under it.`;
  },
};

function aboutItsFeet(fact: FactOf<"stand-tips-over">, say: Say): string {
  const { reserve, peopleUnder } = fact.details;
  if (reserve === null) return `Stand ${fact.stand} takes no push about its own feet.`;
  const under = peopleUnder ? " with people under the piece" : "";
  const has = `Stand ${fact.stand} has a reserve of ${say.ratio(reserve)} against tipping over about its own feet; ${say.ratio(fact.limit ?? 0)} is needed${under}`;
  if (fact.verdict === "holds") return `${has}.`;
  return `${has}. Take a lower or wider stand, bring the load to its middle, or brace it.`;
}
