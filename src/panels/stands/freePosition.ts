/** Where a stand goes that is placed by a button: the middle of the widest stretch without one. */

import { type Piece, type Placement, pieceLength, type StandType } from "../../plan";

/** Widest stretch between neighbouring stands, or from an end to the first one counted double (it may go to the end). */
export function freePosition(
  piece: Pick<Piece, "outline">,
  placements: readonly Placement[],
  type: Pick<StandType, "height">,
): { readonly s: number; readonly t: number; readonly height: number } {
  const length = pieceLength(piece);
  const taken = placements.map(({ s }) => s).sort((a, b) => a - b);
  let best = { width: -1, s: length / 2 };
  const offer = (width: number, s: number) => {
    if (width > best.width) best = { width, s };
  };
  if (taken.length === 0) offer(length, length / 2);
  for (const [index, s] of taken.entries()) {
    if (index === 0) offer(2 * s, s / 4);
    else offer(s - taken[index - 1]!, (s + taken[index - 1]!) / 2);
    if (index === taken.length - 1) offer(2 * (length - s), length - (length - s) / 4);
  }
  const neighbour = placements[0];
  return {
    s: round(best.s),
    t: neighbour?.t ?? 0,
    height: settable(type.height, neighbour?.height ?? type.height.min),
  };
}

/** The height nearest to the wished one that the stand can be set to, m. */
export function settable({ min, max, increment }: StandType["height"], wished: number): number {
  const within = Math.min(max, Math.max(min, wished));
  if (increment === 0) return within;
  const most = Math.floor((max - min) / increment + 1e-6);
  const steps = Math.min(most, Math.round((within - min) / increment));
  return Math.round((min + steps * increment) * 1e6) / 1e6;
}

const round = (s: number) => Math.round(s * 100) / 100;
