/** A number that can be asked about: touching it tells its formula, this plan's values put in, and the source. */

import { lazy, type ReactNode, Suspense, useState } from "react";
import type { NumberName } from "../../checks";
import type { StandId, StepId } from "../../plan";
import type { TippingEdge } from "../../statics";
import helpStyles from "./help.module.css";

/** Loaded with the first question: formulas and their texts are no part of the page before. */
const NumberAnswer = lazy(() => import("./NumberAnswer"));

export interface About {
  readonly stand?: StandId | undefined;
  readonly part?: number | undefined;
  readonly edge?: TippingEdge | undefined;
  readonly walkway?: number | undefined;
  /** The step in view where left out. */
  readonly step?: StepId | undefined;
}

export interface NumberHelpProps extends About {
  readonly name: NumberName;
  /** Out of the way of the Tab key: in the inspector the same number is on it. */
  readonly offTab?: boolean;
  /** The number as it is shown. */
  readonly children: ReactNode;
}

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
