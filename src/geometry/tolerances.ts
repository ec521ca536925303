/**
 * The tolerances of the geometry, each with its meaning and unit. None of them may be changed by a plan: they are far
 * over the rounding of a computed coordinate (some 1e-15 of its size) and far under anything that can be built.
 */
export const geometryTolerance = {
  /** A point so near a line counts as on it: all regions are closed sets, m. */
  touching: 1e-9,
  /** Two regions that share less than this touch and do not overlap, m² (one square millimetre). */
  sharedArea: 1e-6,
  /** The grid to which unions and differences are rounded, m. */
  clippingGrid: 1e-7,
  /** Chords of a round corner depart from the arc by at most this, m. */
  arcSagitta: 1e-5,
} as const;
