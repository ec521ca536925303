/**
 * The table of actions: what keys and menus do without arguments. Each that changes the document does so through the
 * table of edits. Menus, keymap and help read this one.
 */

import { type Display, formatQuantity, type Placement, pieceLength, type StandId, stepOf, typeOf } from "../../plan";
import { drawActions } from "../drawing/actions";
import type { Editor } from "../editor";
import { canRedo, canUndo } from "../history";
import { layoutInView, selectedStands, shown } from "../selectors";
import { type EditorState, noSelection } from "../state";
import { jointSpots } from "./parts";
import { copiesOf } from "./stands";

export interface Action {
  readonly id: string;
  readonly label: string;
  /** Names of keys (keymap.ts); the first is the one that menus show. */
  readonly keys: readonly string[];
  /** Where the keys answer: everywhere on the page, or with the drawings in focus. */
  readonly where: "page" | "drawings";
  readonly group: "history" | "stands" | "piece" | "view" | "steps" | "draw";
  readonly enabled: (state: EditorState) => boolean;
  readonly run: (editor: Editor) => void;
}

const always = (): boolean => true;
const someStands = (state: EditorState): boolean => selectedStands(state).length > 0;
const oneStand = (state: EditorState): boolean => selectedStands(state).length === 1;
const anyStands = (state: EditorState): boolean => layoutInView(state).placements.length > 0;
const severalSteps = (state: EditorState): boolean => shown(state).steps.length > 1;

/** How far an arrow key moves, m: whole units, and with Shift fine ones. */
export function nudgeOf({ units }: Pick<Display, "units">): { readonly coarse: number; readonly fine: number } {
  switch (units) {
    case "us":
      return { coarse: 0.0254, fine: 0.0254 / 16 };
    case "metric":
      return { coarse: 0.01, fine: 0.001 };
    default:
      return units satisfies never;
  }
}

const tidy = (metres: number): number => Math.round(metres * 1e7) / 1e7;

/** Moves what is selected: stands in the piece frame, the piece in the bay along its own directions. */
function nudge(editor: Editor, along: -1 | 0 | 1, across: -1 | 0 | 1, fine: boolean): void {
  const state = editor.state();
  const sizes = nudgeOf(shown(state).display);
  const size = fine ? sizes.fine : sizes.coarse;
  const chosen = selectedStands(state);
  if (state.selection.kind === "piece") {
    const { x, y, heading } = shown(state).piece.pose;
    const angle = (heading * Math.PI) / 180;
    const [ds, dt] = [along * size, across * size];
    editor.run("piece.move", {
      x: tidy(x + ds * Math.cos(angle) - dt * Math.sin(angle)),
      y: tidy(y + ds * Math.sin(angle) + dt * Math.cos(angle)),
      burst: "nudge piece",
    });
    return;
  }
  const layout = layoutInView(state);
  const moves = layout.placements
    .filter(({ stand }) => chosen.includes(stand))
    .map(({ stand, s, t }) => ({ stand, s: tidy(s + along * size), t: tidy(t + across * size) }));
  if (moves.length > 0) editor.run("stands.move", { layout: layout.id, moves, burst: `nudge ${chosen.join(" ")}` });
}

function nudgeAction(key: string, words: string, along: -1 | 0 | 1, across: -1 | 0 | 1): readonly Action[] {
  const enabled = (state: EditorState): boolean => someStands(state) || state.selection.kind === "piece";
  const common = { where: "drawings", group: "stands", enabled } as const;
  return [
    {
      ...common,
      id: `nudge.${key}`,
      label: `Move ${words}`,
      keys: [key],
      run: (editor) => nudge(editor, along, across, false),
    },
    {
      ...common,
      id: `nudge.fine.${key}`,
      label: `Move ${words} a little`,
      keys: [`Shift+${key}`],
      run: (editor) => nudge(editor, along, across, true),
    },
  ];
}

