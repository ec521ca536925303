/** Answers by the identity of what they were computed from. */

import { type Part, pending } from "../checks";
import type { Layout, LayoutId, Plan } from "../plan";
import type { Question } from "./protocol";

export interface Remembered {
  /** The answer for exactly this plan, be it whole or not, or pending with the last one. */
  readonly find: (plan: Plan, question: Question) => Part<unknown>;
  /** Whether the whole answer for exactly this plan is here. */
  readonly knows: (plan: Plan, question: Question) => boolean;
  /** Pending with the last answer to such a question, of whatever plan. */
  readonly last: (question: Question) => Part<unknown>;
  /** @param whole false = only what is known so far: the question is still to be asked. */
  readonly keep: (plan: Plan, question: Question, answer: Part<unknown>, whole: boolean) => void;
}

interface Entry {
  readonly keys: readonly unknown[];
  readonly answer: Part<unknown>;
  readonly whole: boolean;
}

export function createRemembered(): Remembered {
  const entries = new WeakMap<Layout, Entry[]>();
  const newest = new Map<string, Part<unknown>>();
  const nothing = pending();
  const last = (question: Question): Part<unknown> => newest.get(nameOf(question)) ?? nothing;

  function entryFor(plan: Plan, question: Question): Entry | null {
    const { layout, keys } = readBy(plan, question);
    if (layout === null) return null;
    return entries.get(layout)?.find((entry) => sameKeys(entry.keys, keys)) ?? null;
  }

  return {
    last,
    knows: (plan, question) => entryFor(plan, question)?.whole ?? false,
    find: (plan, question) => entryFor(plan, question)?.answer ?? last(question),
    keep: (plan, question, answer, whole) => {
      const { layout, keys } = readBy(plan, question);
      if (layout === null || answer.status === "pending") return;
      const others = (entries.get(layout) ?? []).filter((entry) => !sameKeys(entry.keys, keys));
      entries.set(layout, [...others, { keys, answer, whole }]);
      if (answer.status === "known") newest.set(nameOf(question), pending(answer.value));
    },
  };
}

const sameKeys = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((key, index) => key === b[index]);

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
