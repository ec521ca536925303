/** The form of the command table. */

import type { PlanDocument } from "../../plan";

/** An edit: a document and arguments in, a document out; the same document where nothing changes. */
export interface Edit<Arguments> {
  /** What the history and the menus call it; with arguments, what was done to what. */
  readonly label: (args: Arguments, document: PlanDocument) => string;
  readonly run: (document: PlanDocument, args: Arguments) => PlanDocument;
  /** Quick repeats of one edit on one thing become one history entry; null or left out = each its own. */
  readonly burst?: (args: Arguments) => string | null;
}

export const edit = <Arguments>(definition: Edit<Arguments>): Edit<Arguments> => definition;
