/** The plan's verdict, told first: the worst of all findings, with how many of each and what was not checked. */

import type { Report } from "../../checks";
import { VerdictMark } from "../../ui";
import { useCalm } from "../connect";
import styles from "../panels.module.css";
import { verdictSummary } from "./summary";

export function VerdictLine() {
  const report = useCalm((state) => state.answers.report);
  return <VerdictLineView report={report} />;
}

export function VerdictLineView({ report }: { readonly report: Report }) {
  const { face, words, counts } = verdictSummary(report);
  return (
    <div className={styles.verdictLine} data-testid="verdict">
      <VerdictMark verdict={face} size="title">
        {words}
      </VerdictMark>
      {counts !== "" && <span className={styles.quiet}>{counts}</span>}
    </div>
  );
}
