/** Facts → sentences, in the plan's display units. */

import type { FindingCode } from "../../plan";
import type { Fact, FactOf } from "../facts";
import { contactSentences } from "./contact";
import { floorSentences } from "./floor";
import { ratingSentences } from "./ratings";
import type { Say } from "./say";
import { askSomebody, type SentencesOf } from "./sentence";
import { stabilitySentences } from "./stability";
import { strengthSentences } from "./strength";
import { tippingSentences } from "./tipping";

export { basisOf } from "./basis";
export { cautions } from "./cautions";
export { unprovedSentences } from "./proved";
export { sayIn } from "./say";

const sentences: SentencesOf<FindingCode> = {
  ...tippingSentences,
  ...contactSentences,
  ...ratingSentences,
  ...stabilitySentences,
  ...strengthSentences,
  ...floorSentences,
  "readings-disagree": (fact, say) =>
    fact.verdict === "holds"
      ? "The readings agree with the plan."
      : `${say.list(fact.details.readings)} cannot be true together. Take them again.`,
};

/** Codes whose sentence, where they do not hold, sends the reader to a person (engine.md section 8). */
const forThePerson: ReadonlySet<FindingCode> = new Set<FindingCode>([
  "tips",
  "tilts",
  "tip-reserve",
  "rolls-over",
  "stand-tips-over",
  "single-stand-loss",
  "stand-lifts-off",
  "casters-still-down",
  "stand-not-rated-under",
  "crane-holds",
]);

/** The sentence of a fact: its numbers and what to do. */
export function sentenceOf(fact: Fact, say: Say): string {
  const sentence = sentences[fact.code] as (fact: FactOf<FindingCode>, say: Say) => string;
  const text = sentence(fact as FactOf<FindingCode>, say);
  const asks = forThePerson.has(fact.code) && fact.verdict !== "holds" && fact.verdict !== "pending";
  return asks ? `${text} ${askSomebody}` : text;
}
