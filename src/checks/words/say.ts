/** Numbers as the plan shows them, for sentences. */

import type { Display } from "../../plan";
import { formatForce, formatLength, formatPressure } from "../../plan";

export interface Say {
  /** N. */
  readonly force: (value: number) => string;
  /** m. */
  readonly length: (value: number) => string;
  /** Pa. */
  readonly pressure: (value: number) => string;
  /** A reserve or factor: two decimals. */
  readonly ratio: (value: number) => string;
  /** A share: whole percent. */
  readonly percent: (value: number) => string;
  /** m/m: millimetres a metre, or inches a foot. */
  readonly slope: (value: number) => string;
  /** "A", "A and B", "A, B and C". */
  readonly list: (names: readonly string[]) => string;
}

export function sayIn(display: Display): Say {
  return {
    force: (value) => formatForce(value, display),
    length: (value) => formatLength(value, display),
    pressure: (value) => formatPressure(value, display),
    ratio: (value) => value.toFixed(2),
    percent: (value) => `${Math.round(100 * value)} %`,
    slope: (value) =>
      display.units === "us" ? `${(12 * value).toFixed(3)} in per ft` : `${(1000 * value).toFixed(1)} mm per m`,
    list,
  };
}

export function list(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
