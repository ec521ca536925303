/** Where a pixel of the plan view is taken to mean, with a tool in hand. */

import type { Point } from "../../plan";
import { type Aim, type Editor, shown } from "../../store";
import type { PlanMap } from "../camera";
import { roundStep } from "../hand/snaps";
import { aimed, type Marks } from "./marks";

/** Within how many px a place keeps to what is there. */
const aimReach = { mouse: 8, finger: 16 } as const;
/** A drawn place is a round number that the hand can tell apart at this share of the scale. */
const roundCoarser = 2 / 3;

/** How places of a frame lie on the plan view. */
export function frameOn(map: PlanMap, frame: "piece" | "bay") {
  return frame === "piece" ? { to: map.toPiece, px: map.piece } : { to: map.toBay, px: map.bay };
}

/** Where a pixel is taken to mean, with a tool in hand. */
export function aimWith(
  editor: Editor,
  map: PlanMap,
  frame: "piece" | "bay",
  marks: Marks,
  pixel: Point,
  finger: boolean,
): Aim {
  const reach = (finger ? aimReach.finger : aimReach.mouse) / map.scale;
  return aimed(frameOn(map, frame).to(pixel), marks, reach, roundOn(editor, map));
}

/** The round step of drawn places at the scale of the plan view, m. */
export const roundOn = (editor: Editor, map: PlanMap): number =>
  roundStep(shown(editor.state()).display, map.scale * roundCoarser);
