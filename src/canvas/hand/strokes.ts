/** What a drag does: each stroke drives one gesture of the editor, recomputed from where it began. */

import { pieceFrame, toOuter } from "../../geometry";
import type { Point, Pose, StandId } from "../../plan";
import { type Editor, edits, layoutInView, type SnapLine, selectedStands, shown } from "../../store";
import { pieceMiddle } from "./handles";
import type { Stroke } from "./pointers";

/** A place a dragged stand keeps to, and what it is called. */
export interface Snapped {
  readonly s: number;
  readonly t: number;
  readonly lines: readonly SnapLine[];
}
/** Where a stand dragged to (s, t) snaps to; `free` of stations, as fine as the units go. */
export type Snap = (stand: StandId, s: number, t: number, free: boolean) => Snapped;

/**
 * Moves a stand, and with it all that are selected. `toPiece` reads the pointer in the piece frame; with `along` the
 * stands only move along the piece.
 */
export function moveStands(
  editor: Editor,
  stand: StandId,
  grabbed: Point,
  toPiece: (pixel: Point) => Point,
  options: { readonly along: boolean; readonly snap: Snap },
): Stroke {
  const state = editor.state();
  if (!selectedStands(state).includes(stand)) editor.select({ kind: "stands", ids: [stand] });
  const ids = selectedStands(editor.state());
  const layout = layoutInView(state);
  const starts = layout.placements.filter((placement) => ids.includes(placement.stand));
  const main = starts.find((placement) => placement.stand === stand)!;
  editor.gesture.start(ids.length === 1 ? `Move ${stand}` : `Move ${ids.length} stands`);
  return {
    move: (pixel, free) => {
      const [s, t] = toPiece(pixel);
      const wished = { s: main.s + s - grabbed[0], t: options.along ? main.t : main.t + t - grabbed[1] };
      editor.gesture.move((document) => {
        const snapped = options.snap(stand, wished.s, wished.t, free);
        const by: Point = [tidy(snapped.s) - main.s, options.along ? 0 : tidy(snapped.t) - main.t];
        editor.showSnaps(options.along ? snapped.lines.filter(({ axis }) => axis === "s") : snapped.lines);
        return edits["stands.move"].run(document, {
          layout: layout.id,
          moves: starts.map((start) => ({
            stand: start.stand,
            s: start.stand === stand ? main.s + by[0] : tidy(start.s + by[0]),
            t: start.stand === stand ? main.t + by[1] : tidy(start.t + by[1]),
          })),
        });
      });
    },
    end: editor.gesture.finish,
    cancel: editor.gesture.cancel,
  };
}

/** Turns a stand: its handle follows the pointer. */
export function turnStand(editor: Editor, stand: StandId, toPiece: (pixel: Point) => Point): Stroke {
  const layout = layoutInView(editor.state());
  const { s, t } = layout.placements.find((placement) => placement.stand === stand)!;
  editor.gesture.start(`Turn ${stand}`);
  return {
    move: (pixel) => {
      const [ps, pt] = toPiece(pixel);
      // The handle lies along the top, (−sin a, cos a).
      const angle = roundAngle((Math.atan2(s - ps, pt - t) * 180) / Math.PI);
      editor.gesture.move((document) => edits["stand.turn"].run(document, { layout: layout.id, stand, angle }));
    },
    end: editor.gesture.finish,
    cancel: editor.gesture.cancel,
  };
}

/** Moves the piece in the bay. `keepInPlace` is told the pose before and after, so that the sheet can stay where it is. */
export function movePiece(
  editor: Editor,
  grabbed: Point,
  toBay: (pixel: Point) => Point,
  keepInPlace: (before: Pose, after: Pose) => void,
): Stroke {
  const { pose } = shown(editor.state()).piece;
  editor.gesture.start("Move the piece");
  return {
    move: (pixel) => {
      const [x, y] = toBay(pixel);
      const to = { x: tidy(pose.x + x - grabbed[0]), y: tidy(pose.y + y - grabbed[1]) };
      editor.gesture.move((document) => edits["piece.move"].run(document, to));
    },
    end: () => {
      editor.gesture.finish();
      keepInPlace(pose, shown(editor.state()).piece.pose);
    },
    cancel: editor.gesture.cancel,
  };
}

/** Turns the piece in the bay about the middle of its length. */
export function turnPiece(editor: Editor, toBay: (pixel: Point) => Point): Stroke {
  const { piece } = shown(editor.state());
  const middle = pieceMiddle(piece);
  const pivot = toOuter(pieceFrame(piece.pose), middle);
  editor.gesture.start("Turn the piece");
  return {
    move: (pixel) => {
      const [x, y] = toBay(pixel);
      const heading = roundAngle((Math.atan2(y - pivot[1], x - pivot[0]) * 180) / Math.PI);
      const [mx, my] = toOuter(pieceFrame({ x: 0, y: 0, heading }), middle);
      editor.gesture.move((document) =>
        edits["piece.turn"].run(document, { heading, x: tidy(pivot[0] - mx), y: tidy(pivot[1] - my) }),
      );
    },
    end: editor.gesture.finish,
    cancel: editor.gesture.cancel,
  };
}

/** Half degrees; near a multiple of 15° that. */
function roundAngle(degrees: number): number {
  const square = Math.round(degrees / 15) * 15;
  return Math.abs(degrees - square) < 2.5 ? square : Math.round(degrees * 2) / 2;
}

/** A place to a micrometre: the noise of adding is not written. */
const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6;
