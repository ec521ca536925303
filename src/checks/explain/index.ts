/** Help on numbers: formula, source, and this plan's values put in. Page help, sheet and docs read it. */

import type { Plan, StandId } from "../../plan";
import type { TippingEdge } from "../../statics";
import { contextOf } from "../assemble";
import { floorPart } from "../engine";
import { knownValue } from "../parts";
import type { StepReport } from "../report";
import { entries, type NumberName } from "./entries";
import type { Entry, Filled, NumberUnit, Subject } from "./entry";
import { evaluate } from "./evaluate";
import { putting, shown } from "./text";

export type { NumberName } from "./entries";
export type { NumberUnit } from "./entry";
export { evaluate } from "./evaluate";

export interface Explanation {
  readonly label: string;
  readonly formula: string;
  readonly source: string;
  /** SI. */
  readonly unit: NumberUnit;
  readonly value: number;
  /** The value as shown beside the text. */
  readonly shown: string;
  /** The formula with values put in: + − * / ( ) and min, max, sqrt, hypot, log10, abs. Evaluates to what is shown. */
  readonly text: string;
}

export const numberNames = Object.keys(entries) as readonly NumberName[];

/** The entry itself, without a plan: label, formula, source and unit. */
export function entryOf(name: NumberName): Pick<Entry, "label" | "formula" | "source" | "unit"> {
  return entries[name];
}

/** How a number of a step came about; null where the step has no such number. */
export function explain(
  name: NumberName,
  plan: Plan,
  report: StepReport,
  about: {
    readonly stand?: StandId;
    readonly part?: number;
    readonly edge?: TippingEdge;
    readonly walkway?: number;
    readonly corner?: number;
  } = {},
): Explanation | null {
  const context = contextOf(plan, report);
  if (context === null) return null;
  const entry: Entry = entries[name];
  const stand = context.stands.find(({ placement }) => placement.stand === about.stand);
  const { part, edge, walkway, corner } = about;
  const floor = knownValue(floorPart(plan, context.layout));
  const subject: Subject = {
    context,
    ...(stand === undefined ? {} : { stand }),
    ...(part === undefined ? {} : { part }),
    ...(edge === undefined ? {} : { edge }),
    ...(walkway === undefined ? {} : { walkway }),
    ...(corner === undefined ? {} : { corner }),
    ...(floor === null ? {} : { floor }),
  };
  const found = filled(entry, subject);
  if (found === null) return null;
  const { label, formula, source, unit } = entry;
  const { value, text } = found;
  return { label, formula, source, unit, value, shown: shown(evaluate(text)), text };
}

/** Figures that numbers are put in with: as few as bring the result out to every figure shown. */
const figuresTried = [6, 8, 10, 12, 15, 17] as const;

/** With all figures in, what is left is a number halfway between two that are shown; the text then decides. */
function filled(entry: Entry, subject: Subject): Filled | null {
  let found: Filled | null = null;
  for (const figures of figuresTried) {
    found = entry.of(subject, putting(figures));
    if (found === null || shown(evaluate(found.text)) === shown(found.value)) return found;
  }
  return found;
}
