/** How components read the page's drafting. */

import { useStore } from "zustand";
import { theEditor } from "../hooks";
import { type Drafting, type DraftingState, draftingOf } from "./drafting";

/** The drafting of the page's editor. */
export const theDrafting = (): Drafting => draftingOf(theEditor());

/** What a selector gives of the drafting; draws again when it gives another value (compared by identity). */
export function useDrafting<Value>(select: (state: DraftingState) => Value): Value {
  return useStore(theDrafting().store, select);
}
