/** What every part of the drawings is drawn with: colours of the theme, units of the plan. One object, kept by identity. */

import type { VerdictSoFar } from "../checks";
import type { Display } from "../plan";
import type { Colours } from "../ui";

export interface Look {
  readonly colours: Colours;
  readonly display: Display;
  /** Changes when the typeface has arrived: everything is drawn again. */
  readonly typeface: number;
}

/** Ink of a verdict; holds and not yet known are drawn in the drawing's own ink. */
export function inkOf(look: Look, verdict: VerdictSoFar | null): string {
  switch (verdict) {
    case "fails":
    case "close":
    case "unknown":
      return look.colours.verdict[verdict].ink;
    case "holds":
    case "pending":
    case null:
      return look.colours.ink;
    default:
      return verdict satisfies never;
  }
}
