/** Edits of the plan as a whole: title, units, criteria, bay, and the job's steps. */

import type { BayDocument, CriteriaChanges, Display, PlanDocument, StepDocument, StepId } from "../../plan";
import { type Changes, changed, kept, reordered, withItem } from "../change";
import { edit } from "./command";
import { openJointAt, toggledJoint } from "./parts";

export const planEdits = {
  "plan.title": edit<{ title: string }>({
    label: () => "Change the title",
    run: (document, { title }) => changed(document, { title }),
  }),
  "plan.notes": edit<{ notes: string }>({
    label: () => "Change the notes",
    run: (document, { notes }) => changed(document, { notes }),
  }),
  "plan.units": edit<{ display: Changes<Display> }>({
    label: () => "Change the units",
    run: (document, { display }) => changed(document, { display: changed(document.display ?? {}, display) }),
  }),
  /** Sets criteria; one given as `undefined` returns to its default. */
  "plan.criteria": edit<{ change: Changes<CriteriaChanges> }>({
    label: () => "Change a criterion",
    run: (document, { change }) => changed(document, { criteria: changed(document.criteria ?? {}, change) }),
  }),
  /** null takes the bay away. */
  "plan.bay": edit<{ bay: BayDocument | null; label?: string }>({
    label: ({ label }) => label ?? "Change the bay",
    run: (document, { bay }) => changed(document, { bay }),
  }),

  /** Adds a step after another, or at the end. */
  "step.add": edit<{ step: StepDocument; after?: StepId }>({
    label: ({ step }) => `Add step ${step.name}`,
    run: (document, { step, after }) => {
      const index = document.steps.findIndex(({ id }) => id === after);
      const at = index < 0 ? document.steps.length : index + 1;
      return changed(document, { steps: [...document.steps.slice(0, at), step, ...document.steps.slice(at)] });
    },
  }),
  /** Any keys of a step; `undefined` takes an optional key out. */
  "step.change": edit<{ step: StepId; change: Changes<Omit<StepDocument, "id">>; label?: string }>({
    label: ({ step, label }, document) => label ?? `Change step ${nameOfStep(document, step)}`,
    run: (document, { step, change }) =>
      changed(document, { steps: withItem(document.steps, step, (item) => changed(item, change)) }),
  }),
  /** Opens a joint in a step; one that is open is welded, from that step on. */
  "step.joint": edit<{ step: StepId; s: number; words: string }>({
    label: ({ step, s, words }, document) =>
      openJointAt(document.steps.find(({ id }) => id === step)?.parts ?? null, s) === null
        ? `Open a joint at ${words}`
        : `Weld the joint at ${words}`,
    run: (document, { step, s }) => toggledJoint(document, step, s),
  }),
  "step.order": edit<{ step: StepId; to: number }>({
    label: ({ step }, document) => `Move step ${nameOfStep(document, step)}`,
    run: (document, { step, to }) =>
      changed(document, {
        steps: reordered(
          document.steps,
          document.steps.findIndex(({ id }) => id === step),
          to,
        ),
      }),
  }),
  /** Removes a step; the last one stays, a plan has at least one. */
  "step.remove": edit<{ step: StepId }>({
    label: ({ step }, document) => `Remove step ${nameOfStep(document, step)}`,
    run: (document, { step }) =>
      document.steps.length === 1
        ? document
        : changed(document, { steps: kept(document.steps, ({ id }) => id !== step) }),
  }),
};

function nameOfStep(document: PlanDocument, step: StepId): string {
  return document.steps.find(({ id }) => id === step)?.name ?? step;
}
