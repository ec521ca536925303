/** Camber of an underside, as stretches. */

import type { UndersideSegment } from "../../plan";

/** A camber as eight straight stretches of the parabola 4·h·σ(1 − σ), σ = s/length. */
export function camber(length: number, rise: number): readonly UndersideSegment[] {
  const pieces = 8;
  const at = (index: number) => {
    const sigma = index / pieces;
    return 4 * rise * sigma * (1 - sigma);
  };
  return Array.from({ length: pieces }, (_, index) => ({
    from: (index * length) / pieces,
    to: ((index + 1) * length) / pieces,
    z: [at(index), at(index + 1)],
  }));
}
