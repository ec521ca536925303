/** What no name on the plan view may cover, as boxes, px. */

import { footprintOf } from "../../floor";
import { standFrame } from "../../geometry";
import { type Layout, type Plan, type Point, type StandId, type Step, typeOf } from "../../plan";
import type { StepLevel } from "../../statics";
import type { PlanMap } from "../camera";
import { spotsOf } from "../growing/JointSpots";
import { knobRadius, pieceMoveHandle, pieceTurnHandle, standTurnHandle } from "../hand/handles";
import type { Box } from "../labels";
import { boxOf } from "../sketch";

/** The tops as drawn. */
export function topBoxes(plan: Plan, layout: Layout, map: PlanMap): readonly Box[] {
  return layout.placements.map((placement) => boxOf(topOf(plan, placement, map)));
}

/** Half the size of what is marked by a sign, px. */
const signSize = { centre: 12, mass: 6, joint: 8 } as const;

const around = ([x, y]: Point, half: number): Box => ({
  left: x - half,
  right: x + half,
  top: y - half,
  bottom: y + half,
});

/** The centre of gravity, and the masses where they are shown. */
export function markBoxes({ piece }: Plan, level: StepLevel | null, masses: boolean, map: PlanMap): readonly Box[] {
  const points = piece.masses.flatMap((mass) => (masses && mass.kind === "point" ? [mass] : []));
  return [
    ...(level?.cg == null ? [] : [around(map.piece([level.cg.s, level.cg.t]), signSize.centre)]),
    ...points.map(({ s, t }) => around(map.piece([s, t]), signSize.mass)),
  ];
}

/** The spots of the joints, which show while the piece is chosen. */
export function jointBoxes(plan: Plan, step: Step, map: PlanMap): readonly Box[] {
  return spotsOf(plan, step, map).map(({ at }) => around(at, signSize.joint));
}

/** The knobs of the handles of what is selected. */
export function handleBoxes(
  plan: Plan,
  layout: Layout,
  selected: readonly StandId[],
  pieceChosen: boolean,
  map: PlanMap,
): readonly Box[] {
  const only = selected.length === 1 ? layout.placements.find(({ stand }) => stand === selected[0]) : undefined;
  const turns = [
    ...(only === undefined ? [] : [standTurnHandle(only, typeOf(plan, only.stand), map)]),
    ...(pieceChosen ? [pieceTurnHandle(plan.piece, map)] : []),
  ];
  return [
    ...turns.map(({ at }) => around(at, knobRadius.turn)),
    ...(pieceChosen ? [around(pieceMoveHandle(plan.piece, map).at, knobRadius.move)] : []),
  ];
}

/** The corners of a top, px. */
export function topOf(plan: Plan, placement: Layout["placements"][number], map: PlanMap): readonly Point[] {
  return footprintOf(typeOf(plan, placement.stand), placement.height, standFrame(placement)).top.map(map.piece);
}
