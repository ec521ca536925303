/** A box drawn over the drawings: the stands it touches are added to the selection while it grows. */

import { footprintOf } from "../../floor";
import { standFrame } from "../../geometry";
import { type Placement, type Plan, type Point, type StandId, typeOf } from "../../plan";
import { type Editor, layoutInView, noSelection, selectedStands, shown } from "../../store";
import type { ElevationMap, PlanMap } from "../camera";
import type { Box } from "../labels";
import { boxOf } from "../sketch";
import type { Stroke } from "./pointers";

/** A stand as a box on the drawing, px. */
type Outline = (plan: Plan, placement: Placement) => Box;

/** Its top, from above. */
export const topInPlan =
  (map: Pick<PlanMap, "piece">): Outline =>
  (plan, placement) =>
    boxOf(footprintOf(typeOf(plan, placement.stand), placement.height, standFrame(placement)).top.map(map.piece));

/** From the floor to its top, as wide as the top. */
export const sideInElevation =
  ({ x, y }: Pick<ElevationMap, "x" | "y">): Outline =>
  (plan, { stand, s, height }) => {
    const half = typeOf(plan, stand).top.width / 2;
    return { left: x(s - half), right: x(s + half), top: y(height), bottom: y(0) };
  };

const meets = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** The stands that a box touches, in the order of the layout. */
export function standsTouched(plan: Plan, placements: readonly Placement[], outline: Outline, box: Box): StandId[] {
  return placements.filter((placement) => meets(outline(plan, placement), box)).map(({ stand }) => stand);
}

/** `show` draws the box; null takes it away. */
export function marquee(editor: Editor, from: Point, outline: Outline, show: (box: Box | null) => void): Stroke {
  const state = editor.state();
  const { placements } = layoutInView(state);
  const plan = shown(state);
  const before = state.selection;
  const already = selectedStands(state);
  let last = "";
  return {
    move: (to) => {
      const box = boxOf([from, to]);
      show(box);
      const more = standsTouched(plan, placements, outline, box).filter((stand) => !already.includes(stand));
      const ids = [...already, ...more];
      if (ids.join("\n") === last) return;
      last = ids.join("\n");
      editor.select(ids.length === 0 ? noSelection : { kind: "stands", ids });
    },
    end: () => show(null),
    cancel: () => {
      show(null);
      editor.select(before);
    },
  };
}
