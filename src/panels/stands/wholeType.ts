/** Stand types as the page shows them before they are in a plan. */

import type { StandType, StandTypeDocument } from "../../plan";

/** A type as the picture needs it: the keys left out are not known. */
export function wholeType(type: StandTypeDocument): StandType {
  return {
    ratedLoad: null,
    ratedLoadCentre: null,
    designFactor: null,
    ratedForWorkUnder: null,
    marking: "",
    stiffness: null,
    casters: null,
    liftingPoints: false,
    ...type,
  };
}
