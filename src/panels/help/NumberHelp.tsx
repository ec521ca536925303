/** A number that can be asked about: touching it tells its formula, this plan's values put in, and the source. */

import { Popover } from "@mantine/core";
import { type ReactNode, useMemo } from "react";
import { type Explanation, explain, type NumberName, type NumberUnit } from "../../checks";
import type { QuantityKind, StandId } from "../../plan";
import type { TippingEdge } from "../../statics";
import { reportInView } from "../../store";
import { useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import helpStyles from "./help.module.css";

interface About {
  readonly stand?: StandId | undefined;
  readonly part?: number | undefined;
  readonly edge?: TippingEdge | undefined;
}

interface NumberHelpProps extends About {
  readonly name: NumberName;
  /** The number as it is shown. */
  readonly children: ReactNode;
}

export function NumberHelp({ name, children, ...about }: NumberHelpProps) {
  return (
    <Popover width={340} position="bottom" withArrow shadow="md" trapFocus returnFocus withinPortal>
      <Popover.Target>
        <button type="button" className={helpStyles.asked} title="How this comes about">
          {children}
        </button>
      </Popover.Target>
      <Popover.Dropdown>
        <HelpText name={name} {...about} />
      </Popover.Dropdown>
    </Popover>
  );
}

function HelpText({ name, stand, part, edge }: About & { readonly name: NumberName }) {
  const plan = usePlan();
  const report = useCalm(reportInView);
  const explanation = useMemo(
    () =>
      explain(name, plan, report, {
        ...(stand === undefined ? {} : { stand }),
        ...(part === undefined ? {} : { part }),
        ...(edge === undefined ? {} : { edge }),
      }),
    [name, plan, report, stand, part, edge],
  );
  if (explanation === null) return <p className={styles.quiet}>This plan has no such number yet.</p>;
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
