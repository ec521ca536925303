/** A row of the table of actions. */

import type { Editor } from "../editor";
import type { EditorState } from "../state";

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
