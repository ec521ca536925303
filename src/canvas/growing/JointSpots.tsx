/** Joints of the chosen piece, to be opened and welded by a touch: filled where one carries nothing in the step. */

import { memo, useMemo } from "react";
import type { Plan, Point, Step } from "../../plan";
import { type EditorState, jointSpots, shown, stepInView, useEditor } from "../../store";
import { lineWeight } from "../../ui";
import type { ElevationMap, PlanMap } from "../camera";
import type { Look } from "../look";
import { fill, type Paper, Sketch, stroke, trace } from "../sketch";

export interface SpotOnSheet {
  readonly s: number;
  readonly open: boolean;
  /** px. */
  readonly at: Point;
}

/** How far beyond the edge of the piece the spots stand, px. */
const off = 14;

/** On the plan view while the piece is chosen. */
export function spotsInPlan(state: EditorState, map: PlanMap): readonly SpotOnSheet[] {
  return state.selection.kind === "piece" ? spotsOf(shown(state), stepInView(state), map) : [];
}

/** Over the left edge of the piece on the plan view. */
export function spotsOf(plan: Plan, step: Step, map: PlanMap): readonly SpotOnSheet[] {
  const left = Math.max(...plan.piece.outline.map(([, t]) => t));
  return jointSpots(plan, step).map((spot) => {
    const [x, y] = map.piece([spot.s, left]);
    return { ...spot, at: [x, y - off] };
  });
}

/** Over the piece on the elevation, at one height. */
export function spotsInElevation(state: EditorState, map: ElevationMap): readonly SpotOnSheet[] {
  if (state.selection.kind !== "piece") return [];
  const plan = shown(state);
  const y = map.y(topOf(plan)) - off - 6;
  return jointSpots(plan, stepInView(state)).map((spot) => ({ ...spot, at: [map.x(spot.s), y] }));
}

function topOf({ layouts, piece }: Plan): number {
  return piece.depth + Math.max(0.3, ...layouts.flatMap(({ placements }) => placements.map(({ height }) => height)));
}

function drawSpots(paper: Paper, spots: readonly SpotOnSheet[], look: Look): void {
  const { accent, paper: ground } = look.colours;
  for (const {
    at: [x, y],
    open,
  } of spots) {
    trace(
      paper,
      [
        [x, y - 8],
        [x + 8, y],
        [x, y + 8],
        [x - 8, y],
      ],
      true,
    );
    fill(paper, open ? accent : ground);
    stroke(paper, { colour: accent, width: lineWeight.heavy });
  }
}

export const JointSpotsInPlan = memo(function JointSpotsInPlan({
  map,
  look,
}: {
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const key = useEditor((state) => JSON.stringify(spotsInPlan(state, map)));
  const draw = useMemo(() => (paper: Paper) => drawSpots(paper, JSON.parse(key) as SpotOnSheet[], look), [key, look]);
  return <Sketch draw={draw} />;
});

export const JointSpotsInElevation = memo(function JointSpotsInElevation({
  map,
  look,
}: {
  readonly map: ElevationMap;
  readonly look: Look;
}) {
  const key = useEditor((state) => JSON.stringify(spotsInElevation(state, map)));
  const draw = useMemo(() => (paper: Paper) => drawSpots(paper, JSON.parse(key) as SpotOnSheet[], look), [key, look]);
  return <Sketch draw={draw} />;
});
