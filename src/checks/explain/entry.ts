/** What an entry of the help on numbers is. */

import type { FloorReport } from "../../floor";
import type { TippingEdge } from "../../statics";
import type { StandContext, StepContext } from "../context";
import type { Put } from "./text";

export type NumberUnit = "N" | "m" | "Pa" | "N·m" | "1";

/** A number, and its formula with values put in. */
export interface Filled {
  readonly value: number;
  readonly text: string;
}

/** What a formula is put in for. */
export interface Subject {
  readonly context: StepContext;
  readonly stand?: StandContext;
  readonly edge?: TippingEdge;
  /** Index of the part. */
  readonly part?: number;
  /** Index of the walkway. */
  readonly walkway?: number;
  /** Index of the corner of the outline. */
  readonly corner?: number;
  /** The floor of the step's layout. */
  readonly floor?: FloorReport;
}

export interface Entry {
  /** What it is called on the screen. */
  readonly label: string;
  /** In words and symbols; SI units. */
  readonly formula: string;
  readonly source: string;
  readonly unit: NumberUnit;
  /** The number itself and the formula with values put in; null where this plan has no such number. */
  readonly of: (subject: Subject, put: Put) => Filled | null;
}