function turn(editor: Editor, degrees: number): void {
  const layout = layoutInView(editor.state());
  const placement = layout.placements.find(({ stand }) => stand === selectedStands(editor.state())[0]);
  if (placement === undefined) return;
  const angle = ((placement.angle + degrees + 540) % 360) - 180;
  editor.run("stand.turn", { layout: layout.id, stand: placement.stand, angle, burst: `turn ${placement.stand}` });
}

/** The next or previous stand along the piece; the first or last where none is selected. */
function walk(editor: Editor, by: 1 | -1): void {
  const order = standsAlong(layoutInView(editor.state()).placements);
  const at = order.indexOf(selectedStands(editor.state()).at(-1) as StandId);
  const next = at < 0 ? (by > 0 ? 0 : order.length - 1) : (at + by + order.length) % order.length;
  const stand = order[next];
  if (stand !== undefined) editor.select({ kind: "stands", ids: [stand] });
}

const standsAlong = (placements: readonly Placement[]): readonly StandId[] =>
  [...placements].sort((a, b) => a.s - b.s).map(({ stand }) => stand);

/** True where Tab leaves the drawings: past the last stand, or before the first. */
export function walkEnds(state: EditorState, by: 1 | -1): boolean {
  const order = standsAlong(layoutInView(state).placements);
  const at = order.indexOf(selectedStands(state).at(-1) as StandId);
  return order.length === 0 || (by > 0 ? at === order.length - 1 : at === 0);
}

function goToStep(editor: Editor, by: 1 | -1): void {
  const { steps } = shown(editor.state());
  const at = steps.findIndex(({ id }) => id === editor.state().view.step);
  const step = steps[at + by];
  if (step !== undefined) editor.look({ step: step.id });
}

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
function jointHere(editor: Editor): void {
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
function readAction(
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

/** Spreads the selected stands (all, where fewer than three are) evenly between the outermost two. */
function spaceEvenly(editor: Editor): void {
  const layout = layoutInView(editor.state());
  const chosen = selectedStands(editor.state());
  const among =
    chosen.length >= 3 ? layout.placements.filter(({ stand }) => chosen.includes(stand)) : layout.placements;
  const order = [...among].sort((a, b) => a.s - b.s);
  const [first, last] = [order[0], order.at(-1)];
  if (first === undefined || last === undefined || order.length < 3) return;
  const moves = order.map(({ stand, t }, index) => ({
    stand,
    s: tidy(first.s + ((last.s - first.s) * index) / (order.length - 1)),
    t,
  }));
  editor.run("stands.move", { layout: layout.id, moves, label: "Space the stands evenly" });
}

/** Moves the selected stands (all, where none is) to their mirror images about the middle of the piece. */
function mirror(editor: Editor): void {
  const layout = layoutInView(editor.state());
  const chosen = selectedStands(editor.state());
  const length = pieceLength(shown(editor.state()).piece);
  const among = chosen.length > 0 ? layout.placements.filter(({ stand }) => chosen.includes(stand)) : layout.placements;
  const moves = among.map(({ stand, s, t }) => ({ stand, s: tidy(length - s), t }));
  editor.run("stands.move", { layout: layout.id, moves, label: "Mirror the stands" });
}

/** Sets a like stand beside each of the selected ones, clear of its top, and selects the copies. */
function copy(editor: Editor): void {
  const state = editor.state();
  const plan = shown(state);
  const layout = layoutInView(state);
  const chosen = layout.placements.filter(({ stand }) => selectedStands(state).includes(stand));
  const stands = chosen.map(({ stand }) => stand);
  const ss = chosen.map(({ s }) => s);
  const wide = Math.max(...chosen.map(({ stand }) => typeOf(plan, stand).top.width));
  const { coarse } = nudgeOf(plan.display);
  const along = tidy(Math.ceil((Math.max(...ss) - Math.min(...ss) + 2 * wide) / coarse) * coarse);
  const by = Math.max(...ss) + along <= pieceLength(plan.piece) ? along : -along;
  const ids = copiesOf(state.document, layout.id, stands).map(({ id }) => id);
  if (editor.run("stands.copy", { layout: layout.id, stands, by })) editor.select({ kind: "stands", ids });
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
