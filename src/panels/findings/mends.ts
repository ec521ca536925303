/** The one change that would mend a finding: looked for in the background, offered in words, done on request. */

import { createContext, useContext, useEffect, useState } from "react";
import { changeOf, type Finding, type FindingLine, type Mend } from "../../checks";
import type { Display, Plan, PlanDocument } from "../../plan";
import { formatQuantity, layoutOf } from "../../plan";
import { edits, theEditor } from "../../store";
import { useCalm } from "../connect";

/** Where mends are looked for; the page hands it in. */
export interface MendSearch {
  readonly findMend: (document: PlanDocument, finding: Finding) => Promise<Mend | null>;
  readonly stop: () => void;
}

const noSearch: MendSearch = { findMend: () => Promise.resolve(null), stop: () => {} };
export const MendSearchContext = createContext<MendSearch>(noSearch);

/** Pause after an edit before the search begins, ms: nobody reads an offer while they drag. */
const searchPause = 300;

const keyOf = ({ worst }: FindingLine) => `${worst.layout} ${worst.code} ${worst.step} ${worst.stand}`;

/** For each failing line its mend, or null while none has been found. */
export function useMends(lines: readonly FindingLine[]): (line: FindingLine) => Mend | null {
  const search = useContext(MendSearchContext);
  const document = useCalm((state) => state.document);
  const busy = useCalm((state) => state.gesture !== null);
  const [found, setFound] = useState<{ readonly document: PlanDocument; readonly mends: ReadonlyMap<string, Mend> }>({
    document,
    mends: new Map(),
  });
  const failing = lines.filter(({ worst }) => worst.verdict === "fails");
  const wanted = failing.map(keyOf).join("\n");

  useEffect(() => {
    if (busy || failing.length === 0) return;
    let stopped = false;
    const timer = setTimeout(async () => {
      for (const line of failing) {
        let mend: Mend | null = null;
        // The worst of a line first; where nothing mends that one, another stand's may be mended.
        for (const finding of line.all.filter(({ verdict }) => verdict === "fails")) {
          mend = await search.findMend(document, finding).catch(() => null);
          if (stopped) return;
          if (mend !== null) break;
        }
        if (mend === null) continue;
        setFound((before) => {
          const mends = new Map(before.document === document ? before.mends : []);
          return { document, mends: mends.set(keyOf(line), mend) };
        });
      }
    }, searchPause);
    return () => {
      stopped = true;
      clearTimeout(timer);
      search.stop();
    };
    // `wanted` stands for the failing lines, which are new objects each time.
  }, [document, busy, wanted, search]);

  return (line) => (found.document === document ? (found.mends.get(keyOf(line)) ?? null) : null);
}

/** What a mend does, as a command, in the plan's units. */
export function mendWords(mend: Mend, plan: Plan, display: Display): string {
  const length = (value: number) => formatQuantity(value, "length", display);
  const placement = layoutOf(plan, mend.layout).placements.find(({ stand }) => stand === mend.stand);
  switch (mend.kind) {
    case "shim": {
      const before = placement?.shim ?? 0;
      if (mend.shim === 0) return `Take the ${length(before)} shim out of ${mend.stand}`;
      if (before === 0) return `Put a shim of ${length(mend.shim)} on ${mend.stand}`;
      return `Change the shim of ${mend.stand} from ${length(before)} to ${length(mend.shim)}`;
    }
    case "shift": {
      const along = mend.s - (placement?.s ?? mend.s);
      const across = mend.t - (placement?.t ?? mend.t);
      const { ends } = plan.piece;
      if (along !== 0)
        return `Move ${mend.stand} ${length(Math.abs(along))} toward ${along > 0 ? ends.far : ends.datum}`;
      return `Move ${mend.stand} ${length(Math.abs(across))} to the ${across > 0 ? "left" : "right"}`;
    }
    case "swap":
      return `Put ${mend.by} in place of ${mend.stand}`;
    default:
      return mend satisfies never;
  }
}

/** Does it, as one entry of the history. */
export function doMend(mend: Mend, words: string): void {
  theEditor().runAll(words, (document) =>
    edits["stand.change"].run(document, { layout: mend.layout, stand: mend.stand, change: changeOf(mend) }),
  );
}
