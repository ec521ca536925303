/**
 * The table of actions: what keys and menus do without arguments. Each that changes the document does so through the
 * table of edits. Menus, keymap and help read this one.
 */

import { drawActions } from "../drawing/actions";
import type { Editor } from "../editor";
import { canRedo, canUndo } from "../history";
import { layoutInView, selectedStands, shown } from "../selectors";
import { type EditorState, noSelection } from "../state";
import type { Action } from "./action";
import { jointHere, readAction } from "./readActions";
import { copy, mirror, nudgeAction, spaceEvenly, standsAlong, turn, walk } from "./standActions";

const always = (): boolean => true;
const someStands = (state: EditorState): boolean => selectedStands(state).length > 0;
const oneStand = (state: EditorState): boolean => selectedStands(state).length === 1;
const anyStands = (state: EditorState): boolean => layoutInView(state).placements.length > 0;
const severalSteps = (state: EditorState): boolean => shown(state).steps.length > 1;

function goToStep(editor: Editor, by: 1 | -1): void {
  const { steps } = shown(editor.state());
  const at = steps.findIndex(({ id }) => id === editor.state().view.step);
  const step = steps[at + by];
  if (step !== undefined) editor.look({ step: step.id });
}

/** Zooms about the middle of the drawings. */
function zoom(editor: Editor, factor: number): void {
  const { camera, fitted } = editor.state().view;
  const now = camera ?? fitted;
  if (now !== null) editor.look({ camera: { ...now, scale: now.scale * factor } });
}

/** Fits the piece on the sheet; where that is fitted already, the bay round it. */
function showAll(editor: Editor): void {
  const { camera, fit } = editor.state().view;
  const hasBay = shown(editor.state()).bay !== null;
  editor.look({ camera: null, fit: hasBay && camera === null && fit === "piece" ? "bay" : "piece" });
}

/** Lets go of what is under way, then of what is selected. */
function letGo(editor: Editor): void {
  if (editor.gesture.running()) editor.gesture.cancel();
  else if (editor.state().notice !== null) editor.say(null);
  else {
    editor.select(noSelection);
    editor.look({ reading: null, spot: null });
  }
}

