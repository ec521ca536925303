/** The answer to a question about a number, opened beside it. */

import { Popover } from "@mantine/core";
import { useMemo, useRef, useState } from "react";
import { type Explanation, explain, type NumberUnit } from "../../checks";
import type { QuantityKind } from "../../plan";
import { reportInView } from "../../store";
import { useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import helpStyles from "./help.module.css";
import type { NumberHelpProps } from "./question";

export default function NumberAnswer({ children, offTab = false, ...question }: NumberHelpProps) {
  const [opened, setOpened] = useState(true);
  const number = useRef<HTMLButtonElement>(null);
  return (
    <Popover
      width={340}
      position="bottom"
      withArrow
      shadow="md"
      trapFocus
      withinPortal
      opened={opened}
      onChange={setOpened}
      onClose={() => number.current?.focus()}
    >
      <Popover.Target>
        <button
          ref={number}
          type="button"
          className={helpStyles.asked}
          title="How this comes about"
          {...(offTab ? { tabIndex: -1 } : {})}
          onClick={() => setOpened((before) => !before)}
        >
          {children}
        </button>
      </Popover.Target>
      {/* Escape closes the answer alone, not a window that it stands on. */}
      <Popover.Dropdown data-mantine-stop-propagation>
        <HelpText {...question} />
      </Popover.Dropdown>
    </Popover>
  );
}

function HelpText({ name, stand, part, edge, walkway, corner, step }: Omit<NumberHelpProps, "children" | "offTab">) {
  const plan = usePlan();
  const report = useCalm((state) =>
    step === undefined
      ? reportInView(state)
      : (state.answers.report.steps.find((one) => one.step === step) ?? reportInView(state)),
  );
  const explanation = useMemo(
    () =>
      explain(name, plan, report, {
        ...(stand === undefined ? {} : { stand }),
        ...(part === undefined ? {} : { part }),
        ...(edge === undefined ? {} : { edge }),
        ...(walkway === undefined ? {} : { walkway }),
        ...(corner === undefined ? {} : { corner }),
      }),
    [name, plan, report, stand, part, edge, walkway, corner],
  );
  if (explanation === null)
    return <p className={styles.quiet}>There is no more to tell of this number in this plan, or not yet.</p>;
  return <ExplanationView explanation={explanation} />;
}

/** Kinds of the units that explanations are in; a ratio is shown as it is. */
const kindOf: Readonly<Record<NumberUnit, QuantityKind>> = {
  N: "force",
  m: "length",
  Pa: "pressure",
  N·m: "moment",
  "1": "ratio",
};

export function ExplanationView({ explanation }: { readonly explanation: Explanation }) {
  const format = useFormat();
  const { label, formula, source, unit, value, shown, text } = explanation;
  const unitText = unit === "1" ? "" : ` ${unit}`;
  return (
    <div className={helpStyles.help}>
      <h3>{label}</h3>
      <p>{formula}</p>
      <p className={helpStyles.formula}>
        <span data-testid="help-text">{text}</span> ={" "}
        <strong>
          <span data-testid="help-value">{shown}</span>
          {unitText}
        </strong>
        {unit === "1" ? "" : `, or ${format(value, kindOf[unit])}`}
      </p>
      <p className={styles.quiet}>From: {source}.</p>
    </div>
  );
}
