/** Reading the diagrams and the map by keys, and the joint where they are read. */

import { formatQuantity, pieceLength, stepOf } from "../../plan";
import type { Editor } from "../editor";
import { shown } from "../selectors";
import type { EditorState } from "../state";
import type { Action } from "./action";
import { nudgeOf, tidy } from "./nudgeStep";
import { jointSpots } from "./parts";

/**
 * Reads the diagrams, and where it is seen the map of where a person may stand, farther on: whole units, or fine ones.
 * From the datum end where nothing is read yet.
 */
function readOn(editor: Editor, along: -1 | 0 | 1, across: -1 | 0 | 1, fine: boolean): void {
  const state = editor.state();
  const { piece, display } = shown(state);
  const { reading, spot, overlays } = state.view;
  const sizes = nudgeOf(display);
  const size = fine ? sizes.fine : 10 * sizes.coarse;
  const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, tidy(value)));
  const from = reading ?? spot?.[0] ?? null;
  const s = from === null ? 0 : within(from + along * size, 0, pieceLength(piece));
  const ts = piece.outline.map(([, t]) => t);
  const t = within((spot?.[1] ?? 0) + across * size, Math.min(...ts), Math.max(...ts));
  editor.look({ reading: s, ...(overlays.standing ? { spot: [s, t] as const } : {}) });
}

/** Opens or welds the joint where the piece is read: an open one near by, else a round place. */
export function jointHere(editor: Editor): void {
  const state = editor.state();
  const { reading, camera, fitted } = state.view;
  if (reading === null) return;
  const plan = shown(state);
  const step = stepOf(plan, state.view.step);
  const near = 12 / ((camera ?? fitted)?.scale ?? 100);
  const spot = jointSpots(plan, step)
    .filter(({ s }) => Math.abs(s - reading) <= near)
    .sort((a, b) => Math.abs(a.s - reading) - Math.abs(b.s - reading))[0];
  const { coarse } = nudgeOf(plan.display);
  const s = spot?.s ?? tidy(Math.round(reading / coarse) * coarse);
  toggleJoint(editor, s);
}

/** Opens the joint at s in the step in view, or welds it from this step on. */
export function toggleJoint(editor: Editor, s: number): void {
  const { display } = shown(editor.state());
  editor.run("step.joint", { step: editor.state().view.step, s, words: formatQuantity(s, "length", display) });
}

/** The keys for it: the first reads on by ten whole units, the second by a fine one. */
export function readAction(
  keys: readonly [coarse: string, fine: string],
  words: string,
  along: -1 | 0 | 1,
  across: -1 | 0 | 1,
): readonly Action[] {
  const enabled = (state: EditorState): boolean => across === 0 || state.view.overlays.standing;
  return [false, true].map((fine) => ({
    id: `read.${words}${fine ? ".fine" : ""}`,
    label: `${across === 0 ? "Read the diagrams" : "Read where a person may stand"} ${words}${fine ? ", finely" : ""}`,
    keys: [keys[fine ? 1 : 0]],
    where: "drawings",
    group: "view",
    enabled,
    run: (editor) => readOn(editor, along, across, fine),
  }));
}
