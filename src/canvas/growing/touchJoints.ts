/** A touch on a joint of the chosen piece opens or welds it in the step in view. */

import type { Point } from "../../plan";
import { type EditorState, toggleJoint } from "../../store";
import { touchTarget } from "../../ui";
import type { HandOptions } from "../hand/hosts";
import type { PointerHost } from "../hand/pointers";
import type { SpotOnSheet } from "./JointSpots";

export function touchingJoints(
  under: PointerHost,
  { editor, setCursor }: HandOptions,
  spots: (state: EditorState) => readonly SpotOnSheet[],
): PointerHost {
  const spotAt = ([x, y]: Point, finger: boolean): SpotOnSheet | null => {
    const reach = finger ? touchTarget / 2 : 11;
    const near = ({ at }: SpotOnSheet): number => Math.hypot(at[0] - x, at[1] - y);
    return (
      spots(editor.state())
        .filter((spot) => near(spot) <= reach)
        .sort((a, b) => near(a) - near(b))[0] ?? null
    );
  };
  return {
    ...under,
    hover: (at) => {
      under.hover(at);
      if (at !== null && spotAt(at, false) !== null) setCursor("pointer");
    },
    grip: (at, finger) => {
      const spot = spotAt(at, finger);
      const grip = under.grip(at, finger);
      return spot === null ? grip : { ...grip, press: () => toggleJoint(editor, spot.s) };
    },
  };
}
