/** What is done by keys and menus to the stands, or the piece, that is selected. */

import { type Placement, pieceLength, type StandId, typeOf } from "../../plan";
import type { Editor } from "../editor";
import { layoutInView, selectedStands, shown } from "../selectors";
import type { EditorState } from "../state";
import type { Action } from "./action";
import { nudgeOf, tidy } from "./nudgeStep";
import { copiesOf } from "./stands";

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

/** The two keys for it: whole units, and with Shift fine ones. */
export function nudgeAction(key: string, words: string, along: -1 | 0 | 1, across: -1 | 0 | 1): readonly Action[] {
  const enabled = (state: EditorState): boolean => selectedStands(state).length > 0 || state.selection.kind === "piece";
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

/** Turns the only selected stand. */
export function turn(editor: Editor, degrees: number): void {
  const layout = layoutInView(editor.state());
  const placement = layout.placements.find(({ stand }) => stand === selectedStands(editor.state())[0]);
  if (placement === undefined) return;
  const angle = ((placement.angle + degrees + 540) % 360) - 180;
  editor.run("stand.turn", { layout: layout.id, stand: placement.stand, angle, burst: `turn ${placement.stand}` });
}

/** The next or previous stand along the piece; the first or last where none is selected. */
export function walk(editor: Editor, by: 1 | -1): void {
  const order = standsAlong(layoutInView(editor.state()).placements);
  const at = order.indexOf(selectedStands(editor.state()).at(-1) as StandId);
  const next = at < 0 ? (by > 0 ? 0 : order.length - 1) : (at + by + order.length) % order.length;
  const stand = order[next];
  if (stand !== undefined) editor.select({ kind: "stands", ids: [stand] });
}

/** Stands from the datum end on. */
export const standsAlong = (placements: readonly Placement[]): readonly StandId[] =>
  [...placements].sort((a, b) => a.s - b.s).map(({ stand }) => stand);

/** True where Tab leaves the drawings: past the last stand, or before the first. */
export function walkEnds(state: EditorState, by: 1 | -1): boolean {
  const order = standsAlong(layoutInView(state).placements);
  const at = order.indexOf(selectedStands(state).at(-1) as StandId);
  return order.length === 0 || (by > 0 ? at === order.length - 1 : at === 0);
}

/** Spreads the selected stands (all, where fewer than three are) evenly between the outermost two. */
export function spaceEvenly(editor: Editor): void {
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
export function mirror(editor: Editor): void {
  const layout = layoutInView(editor.state());
  const chosen = selectedStands(editor.state());
  const length = pieceLength(shown(editor.state()).piece);
  const among = chosen.length > 0 ? layout.placements.filter(({ stand }) => chosen.includes(stand)) : layout.placements;
  const moves = among.map(({ stand, s, t }) => ({ stand, s: tidy(length - s), t }));
  editor.run("stands.move", { layout: layout.id, moves, label: "Mirror the stands" });
}

/** Sets a like stand beside each of the selected ones, clear of its top, and selects the copies. */
export function copy(editor: Editor): void {
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
