/** The second worker's side: searches that take seconds, and look every few milliseconds whether to stop. */

import { type Finding, type Mend, mendsSearch } from "../checks";
import { complete, type Plan, type PlanDocument } from "../plan";

/** How long a search works without looking for a stop, ms. */
const stint = 8;

export interface Search {
  /** A single change that mends a finding, or null where none of those tried does; null also when stopped. */
  readonly findMend: (document: PlanDocument, finding: Finding) => Promise<Mend | null>;
  /** Gives up what is running. */
  readonly stop: () => void;
}

/** @param breathe lets waiting messages in. */
export function createSearch(breathe: () => Promise<void>): Search {
  let turn = 0;
  // Every question brings a copy of the document; of the same one the same plan, so that what was tried on it is known.
  let last = { text: "", plan: null as Plan | null };
  const planOf = (document: PlanDocument): Plan => {
    const text = JSON.stringify(document);
    const plan = last.plan !== null && last.text === text ? last.plan : complete(document);
    last = { text, plan };
    return plan;
  };
  return {
    findMend: async (document, finding) => {
      turn += 1;
      const mine = turn;
      let since = performance.now();
      for (const mend of mendsSearch(planOf(document), finding, 1)) {
        if (mend !== null) return mend;
        if (performance.now() - since < stint) continue;
        await breathe();
        if (turn !== mine) return null;
        since = performance.now();
      }
      return null;
    },
    stop: () => {
      turn += 1;
    },
  };
}
