/** Keys: on the page, and with the drawings in focus. What they mean is in the store's table of actions. */

import { type RefObject, useEffect, useRef } from "react";
import { actionFor, type Editor, keyName, walkEnds } from "../store";
import type { Session } from "./session";

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
export function useKeys(session: Session): RefObject<HTMLDivElement | null> {
  const drawings = useRef<HTMLDivElement | null>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || isTyping(event.target)) return;
      const inDrawings = event.target instanceof Node && drawings.current?.contains(event.target) === true;
      const name = keyName(event);
      if (name === "Mod+S" || name === "Mod+O") {
        event.preventDefault();
        void (name === "Mod+S" ? session.saveFile() : session.openFile());
      } else if (pressed(session.editor, event, inDrawings)) event.preventDefault();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [session]);
  return drawings;
}