export const actions: readonly Action[] = [
  {
    id: "undo",
    label: "Undo",
    keys: ["Mod+Z"],
    where: "page",
    group: "history",
    enabled: (state) => canUndo(state.history),
    run: (editor) => editor.undo(),
  },
  {
    id: "redo",
    label: "Redo",
    keys: ["Mod+Shift+Z", "Mod+Y"],
    where: "page",
    group: "history",
    enabled: (state) => canRedo(state.history),
    run: (editor) => editor.redo(),
  },
  {
    id: "let-go",
    label: "Let go, or take a running move back",
    keys: ["Escape"],
    where: "page",
    group: "history",
    enabled: always,
    run: letGo,
  },
  {
    id: "stand.next",
    label: "Next stand",
    keys: ["Tab"],
    where: "drawings",
    group: "stands",
    enabled: anyStands,
    run: (editor) => walk(editor, 1),
  },
  {
    id: "stand.previous",
    label: "Previous stand",
    keys: ["Shift+Tab"],
    where: "drawings",
    group: "stands",
    enabled: anyStands,
    run: (editor) => walk(editor, -1),
  },
  {
    id: "stands.all",
    label: "Select all stands",
    keys: ["Mod+A"],
    where: "drawings",
    group: "stands",
    enabled: anyStands,
    run: (editor) => editor.select({ kind: "stands", ids: standsAlong(layoutInView(editor.state()).placements) }),
  },
  {
    id: "stands.box",
    label: "Select stands with a box: hold Shift and drag on the drawings",
    keys: [],
    where: "drawings",
    group: "stands",
    enabled: anyStands,
    run: (editor) =>
      editor.say({
        kind: "information",
        text: "Hold Shift and drag a box on a drawing: the stands it touches are selected.",
      }),
  },
  ...nudgeAction("ArrowRight", "toward the far end", 1, 0),
  ...nudgeAction("ArrowLeft", "toward the datum end", -1, 0),
  ...nudgeAction("ArrowUp", "to the left of the piece", 0, 1),
  ...nudgeAction("ArrowDown", "to the right of the piece", 0, -1),
  {
    id: "stand.turn.left",
    label: "Turn 5° to the left",
    keys: ["["],
    where: "drawings",
    group: "stands",
    enabled: oneStand,
    run: (editor) => turn(editor, 5),
  },
  {
    id: "stand.turn.right",
    label: "Turn 5° to the right",
    keys: ["]"],
    where: "drawings",
    group: "stands",
    enabled: oneStand,
    run: (editor) => turn(editor, -5),
  },
  {
    id: "stands.remove",
    label: "Take away the selected stands",
    keys: ["Delete", "Backspace"],
    where: "drawings",
    group: "stands",
    enabled: someStands,
    run: (editor) =>
      editor.run("stands.remove", {
        layout: layoutInView(editor.state()).id,
        stands: selectedStands(editor.state()),
      }),
  },
  {
    id: "stands.space",
    label: "Space the stands evenly",
    keys: ["E"],
    where: "drawings",
    group: "stands",
    enabled: (state) => layoutInView(state).placements.length >= 3,
    run: spaceEvenly,
  },
  {
    id: "stands.mirror",
    label: "Mirror the stands about the middle",
    keys: ["M"],
    where: "drawings",
    group: "stands",
    enabled: anyStands,
    run: mirror,
  },
  {
    id: "stands.copy",
    label: "Copy the selected stands",
    keys: ["C"],
    where: "drawings",
    group: "stands",
    enabled: someStands,
    run: copy,
  },
  {
    id: "piece.select",
    label: "Select the piece",
    keys: ["P"],
    where: "drawings",
    group: "piece",
    enabled: always,
    run: (editor) => editor.select({ kind: "piece" }),
  },
  {
    id: "view.fit",
    label: "Show all: the piece, once more the bay",
    keys: ["0", "Home"],
    where: "drawings",
    group: "view",
    enabled: always,
    run: showAll,
  },
  {
    id: "view.in",
    label: "Nearer",
    keys: ["+", "="],
    where: "drawings",
    group: "view",
    enabled: always,
    run: (editor) => zoom(editor, 1.25),
  },
  {
    id: "view.out",
    label: "Farther",
    keys: ["-"],
    where: "drawings",
    group: "view",
    enabled: always,
    run: (editor) => zoom(editor, 0.8),
  },
  {
    id: "joint.here",
    label: "Joint here: open it, or weld it, where the piece is read",
    keys: ["J"],
    where: "drawings",
    group: "piece",
    enabled: (state) => state.view.reading !== null,
    run: jointHere,
  },
  {
    id: "view.standing",
    label: "Where a person may stand",
    keys: ["W"],
    where: "drawings",
    group: "view",
    enabled: always,
    run: (editor) => {
      const { overlays } = editor.state().view;
      editor.look({ overlays: { ...overlays, standing: !overlays.standing }, spot: null });
    },
  },
  ...readAction([".", ">"], "toward the far end", 1, 0),
  ...readAction([",", "<"], "toward the datum end", -1, 0),
  ...readAction(["Alt+ArrowUp", "Alt+Shift+ArrowUp"], "to the left of the piece", 0, 1),
  ...readAction(["Alt+ArrowDown", "Alt+Shift+ArrowDown"], "to the right of the piece", 0, -1),
  {
    id: "step.next",
    label: "Next step",
    keys: ["PageDown"],
    where: "drawings",
    group: "steps",
    enabled: severalSteps,
    run: (editor) => goToStep(editor, 1),
  },
  {
    id: "step.previous",
    label: "Previous step",
    keys: ["PageUp"],
    where: "drawings",
    group: "steps",
    enabled: severalSteps,
    run: (editor) => goToStep(editor, -1),
  },
  ...drawActions,
];

/** The action that a key means; null where it means none, or one that is not to be had now. */
export function actionFor(key: string, where: Action["where"], state: EditorState): Action | null {
  const action = actions.find((one) => one.keys.includes(key) && (one.where === "page" || one.where === where));
  return action?.enabled(state) === true ? action : null;
}
