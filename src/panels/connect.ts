/** How panels read the editor and change it. */

import { useSyncExternalStore } from "react";
import type { Plan } from "../plan";
import { type EditArguments, type EditId, type EditorState, shown, theEditor } from "../store";

/** While a gesture runs, panels follow it this often, ms; the drawings follow every frame. */
const calmPause = 120;

/** The state as panels see it: the latest, but during a gesture only one every `calmPause`. */
let calm: EditorState | null = null;
let timer: ReturnType<typeof setTimeout> | null = null;
let unsubscribe: (() => void) | null = null;
const listeners = new Set<() => void>();

function settle(): void {
  if (timer !== null) clearTimeout(timer);
  timer = null;
  const state = theEditor().state();
  if (state === calm) return;
  calm = state;
  for (const listener of listeners) listener();
}

function follow(): void {
  if (theEditor().state().gesture === null) settle();
  else timer ??= setTimeout(settle, calmPause);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  if (unsubscribe === null) {
    unsubscribe = theEditor().store.subscribe(follow);
    calm = theEditor().state();
  }
  return () => {
    listeners.delete(listener);
    if (listeners.size > 0) return;
    unsubscribe?.();
    unsubscribe = null;
    if (timer !== null) clearTimeout(timer);
    timer = null;
    calm = null;
  };
}

function current(): EditorState {
  calm ??= theEditor().state();
  return calm;
}

/** What a selector gives of the state, calmly: a drag redraws panels a few times a second, its end at once. */
export function useCalm<Value>(select: (state: EditorState) => Value): Value {
  return useSyncExternalStore(subscribe, () => select(current()));
}

/** The plan as it is drawn. */
export const usePlan = (): Plan => useCalm(shown);

/** Makes an edit; the sentence of a refusal, or null where it went through or changed nothing. */
export function attempt<Id extends EditId>(id: Id, args: EditArguments<Id>): string | null {
  const editor = theEditor();
  editor.say(null);
  if (editor.run(id, args)) return null;
  const { notice } = editor.state();
  if (notice === null) return null;
  editor.say(null);
  return notice.text;
}
