/** The shape of a plan file, version 1: every key in the order in which it is written, with what it may hold. */

import type { LayoutDocument, PlanDocument, StandDocument, StandTypeDocument, StepDocument } from "../../document";
import type { Display } from "../../types";
import { list, number, object, oneOf, optional, orNull, text } from "../shape";
import { bay } from "./bay";
import { criteria } from "./criteria";
import { piece } from "./piece";
import { stand, standType } from "./stands";
import { layout, step } from "./steps";
import { ownIds } from "./values";

export const formatName = "trestleboard-plan";
export const currentVersion = 1;

export const planShape = object<PlanDocument>("a plan, an object", {
  format: oneOf(formatName),
  version: oneOf(currentVersion),
  title: text,
  revision: optional(
    number("", { words: " of 0 or more without a fraction", holds: (value) => Number.isInteger(value) && value >= 0 }),
  ),
  notes: optional(text),
  display: optional(
    object<Partial<Display>>("an object with units, length and force", {
      units: optional(oneOf("us", "metric")),
      length: optional(orNull(oneOf("ft-in", "in", "mm", "m"))),
      force: optional(orNull(oneOf("lb", "kip", "kg", "t", "N", "kN"))),
    }),
  ),
  piece,
  standTypes: list<readonly StandTypeDocument[]>("a list of stand types", standType, { rule: ownIds }),
  stands: list<readonly StandDocument[]>("a list of stands", stand, { rule: ownIds }),
  layouts: list<readonly LayoutDocument[]>("a list of layouts", layout, { rule: ownIds }),
  steps: list<readonly StepDocument[]>("a list of at least one step", step, { least: 1, rule: ownIds }),
  bay: optional(orNull(bay)),
  criteria: optional(criteria),
});
