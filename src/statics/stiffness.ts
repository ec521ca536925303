import type { StandType } from "../plan";

/** N/m, taken for a stand of which neither stiffness nor rating is known. */
const unratedStiffness = 1e8;
/** m, how far a stand of unknown stiffness is taken to yield under its rated load. */
const yieldUnderRating = { bare: 0.001, rubber: 0.005 } as const;

/** Vertical stiffness of a stand, N/m, and whether it is estimated; engine.md section 1 (this tool's rule, no source). */
export function standStiffness(type: Pick<StandType, "stiffness" | "ratedLoad" | "top">): {
  readonly stiffness: number;
  readonly estimated: boolean;
} {
  if (type.stiffness !== null) return { stiffness: type.stiffness, estimated: false };
  if (type.ratedLoad === null) return { stiffness: unratedStiffness, estimated: true };
  const yields = type.top.material === "rubber" ? yieldUnderRating.rubber : yieldUnderRating.bare;
  return { stiffness: type.ratedLoad / yields, estimated: true };
}
