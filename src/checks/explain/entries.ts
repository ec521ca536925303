/** One entry a number: its formula, where it comes from, and the formula with a plan's values put in. */

import { pushingEntries } from "./pushing";
import { standEntries } from "./stands";
import { tippingEntries } from "./tipping";
import { weightEntries } from "./weights";

export const entries = { ...weightEntries, ...standEntries, ...tippingEntries, ...pushingEntries } as const;

export type NumberName = keyof typeof entries;
