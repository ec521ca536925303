/** Keys: on the page, and with the drawings in focus. What they mean is in the store's table of actions. */

import { type RefObject, useEffect, useRef } from "react";
import type { Command } from "../panels";
import { actionFor, type Editor, keyName, walkEnds } from "../store";

/** True where the key belongs to a field that is being typed in. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable || target.closest("input, textarea, select, [role='menu'], [role='dialog']") !== null)
  );
}

function pressed(editor: Editor, event: KeyboardEvent, inDrawings: boolean): boolean {
  const key = keyName(event);
  const state = editor.state();
  if (inDrawings && key === "Tab" && walkEnds(state, 1)) return false;
  if (inDrawings && key === "Shift+Tab" && walkEnds(state, -1)) return false;
  const action = actionFor(key, inDrawings ? "drawings" : "page", state);
  if (action === null) return false;
  action.run(editor);
  return true;
}

/** Listens for keys; the reference goes to the element that holds the drawings. */
export function useKeys(editor: Editor, commands: readonly Command[]): RefObject<HTMLDivElement | null> {
  const drawings = useRef<HTMLDivElement | null>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || isTyping(event.target)) return;
      const inDrawings = event.target instanceof Node && drawings.current?.contains(event.target) === true;
      const name = keyName(event);
      const command = commands.find(({ keys, enabled }) => enabled && keys.includes(name));
      if (command !== undefined) command.run();
      else if (!pressed(editor, event, inDrawings)) return;
      event.preventDefault();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [editor, commands]);
  return drawings;
}
