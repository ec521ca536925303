/** The findings, worst first, each with its place, its basis and, where one change mends it, that change. */

import { Button } from "@mantine/core";
import { memo } from "react";
import { type FindingLine, linesOf, type NotChecked } from "../../checks";
import type { StandId } from "../../plan";
import { theEditor } from "../../store";
import { Disclosure, Icon, VerdictShape, verdictWords } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { Cautions } from "../help/Cautions";
import styles from "../panels.module.css";
import { counted } from "../words";
import findingsStyles from "./findings.module.css";
import { moreText } from "./lines";
import { doMend, mendWords, useMends } from "./mends";

export function FindingsPanel() {
  const report = useCalm((state) => state.answers.report);
  const selection = useCalm((state) => state.selection);
  const plan = usePlan();
  const { steps } = plan;
  const lines = linesOf(report.findings);
  const open = lines.filter(({ worst }) => worst.verdict !== "holds" && worst.verdict !== "pending");
  const computing = lines.filter(({ worst }) => worst.verdict === "pending");
  const holding = lines.filter(({ worst }) => worst.verdict === "holds");
  const mendOf = useMends(lines);
  const stepName = (id: string | null) => (id === null ? null : (steps.find((step) => step.id === id)?.name ?? id));
  const offerOf = (item: FindingLine): Offer | null => {
    const mend = mendOf(item);
    if (mend === null) return null;
    const words = mendWords(mend, plan, plan.display);
    return { words, accept: () => doMend(mend, words) };
  };
  const line = (item: FindingLine) => (
    <FindingRow
      key={`${item.worst.layout} ${item.worst.code}`}
      line={item}
      place={[item.worst.stand, steps.length > 1 ? stepName(item.worst.step) : null].filter(Boolean).join(", ")}
      chosen={
        selection.kind === "finding" && selection.code === item.worst.code && selection.layout === item.worst.layout
      }
      offer={offerOf(item)}
    />
  );
  return (
    <div className={findingsStyles.findings}>
      {open.length === 0 ? (
        <p className={findingsStyles.allHolds}>
          {report.verdict === "pending" ? "Nothing found so far; still computing." : "Nothing found against it."}
        </p>
      ) : (
        <ul className={findingsStyles.findingList} aria-label="Findings, worst first">
          {open.map(line)}
        </ul>
      )}
      {computing.length > 0 && (
        <Disclosure summary={`${counted(computing.length, "check")} still being computed`}>
          <ul className={findingsStyles.findingList} aria-label="Checks still being computed">
            {computing.map(line)}
          </ul>
        </Disclosure>
      )}
      {report.notChecked.length > 0 && <NotCheckedLine notChecked={report.notChecked} />}
      {holding.length > 0 && (
        <Disclosure summary={`${counted(holding.length, "check")} ${holding.length === 1 ? "holds" : "hold"}`}>
          <ul className={findingsStyles.findingList} aria-label="Checks that hold">
            {holding.map(line)}
          </ul>
        </Disclosure>
      )}
      <Cautions />
    </div>
  );
}

/** A change that mends the finding, as words and as a deed. */
interface Offer {
  readonly words: string;
  readonly accept: () => void;
}

interface RowProps {
  readonly line: FindingLine;
  /** Which stand, in which step. */
  readonly place: string;
  readonly chosen: boolean;
  readonly offer: Offer | null;
}

/** One matter: choosing it shows its stands on both drawings. */
export const FindingRow = memo(function FindingRow({ line, place, chosen, offer }: RowProps) {
  const { worst, all } = line;
  const more = moreText(line);
  return (
    <li className={findingsStyles.finding} data-verdict={worst.verdict} data-chosen={chosen}>
      <button type="button" className={findingsStyles.findingButton} aria-pressed={chosen} onClick={() => choose(line)}>
        <VerdictShape verdict={worst.verdict} label={verdictWords[worst.verdict]} />
        <span className={findingsStyles.findingWords}>
          {worst.message}
          {more !== "" && <span className={findingsStyles.findingMore}> {more}</span>}
        </span>
      </button>
      <p className={findingsStyles.findingBasis}>
        {place !== "" && <span>{place}. </span>}
        <span>
          Limit: {worst.basis}
          {worst.changed ? " (changed in this plan)" : ""}.
        </span>
        {chosen && all.length > 1 && <span> {counted(all.length, "place")} checked.</span>}
      </p>
      {offer !== null && (
        <Button
          className={findingsStyles.mendButton}
          size="compact-md"
          variant="default"
          leftSection={<Icon name="mend" size={16} />}
          onClick={offer.accept}
        >
          {offer.words}
        </Button>
      )}
    </li>
  );
});

function choose({ worst, all }: FindingLine): void {
  const editor = theEditor();
  const { selection } = editor.state();
  if (selection.kind === "finding" && selection.code === worst.code && selection.layout === worst.layout) {
    editor.select({ kind: "none" });
    return;
  }
  if (worst.step !== null && worst.step !== editor.state().view.step) editor.look({ step: worst.step });
  const stands = new Set<StandId>(
    all.filter(({ verdict }) => verdict === worst.verdict).flatMap(({ stand }) => (stand === null ? [] : [stand])),
  );
  editor.select({ kind: "finding", code: worst.code, layout: worst.layout, stands: [...stands] });
}

/** What was not checked, as one line, with what it would take. */
export function NotCheckedLine({ notChecked }: { readonly notChecked: readonly NotChecked[] }) {
  const reasons = new Map<string, string[]>();
  for (const { check, why } of notChecked) {
    const checks = reasons.get(why) ?? [];
    if (!checks.includes(check)) checks.push(check);
    reasons.set(why, checks);
  }
  const count = new Set(notChecked.map(({ check }) => check)).size;
  return (
    <Disclosure summary={`${count} not checked`} aside="what it would take">
      <ul className={styles.plainList}>
        {[...reasons].map(([why, checks]) => (
          <li key={why}>
            {checks.map((check) => check.replaceAll("-", " ")).join(", ")}: {why}.
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
