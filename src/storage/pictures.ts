/**
 * Pictures that are traced, by the plan they lie under. The plan file has no place for them: they stay on this device,
 * in a database of their own.
 */

import { type DBSchema, type IDBPDatabase, openDB } from "idb";

export interface KeptPicture<Place> {
  readonly name: string;
  /** The picture as a file, PNG or JPEG. */
  readonly file: Blob;
  /** Where it lies and how it is shown, as it was given. */
  readonly place: Place;
}

interface Schema extends DBSchema {
  files: { key: string; value: { readonly name: string; readonly file: Blob } };
  places: { key: string; value: unknown };
}

export interface PictureDatabase<Place> {
  readonly load: (plan: string) => Promise<KeptPicture<Place> | null>;
  readonly keep: (plan: string, picture: KeptPicture<Place>) => Promise<void>;
  /** The picture stays, it has been moved. */
  readonly place: (plan: string, place: Place) => Promise<void>;
  readonly remove: (plan: string) => Promise<void>;
}

export async function openPictures<Place>(name = "trestleboard pictures"): Promise<PictureDatabase<Place>> {
  const database: IDBPDatabase<Schema> = await openDB<Schema>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore("files");
      fresh.createObjectStore("places");
    },
  });
  return {
    load: async (plan) => {
      const [kept, place] = await Promise.all([database.get("files", plan), database.get("places", plan)]);
      return kept === undefined || place === undefined ? null : { ...kept, place: place as Place };
    },
    keep: async (plan, { name: title, file, place }) => {
      const transaction = database.transaction(["files", "places"], "readwrite");
      await Promise.all([
        transaction.objectStore("files").put({ name: title, file }, plan),
        transaction.objectStore("places").put(place, plan),
        transaction.done,
      ]);
    },
    place: async (plan, place) => {
      await database.put("places", place, plan);
    },
    remove: async (plan) => {
      await Promise.all([database.delete("files", plan), database.delete("places", plan)]);
    },
  };
}
