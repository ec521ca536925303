/** Constants and tolerances of the statics, each with its meaning and unit. None of them may be changed by a plan. */

/** m/s², the standard acceleration of free fall (3rd CGPM, 1901). */
export const gravity = 9.80665;

export const staticsTolerance = {
  /** Bearing intervals shorter than this are none, and an s so near a step or an end is at it, m. */
  place: 1e-9,
  /** The resultant must pass inside the hull of the contacts by more than this × the part's length (no unit). */
  inside: 1e-9,
  /** A stand bears on a part where its reaction there is over this × the part's weight (no unit). */
  bears: 1e-9,
} as const;
