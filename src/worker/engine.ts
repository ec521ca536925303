/** The worker's side of the protocol: works through questions, and gives up when a newer subject has come. */

import {
  boundsWork,
  certificatesWork,
  computed,
  failed,
  known,
  marginsSearch,
  type Part,
  standingSearch,
  strengthWork,
} from "../checks";
import { complete, layoutOf, type Plan, type PlanDocument, stepOf } from "../plan";
import { breathe } from "./breathe";
import type { Engine, Question, Subject } from "./protocol";

/** Long work lets messages in this often, ms. */
const stint = 8;
/** What is known so far is said after so long, ms, where the work goes on. */
const patience = 250;

export function createEngine(): Engine {
  let last: { readonly revision: number; readonly document: PlanDocument } | null = null;
  let turn = 0;

  function documentOf(subject: Subject): PlanDocument | null {
    switch (subject.kind) {
      case "document":
        return subject.document;
      case "layouts":
        return last?.revision === subject.since ? { ...last.document, layouts: subject.layouts } : null;
      default:
        return subject satisfies never;
    }
  }

  return {
    answer: async (subject, questions, reply) => {
      turn += 1;
      const mine = turn;
      const stopped = async (): Promise<boolean> => {
        await breathe();
        return turn !== mine;
      };
      const document = documentOf(subject);
      if (document === null) return false;
      last = { revision: subject.revision, document };
      const plan = complete(document);
      for (const question of questions) {
        const say = (answer: Part<unknown>, whole: boolean) =>
          reply({ revision: subject.revision, question, answer, whole });
        const answer = (await stopped()) ? null : await workOn(plan, question, stopped, (soFar) => say(soFar, false));
        if (answer === null) return true;
        say(answer, true);
      }
      return true;
    },
    stop: () => {
      turn += 1;
    },
  };
}

/** The answer to a question; null where it was stopped before. What is known after a while is said once meanwhile. */
async function workOn(
  plan: Plan,
  question: Question,
  stopped: () => Promise<boolean>,
  sayMeanwhile: (answer: Part<unknown>) => void,
): Promise<Part<unknown> | null> {
  try {
    const work = working(plan, question);
    const begun = performance.now();
    let since = begun;
    let said = false;
    for (;;) {
      const next = work.next();
      if (next.done === true) return next.value;
      const now = performance.now();
      if (now - since < stint) continue;
      if (!said && now - begun >= patience && next.value !== undefined) {
        sayMeanwhile(next.value());
        said = true;
      }
      if (await stopped()) return null;
      since = performance.now();
    }
  } catch (error) {
    return failed(error instanceof Error ? error.message : String(error));
  }
}

/** Works on a question, pausing where it can be stopped; some pauses can be asked what is known so far. */
function* working(plan: Plan, question: Question): Generator<(() => Part<unknown>) | undefined, Part<unknown>> {
  switch (question.part) {
    case "floor":
      return computed.floor(plan, layoutOf(plan, question.of));
    case "bounds":
      return yield* boundsWork(plan, stepOf(plan, question.of));
    case "strength":
      return yield* strengthWork(plan, stepOf(plan, question.of));
    case "certificates":
      return yield* certificatesWork(plan, stepOf(plan, question.of));
    case "margins":
      return known(yield* marginsSearch(plan, question.of));
    case "standing":
      return yield* standingSearch(plan, stepOf(plan, question.of));
    default:
      return question satisfies never;
  }
}
