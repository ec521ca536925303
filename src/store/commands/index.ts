/** The table of edits. Menus, keymap, panels and drawings change the document through these and nothing else. */

import type { Edit } from "./command";
import { pieceEdits } from "./piece";
import { planEdits } from "./plan";
import { registerEdits } from "./register";
import { shapeEdits } from "./shapes";
import { standEdits } from "./stands";

export const edits = { ...standEdits, ...registerEdits, ...pieceEdits, ...planEdits, ...shapeEdits };

export type EditId = keyof typeof edits;
export type EditArguments<Id extends EditId> = (typeof edits)[Id] extends Edit<infer Arguments> ? Arguments : never;

/** The edit of that id, with its arguments' type. */
export function editOf<Id extends EditId>(id: Id): Edit<EditArguments<Id>> {
  return edits[id] as unknown as Edit<EditArguments<Id>>;
}

export type { Edit } from "./command";
export type { StandMove } from "./stands";
