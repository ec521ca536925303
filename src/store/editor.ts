/**
 * The editor: the open document with its history, what is selected and seen, the running gesture, and the engine's
 * answers to what is shown. A vanilla store; views subscribe to it, commands and gestures change it.
 */

import { createStore, type StoreApi } from "zustand/vanilla";
import type { Report } from "../checks";
import { complete, type Plan, type PlanDocument, type StandId } from "../plan";
import { type EditArguments, type EditId, editOf } from "./commands";
import { createGesture, type Gesture } from "./gesture";
import { goTo, type History, record, resumed, startHistory } from "./history";
import { revisionOf } from "./revision";
import { viewOn } from "./selectors";
import {
  type Answers,
  type CarriedStand,
  type EditorState,
  type Notice,
  noSelection,
  noSnaps,
  nothingHere,
  type Origin,
  type Saving,
  type Selection,
  type SnapLine,
  type View,
} from "./state";

export interface EditorOptions {
  readonly document: PlanDocument;
  /**
   * What the engine answers for a plan; remembers by identity, so unchanged parts cost nothing. `inPassing`: a gesture
   * runs, and the answer for the step in view has to be there within the frame.
   */
  readonly report: (plan: Plan, inPassing: boolean) => Report;
  /** What is wrong with a document that an edit made, as one sentence; null = it may stand. */
  readonly refuse?: (document: PlanDocument) => string | null;
  /** Runs a task before the next frame is drawn, once a frame. */
  readonly schedule?: (task: () => void) => void;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

export interface Editor {
  readonly store: StoreApi<EditorState>;
  readonly state: () => EditorState;
  /** Makes an edit and one history entry; false where it was refused (the notice says why) or changes nothing. */
  readonly run: <Id extends EditId>(id: Id, args: EditArguments<Id>) => boolean;
  /** Several edits as one history entry. */
  readonly runAll: (label: string, edit: (document: PlanDocument) => PlanDocument, burst?: string) => boolean;
  readonly gesture: Gesture;
  /** Says what the running gesture has snapped to. */
  readonly showSnaps: (snaps: readonly SnapLine[]) => void;
  /** Takes a stand from a list to be set down on the drawings; null = it has been, or is let go. */
  readonly carry: (carried: CarriedStand | null) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Opens any entry of the history. */
  readonly goTo: (entry: number) => void;
  /** Takes up a history that was kept; `same`: its open document is the one that was opened here. */
  readonly resume: (kept: History, same: boolean) => void;
  /** Replaces the document by another, with a history of its own. */
  readonly open: (document: PlanDocument, from?: { readonly label?: string; readonly origin?: Origin }) => void;
  readonly select: (selection: Selection) => void;
  /** Adds a stand to the selection or takes it out. */
  readonly toggleStand: (stand: StandId) => void;
  readonly look: (change: Partial<View>) => void;
  readonly say: (notice: Notice | null) => void;
  readonly setSaving: (saving: Saving) => void;
  readonly setOrigin: (origin: Partial<Origin>) => void;
  /** Asks the engine again: answers that take longer have come in. */
  readonly refresh: () => void;
}

export function createEditor(options: EditorOptions): Editor {
  const now = options.now ?? Date.now;
  const answersTo = (document: PlanDocument, inPassing = false): Answers => {
    const plan = complete(document);
    return {
      revision: revisionOf(document),
      report: options.report(plan, inPassing),
    };
  };

  const store = createStore<EditorState>(() => ({
    document: options.document,
    history: startHistory(options.document, "Opened", now()),
    preview: null,
    gesture: null,
    snaps: noSnaps,
    carried: null,
    selection: noSelection,
    view: viewOn(options.document, null),
    answers: answersTo(options.document),
    origin: nothingHere,
    saving: { status: "saved" },
    notice: null,
    announcement: "",
  }));
  const { getState, setState } = store;

  /** Shows a document of the history and drops of selection and view what it no longer has. */
  function show(document: PlanDocument, answers: Answers, more: Partial<EditorState>): void {
    const { selection, view } = getState();
    setState({
      document,
      preview: null,
      gesture: null,
      snaps: noSnaps,
      answers,
      selection: selectionOn(document, selection),
      view: viewOn(document, view),
      ...more,
    });
  }

  function commit(label: string, document: PlanDocument, burst: string | null): boolean {
    const state = getState();
    if (document === state.document) return false;
    const answers = options.refuse?.(document) ?? answersOrWhy(document);
    if (typeof answers === "string") {
      setState({
        preview: null,
        gesture: null,
        snaps: noSnaps,
        answers: answersTo(state.document),
        notice: { kind: "refusal", text: answers },
      });
      return false;
    }
    const made = { label, document, time: now(), ...(burst === null ? {} : { burst }) };
    show(document, answers, { history: record(state.history, made), announcement: label, notice: null });
    return true;
  }

  /** The answers, or why the engine cannot answer for a document, which then is not taken. */
  function answersOrWhy(document: PlanDocument, inPassing = false): Answers | string {
    try {
      return answersTo(document, inPassing);
    } catch (error) {
      return `This cannot be computed: ${error instanceof Error ? error.message : String(error)}`;
    }
  }

  const gesture = createGesture({
    document: () => getState().document,
    schedule: options.schedule ?? ((task) => task()),
    begin: (label) => setState({ gesture: label }),
    preview: (document) => {
      const answers = answersOrWhy(document, true);
      if (typeof answers !== "string") setState({ preview: document, answers });
    },
    finish: (label, document) => {
      if (!commit(label, document, null)) drop();
    },
    cancel: drop,
  });

  function drop(): void {
    const { document, preview } = getState();
    setState({
      preview: null,
      gesture: null,
      snaps: noSnaps,
      ...(preview === null ? {} : { answers: answersTo(document) }),
    });
  }

  function openEntry(entry: number): void {
    gesture.cancel();
    const state = getState();
    const history = goTo(state.history, entry);
    if (history === state.history) return;
    const undone = entry < state.history.at;
    const named = history.entries[undone ? entry + 1 : entry];
    const document = history.entries[entry]?.document ?? state.document;
    show(document, answersTo(document), {
      history,
      announcement: `${undone ? "Undone" : "Done again"}: ${named?.label ?? ""}`,
      notice: null,
    });
  }

  const runAll: Editor["runAll"] = (label, change, burst) => {
    gesture.cancel();
    return commit(label, change(getState().document), burst ?? null);
  };

  return {
    store,
    state: getState,
    run: (id, args) => {
      const edit = editOf(id);
      return runAll(
        edit.label(args, getState().document),
        (document) => edit.run(document, args),
        edit.burst?.(args) ?? undefined,
      );
    },
    runAll,
    gesture,
    showSnaps: (snaps) => {
      if (snaps.length > 0 || getState().snaps.length > 0) setState({ snaps });
    },
    carry: (carried) => setState({ carried }),
    undo: () => openEntry(getState().history.at - 1),
    redo: () => openEntry(getState().history.at + 1),
    goTo: openEntry,
    open: (document, from = {}) => {
      gesture.cancel();
      const { view } = getState();
      setState({
        document,
        history: startHistory(document, from.label ?? "Opened", now()),
        preview: null,
        gesture: null,
        snaps: noSnaps,
        selection: noSelection,
        view: { ...viewOn(document, null), theme: view.theme, overlays: view.overlays, fitted: view.fitted },
        answers: answersTo(document),
        origin: from.origin ?? nothingHere,
        notice: null,
        announcement: `${from.label ?? "Opened"}: ${document.title}`,
      });
    },
    resume: (kept, same) => setState({ history: resumed(kept, getState().history, same) }),
    select: (selection) => setState({ selection: selectionOn(getState().document, selection) }),
    toggleStand: (stand) => {
      const { selection } = getState();
      const ids = selection.kind === "stands" ? selection.ids : [];
      const after = ids.includes(stand) ? ids.filter((id) => id !== stand) : [...ids, stand];
      setState({ selection: after.length === 0 ? noSelection : { kind: "stands", ids: after } });
    },
    look: (change) => {
      const { document, view } = getState();
      setState({ view: viewOn(document, { ...view, ...change }) });
    },
    say: (notice) => setState({ notice }),
    setSaving: (saving) => setState({ saving }),
    setOrigin: (origin) => setState({ origin: { ...getState().origin, ...origin } }),
    refresh: () => {
      const { preview, document } = getState();
      setState({ answers: answersTo(preview ?? document, preview !== null) });
    },
  };
}

/** The selection without what the document does not have; the same object where all is there. */
function selectionOn(document: PlanDocument, selection: Selection): Selection {
  switch (selection.kind) {
    case "none":
    case "piece":
    case "finding":
      return selection;
    case "mass":
      return document.piece.masses.some(({ id }) => id === selection.id) ? selection : noSelection;
    case "stands": {
      const ids = selection.ids.filter((id) => document.stands.some((stand) => stand.id === id));
      if (ids.length === selection.ids.length) return selection;
      return ids.length === 0 ? noSelection : { kind: "stands", ids };
    }
    default:
      return selection satisfies never;
  }
}
