/** The handles on the plan view: where they are, in px. What is drawn and what is grabbed come from here alike. */

import { standFrame, toOuter } from "../../geometry";
import { type Piece, type Placement, type Point, pieceLength, type StandType } from "../../plan";
import type { PlanMap } from "../camera";
import { dimensionStrip } from "../planView/Dimensions";

/** Half the size of a handle's knob, px. */
export const knobRadius = { turn: 11, move: 13 } as const;

/** How far beyond the end of a top its turning handle stands, px; likewise beyond the far end of the piece. */
const reach = 34;

export interface Handle {
  readonly at: Point;
  /** Where its stem begins. */
  readonly from: Point;
}

/** The turning handle of a stand: beyond the left end of its top, along it. */
export function standTurnHandle(placement: Placement, type: StandType, map: PlanMap): Handle {
  const frame = standFrame(placement);
  const from = map.piece(toOuter(frame, [0, type.top.length / 2]));
  const middle = map.piece(frame.origin);
  return { from, at: beyond(middle, from, map) };
}

/** The moving handle of the piece: at the middle of its length. */
export function pieceMoveHandle(piece: Piece, map: PlanMap): Handle {
  const at = map.piece(pieceMiddle(piece));
  return { from: at, at };
}

/** The turning handle of the piece: beyond its far end. */
export function pieceTurnHandle(piece: Piece, map: PlanMap): Handle {
  const from = map.piece([pieceLength(piece), 0]);
  return { from, at: beyond(map.piece(pieceMiddle(piece)), from, map) };
}

/** What the piece is turned about, (s, t). */
export const pieceMiddle = (piece: Piece): Point => [pieceLength(piece) / 2, 0];

/** Past the end of the line from a middle to an end; where that is off the paper, as near as lies on it. */
function beyond([mx, my]: Point, [x, y]: Point, { size }: PlanMap): Point {
  const length = Math.hypot(x - mx, y - my) || 1;
  const within = (value: number, most: number): number => Math.max(edge, Math.min(most - edge, value));
  return [
    within(x + ((x - mx) / length) * reach, size.width),
    within(y + ((y - my) / length) * reach, size.height - dimensionStrip),
  ];
}

/** A handle keeps so far from the edge of the paper, px. */
const edge = 18;
