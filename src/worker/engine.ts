/** The worker's side of the protocol: works through questions, and gives up when a newer subject has come. */

import { computed, failed, type Part } from "../checks";
import { complete, layoutOf, type Plan, type PlanDocument, stepOf } from "../plan";
import type { Engine, Question, Subject } from "./protocol";

/** Lets waiting messages in. */
function breathe(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

export function createEngine(): Engine {
  let known: { readonly revision: number; readonly document: PlanDocument } | null = null;
  let turn = 0;

  function documentOf(subject: Subject): PlanDocument | null {
    switch (subject.kind) {
      case "document":
        return subject.document;
      case "layouts":
        return known?.revision === subject.since ? { ...known.document, layouts: subject.layouts } : null;
      default:
        return subject satisfies never;
    }
  }

  return {
    answer: async (subject, questions, reply) => {
      turn += 1;
      const mine = turn;
      const document = documentOf(subject);
      if (document === null) return false;
      known = { revision: subject.revision, document };
      const plan = complete(document);
      for (const question of questions) {
        await breathe();
        if (turn !== mine) return true;
        reply({ revision: subject.revision, question, answer: answerTo(plan, question) });
      }
      return true;
    },
    stop: () => {
      turn += 1;
    },
  };
}

function answerTo(plan: Plan, question: Question): Part<unknown> {
  try {
    switch (question.part) {
      case "floor":
        return computed.floor(plan, layoutOf(plan, question.of));
      case "bounds":
      case "strength":
      case "certificates":
      case "margins":
        return computed[question.part](plan, stepOf(plan, question.of));
      default:
        return question satisfies never;
    }
  } catch (error) {
    return failed(error instanceof Error ? error.message : String(error));
  }
}
