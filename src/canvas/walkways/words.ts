/** What the plan view says of a walkway. */

import type { VerdictSoFar } from "../../checks";
import type { WalkwayWidth } from "../../floor";
import { geometryTolerance } from "../../geometry";
import type { Display } from "../../plan";
import { lengthWords } from "../words";

/** Its clear width, what is needed, and the width without legs where they are what pinches it. */
export function walkwayWords(
  { clearWidth, withoutLegs, required }: WalkwayWidth,
  verdict: VerdictSoFar,
  display: Display,
): string {
  const free = withoutLegs > clearWidth + geometryTolerance.touching;
  const without = free ? `, ${lengthWords(withoutLegs, display)} without legs` : "";
  if (clearWidth === 0) return `no way through${without}`;
  return `${lengthWords(clearWidth, display)} clear of ${lengthWords(required, display)}: ${verdict}${without}`;
}
