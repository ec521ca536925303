/** Says what changed, for those who do not see it: the edit, and then the verdict when it changes. */

import { useCalm } from "./connect";
import { verdictSummary } from "./findings/summary";
import styles from "./panels.module.css";

export function LiveRegion() {
  const announcement = useCalm((state) => state.announcement);
  const report = useCalm((state) => state.answers.report);
  const { face, words, counts } = verdictSummary(report);
  const verdict = face === "pending" ? "" : `The plan ${words}${counts === "" ? "" : `: ${counts}`}.`;
  return (
    <div className={styles.hiddenWords} role="status" aria-live="polite" aria-atomic="true" data-testid="announcer">
      {announcement === "" ? "" : `${announcement}. `}
      {verdict}
    </div>
  );
}
