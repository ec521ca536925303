/** A field's text between the first key and the commit: the plan changes once, when the person is done. */

import { type KeyboardEvent, useRef, useState } from "react";

export type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  /** One sentence that says what is wrong and what would be right. */
  | { readonly ok: false; readonly message: string };

export interface DraftOptions<Value> {
  /** The value of the plan as text. */
  readonly text: string;
  readonly read: (text: string) => Read<Value>;
  /** Takes the value; a sentence is a refusal, and the text stays. */
  readonly commit: (value: Value) => string | null | undefined;
  /** The value an arrow key leads to; left out = arrows move the caret. */
  readonly stepped?: (value: Value, direction: 1 | -1, fine: boolean) => Value;
}

export interface Draft {
  readonly value: string;
  readonly error: string | null;
  readonly onChange: (text: string) => void;
  readonly onBlur: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
}

/** Enter and leaving the field commit, Escape restores, up and down step. Text that cannot be read stays with its sentence. */
export function useDraft<Value>(options: DraftOptions<Value>): Draft {
  const [draft, setDraft] = useState<string | null>(null);
  const [error, setError] = useState<string | null>(null);
  // Enter commits and then the field may lose focus in the same event: the second commit must see the first.
  const latest = useRef<string | null>(null);

  const show = (text: string | null, sentence: string | null) => {
    latest.current = text;
    setDraft(text);
    setError(sentence);
  };

  const commit = () => {
    const text = latest.current;
    if (text === null) return;
    if (text === options.text) return show(null, null);
    const read = options.read(text);
    if (!read.ok) return setError(read.message);
    const refusal = options.commit(read.value) ?? null;
    if (refusal === null) show(null, null);
    else setError(refusal);
  };

  const step = (direction: 1 | -1, fine: boolean) => {
    const read = options.read(latest.current ?? options.text);
    if (!read.ok || options.stepped === undefined) return;
    const refusal = options.commit(options.stepped(read.value, direction, fine)) ?? null;
    if (refusal === null) show(null, null);
    else setError(refusal);
  };

  return {
    value: draft ?? options.text,
    error,
    onChange: (text) => show(text, null),
    onBlur: commit,
    onKeyDown: (event) => {
      switch (event.key) {
        case "Enter":
          // Enter takes the number; it does not send the form around it.
          event.preventDefault();
          commit();
          break;
        case "Escape":
          if (latest.current !== null) {
            event.stopPropagation();
            show(null, null);
          }
          break;
        case "ArrowUp":
        case "ArrowDown":
          if (options.stepped === undefined) break;
          event.preventDefault();
          step(event.key === "ArrowUp" ? 1 : -1, event.shiftKey);
          break;
        default:
      }
    },
  };
}
