/** A number that can be asked about: touching it tells its formula, this plan's values put in, and the source. */

import { lazy, Suspense, useState } from "react";
import helpStyles from "./help.module.css";
import type { NumberHelpProps } from "./question";

/** Loaded with the first question: formulas and their texts are no part of the page before. */
const NumberAnswer = lazy(() => import("./NumberAnswer"));

export function NumberHelp(props: NumberHelpProps) {
  const [asked, setAsked] = useState(false);
  const number = (
    <button
      type="button"
      className={helpStyles.asked}
      title="How this comes about"
      {...(props.offTab ? { tabIndex: -1 } : {})}
      onClick={() => setAsked(true)}
    >
      {props.children}
    </button>
  );
  return asked ? (
    <Suspense fallback={number}>
      <NumberAnswer {...props} />
    </Suspense>
  ) : (
    number
  );
}
