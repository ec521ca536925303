/** How a number becomes a verdict (engine.md section 8). */

import type { Verdict } from "./report";

/** Relative: a number so near its limit is on it, not past it; far above rounding, far below any accuracy claimed. */
const onTheLimit = 1e-9;

/** A stand carries nothing below this share of the weight W. */
export const noReaction = 1e-6;

/** An upper limit: past it fails, above closeFraction × limit is close. Not a number: unknown. */
export function upper(value: number, limit: number, closeFraction: number): Verdict {
  if (Number.isNaN(value) || Number.isNaN(limit)) return "unknown";
  if (value > limit * (1 + onTheLimit)) return "fails";
  return value > closeFraction * limit * (1 + onTheLimit) ? "close" : "holds";
}

/** A lower limit: under it fails, below limit ÷ closeFraction is close. Not a number: unknown. */
export function lower(value: number, limit: number, closeFraction: number): Verdict {
  if (Number.isNaN(value) || Number.isNaN(limit)) return "unknown";
  if (value < limit * (1 - onTheLimit)) return "fails";
  return value < (limit / closeFraction) * (1 - onTheLimit) ? "close" : "holds";
}

/** How much of an upper limit is used: 1 at the limit, more is worse. A limit of 0 is all used or not at all. */
export function useOfUpper(value: number, limit: number): number {
  if (limit > 0) return value / limit;
  return value > limit ? Number.POSITIVE_INFINITY : 0;
}

/** The same for a lower limit, falling as the value grows: 1 at the limit, 2 at a value of 0, more below. */
export function useOfLower(value: number, limit: number): number {
  if (limit > 0) return 2 - value / limit;
  return value < limit ? Number.POSITIVE_INFINITY : 0;
}
