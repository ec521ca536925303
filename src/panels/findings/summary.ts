/** The verdict in a few words. */

import { linesOf, type Report } from "../../checks";
import { type VerdictFace, verdictWords } from "../../ui";
import { counted } from "../words";

export interface VerdictSummary {
  readonly face: VerdictFace;
  /** "holds, 3 not checked". */
  readonly words: string;
  /** "2 fail, 1 unknown, 3 close": matters, not findings. */
  readonly counts: string;
}

export function verdictSummary(report: Pick<Report, "verdict" | "findings" | "notChecked">): VerdictSummary {
  const face: VerdictFace = report.verdict;
  const lines = linesOf(report.findings);
  const number = (verdict: VerdictFace) => lines.filter((line) => line.worst.verdict === verdict).length;
  const fails = number("fails");
  const parts = [
    ...(fails > 0 ? [fails === 1 ? "1 fails" : `${fails} fail`] : []),
    ...(number("unknown") > 0 ? [`${number("unknown")} unknown`] : []),
    ...(number("close") > 0 ? [`${number("close")} close`] : []),
  ];
  const unchecked = new Set(report.notChecked.map(({ check }) => check)).size;
  return {
    face,
    words:
      unchecked === 0
        ? verdictWords[face]
        : `${verdictWords[face]}, ${counted(unchecked, "not checked", "not checked")}`,
    counts: parts.join(", "),
  };
}
