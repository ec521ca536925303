/** How far keys move, and how places are rounded. */

import type { Display } from "../../plan";

/** How far an arrow key moves, m: whole units, and with Shift fine ones. */
export function nudgeOf({ units }: Pick<Display, "units">): { readonly coarse: number; readonly fine: number } {
  switch (units) {
    case "us":
      return { coarse: 0.0254, fine: 0.0254 / 16 };
    case "metric":
      return { coarse: 0.01, fine: 0.001 };
    default:
      return units satisfies never;
  }
}

/** To a tenth of a micrometre, lest sums leave a tail of digits. */
export const tidy = (metres: number): number => Math.round(metres * 1e7) / 1e7;
