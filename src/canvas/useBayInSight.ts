/** A bay that has come, and what was drawn of one beyond the edge of the paper, is brought into sight. */

import { useEffect, useRef } from "react";
import { pieceFrame, toInner } from "../geometry";
import type { Bay, Plan } from "../plan";
import { theEditor, useDrafting, useEditor } from "../store";
import { onPaper, partsOfBay, type Sheet } from "./camera";

export function useBayInSight(plan: Plan, sheet: Sheet | null): void {
  // While somebody draws the sheet stands still.
  const drawing = useDrafting((state) => state.tool.kind !== "none");
  const opened = useEditor((state) => state.history.entries[0]);
  const seen = useRef<{ readonly opened: typeof opened; readonly bay: Bay | null } | null>(null);
  const { bay } = plan;
  const { pose } = plan.piece;

  useEffect(() => {
    if (drawing || sheet === null) return;
    const before = seen.current;
    seen.current = { opened, bay };
    if (before === null || before.opened !== opened || before.bay === bay || bay === null) return;
    const { camera, fitted } = theEditor().state().view;
    const now = camera ?? fitted;
    if (now === null) return;
    const known = new Set(before.bay === null ? [] : partsOfBay(before.bay));
    const toPiece = pieceFrame(pose);
    const beyond = partsOfBay(bay)
      .filter((part) => !known.has(part))
      .some((part) => part.some((point) => !onPaper(now, sheet, toInner(toPiece, point))));
    if (beyond) theEditor().look({ camera: null, fit: "bay" });
  }, [bay, pose, opened, drawing, sheet]);
}
