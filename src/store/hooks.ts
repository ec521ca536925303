/** The page's one editor, and how components read it. Tests make editors of their own and do not come here. */

import { useStore } from "zustand";
import { useShallow } from "zustand/react/shallow";
import type { Plan } from "../plan";
import type { Editor } from "./editor";
import { shown } from "./selectors";
import type { EditorState } from "./state";

let current: Editor | null = null;

/** Sets the page's editor; once, before anything is drawn. */
export function provideEditor(editor: Editor): void {
  current = editor;
}

/** The page's editor: to run commands and gestures from event handlers. */
export function theEditor(): Editor {
  if (current === null) throw new Error("no editor has been provided");
  return current;
}

/** What a selector gives of the state; draws again when it gives another value (compared by identity). */
export function useEditor<Value>(select: (state: EditorState) => Value): Value {
  return useStore(theEditor().store, select);
}

/** A list, compared item by item: for lists of ids, whose items read themselves. */
export function useEditorList<Item>(select: (state: EditorState) => readonly Item[]): readonly Item[] {
  return useStore(theEditor().store, useShallow(select));
}

/** The same of the plan as it is drawn. */
export function useShown<Value>(select: (plan: Plan) => Value): Value {
  return useStore(theEditor().store, (state) => select(shown(state)));
}
