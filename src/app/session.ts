/** Joins the editor with the engine's worker, the browser's database and files. No React here. */

import { oncePerFrame } from "../canvas";
import { reportInPassing, reportOf } from "../checks";
import type { Background, MendSearch } from "../panels";
import { type PlanDocument, read, write } from "../plan";
import {
  createAutosave,
  fileNameFor,
  type HistoryDatabase,
  lockPlan,
  type OpenedFile,
  openDatabase,
  openFile,
  openHistories,
  type PlanDatabase,
  type PlanLock,
  type PlanRecord,
  saveFile,
} from "../storage";
import { createEditor, type Editor } from "../store";
import { type EngineClient, startEngine, startSearches } from "../worker";

export interface Session {
  readonly editor: Editor;
  /** What the engine's worker is at. */
  readonly background: Background;
  /** Searches in the background; their worker starts with the first. */
  readonly searches: MendSearch;
  /** The example that is shown at the first visit; null where something was kept from one before. */
  readonly example: PlanDocument | null;
  /** Asks for a file and opens it. */
  readonly openFile: () => Promise<void>;
  /** Opens a file that was dropped or handed over; a refused one leaves everything as it is and is said. */
  readonly openBytes: (file: OpenedFile) => Promise<void>;
  /** Saves a plan file: the one that was opened, or where the person says. */
  readonly saveFile: () => Promise<void>;
  /** Goes on with another plan, kept in a record of its own. The one before stays in the database. */
  readonly begin: (document: PlanDocument, label: string) => Promise<void>;
  /** The plans kept in this browser, newest first. */
  readonly keptPlans: () => Promise<readonly KeptPlan[]>;
  /** Goes on with a kept plan. */
  readonly openKept: (id: string) => Promise<void>;
  /** Deletes a kept plan for good; not the one that is open. */
  readonly deleteKept: (id: string) => Promise<void>;
}

export type KeptPlan = Omit<PlanRecord, "text">;

/** The database's setting that names the plan to go on with. */
const lastPlan = "last plan";

/** How long after the last edit the slow answers are asked for, ms: a burst of edits asks once. */
const askPause = 30;

/** While a gesture runs they are asked for this often, ms: the drawing has the machine to itself. */
const passingPause = 250;

/** A pointer that has not moved for so long rests, ms. */
const restPause = 100;

/** Starts with the plan of the last visit, or with `first`. */
export async function startSession(first: PlanDocument): Promise<Session> {
  const database = await openDatabase().catch(() => null);
  // The browser may say no: then it may forget plans when it runs short of room, and there are files.
  void navigator.storage?.persist?.();
  const histories = openHistories<PlanDocument>().catch(() => null);
  const kept = database === null ? null : await lastKept(database);
  const start = kept === null || !kept.ok ? first : kept.document;

  const watching = new Set<() => void>();
  const engine = startEngine(
    () => refresh(),
    () => {
      for (const listener of watching) listener();
    },
  );
  const editor = createEditor({
    document: start,
    report: (plan, inPassing) => {
      if (!inPassing) return reportOf(plan, engine.answers);
      const { view, answers } = editor.state();
      return reportInPassing(plan, view.step, answers.report, engine.inPassing);
    },
    refuse: refusalOf,
    schedule: oncePerFrame(),
  });
  const refresh = refreshing(editor);
  askAlong(editor, engine);

  const keeping = keep(editor, database, histories);
  if (kept !== null && !kept.ok) {
    await keeping.begin(newRecord());
    editor.say({
      kind: "refusal",
      text: `The plan of your last visit could not be read and was left as it is. ${kept.why}`,
    });
  } else await keeping.begin(kept?.record ?? newRecord());

  const begin = async (document: PlanDocument, label: string, file: string | null = null): Promise<void> => {
    const record = newRecord();
    editor.open(document, { label, origin: { record, file } });
    await keeping.begin(record);
  };

  let handle: FileSystemFileHandle | null = null;
  const openBytes = async (file: OpenedFile): Promise<void> => {
    const answer = read(file.bytes);
    if (!answer.ok) {
      const where = answer.path === "" ? "" : `${answer.path}: `;
      editor.say({ kind: "refusal", text: `${file.name} was not opened. ${where}${answer.message}` });
      return;
    }
    handle = file.handle;
    await begin(answer.document, `Opened ${file.name}`, file.name);
  };

  return {
    editor,
    background: {
      subscribe: (listener) => {
        watching.add(listener);
        return () => void watching.delete(listener);
      },
      progress: engine.progress,
      stop: engine.stop,
      goOn: engine.goOn,
    },
    searches: startSearches(),
    example: kept === null ? first : null,
    openBytes,
    openFile: async () => {
      const file = await openFile();
      if (file !== null) await openBytes(file);
    },
    saveFile: async () => {
      const { document, origin } = editor.state();
      const saved = await saveFile(write(document), origin.file ?? fileNameFor(document.title), handle);
      if (saved === null) return;
      handle = saved.handle;
      editor.setOrigin({ file: saved.name });
      editor.say({ kind: "information", text: `Saved as ${saved.name}.` });
    },
    begin: async (document, label) => {
      handle = null;
      await begin(document, label);
    },
    keptPlans: async () => (await database?.list()) ?? [],
    openKept: async (id) => {
      const answer = database === null ? null : await readKept(database, id);
      if (answer === null) return;
      if (!answer.ok) {
        editor.say({ kind: "refusal", text: `This plan could not be read and was left as it is. ${answer.why}` });
        return;
      }
      handle = null;
      editor.open(answer.document, { label: "Opened", origin: { record: id, file: null } });
      await keeping.begin(id);
    },
    deleteKept: async (id) => {
      if (id === editor.state().origin.record) return;
      await database?.remove(id);
      await (await histories)?.remove(id);
    },
  };
}

