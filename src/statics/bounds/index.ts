/** Bounds of the reactions: the part of the statics room that answers what they could be. */
export type { StandBounds, StandLimits, StepBounds } from "./answers";
export { boundsOf, boundsSearch, certifiedBoundsOf, certifiedBoundsSearch } from "./bounds";
export type { BoxTip, TipCause } from "./boxTips";
export { ended, mapped, type Pausing } from "./pauses";
