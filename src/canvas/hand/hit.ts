/** What lies under a pointer. A finger needs more room than a mouse: targets are at least 44 px for it. */

import { footprintOf } from "../../floor";
import { pointToPolygon, polygonHolds, standFrame } from "../../geometry";
import { type MassId, type Placement, type Plan, type Point, type StandId, typeOf } from "../../plan";
import { type EditorState, layoutInView, selectedStands, shown } from "../../store";
import { touchTarget } from "../../ui";
import type { ElevationMap, PlanMap } from "../camera";
import type { Look } from "../look";
import { dimensionsOf } from "../planView/Dimensions";
import { pieceMoveHandle, pieceTurnHandle, standTurnHandle } from "./handles";

export type Target =
  | { readonly kind: "stand"; readonly id: StandId }
  | { readonly kind: "turn stand"; readonly id: StandId }
  | { readonly kind: "move piece" }
  | { readonly kind: "turn piece" }
  | { readonly kind: "mass"; readonly id: MassId }
  | { readonly kind: "piece" }
  | { readonly kind: "dimension"; readonly stand: StandId; readonly at: Point }
  | { readonly kind: "diagrams" }
  | { readonly kind: "nothing" };

const nothing: Target = { kind: "nothing" };

/** Half the side of the least square that answers, px. */
const reachOf = (finger: boolean): number => (finger ? touchTarget / 2 : 9);

const near = ([x, y]: Point, [px, py]: Point, reach: number): boolean => Math.hypot(px - x, py - y) <= reach;

/** What lies under a point of the plan view. */
export function hitPlan(state: EditorState, map: PlanMap, look: Look, at: Point, finger: boolean): Target {
  const plan = shown(state);
  const layout = layoutInView(state);
  const reach = Math.max(reachOf(finger), 13);

  const selected = selectedStands(state);
  const only = selected.length === 1 ? layout.placements.find(({ stand }) => stand === selected[0]) : undefined;
  if (only !== undefined && near(standTurnHandle(only, typeOf(plan, only.stand), map).at, at, reach))
    return { kind: "turn stand", id: only.stand };
  if (state.selection.kind === "piece") {
    if (near(pieceMoveHandle(plan.piece, map).at, at, reach)) return { kind: "move piece" };
    if (near(pieceTurnHandle(plan.piece, map).at, at, reach)) return { kind: "turn piece" };
  }

  if (state.view.overlays.dimensions) {
    const tall = finger ? 16 : 8;
    const dimension = dimensionsOf(layout, plan.piece, map, look).find(
      ({ at: [x, y], width }) => Math.abs(at[0] - x) <= width / 2 + 5 && Math.abs(at[1] - y) <= tall,
    );
    const stand = dimension?.stands.find((one) => selected.includes(one)) ?? dimension?.stands[0];
    if (dimension !== undefined && stand !== undefined) return { kind: "dimension", stand, at: dimension.at };
  }

  const stand = nearestStand(plan, layout.placements, map.toPiece(at), reachOf(finger) / map.scale);
  if (stand !== null) return { kind: "stand", id: stand };
  if (state.view.overlays.masses)
    for (const mass of plan.piece.masses)
      if (mass.kind === "point" && near(map.piece([mass.s, mass.t]), at, reachOf(finger)))
        return { kind: "mass", id: mass.id };
  return polygonHolds(plan.piece.outline, map.toPiece(at)) ? { kind: "piece" } : nothing;
}

/** The stand whose top holds a point of the piece frame, or whose centre or top is nearest within reach, m. */
function nearestStand(plan: Plan, placements: readonly Placement[], point: Point, reach: number): StandId | null {
  let best: { readonly stand: StandId; readonly distance: number } | null = null;
  for (const placement of placements) {
    const { top } = footprintOf(typeOf(plan, placement.stand), placement.height, standFrame(placement));
    const distance = pointToPolygon(point, top).distance;
    if (distance <= reach && (best === null || distance < best.distance)) best = { stand: placement.stand, distance };
  }
  return best?.stand ?? null;
}

/** How far under the floor line a stand's reaction still counts as the stand, px. */
const reactionDepth = 66;

/** What lies under a point of the elevation's stage, diagrams included. */
export function hitElevation(state: EditorState, map: ElevationMap, at: Point, finger: boolean): Target {
  if (at[1] > map.size.height) return { kind: "diagrams" };
  const plan = shown(state);
  const s = map.toS(at[0]);
  const { placements } = layoutInView(state);
  const heights = placements.map(({ height }) => height);
  const highest = Math.max(0, ...heights);
  const under = at[1] > map.y(highest) - 4 && at[1] < map.y(0) + reactionDepth;
  if (under) {
    let best: { readonly stand: StandId; readonly distance: number } | null = null;
    for (const placement of placements) {
      const distance = Math.abs(placement.s - s);
      const reach = Math.max(typeOf(plan, placement.stand).top.width / 2, reachOf(finger) / map.scale);
      if (distance <= reach && (best === null || distance < best.distance)) best = { stand: placement.stand, distance };
    }
    if (best !== null) return { kind: "stand", id: best.stand };
  }
  const ss = plan.piece.outline.map(([along]) => along);
  const onPiece = s >= Math.min(...ss) && s <= Math.max(...ss);
  const z = map.toZ(at[1]);
  return onPiece && z >= highest && z <= highest + plan.piece.depth ? { kind: "piece" } : nothing;
}
