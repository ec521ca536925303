/** Lines of findings in words. */

import type { FindingLine } from "../../checks";
import { counted } from "../words";

/** "+4 stands, 3 steps"; empty where it is one matter at one place. */
export function moreText({ moreStands, moreSteps }: Pick<FindingLine, "moreStands" | "moreSteps">): string {
  const parts = [
    ...(moreStands > 0 ? [counted(moreStands, "stand")] : []),
    ...(moreSteps > 0 ? [counted(moreSteps, "step")] : []),
  ];
  return parts.length === 0 ? "" : `+${parts.join(", ")}`;
}
