/** Finding one's way in a plan. An id that the plan does not have is a programmer's mistake and throws. */

import { criteriaOf } from "./criteria";
import { memo } from "./memo";
import type { Layout, LayoutId, Mass, Piece, Plan, Polygon, Stand, StandId, StandType, Step, StepId } from "./types";

const greatestS = memo((outline: Polygon) => outline.reduce((greatest, [s]) => Math.max(greatest, s), 0));

/** Length of the piece, m: the greatest s of its outline (the least is 0). */
export function pieceLength(piece: Pick<Piece, "outline">): number {
  return greatestS(piece.outline);
}

const byId = memo(
  <Item extends { readonly id: string }>(list: readonly Item[]) =>
    new Map(list.map((item) => [item.id as string, item])),
) as <Item extends { readonly id: string }>(list: readonly Item[]) => ReadonlyMap<string, Item>;

function find<Item extends { readonly id: string }>(list: readonly Item[], id: string): Item {
  const item = byId(list).get(id);
  if (item === undefined) throw new Error(`the plan has no item with the id ${id}`);
  return item;
}

export function standOf(plan: Pick<Plan, "stands">, id: StandId): Stand {
  return find(plan.stands, id);
}

/** The type of a stand of the register. */
export function typeOf(plan: Pick<Plan, "stands" | "standTypes">, id: StandId): StandType {
  return find(plan.standTypes, standOf(plan, id).type);
}

/** The layout with an id, or the layout that a step uses. */
export function layoutOf(plan: Pick<Plan, "layouts">, of: LayoutId | Pick<Step, "layout">): Layout {
  return find(plan.layouts, typeof of === "string" ? of : of.layout);
}

export function stepOf(plan: Pick<Plan, "steps">, id: StepId): Step {
  return find(plan.steps, id);
}

/** The stretches of the piece that are there in a step, m: its parts, or the whole length as one. */
export function partsOf(
  piece: Pick<Piece, "outline">,
  step: Pick<Step, "parts">,
): readonly (readonly [number, number])[] {
  return step.parts ?? wholeLength(piece.outline);
}
const wholeLength = memo((outline: Polygon) => [[0, greatestS(outline)] as const]);

/** The masses that are there in a step, as far as `absent` says (a line mass may still lie partly off every part). */
export function presentMasses(piece: Pick<Piece, "masses">, step: Pick<Step, "absent">): readonly Mass[] {
  if (step.absent.length === 0) return piece.masses;
  const absent = new Set(step.absent);
  return piece.masses.filter((mass) => !absent.has(mass.id));
}

/** The factor on reactions in a step: the criterion where the piece is set down in it, else 1. */
export function setDownFactorOf(plan: Pick<Plan, "criteria">, step: Pick<Step, "setDown">): number {
  return step.setDown ? criteriaOf(plan).setDownFactor : 1;
}
