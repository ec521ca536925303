/** A stand carried from a list over the drawings: it shows where it would stand, and is set down where it is let go. */

import type { Point } from "../../plan";
import { type CarriedStand, type Editor, edits, layoutInView, shown, stepInView } from "../../store";
import type { Drawn } from "./hosts";
import { snapsOf } from "./snaps";

/** Which drawing the pointer is over, and where on it, px; null = over neither. */
export type Over = { readonly drawing: "plan" | "elevation"; readonly at: Point } | null;

/** Shows the stand where the pointer is; off the drawings it is in no place. `free`: not snapped. */
export function carry(editor: Editor, { stand, made, height }: CarriedStand, over: Over, drawn: Drawn, free: boolean) {
  if (over === null) {
    editor.gesture.cancel();
    return;
  }
  if (!editor.gesture.running()) editor.gesture.start(`Place ${stand}`);
  const state = editor.state();
  const layout = layoutInView(state);
  const snap = snapsOf(shown(state), stepInView(state), drawn.plan.scale);
  const [s, t] = over.drawing === "plan" ? drawn.plan.toPiece(over.at) : [drawn.elevation.toS(over.at[0]), 0];
  editor.gesture.move((document) => {
    const snapped = snap(stand, s, t, free);
    editor.showSnaps(over.drawing === "plan" ? snapped.lines : snapped.lines.filter(({ axis }) => axis === "s"));
    const known = made === null ? document : edits["register.add"].run(document, { stands: [made] });
    const placement = { stand, s: tidy(snapped.s), t: tidy(snapped.t), angle: 0, height, shim: 0 };
    return edits["stand.place"].run(known, { layout: layout.id, placement });
  });
}

/** Sets it down where it is shown and chooses it; shown in no place, nothing happens. */
export function setDown(editor: Editor, { stand }: CarriedStand): void {
  if (!editor.gesture.running()) return;
  editor.gesture.finish();
  editor.select({ kind: "stands", ids: [stand] });
}

const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6;
