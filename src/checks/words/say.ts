/** Numbers as the plan shows them, for sentences. */

import type { Display } from "../../plan";
import { formatQuantity } from "../../plan";

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
    force: (value) => formatQuantity(value, "force", display),
    length: (value) => formatQuantity(value, "length", display),
    pressure: (value) => formatQuantity(value, "pressure", display),
    ratio: (value) => value.toFixed(2),
    percent: (value) => `${Math.round(100 * value)} %`,
    slope: (value) => formatQuantity(value, "slope", display),
    list,
  };
}

export function list(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