/**
 * Shows the engine's answers as they come: once a frame, and while a gesture runs only when the pointer rests, as every
 * move shows the newest ones anyway.
 */
function refreshing(editor: Editor): () => void {
  const onFrame = oncePerFrame();
  let resting: ReturnType<typeof setTimeout> | null = null;
  return () => {
    if (resting !== null) clearTimeout(resting);
    resting = null;
    if (editor.state().gesture === null) onFrame(editor.refresh);
    else resting = setTimeout(editor.refresh, restPause);
  };
}

/** Asks the engine for what is not known of what is shown, after every change of it and with every answer. */
function askAlong(editor: Editor, engine: EngineClient): void {
  let waiting = false;
  const ask = (): void => {
    waiting = false;
    const { preview, document, answers, view, gesture } = editor.state();
    engine.ask({
      document: preview ?? document,
      revision: answers.revision,
      step: view.step,
      hasty: gesture !== null,
      standing: view.overlays.standing,
    });
  };
  editor.store.subscribe((state, before) => {
    const sameView = state.view.step === before.view.step && state.view.overlays === before.view.overlays;
    if (waiting || (state.answers === before.answers && sameView)) return;
    waiting = true;
    setTimeout(ask, state.gesture === null ? askPause : passingPause);
  });
  ask();
}

const newRecord = (): string => crypto.randomUUID();

type Kept =
  | { readonly ok: true; readonly record: string; readonly document: PlanDocument }
  | { readonly ok: false; readonly why: string };

/** The plan of the last visit; null where there was none. */
async function lastKept(database: PlanDatabase): Promise<Kept | null> {
  const id = await database.setting(lastPlan);
  return id === null ? null : readKept(database, id);
}

/** The plan in a record; null where there is no such record. */
async function readKept(database: PlanDatabase, id: string): Promise<Kept | null> {
  const record = await database.load(id);
  if (record === null) return null;
  const answer = read(record.text);
  return answer.ok ? { ok: true, record: id, document: answer.document } : { ok: false, why: answer.message };
}

/** What is wrong with a document that an edit made: what could not be read again is not made. */
function refusalOf(document: PlanDocument): string | null {
  try {
    const answer = read(write(document));
    return answer.ok ? null : `${answer.path}: ${answer.message}`;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Keeps the open document in its record: after every history entry, by the one window that holds the record's lock. */
function keep(editor: Editor, database: PlanDatabase | null, histories: Promise<HistoryDatabase<PlanDocument> | null>) {
  let lock: PlanLock | null = null;
  let record: string | null = null;
  const autosave = createAutosave<{ readonly id: string; readonly document: PlanDocument }>(
    async ({ id, document }) => {
      await database?.save({ id, title: document.title, text: write(document), saved: Date.now() });
    },
    (state) => editor.setSaving(state.status === "failed" ? { ...state, why: `not kept: ${state.why}` } : state),
  );
  /** The record whose kept history has been taken up, so that from then on it is kept. */
  let resumed: string | null = null;
  const pastKeeping = createAutosave<string>(
    // The plan is kept whatever becomes of its history, and before it.
    async (id) => {
      await autosave.settled();
      if (record === id) await (await histories)?.keep(id, editor.state().history);
    },
    () => {},
  );
  const savePast = (): void => {
    if (record !== null && record === resumed && lock?.held() === true) pastKeeping.save(record);
  };
  const resume = async (id: string): Promise<void> => {
    const past = (await (await histories)?.load(id).catch(() => null)) ?? null;
    if (record !== id || lock?.held() !== true) return;
    const open = past?.entries[past.at];
    const opened = editor.state().history.entries[0];
    if (past !== null && open !== undefined && opened !== undefined)
      editor.resume(past, write(open.document) === write(opened.document));
    resumed = id;
    savePast();
  };
  const save = (): void => {
    if (database === null || record === null || lock?.held() !== true) return;
    autosave.save({ id: record, document: editor.state().document });
  };
  editor.store.subscribe((state, before) => {
    if (state.document !== before.document) save();
    if (state.history !== before.history) savePast();
  });
  if (database === null)
    editor.setSaving({ status: "failed", why: "this browser keeps nothing: save the plan to a file" });

  return {
    /** From now on the document belongs to this record. */
    begin: async (id: string): Promise<void> => {
      lock?.release();
      lock = null;
      record = id;
      resumed = null;
      editor.setOrigin({ record: id });
      if (database === null) return;
      await database.keepSetting(lastPlan, id);
      lock = await lockPlan(id, (waited) => {
        if (record === id && waited) void takeOver(id);
      });
      if (lock.held()) {
        save();
        void resume(id);
      } else editor.setSaving({ status: "elsewhere" });
    },
  };

  /** The other window has gone: what it kept is opened here, unless something was already done here. */
  async function takeOver(id: string): Promise<void> {
    const kept = (await database?.load(id)) ?? null;
    const answer = kept === null ? null : read(kept.text);
    const { history, origin } = editor.state();
    if (answer?.ok === true && history.entries.length === 1) editor.open(answer.document, { label: "Opened", origin });
    save();
    void resume(id);
    editor.setSaving({ status: "saved" });
  }
}
