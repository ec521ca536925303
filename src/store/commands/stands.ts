/** Edits of a layout: what stands where. Lengths in m in the piece frame, angles in degrees. */

import type { LayoutDocument, LayoutId, PlacementDocument, PlanDocument, StandDocument, StandId } from "../../plan";
import { changed, freeId, kept, mapped, withItem } from "../change";
import { edit } from "./command";
import { nextMark } from "./marks";

interface OnStand {
  readonly layout: LayoutId;
  readonly stand: StandId;
}

export interface StandMove {
  readonly stand: StandId;
  readonly s: number;
  readonly t: number;
}

function inLayout(
  document: PlanDocument,
  id: LayoutId,
  update: (placements: readonly PlacementDocument[]) => readonly PlacementDocument[],
): PlanDocument {
  return changed(document, {
    layouts: withItem(document.layouts, id, (layout) => changed(layout, { placements: update(layout.placements) })),
  });
}

function onStand(
  document: PlanDocument,
  { layout, stand }: OnStand,
  update: (placement: PlacementDocument) => PlacementDocument,
): PlanDocument {
  return inLayout(document, layout, (placements) =>
    mapped(placements, (placement) => (placement.stand === stand ? update(placement) : placement)),
  );
}

/** The stands that copies of some would be, in their order: free ones of the same type first, then new ones. */
export function copiesOf(
  document: Pick<PlanDocument, "stands" | "standTypes" | "layouts">,
  layout: LayoutId,
  stands: readonly StandId[],
): readonly StandDocument[] {
  const placed = new Set(document.layouts.find(({ id }) => id === layout)?.placements.map(({ stand }) => stand) ?? []);
  const taken: StandDocument[] = [];
  for (const original of stands) {
    const type = document.standTypes.find(
      ({ id }) => id === document.stands.find((stand) => stand.id === original)?.type,
    );
    if (type === undefined) continue;
    const free = document.stands.find(
      (stand) => stand.type === type.id && !placed.has(stand.id) && !taken.includes(stand),
    );
    taken.push(
      free ?? {
        id: nextMark([...new Set([...document.stands, ...taken])], type) as StandId,
        type: type.id,
        condition: "in-service",
        lastInspected: null,
      },
    );
  }
  return taken;
}

