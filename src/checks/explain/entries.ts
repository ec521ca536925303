/** One entry a number: its formula, where it comes from, and the formula with a plan's values put in. */

import { pushingEntries } from "./pushing";
import { standEntries } from "./stands";
import { strengthEntries } from "./strength";
import { tippingEntries } from "./tipping";
import { weightEntries } from "./weights";

export const entries = {
  ...weightEntries,
  ...standEntries,
  ...tippingEntries,
  ...pushingEntries,
  ...strengthEntries,
} as const;

export type NumberName = keyof typeof entries;
