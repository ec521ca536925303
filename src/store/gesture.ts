/**
 * A gesture: start, move, finish or cancel. Every move computes from the document at the start, so nothing adds up;
 * moves are coalesced to one preview a frame; a finished gesture is exactly one history entry, a cancelled one none.
 */

import type { PlanDocument } from "../plan";

export type Change = (start: PlanDocument) => PlanDocument;

export interface Gesture {
  readonly running: () => boolean;
  /** A gesture that still runs is cancelled. */
  readonly start: (label: string) => void;
  /** Shows what the change makes of the document at the start; the newest change of a frame wins. */
  readonly move: (change: Change) => void;
  /** Keeps what the last move shows, as one history entry. */
  readonly finish: () => void;
  /** Takes it all back. */
  readonly cancel: () => void;
}

export interface GestureHost {
  readonly document: () => PlanDocument;
  readonly schedule: (task: () => void) => void;
  readonly begin: (label: string) => void;
  readonly preview: (document: PlanDocument) => void;
  readonly finish: (label: string, document: PlanDocument) => void;
  readonly cancel: () => void;
}

type Phase =
  | { readonly kind: "idle" }
  /** `shown` is the last preview, `next` the newest change that is not shown yet. */
  | {
      readonly kind: "running";
      readonly label: string;
      readonly start: PlanDocument;
      readonly shown: PlanDocument;
      readonly next: Change | null;
    };

export function createGesture(host: GestureHost): Gesture {
  let phase: Phase = { kind: "idle" };
  let scheduled = false;

  function cancel(): void {
    if (phase.kind === "idle") return;
    phase = { kind: "idle" };
    host.cancel();
  }

  function show(): void {
    if (phase.kind === "idle" || phase.next === null) return;
    const document = phase.next(phase.start);
    const same = document === phase.shown;
    phase = { ...phase, shown: document, next: null };
    if (!same) host.preview(document);
  }

  return {
    running: () => phase.kind === "running",
    start: (label) => {
      cancel();
      const start = host.document();
      phase = { kind: "running", label, start, shown: start, next: null };
      host.begin(label);
    },
    move: (change) => {
      if (phase.kind === "idle") return;
      phase = { ...phase, next: change };
      if (scheduled) return;
      scheduled = true;
      host.schedule(() => {
        scheduled = false;
        show();
      });
    },
    finish: () => {
      if (phase.kind === "idle") return;
      const { label, start, shown, next } = phase;
      phase = { kind: "idle" };
      host.finish(label, next === null ? shown : next(start));
    },
    cancel,
  };
}