export const standEdits = {
  /** Sets a stand of the register under the piece. Already placed in the layout = moved there. */
  "stand.place": edit<{ layout: LayoutId; placement: PlacementDocument }>({
    label: ({ placement }) => `Place ${placement.stand}`,
    run: (document, { layout, placement }) =>
      inLayout(document, layout, (placements) => [
        ...placements.filter(({ stand }) => stand !== placement.stand),
        placement,
      ]),
  }),
  "stand.move": edit<{ layout: LayoutId } & StandMove>({
    label: ({ stand }) => `Move ${stand}`,
    run: (document, { layout, stand, s, t }) =>
      onStand(document, { layout, stand }, (placement) => changed(placement, { s, t })),
  }),
  /** Several at once, as a drag of a multiple selection does. */
  "stands.move": edit<{ layout: LayoutId; moves: readonly StandMove[]; burst?: string; label?: string }>({
    label: ({ moves, label }) =>
      label ?? (moves.length === 1 ? `Move ${moves[0]?.stand}` : `Move ${moves.length} stands`),
    run: (document, { layout, moves }) => {
      const targets = new Map(moves.map((move) => [move.stand, move]));
      return inLayout(document, layout, (placements) =>
        mapped(placements, (placement) => {
          const target = targets.get(placement.stand);
          return target === undefined ? placement : changed(placement, { s: target.s, t: target.t });
        }),
      );
    },
    burst: ({ burst }) => burst ?? null,
  }),
  /**
   * A like stand beside each, farther along by `by` m, set as it is: a free stand of the plan of the same type, else a
   * new one. `copiesOf` says which.
   */
  "stands.copy": edit<{ layout: LayoutId; stands: readonly StandId[]; by: number }>({
    label: ({ stands }) => (stands.length === 1 ? `Copy ${stands[0]}` : `Copy ${stands.length} stands`),
    run: (document, { layout, stands, by }) => {
      const made = copiesOf(document, layout, stands);
      const added = made.filter(({ id }) => !document.stands.some((stand) => stand.id === id));
      const known = added.length === 0 ? document : changed(document, { stands: [...document.stands, ...added] });
      return inLayout(known, layout, (placements) => [
        ...placements,
        ...stands.flatMap((stand, index) => {
          const placement = placements.find((one) => one.stand === stand);
          const copy = made[index];
          if (placement === undefined || copy === undefined) return [];
          return [{ ...placement, stand: copy.id, s: placement.s + by }];
        }),
      ]);
    },
  }),
  /** Degrees counter-clockwise from square to the piece. */
  "stand.turn": edit<OnStand & { angle: number; burst?: string }>({
    label: ({ stand }) => `Turn ${stand}`,
    run: (document, args) => onStand(document, args, (placement) => changed(placement, { angle: args.angle })),
    burst: ({ burst }) => burst ?? null,
  }),
  "stand.height": edit<OnStand & { height: number }>({
    label: ({ stand }) => `Set the height of ${stand}`,
    run: (document, args) => onStand(document, args, (placement) => changed(placement, { height: args.height })),
  }),
  "stand.shim": edit<OnStand & { shim: number }>({
    label: ({ stand, shim }) => (shim === 0 ? `Take the shim out of ${stand}` : `Shim ${stand}`),
    run: (document, args) => onStand(document, args, (placement) => changed(placement, { shim: args.shim })),
  }),
  /** How closely this one top is set, ± m; null = the criterion. */
  "stand.levelTolerance": edit<OnStand & { levelTolerance: number | null }>({
    label: ({ stand }) => `Set how the top of ${stand} is set`,
    run: (document, args) =>
      onStand(document, args, (placement) => changed(placement, { levelTolerance: args.levelTolerance ?? undefined })),
  }),
  /** Any keys of a placement at once. */
  "stand.change": edit<OnStand & { change: Partial<Omit<PlacementDocument, "stand">> }>({
    label: ({ stand }) => `Change ${stand}`,
    run: (document, args) => onStand(document, args, (placement) => changed(placement, args.change)),
  }),
  /** Another stand of the register takes the place of one, with its height where the type allows no other. */
  "stand.swap": edit<OnStand & { by: StandId }>({
    label: ({ stand, by }) => `Put ${by} in place of ${stand}`,
    run: (document, args) => {
      const type = document.standTypes.find(
        ({ id }) => id === document.stands.find((stand) => stand.id === args.by)?.type,
      );
      return onStand(document, args, (placement) => {
        const height =
          type === undefined
            ? placement.height
            : Math.min(type.height.max, Math.max(type.height.min, placement.height));
        return changed(placement, { stand: args.by, height });
      });
    },
  }),
  /** Takes stands away; they return to the plan's stands. */
  "stands.remove": edit<{ layout: LayoutId; stands: readonly StandId[] }>({
    label: ({ stands }) => (stands.length === 1 ? `Take ${stands[0]} away` : `Take ${stands.length} stands away`),
    run: (document, { layout, stands }) =>
      inLayout(document, layout, (placements) => kept(placements, ({ stand }) => !stands.includes(stand))),
  }),

  /** A new layout, a copy of another or empty. */
  "layout.add": edit<{ name: string; copyOf?: LayoutId }>({
    label: ({ name }) => `Add layout ${name}`,
    run: (document, { name, copyOf }) => {
      const id = freeId(document.layouts, name === "" ? "layout" : name) as LayoutId;
      const source = document.layouts.find((layout) => layout.id === copyOf);
      const layout: LayoutDocument = { id, name, placements: source?.placements ?? [] };
      return changed(document, { layouts: [...document.layouts, layout] });
    },
  }),
  "layout.rename": edit<{ layout: LayoutId; name: string }>({
    label: ({ name }) => `Name layout ${name}`,
    run: (document, { layout, name }) =>
      changed(document, { layouts: withItem(document.layouts, layout, (item) => changed(item, { name })) }),
  }),
  /** Removes a layout that no step uses; one in use stays. */
  "layout.remove": edit<{ layout: LayoutId }>({
    label: ({ layout }) => `Remove layout ${layout}`,
    run: (document, { layout }) =>
      document.steps.some((step) => step.layout === layout)
        ? document
        : changed(document, { layouts: kept(document.layouts, ({ id }) => id !== layout) }),
  }),
};
