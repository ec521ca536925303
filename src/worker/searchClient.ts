/** The page's side of the searches. The worker is started with the first one. */

import { type Remote, wrap } from "comlink";
import type { Mend } from "../checks";
import type { Search } from "./search";
import address from "./searchEntry?chunk";

/** Searches in a worker of their own; one at a time, in the order in which they are asked for. */
export function startSearches(): Search {
  let search: Remote<Search> | null = null;
  let asked = 0;
  let queue: Promise<unknown> = Promise.resolve();
  return {
    findMend: (document, finding) => {
      const mine = asked;
      const answer = queue.then(async (): Promise<Mend | null> => {
        if (asked !== mine) return null;
        search ??= wrap<Search>(new Worker(address, { type: "module", name: "search" }));
        return search.findMend(document, finding);
      });
      queue = answer.catch(() => null);
      return answer;
    },
    stop: () => {
      asked += 1;
      void search?.stop();
    },
  };
}
