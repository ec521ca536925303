/** What is asked of a number. */

import type { ReactNode } from "react";
import type { NumberName } from "../../checks";
import type { StandId, StepId } from "../../plan";
import type { TippingEdge } from "../../statics";

export interface About {
  readonly stand?: StandId | undefined;
  readonly part?: number | undefined;
  readonly edge?: TippingEdge | undefined;
  readonly walkway?: number | undefined;
  /** A corner of the outline. */
  readonly corner?: number | undefined;
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
