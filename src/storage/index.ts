/** The storage room's public face. */

import type { HistoryDatabase } from "./histories";

export { type Autosave, type AutosaveState, createAutosave } from "./autosave";
export { openDatabase, type PlanDatabase, type PlanRecord } from "./database";
export { fileNameFor, largestFile, type OpenedFile, openFile, readFile, type SavedFile, saveFile } from "./files";
export type { HistoryDatabase } from "./histories";
export type { Past, PastEntry } from "./historyPages";
export { lockPlan, type PlanLock } from "./lock";
export { type KeptPicture, openPictures, type PictureDatabase } from "./pictures";

/** Histories are kept by what is loaded for it: the first picture does not wait for it. */
export async function openHistories<Document>(): Promise<HistoryDatabase<Document>> {
  return (await import("./histories")).openHistories<Document>();
}
