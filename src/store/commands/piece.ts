/** Edits of the piece, its masses and its place in the bay. */

import type { MassDocument, MassId, PieceDocument, PlanDocument, Pose } from "../../plan";
import { type Changes, changed, kept, mapped, withItem } from "../change";
import { edit } from "./command";

const nowhere: Pose = { x: 0, y: 0, heading: 0 };

function ofPiece(document: PlanDocument, changes: Changes<PieceDocument>): PlanDocument {
  return changed(document, { piece: changed(document.piece, changes) });
}

function posed(document: PlanDocument, change: Partial<Pose>): PlanDocument {
  return ofPiece(document, { pose: changed(document.piece.pose ?? nowhere, change) });
}

export const pieceEdits = {
  /** Moves the datum end in the bay, m. */
  "piece.move": edit<{ x: number; y: number; burst?: string }>({
    label: () => "Move the piece",
    run: (document, { x, y }) => posed(document, { x, y }),
    burst: ({ burst }) => burst ?? null,
  }),
  /** Turns the piece in the bay; degrees counter-clockwise from +x. `x` and `y` where the datum end moves with it. */
  "piece.turn": edit<{ heading: number; x?: number; y?: number; burst?: string }>({
    label: () => "Turn the piece",
    run: (document, { heading, x, y }) =>
      posed(document, { heading, ...(x === undefined ? {} : { x }), ...(y === undefined ? {} : { y }) }),
    burst: ({ burst }) => burst ?? null,
  }),
  /** Any keys of the piece; `undefined` takes an optional key out. */
  "piece.change": edit<{ change: Changes<Omit<PieceDocument, "masses">>; label?: string }>({
    label: ({ label }) => label ?? "Change the piece",
    run: (document, { change }) => ofPiece(document, change),
  }),

  "mass.add": edit<{ mass: MassDocument }>({
    label: ({ mass }) => `Add ${mass.name}`,
    run: (document, { mass }) => ofPiece(document, { masses: [...document.piece.masses, mass] }),
  }),
  /** Replaces a mass, its kind included; the id stays. */
  "mass.change": edit<{ mass: MassDocument; burst?: string }>({
    label: ({ mass }) => `Change ${mass.name}`,
    run: (document, { mass }) => ofPiece(document, { masses: withItem(document.piece.masses, mass.id, () => mass) }),
    burst: ({ burst }) => burst ?? null,
  }),
  /** Removes a mass, also from the steps where it is absent. */
  "mass.remove": edit<{ mass: MassId }>({
    label: ({ mass }, document) => `Remove ${document.piece.masses.find(({ id }) => id === mass)?.name ?? mass}`,
    run: (document, { mass }) =>
      changed(ofPiece(document, { masses: kept(document.piece.masses, ({ id }) => id !== mass) }), {
        steps: mapped(document.steps, (step) =>
          step.absent === undefined ? step : changed(step, { absent: kept(step.absent, (id) => id !== mass) }),
        ),
      }),
  }),
};
