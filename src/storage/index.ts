/** The storage room's public face. */
export { type Autosave, type AutosaveState, createAutosave } from "./autosave";
export { openDatabase, type PlanDatabase, type PlanRecord } from "./database";
export { fileNameFor, largestFile, type OpenedFile, openFile, readFile, type SavedFile, saveFile } from "./files";
export { type HistoryDatabase, openHistories } from "./histories";
export type { Past, PastEntry } from "./historyPages";
export { lockPlan, type PlanLock } from "./lock";
export { type KeptPicture, openPictures, type PictureDatabase } from "./pictures";
