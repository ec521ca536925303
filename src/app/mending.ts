/** The search for mends that the panels ask: answered by the engine's worker, which looks for them by itself. */

import type { Mend } from "../checks";
import type { MendSearch } from "../panels";
import { complete } from "../plan";
import type { Editor } from "../store";
import type { EngineClient } from "../worker";

export function mendSearch(editor: Editor, engine: Pick<EngineClient, "mends">): MendSearch {
  /** Each looks whether its answer has come, and says whether it is done. */
  const waiting = new Set<(giveUp: boolean) => boolean>();
  const lookAgain = (giveUp: boolean): void => {
    for (const look of [...waiting]) if (look(giveUp)) waiting.delete(look);
  };
  editor.store.subscribe((state, before) => {
    if (state.answers !== before.answers) lookAgain(false);
  });
  return {
    findMend: (document, finding) =>
      new Promise<Mend | null>((resolve) => {
        const look = (giveUp: boolean): boolean => {
          const part = engine.mends(complete(document), finding);
          if (part.status === "pending" && !giveUp) return false;
          resolve(part.status === "known" ? (part.value[0] ?? null) : null);
          return true;
        };
        if (!look(false)) waiting.add(look);
      }),
    stop: () => lookAgain(true),
  };
}
