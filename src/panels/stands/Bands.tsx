/** The bands of all stands under one another: which carries what, what is not known of it, and how far its rating is. */

import { useMemo } from "react";
import { knownValue, sayIn, unprovedSentences } from "../../checks";
import type { StandId } from "../../plan";
import { reportInView, selectedStands, stepInView, theEditor } from "../../store";
import { ReactionBand, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { type StandRow, standRows } from "./rows";
import standsStyles from "./stands.module.css";

export function Bands() {
  const plan = usePlan();
  const step = useCalm(stepInView);
  const report = useCalm(reportInView);
  const selected = useCalm(selectedStands);
  const rows = useMemo(() => standRows(plan, step, report), [plan, step, report]);
  const certificates = knownValue(report.certificates);
  return (
    <>
      <BandsView rows={rows} selected={selected} />
      {certificates !== null &&
        unprovedSentences(certificates, sayIn(plan.display)).map((sentence) => (
          <p key={sentence} className={styles.quiet}>
            {sentence}
          </p>
        ))}
    </>
  );
}

export function BandsView({
  rows,
  selected,
}: {
  readonly rows: readonly StandRow[];
  readonly selected: readonly StandId[];
}) {
  const format = useFormat();
  return (
    <ul className={standsStyles.bands} aria-label="What each stand carries">
      {rows.map(({ placement: { stand }, band, pending }) => (
        <li key={stand}>
          <button
            type="button"
            className={standsStyles.bandButton}
            aria-pressed={selected.includes(stand)}
            onClick={() => theEditor().select({ kind: "stands", ids: [stand] })}
          >
            <span>{stand}</span>
            <ReactionBand
              numbers={band}
              pending={pending}
              label={`Stand ${stand}`}
              format={(force) => format(force, "force")}
            />
            <span className={standsStyles.bandValue}>{format(band.level, "force")}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
