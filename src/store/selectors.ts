/** Reading the state. Selectors hand out what is there or what is remembered by identity; they compute nothing new. */

import type { StepReport } from "../checks";
import {
  complete,
  type Layout,
  layoutOf,
  memo,
  type Placement,
  type Plan,
  type PlanDocument,
  type StandId,
  type Step,
  stepOf,
} from "../plan";
import type { StepLevel } from "../statics";
import { canRedo, canUndo } from "./history";
import type { EditorState, Overlay, View } from "./state";

/** The plan as it is drawn: that of the running gesture, else the open one. */
export function shown(state: Pick<EditorState, "document" | "preview">): Plan {
  return complete(state.preview ?? state.document);
}

/** The step in view, of the plan as it is drawn. */
export const stepInView = (state: EditorState): Step => stepOf(shown(state), state.view.step);

/** The layout of the step in view. */
export const layoutInView = (state: EditorState): Layout => layoutOf(shown(state), stepInView(state));

const idsOf = memo((layout: Layout) => layout.placements.map(({ stand }) => stand));

/** The stands of the layout in view, in its order. Another list with every move: read it with `useEditorList`. */
export const standIdsInView = (state: EditorState): readonly StandId[] => idsOf(layoutInView(state));

/** A stand's placement in the layout in view; null where it is not placed there. */
export function standIn(state: EditorState, stand: StandId): Placement | null {
  return layoutInView(state).placements.find((placement) => placement.stand === stand) ?? null;
}

/** The report of the step in view. */
export function reportInView(state: EditorState): StepReport {
  const report = state.answers.report.steps.find(({ step }) => step === state.view.step);
  if (report === undefined) throw new Error(`no report for the step ${state.view.step}`);
  return report;
}

/** The level answer of the step in view; null while it is not known. */
export function levelInView(state: EditorState): StepLevel | null {
  const part = reportInView(state).level;
  switch (part.status) {
    case "known":
      return part.value;
    case "pending":
    case "failed":
      return null;
    default:
      return part satisfies never;
  }
}

/** Ids of the selected stands. */
export function selectedStands(state: Pick<EditorState, "selection">): readonly StandId[] {
  return state.selection.kind === "stands" ? state.selection.ids : noStands;
}
const noStands: readonly StandId[] = [];

export const isSelected =
  (stand: StandId) =>
  (state: Pick<EditorState, "selection">): boolean =>
    (state.selection.kind === "stands" && state.selection.ids.includes(stand)) ||
    (state.selection.kind === "finding" && state.selection.stands.includes(stand));

export const mayUndo = (state: EditorState): boolean => canUndo(state.history);
export const mayRedo = (state: EditorState): boolean => canRedo(state.history);

const everything: Readonly<Record<Overlay, boolean>> = {
  dimensions: true,
  masses: true,
  tipping: true,
  tripZones: true,
  diagrams: true,
  zones: true,
  standing: false,
};

/** A view of the document: the wished one where its step exists, else one on the first step. */
export function viewOn(document: PlanDocument, wished: View | null): View {
  const first = document.steps[0];
  if (first === undefined) throw new Error("a plan has at least one step");
  if (wished === null)
    return {
      step: first.id,
      overlays: everything,
      theme: "auto",
      reading: null,
      spot: null,
      camera: null,
      fit: "piece",
      fitted: null,
    };
  return document.steps.some(({ id }) => id === wished.step) ? wished : { ...wished, step: first.id };
}
