/** How a code's facts become its one sentence. */

import type { FindingCode } from "../../plan";
import type { FactOf } from "../facts";
import type { Say } from "./say";

export type Sentence<Code extends FindingCode> = (fact: FactOf<Code>, say: Say) => string;

export type SentencesOf<Code extends FindingCode> = { readonly [Each in Code]: Sentence<Each> };

/** Two words that the specification asks for, and rules that differ from place to place. */
export const askSomebody = "Ask the qualified person and follow local rules.";

/** Said while a number is as planned and its range is still being computed. */
export const stillComputing = "how far it may be off is still being computed";

/** A verdict's place in a sentence about a limit: "over", "close to", "within". */
export function overOrWithin(verdict: string): "over" | "close to" | "within" {
  if (verdict === "fails") return "over";
  return verdict === "close" ? "close to" : "within";
}
