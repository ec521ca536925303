/** Plans in the browser's own database: one record a plan, its file's text as the command line reads it. */

import { type DBSchema, type IDBPDatabase, openDB } from "idb";

export interface PlanRecord {
  readonly id: string;
  readonly title: string;
  /** The plan file, canonical. */
  readonly text: string;
  /** When it was last written, milliseconds since 1970. */
  readonly saved: number;
}

interface Schema extends DBSchema {
  plans: { key: string; value: PlanRecord; indexes: { saved: number } };
  /** Small things remembered between visits, by name. */
  settings: { key: string; value: string };
}

export interface PlanDatabase {
  readonly load: (id: string) => Promise<PlanRecord | null>;
  /** Resolves once the record is on disk. */
  readonly save: (record: PlanRecord) => Promise<void>;
  /** Newest first. */
  readonly list: () => Promise<readonly Omit<PlanRecord, "text">[]>;
  readonly remove: (id: string) => Promise<void>;
  readonly setting: (name: string) => Promise<string | null>;
  readonly keepSetting: (name: string, value: string) => Promise<void>;
}

/** Opens the database, making it where there is none. Fails where the browser keeps nothing (private windows of some). */
export async function openDatabase(name = "trestleboard"): Promise<PlanDatabase> {
  const database: IDBPDatabase<Schema> = await openDB<Schema>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore("plans", { keyPath: "id" }).createIndex("saved", "saved");
      fresh.createObjectStore("settings");
    },
  });
  return {
    load: async (id) => (await database.get("plans", id)) ?? null,
    save: async (record) => {
      const transaction = database.transaction("plans", "readwrite", { durability: "strict" });
      await Promise.all([transaction.store.put(record), transaction.done]);
    },
    list: async () => {
      const records = await database.getAllFromIndex("plans", "saved");
      return records.reverse().map(({ id, title, saved }) => ({ id, title, saved }));
    },
    remove: (id) => database.delete("plans", id),
    setting: async (key) => (await database.get("settings", key)) ?? null,
    keepSetting: async (key, value) => {
      await database.put("settings", value, key);
    },
  };
}
