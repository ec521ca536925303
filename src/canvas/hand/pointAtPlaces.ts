/** Pointing at a place of the piece, or touching it, while the map of where a person may stand is laid over it. */

import { polygonHolds } from "../../geometry";
import type { Point } from "../../plan";
import { shown } from "../../store";
import type { HandOptions } from "./hosts";
import type { PointerHost } from "./pointers";

export function pointingAtPlaces(under: PointerHost, { editor, drawn }: HandOptions): PointerHost {
  const pointAt = (pixel: Point | null): void => {
    const { view, gesture } = editor.state();
    if (!view.overlays.standing || gesture !== null) return;
    const place = pixel === null ? null : drawn().plan.toPiece(pixel);
    const spot = place !== null && polygonHolds(shown(editor.state()).piece.outline, place) ? place : null;
    if (spot !== null || view.spot !== null) editor.look({ spot });
  };
  return {
    ...under,
    hover: (at) => {
      under.hover(at);
      pointAt(at);
    },
    grip: (at, finger) => {
      const grip = under.grip(at, finger);
      return {
        ...grip,
        press: (add) => {
          grip.press(add);
          pointAt(at);
        },
      };
    },
  };
}
