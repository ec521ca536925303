/**
 * The page's side: one request in flight, one waiting, the newest. Answers are remembered by the identity of what they
 * were computed from, so that they are there again after an undo, and stale ones are never shown as known.
 */

import { proxy, type Remote, wrap } from "comlink";
import { type Answers, failed, type Part, pending } from "../checks";
import { complete, type Layout, type LayoutId, type Plan, type PlanDocument, type Step, type StepId } from "../plan";
import type { Engine, LayoutPart, Question, Reply, StepPart, Subject } from "./protocol";

export interface EngineClient {
  /** What has been answered so far, for the report; pending with the last answer where nothing has for this plan. */
  readonly answers: Answers;
  /** Asks for what is not known of a document, the step in view first. `hasty`: only what is in view, while a gesture runs. */
  readonly ask: (document: PlanDocument, revision: number, step: StepId, hasty: boolean) => void;
  readonly stop: () => void;
}

export interface ClientOptions {
  readonly engine: Pick<Remote<Engine>, "answer" | "stop">;
  /** Called after each answer. */
  readonly answered: () => void;
}

/** Starts the worker and its client. */
export function startEngine(answered: () => void): EngineClient {
  const worker = new Worker(new URL("./entry.ts", import.meta.url), { type: "module", name: "engine" });
  return createClient({ engine: wrap<Engine>(worker), answered });
}

interface Request {
  readonly document: PlanDocument;
  readonly revision: number;
  readonly questions: readonly Question[];
}

export function createClient({ engine, answered }: ClientOptions): EngineClient {
  const known = new Remembered();
  let running: Request | null = null;
  let waiting: Request | null = null;
  let sent: { readonly revision: number; readonly document: PlanDocument } | null = null;

  function subjectOf({ document, revision }: Request): Subject {
    if (sent !== null && sameButLayouts(sent.document, document))
      return { kind: "layouts", revision, since: sent.revision, layouts: document.layouts };
    return { kind: "document", revision, document };
  }

  async function run(request: Request): Promise<void> {
    running = request;
    const plan = complete(request.document);
    const reply = proxy(({ question, answer }: Reply) => {
      known.keep(plan, question, answer);
      answered();
    });
    const subject = subjectOf(request);
    sent = { revision: request.revision, document: request.document };
    try {
      const understood = await engine.answer(subject, request.questions, reply);
      if (!understood) {
        sent = null;
        waiting ??= request;
      }
    } catch (error) {
      const why = `the engine stopped: ${error instanceof Error ? error.message : String(error)}`;
      for (const question of request.questions) known.keep(plan, question, failed(why));
      answered();
    }
    running = null;
    const next = waiting;
    waiting = null;
    if (next !== null) void run(next);
  }

  const stepPart =
    <Value>(part: StepPart) =>
    (plan: Plan, step: Step): Part<Value> =>
      known.find(plan, { part, of: step.id }) as Part<Value>;
  const layoutPart =
    <Value>(part: LayoutPart) =>
    (plan: Plan, layout: Layout): Part<Value> =>
      known.find(plan, { part, of: layout.id }) as Part<Value>;

  return {
    answers: {
      bounds: stepPart("bounds"),
      strength: stepPart("strength"),
      certificates: stepPart("certificates"),
      margins: stepPart("margins"),
      floor: layoutPart("floor"),
    },
    ask: (document, revision, step, hasty) => {
      const plan = complete(document);
      const questions = questionsOn(plan, step, hasty).filter((question) => !known.has(plan, question));
      if (questions.length === 0) {
        waiting = null;
        return;
      }
      const request = { document, revision, questions };
      if (running === null) void run(request);
      else {
        waiting = request;
        void engine.stop();
      }
    },
    stop: () => {
      waiting = null;
      void engine.stop();
    },
  };
}

/** What to ask of a plan, the step in view first, what takes longest last. */
function questionsOn(plan: Plan, inView: StepId, hasty: boolean): readonly Question[] {
  const view = plan.steps.filter(({ id }) => id === inView);
  const layoutsInView = plan.layouts.filter(({ id }) => view.some(({ layout }) => layout === id));
  const steps = hasty ? view : [...view, ...plan.steps.filter(({ id }) => id !== inView)];
  const layouts = hasty
    ? layoutsInView
    : [...layoutsInView, ...plan.layouts.filter((one) => !layoutsInView.includes(one))];
  const ofSteps = (part: StepPart): Question[] => steps.map(({ id }) => ({ part, of: id }));
  const ofLayouts = (part: LayoutPart): Question[] => layouts.map(({ id }) => ({ part, of: id }));
  return hasty
    ? [...ofSteps("bounds"), ...ofLayouts("floor")]
    : [
        ...ofSteps("bounds"),
        ...ofLayouts("floor"),
        ...ofSteps("strength"),
        ...ofSteps("certificates"),
        ...ofSteps("margins"),
      ];
}

const otherThanLayouts = [
  "title",
  "revision",
  "notes",
  "display",
  "piece",
  "standTypes",
  "stands",
  "steps",
  "bay",
  "criteria",
] as const satisfies readonly (keyof PlanDocument)[];

function sameButLayouts(a: PlanDocument, b: PlanDocument): boolean {
  return otherThanLayouts.every((key) => a[key] === b[key]);
}

/** Answers by the identity of what they read. */
class Remembered {
  private readonly entries = new WeakMap<
    object,
    { readonly keys: readonly unknown[]; readonly answer: Part<unknown> }[]
  >();
  private readonly last = new Map<string, unknown>();

  find(plan: Plan, question: Question): Part<unknown> {
    return this.exact(plan, question) ?? pending(this.last.get(nameOf(question)) ?? null);
  }

  has(plan: Plan, question: Question): boolean {
    return this.exact(plan, question) !== null;
  }

  keep(plan: Plan, question: Question, answer: Part<unknown>): void {
    if (answer.status === "pending") return;
    const { layout, keys } = this.keysOf(plan, question);
    if (layout === null) return;
    const list = this.entries.get(layout) ?? [];
    list.push({ keys, answer });
    this.entries.set(layout, list);
    if (answer.status === "known") this.last.set(nameOf(question), answer.value);
  }

  private exact(plan: Plan, question: Question): Part<unknown> | null {
    const { layout, keys } = this.keysOf(plan, question);
    if (layout === null) return null;
    const entry = this.entries.get(layout)?.find((one) => one.keys.every((key, index) => key === keys[index]));
    return entry?.answer ?? null;
  }

  /** What the answer to a question is computed from. */
  private keysOf(
    plan: Plan,
    { part, of }: Question,
  ): { readonly layout: Layout | null; readonly keys: readonly unknown[] } {
    const { piece, stands, standTypes, criteria, bay, steps } = plan;
    const common = [part, piece, stands, standTypes, criteria, bay];
    switch (part) {
      case "floor":
        return { layout: layoutWith(plan, of as LayoutId), keys: common };
      case "bounds":
      case "strength":
      case "certificates":
      case "margins": {
        const step = steps.find(({ id }) => id === of);
        return { layout: step === undefined ? null : layoutWith(plan, step.layout), keys: [...common, step] };
      }
      default:
        return part satisfies never;
    }
  }
}

const nameOf = ({ part, of }: Question): string => `${part} ${of}`;
const layoutWith = (plan: Plan, id: LayoutId): Layout | null => plan.layouts.find((layout) => layout.id === id) ?? null;
