/** One entry a number: its formula, where it comes from, and the formula with a plan's values put in. */

import { feetEntries } from "./feet";
import { floorEntries, marginEntries } from "./floor";
import { pieceEntries } from "./piece";
import { pushingEntries } from "./pushing";
import { standEntries } from "./stands";
import { staticsEntries } from "./staticsLimit";
import { strengthEntries } from "./strength";
import { tippingEntries } from "./tipping";
import { weightEntries } from "./weights";

export const entries = {
  ...weightEntries,
  ...standEntries,
  ...tippingEntries,
  ...pushingEntries,
  ...strengthEntries,
  ...staticsEntries,
  ...feetEntries,
  ...pieceEntries,
  ...floorEntries,
  ...marginEntries,
} as const;

export type NumberName = keyof typeof entries;
