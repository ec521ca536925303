/** What the editor holds. Everything that is drawn comes from here. */

import type { Report } from "../checks";
import type { FindingCode, LayoutId, MassId, PlanDocument, Point, StandDocument, StandId, StepId } from "../plan";
import type { History } from "./history";

export interface EditorState {
  /** The document of the open history entry. */
  readonly document: PlanDocument;
  readonly history: History;
  /** The document of a running gesture; null while none runs. Never saved, never in the history. */
  readonly preview: PlanDocument | null;
  /** What the running gesture will be called in the history; null while none runs. */
  readonly gesture: string | null;
  /** What the running gesture has snapped to. */
  readonly snaps: readonly SnapLine[];
  /** A stand on its way from a list to the drawings; null = none. */
  readonly carried: CarriedStand | null;
  readonly selection: Selection;
  readonly view: View;
  /** What the engine answers for what is shown. */
  readonly answers: Answers;
  /** The file or database record that the document lives in. */
  readonly origin: Origin;
  readonly saving: Saving;
  /** One sentence to be read by the person (a refusal, a hint); null = nothing to say. */
  readonly notice: Notice | null;
  /** What changed last, for the live region. */
  readonly announcement: string;
}

/** Answers to one revision of what is shown. */
export interface Answers {
  /** Of the document that `report` answers. */
  readonly revision: number;
  readonly report: Report;
}

export type Selection =
  | { readonly kind: "none" }
  | { readonly kind: "piece" }
  /** One or more stands of the layout in view; the last is the one that was touched last. */
  | { readonly kind: "stands"; readonly ids: readonly StandId[] }
  | { readonly kind: "mass"; readonly id: MassId }
  /** A line of findings: the code and the stands it speaks of. */
  | {
      readonly kind: "finding";
      readonly code: FindingCode;
      readonly layout: LayoutId;
      readonly stands: readonly StandId[];
    };

/** A free stand that is carried to where it shall stand. */
export interface CarriedStand {
  readonly stand: StandId;
  /** Added to the plan's stands when it is set down; null = it is one of them. */
  readonly made: StandDocument | null;
  /** What it is set to, m. */
  readonly height: number;
}

/** A line that a dragged stand's centre keeps to, in the piece frame, m. */
export interface SnapLine {
  readonly axis: "s" | "t";
  readonly at: number;
  /** What it is, as the person reads it. */
  readonly name: string;
}

export type Overlay = "dimensions" | "masses" | "tipping" | "tripZones" | "diagrams" | "zones" | "standing";

/** The theme to show; "auto" follows the system. */
export type Theme = "auto" | "light" | "dark";

export interface View {
  readonly step: StepId;
  readonly overlays: Readonly<Record<Overlay, boolean>>;
  readonly theme: Theme;
  /** Where on the piece the diagrams are being read, m; null = nowhere. */
  readonly reading: number | null;
  /** The place of the piece that is asked how much weight may stand on it, (s, t), m; null = none. */
  readonly spot: Point | null;
  /** null = fit to what `fit` names as soon as the size of the drawing is known. */
  readonly camera: Camera | null;
  /** What is fitted where the camera is null: the piece with its stands, or the bay round it as well. */
  readonly fit: "piece" | "bay";
  /** What the fit gives, told by the drawings; null before they have a size. */
  readonly fitted: Camera | null;
}

/** One camera for both drawings: one scale, one centre along the piece. */
export interface Camera {
  /** CSS pixels a metre. */
  readonly scale: number;
  /** s at the middle of both drawings, m. */
  readonly s: number;
  /** t at the middle of the plan view, m. */
  readonly t: number;
  /** Height at the middle of the elevation, m. */
  readonly z: number;
}

export interface Origin {
  /** Key of the record in the browser's database; null = not kept (tests). */
  readonly record: string | null;
  /** Name of the file it was opened from or saved to; null = none. */
  readonly file: string | null;
}

export type Saving =
  /** Everything is written. */
  | { readonly status: "saved" }
  | { readonly status: "saving" }
  /** Another window edits this plan: what is done here is not kept. */
  | { readonly status: "elsewhere" }
  | { readonly status: "failed"; readonly why: string };

export interface Notice {
  readonly kind: "refusal" | "information";
  readonly text: string;
}

export const noSnaps: readonly SnapLine[] = [];
export const noSelection: Selection = { kind: "none" };
export const nothingHere: Origin = { record: null, file: null };
