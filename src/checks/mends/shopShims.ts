const inch = 0.0254;

/** Thicknesses of shim stock that a shop has, ascending, m: common practice, no source. */
export const shopShims: readonly number[] = [
  ...[0.0005, 0.001, 0.002, 0.003, 0.005, 0.01],
  ...[1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 1 / 2].map((inches) => inches * inch),
].sort((one, two) => one - two);

/** Thicknesses that differ by less are the same, m. */
export const sameThickness = 1e-6;
