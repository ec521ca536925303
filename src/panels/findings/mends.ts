/** The one change that would mend a finding, where the search has found one. */

import type { FindingLine } from "../../checks";

export interface Mend {
  /** What it does, as a command: "Take the shim out of S-3". */
  readonly label: string;
  readonly run: () => void;
}

/** For each line of findings its mend, or null. */
export function useMends(): (line: FindingLine) => Mend | null {
  return () => null;
}
