/** Sentences on ratings, service and heights. */

import type { FactOf } from "../facts";
import type { Say } from "./say";
import { overOrWithin, type SentencesOf, stillComputing } from "./sentence";

export const ratingSentences: SentencesOf<
  | "stand-over-rating"
  | "rating-centre"
  | "stand-not-in-service"
  | "stand-not-rated-under"
  | "crane-holds"
  | "heights-mismatch"
> = {
  "stand-over-rating": (fact, say) => {
    const { details, stand, verdict } = fact;
    if (details.ratedLoad === null) {
      const atLeast = details.asPlanned ? `, as planned; ${stillComputing}` : "";
      return `Stand ${stand} has no rating in the plan. It must be good for ${say.force(fact.value ?? 0)}${setDown(fact, say)}${atLeast}. Type what its plate says.`;
    }
    const rated = `its rating of ${say.force(details.ratedLoad)}`;
    const carries = carried(fact, say);
    const share = say.percent((fact.value ?? 0) / details.ratedLoad);
    switch (verdict) {
      case "fails":
        return `${carries}, ${share} of ${rated}. ${remedy(fact, say)}`;
      case "close":
        return `${carries}, ${share} of ${rated}: close to it.${keepLevel(fact, say)}`;
      case "pending":
        return `${carries}, ${share} of ${rated}; ${stillComputing}.`;
      case "unknown":
        return `${carries}, ${share} of ${rated}; how far it may be off could not be computed.`;
      case "holds":
        return `${carries}, ${share} of ${rated}.${keepLevel(fact, say)}`;
    }
  },

  "rating-centre": (fact, say) => {
    const { ratedLoadCentre, spread } = fact.details;
    const where = `Stand ${fact.stand} takes up to ${say.force(fact.value ?? 0)}${setDown(fact, say)} over ${say.percent(spread)} of the width between its leg frames`;
    const limit = say.force(fact.limit ?? 0);
    if (fact.verdict === "pending") return `${where}, as planned, and is good for ${limit} there; ${stillComputing}.`;
    if (fact.verdict === "unknown" && ratedLoadCentre === null) {
      return `${where}; its rating at the middle is not known, and half of the spread rating would allow ${limit}. Ask its maker for the rating at the middle, or spread the load.`;
    }
    if (fact.verdict === "unknown") return `${where}; how far it may be off could not be computed.`;
    const base = `${where}, ${overOrWithin(fact.verdict)} the ${limit} that it is good for there`;
    return fact.verdict === "fails" ? `${base}. Spread the load over its top or take a stronger stand.` : `${base}.`;
  },

  "stand-not-in-service": (fact) => {
    switch (fact.details.condition) {
      case "in-service":
        return `Stand ${fact.stand} is in service.`;
      case "inspect":
        return `Stand ${fact.stand} is waiting for its inspection. Have it inspected or take another.`;
      case "out-of-service":
        return `Stand ${fact.stand} is out of service. Take another stand.`;
    }
  },

  "stand-not-rated-under": (fact) => {
    switch (fact.details.rated) {
      case true:
        return `Stand ${fact.stand} is rated for people working under the piece.`;
      case false:
        return `People are to work under the piece, and stand ${fact.stand} is not rated for that. Take a stand that is, or keep people out from under it.`;
      case null:
        return `People are to work under the piece, and whether stand ${fact.stand} is rated for that is not known. Find out from its maker, or keep people out from under it.`;
    }
  },

  "crane-holds": (fact) =>
    fact.verdict === "holds"
      ? "The crane holds the piece: it counts as hanging, and nobody is to be under it."
      : "The crane holds the piece and people are to be under it. Keep everybody out from under it until it is set down.",

  "heights-mismatch": (fact, say) => {
    const { why, min, max, increment, height } = fact.details;
    const set = `Stand ${fact.stand} is set to ${say.length(height)}`;
    const range = min === max ? `is ${say.length(min)} high` : `goes from ${say.length(min)} to ${say.length(max)}`;
    switch (why) {
      case "fits":
        return `${set}, which its type can have.`;
      case "range":
        return `${set}, but its type ${range}. Give it a height that it has, or make up the rest with shims.`;
      case "increment":
        return `${set}, but its type ${range} in steps of ${say.length(increment)}. Set it to a hole and make up the rest with shims.`;
    }
  },
};

const setDown = ({ details }: { readonly details: { readonly setDownFactor: number } }, say: Say) =>
  details.setDownFactor === 1 ? "" : ` when set down (× ${say.ratio(details.setDownFactor)})`;

function carried(fact: FactOf<"stand-over-rating">, say: Say): string {
  const { details, stand } = fact;
  const { asPlanned, byLegFrame } = details;
  const value = fact.value ?? 0;
  const force = `${say.force(value)}${setDown(fact, say)}`;
  // A plate rates a load spread evenly: each leg frame is good for half of it.
  if (overByLegFrame(fact)) {
    const frame = `${say.force(value / 2)}${setDown(fact, say)}`;
    return asPlanned
      ? `One leg frame of stand ${stand} takes ${frame} as planned, as much as if ${say.force(value)} stood evenly on both`
      : `One leg frame of stand ${stand} takes up to ${frame}, as much as if ${say.force(value)} stood evenly on both (the whole stand as planned ${say.force(details.level)})`;
  }
  const why = byLegFrame ? ", because one leg frame takes more than half" : "";
  const carries = byLegFrame ? `Stand ${stand} counts as carrying` : `Stand ${stand} carries`;
  return asPlanned
    ? `${carries} ${force} as planned${why}`
    : `${carries} up to ${force}${why} (as planned ${say.force(details.level)})`;
}

/** The stand as a whole is within its rating, one of its leg frames is not. */
function overByLegFrame({ details, verdict }: FactOf<"stand-over-rating">): boolean {
  const { byLegFrame, most, setDownFactor, ratedLoad } = details;
  return verdict === "fails" && byLegFrame && ratedLoad !== null && most * setDownFactor <= ratedLoad;
}

function remedy(fact: FactOf<"stand-over-rating">, say: Say): string {
  const { details } = fact;
  const carries = details.share > 0.5 ? "It carries most of the weight" : "It carries too much";
  const tooThick = details.shimTooThick();
  if (tooThick !== null) {
    return `${carries} because its shim is ${say.length(tooThick)} too thick: take that out.`;
  }
  if (overByLegFrame(fact)) {
    return "Bring the load to the middle of its top, level the tops better, or take a stronger stand.";
  }
  return `${carries}: move a stand nearer, level the tops better, or take a stronger stand.`;
}

/** Where one uneven floor would put it over its rating, how level the tops must stay is part of the answer. */
function keepLevel({ details }: FactOf<"stand-over-rating">, say: Say): string {
  const { staticsMost, ratedLoad, setDownFactor, levelWithin } = details;
  if (staticsMost === null || ratedLoad === null || staticsMost * setDownFactor <= ratedLoad) return "";
  return ` Keep every top level within ± ${say.length(levelWithin)}: whatever the floor, it could come to ${say.force(staticsMost * setDownFactor)}.`;
}
