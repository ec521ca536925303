/** Histories of plans, in a database of their own: a plan is kept whether or not its history is. */

import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { type HistoryRow, type KeptRows, nothingKept, type Past, packed, unpacked } from "./historyPages";

interface Schema extends DBSchema {
  entries: { key: [string, number]; value: HistoryRow };
  /** The number of the open entry, by plan. */
  open: { key: string; value: number };
}

export interface HistoryDatabase<Document> {
  /** The history of a plan; null where none is kept. */
  readonly load: (plan: string) => Promise<Past<Document> | null>;
  /** Keeps what has come since the last time. */
  readonly keep: (plan: string, past: Past<Document>) => Promise<void>;
  readonly remove: (plan: string) => Promise<void>;
}

const rowsOf = (plan: string): IDBKeyRange => IDBKeyRange.bound([plan, 0], [plan, Number.MAX_SAFE_INTEGER]);

export async function openHistories<Document>(name = "trestleboard history"): Promise<HistoryDatabase<Document>> {
  const database: IDBPDatabase<Schema> = await openDB<Schema>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore("entries", { keyPath: ["plan", "id"] });
      fresh.createObjectStore("open");
    },
  });
  const known = new Map<string, KeptRows<Document>>();
  return {
    load: async (plan) => {
      const [rows, open] = await Promise.all([database.getAll("entries", rowsOf(plan)), database.get("open", plan)]);
      const entries = unpacked<Document>(rows);
      const whole = new Map(rows.map((row) => [row.id, row]));
      known.set(plan, {
        rows: new Map(
          entries.map((entry) => {
            const row = whole.get(entry.id)!;
            return [entry.id, { entry, size: row.text.length + row.label.length, whole: row.whole }];
          }),
        ),
        first: entries[0]?.id ?? 0,
      });
      const at = entries.findIndex(({ id }) => id === open);
      return entries.length === 0 ? null : { entries, at: at < 0 ? entries.length - 1 : at };
    },
    keep: async (plan, past) => {
      const { write, remove, kept } = packed(plan, past, known.get(plan) ?? nothingKept);
      const transaction = database.transaction(["entries", "open"], "readwrite");
      const entries = transaction.objectStore("entries");
      await Promise.all([
        ...remove.map((id) => entries.delete([plan, id])),
        ...write.map((row) => entries.put(row)),
        transaction.objectStore("open").put(past.entries[past.at]?.id ?? 0, plan),
        transaction.done,
      ]);
      known.set(plan, kept);
    },
    remove: async (plan) => {
      known.delete(plan);
      const transaction = database.transaction(["entries", "open"], "readwrite");
      await Promise.all([
        transaction.objectStore("entries").delete(rowsOf(plan)),
        transaction.objectStore("open").delete(plan),
        transaction.done,
      ]);
    },
  };
}
