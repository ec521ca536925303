/** One of a few, chosen by picture and word: radio buttons with large faces. */

import type { ReactNode } from "react";
import styles from "../panels.module.css";
import newPlanStyles from "./newPlan.module.css";

export interface PictureChoiceProps<Value extends string> {
  readonly legend: string;
  /** Groups the radio buttons. */
  readonly name: string;
  readonly value: Value | null;
  readonly choices: readonly { readonly value: Value; readonly label: string; readonly picture?: ReactNode }[];
  /** The word for choosing none of them; left out = one must be chosen. */
  readonly orNone?: string;
  readonly choose: (value: Value | null) => void;
}

export function PictureChoice<Value extends string>(props: PictureChoiceProps<Value>) {
  const { legend, name, value, choices, orNone, choose } = props;
  return (
    <fieldset className={styles.choices}>
      <legend>{legend}</legend>
      <div className={newPlanStyles.choiceRow}>
        {choices.map((choice) => (
          <label key={choice.value} className={newPlanStyles.choice} data-pictured={choice.picture !== undefined}>
            <input type="radio" name={name} checked={value === choice.value} onChange={() => choose(choice.value)} />
            {choice.picture}
            <span>{choice.label}</span>
          </label>
        ))}
        {orNone !== undefined && (
          <label className={newPlanStyles.choice}>
            <input type="radio" name={name} checked={value === null} onChange={() => choose(null)} />
            <span>{orNone}</span>
          </label>
        )}
      </div>
    </fieldset>
  );
}
