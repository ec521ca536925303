/** A document gets its revision once, the first time it is asked for; going back to it brings the same number. */

import { memo, type PlanDocument } from "../plan";

let last = 0;

export const revisionOf: (document: PlanDocument) => number = memo(() => {
  last += 1;
  return last;
});
