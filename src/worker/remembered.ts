/** Answers by the identity of what they were computed from. */

import { type Part, pending } from "../checks";
import type { Layout, LayoutId, Plan } from "../plan";
import type { Question } from "./protocol";

export interface Remembered {
  /** The answer for exactly this plan, or pending with the last one. */
  readonly find: (plan: Plan, question: Question) => Part<unknown>;
  /** The answer for exactly this plan; null where there is none. */
  readonly exact: (plan: Plan, question: Question) => Part<unknown> | null;
  /** Pending with the last answer to such a question, of whatever plan. */
  readonly last: (question: Question) => Part<unknown>;
  readonly keep: (plan: Plan, question: Question, answer: Part<unknown>) => void;
}

interface Entry {
  readonly keys: readonly unknown[];
  readonly answer: Part<unknown>;
}

export function createRemembered(): Remembered {
  const entries = new WeakMap<Layout, Entry[]>();
  const newest = new Map<string, Part<unknown>>();
  const nothing = pending();
  const last = (question: Question): Part<unknown> => newest.get(nameOf(question)) ?? nothing;

  function exact(plan: Plan, question: Question): Part<unknown> | null {
    const { layout, keys } = readBy(plan, question);
    if (layout === null) return null;
    const same = (entry: Entry): boolean =>
      entry.keys.length === keys.length && entry.keys.every((key, index) => key === keys[index]);
    return entries.get(layout)?.find(same)?.answer ?? null;
  }

  return {
    exact,
    last,
    find: (plan, question) => exact(plan, question) ?? last(question),
    keep: (plan, question, answer) => {
      const { layout, keys } = readBy(plan, question);
      if (layout === null || answer.status === "pending") return;
      const list = entries.get(layout) ?? [];
      list.push({ keys, answer });
      entries.set(layout, list);
      if (answer.status === "known") newest.set(nameOf(question), pending(answer.value));
    },
  };
}

const nameOf = ({ part, of }: Question): string => `${part} ${of}`;

/** What the answer to a question is computed from; the layout holds the entry, so that it goes with the layout. */
function readBy(plan: Plan, question: Question): { readonly layout: Layout | null; readonly keys: readonly unknown[] } {
  const { piece, stands, standTypes, criteria, bay, steps } = plan;
  const keys = [nameOf(question), piece, stands, standTypes, criteria, bay];
  switch (question.part) {
    case "floor":
      return { layout: layoutWith(plan, question.of), keys };
    case "bounds":
    case "strength":
    case "certificates":
    case "margins":
    case "standing": {
      const step = steps.find(({ id }) => id === question.of);
      return { layout: step === undefined ? null : layoutWith(plan, step.layout), keys: [...keys, step] };
    }
    default:
      return question satisfies never;
  }
}

const layoutWith = (plan: Plan, id: LayoutId): Layout | null => plan.layouts.find((layout) => layout.id === id) ?? null;
