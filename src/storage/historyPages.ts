/**
 * A history as rows that are kept one by one: a row is a whole document, or what it differs by from the row before.
 * Whole ones begin a page; when a history outgrows its limit, its oldest page goes.
 */

import { applied, type Difference, differenceOf } from "./difference";

export interface PastEntry<Document> {
  /** Counts up; entries that were undone and overwritten leave their numbers to others. */
  readonly id: number;
  readonly label: string;
  readonly time: number;
  readonly burst: string | null;
  readonly document: Document;
}

export interface Past<Document> {
  readonly entries: readonly PastEntry<Document>[];
  readonly at: number;
}

export interface HistoryRow {
  readonly plan: string;
  readonly id: number;
  readonly label: string;
  readonly time: number;
  readonly burst: string | null;
  /** JSON: a document where `whole`, else a `Difference` from that of the row before, or null. */
  readonly text: string;
  readonly whole: boolean;
}

/** Entries of a page. */
export const pageLength = 32;

/** Characters that the rows of one plan may take together; the page that is open stays whatever it takes. */
export const mostText = 2_000_000;

/** What is known to be kept: entries by number, with the characters they take. */
export interface KeptRows<Document> {
  readonly rows: ReadonlyMap<
    number,
    { readonly entry: PastEntry<Document>; readonly size: number; readonly whole: boolean }
  >;
  /** Entries before this one are no longer kept. */
  readonly first: number;
}

export const nothingKept: KeptRows<never> = { rows: new Map(), first: 0 };

/** The rows to write and to remove so that a history is kept, and what is kept then. */
export function packed<Document>(
  plan: string,
  { entries, at }: Past<Document>,
  kept: KeptRows<Document>,
  most = mostText,
): { readonly write: readonly HistoryRow[]; readonly remove: readonly number[]; readonly kept: KeptRows<Document> } {
  const rows = new Map<
    number,
    { readonly entry: PastEntry<Document>; readonly size: number; readonly whole: boolean }
  >();
  const write: HistoryRow[] = [];
  entries.forEach((entry, index) => {
    const { id, label, time, burst, document } = entry;
    if (id < kept.first) return;
    const before = kept.rows.get(id);
    const last = entries[index - 1];
    const whole = last === undefined || last.id < kept.first || id % pageLength === 0;
    if (before?.entry === entry && before.whole === whole) {
      rows.set(id, before);
      return;
    }
    const text = JSON.stringify(whole ? document : differenceOf(last.document, document));
    write.push({ plan, id, label, time, burst, text, whole });
    rows.set(id, { entry, size: text.length + label.length, whole });
  });

  let size = [...rows.values()].reduce((sum, row) => sum + row.size, 0);
  let { first } = kept;
  const open = entries[at]?.id ?? 0;
  const pages = [...rows].filter(([, { whole }]) => whole).map(([id]) => id);
  for (const next of pages.slice(1)) {
    if (size <= most || next > open) break;
    for (const [id, row] of rows) {
      if (id >= next) continue;
      size -= row.size;
      rows.delete(id);
    }
    first = next;
  }
  return {
    write: write.filter(({ id }) => rows.has(id)),
    remove: [...kept.rows.keys()].filter((id) => !rows.has(id)),
    kept: { rows, first },
  };
}

/** The entries in rows, oldest first; where one cannot be read, only those after the next whole one. */
export function unpacked<Document>(rows: readonly HistoryRow[]): readonly PastEntry<Document>[] {
  let entries: PastEntry<Document>[] = [];
  for (const { id, label, time, burst, text, whole } of [...rows].sort((a, b) => a.id - b.id)) {
    const last = entries.at(-1);
    try {
      const value: unknown = JSON.parse(text);
      if (whole) entries.push({ id, label, time, burst, document: value as Document });
      else if (last?.id === id - 1) {
        const document = applied(last.document, value as Difference | null) as Document;
        entries.push({ id, label, time, burst, document });
      } else entries = [];
    } catch {
      entries = [];
    }
  }
  return entries;
}
