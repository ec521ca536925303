/** History: the documents that were, each under the name of what made it. Entries are never changed, only dropped. */

import type { PlanDocument } from "../plan";

export interface HistoryEntry {
  /** Counts up through the life of the editor; the key of a list of entries. */
  readonly id: number;
  /** What was done, as the visible history says it. */
  readonly label: string;
  readonly document: PlanDocument;
  /** Milliseconds since 1970. */
  readonly time: number;
  /** Entries with the same name that follow each other quickly become one (a held arrow key); null = never. */
  readonly burst: string | null;
}

export interface History {
  /** From the opened document (index 0) to the newest, the undone ones included. */
  readonly entries: readonly HistoryEntry[];
  /** Index of the entry whose document is open. */
  readonly at: number;
}

/** Milliseconds within which a further entry of the same burst joins the last. */
export const burstPause = 1000;

export function startHistory(document: PlanDocument, label: string, time: number): History {
  return { entries: [{ id: 0, label, document, time, burst: null }], at: 0 };
}

export function entryAt(history: History): HistoryEntry {
  return history.entries[history.at] as HistoryEntry;
}

/** Adds an entry after the open one; what had been undone is dropped. */
export function record(
  history: History,
  made: { readonly label: string; readonly document: PlanDocument; readonly time: number; readonly burst?: string },
): History {
  const current = entryAt(history);
  const burst = made.burst ?? null;
  const joins =
    burst !== null &&
    current.burst === burst &&
    history.at === history.entries.length - 1 &&
    made.time - current.time < burstPause;
  const before = history.entries.slice(0, joins ? history.at : history.at + 1);
  const id = joins ? current.id : current.id + 1;
  return {
    entries: [...before, { id, label: made.label, document: made.document, time: made.time, burst }],
    at: before.length,
  };
}

/** The history with another entry open: one step back, one forward, or any. Out of range = unchanged. */
export function goTo(history: History, at: number): History {
  return at >= 0 && at < history.entries.length && at !== history.at ? { ...history, at } : history;
}

export const canUndo = (history: History): boolean => history.at > 0;
export const canRedo = (history: History): boolean => history.at < history.entries.length - 1;

/**
 * A history taken up again: what was kept of it goes before what has been done since it was opened. `same`: the opened
 * document is the one that was open then, and is that entry; else it follows it. What had been undone is still there
 * to be done again as long as nothing else has been done.
 */
export function resumed(kept: History, now: History, same: boolean): History {
  const last = entryAt(kept);
  const [opened, ...since] = now.entries;
  if (opened === undefined) return kept;
  const joined: HistoryEntry = { ...last, document: opened.document };
  const before = same ? [...kept.entries.slice(0, kept.at), joined] : kept.entries.slice(0, kept.at + 1);
  const after = (same ? since : now.entries).map((entry, index) => ({ ...entry, id: last.id + 1 + index }));
  const undone = same && since.length === 0 ? kept.entries.slice(kept.at + 1) : [];
  return { entries: [...before, ...after, ...undone], at: kept.at + (same ? 0 : 1) + now.at };
}
