/**
 * The page's side: one request in flight, one waiting, the newest. Answers are remembered by the identity of what they
 * were computed from, so that they are there again after an undo, and stale ones are never shown as known.
 */

import { proxy, type Remote, wrap } from "comlink";
import { type Answers, failed, type Part } from "../checks";
import { complete, type Layout, type Plan, type PlanDocument, type Step, type StepId } from "../plan";
import address from "./entry?chunk";
import type { Engine, LayoutPart, Question, Reply, StepPart, Subject } from "./protocol";
import { createRemembered } from "./remembered";

export interface Ask {
  readonly document: PlanDocument;
  readonly revision: number;
  /** The step in view: answered first. */
  readonly step: StepId;
  /** Only what is in view, while a gesture runs. */
  readonly hasty: boolean;
  /** The map of where a person may stand is to be seen. */
  readonly standing?: boolean;
}

/** How far the answers to what was asked last have come. */
export type Progress =
  | { readonly status: "done" }
  | { readonly status: "working"; readonly answered: number; readonly of: number }
  /** A person has stopped it; what is not known of this plan stays unknown until they go on, change it or look at more of it. */
  | { readonly status: "stopped" };

export interface EngineClient {
  /** What has been answered so far, for the report; pending with the last answer where nothing has for this plan. */
  readonly answers: Answers;
  /** The same while a gesture runs: always pending with the newest answer, so that a frame costs the same whatever is known. */
  readonly inPassing: Answers;
  /** Asks for what is not known yet. */
  readonly ask: (ask: Ask) => void;
  readonly progress: () => Progress;
  /** Stops the work on what was asked last, until `goOn` or another question. */
  readonly stop: () => void;
  readonly goOn: () => void;
}

export interface ClientOptions {
  readonly engine: Pick<Remote<Engine>, "answer" | "stop">;
  /** Called after each answer. */
  readonly answered: () => void;
  /** Called whenever the progress is another. */
  readonly progressed?: () => void;
}

/** Starts the worker and its client. */
export function startEngine(answered: () => void, progressed: () => void): EngineClient {
  const worker = new Worker(address, { type: "module", name: "engine" });
  return createClient({ engine: wrap<Engine>(worker), answered, progressed });
}

export function createClient({ engine, answered, progressed = () => {} }: ClientOptions): EngineClient {
  const remembered = createRemembered();
  let running: Ask | null = null;
  let waiting: Ask | null = null;
  let last: Ask | null = null;
  let halted: Ask | null = null;
  let progress: Progress = { status: "done" };
  let sent: { readonly revision: number; readonly document: PlanDocument } | null = null;

  function subjectOf({ document, revision }: Ask): Subject {
    if (sent !== null && sameButLayouts(sent.document, document))
      return { kind: "layouts", revision, since: sent.revision, layouts: document.layouts };
    return { kind: "document", revision, document };
  }

  function setProgress(next: Progress): void {
    progress = next;
    progressed();
  }

  function next(): void {
    running = null;
    const following = waiting;
    waiting = null;
    setProgress({ status: halted === null ? "done" : "stopped" });
    if (following !== null) start(following);
  }

  function start(ask: Ask): void {
    const plan = complete(ask.document);
    const questions = questionsOf(plan, ask).filter((question) => !remembered.knows(plan, question));
    if (questions.length > 0) void run(ask, plan, questions);
  }

  async function run(ask: Ask, plan: Plan, questions: readonly Question[]): Promise<void> {
    running = ask;
    let answeredWholly = 0;
    setProgress({ status: "working", answered: 0, of: questions.length });
    const reply = proxy(({ question, answer, whole }: Reply) => {
      remembered.keep(plan, question, answer, whole);
      if (whole) answeredWholly += 1;
      setProgress({ status: "working", answered: answeredWholly, of: questions.length });
      answered();
    });
    const subject = subjectOf(ask);
    sent = { revision: ask.revision, document: ask.document };
    try {
      const understood = await engine.answer(subject, questions, reply);
      if (!understood) {
        sent = null;
        waiting ??= ask;
      }
    } catch (error) {
      const why = `the engine stopped: ${error instanceof Error ? error.message : String(error)}`;
      for (const question of questions) remembered.keep(plan, question, failed(why), true);
      answered();
    }
    next();
  }

  function ask(asked: Ask): void {
    last = asked;
    if (halted !== null && sameWish(asked, halted)) return;
    halted = null;
    if (progress.status === "stopped") setProgress({ status: "done" });
    if (running === null) {
      start(asked);
      return;
    }
    waiting = asked;
    // What is under way for the same document goes on, unless a map is to be seen; further questions come after.
    const more = asked.standing === true && running.standing !== true;
    if (running.revision !== asked.revision || running.hasty !== asked.hasty || more) void engine.stop();
  }

  const answersBy = (find: (plan: Plan, question: Question) => Part<unknown>): Answers => {
    const stepPart =
      <Value>(part: StepPart) =>
      (plan: Plan, step: Step): Part<Value> =>
        find(plan, { part, of: step.id }) as Part<Value>;
    const layoutPart =
      <Value>(part: LayoutPart) =>
      (plan: Plan, layout: Layout): Part<Value> =>
        find(plan, { part, of: layout.id }) as Part<Value>;
    return {
      bounds: stepPart("bounds"),
      strength: stepPart("strength"),
      certificates: stepPart("certificates"),
      margins: stepPart("margins"),
      standing: stepPart("standing"),
      floor: layoutPart("floor"),
    };
  };

  return {
    answers: answersBy(remembered.find),
    inPassing: answersBy((_, question) => remembered.last(question)),
    ask,
    progress: () => progress,
    stop: () => {
      waiting = null;
      halted = last;
      void engine.stop();
    },
    goOn: () => {
      halted = null;
      setProgress({ status: "done" });
      if (last !== null) ask(last);
    },
  };
}

/** Whether two ask for the same of the same plan. */
function sameWish(a: Ask, b: Ask): boolean {
  return a.revision === b.revision && a.step === b.step && (a.standing ?? false) === (b.standing ?? false);
}

/** What to ask of a plan, the step in view first, what takes longest last. */
function questionsOf(plan: Plan, { step: inView, hasty, standing = false }: Ask): readonly Question[] {
  const view = plan.steps.filter(({ id }) => id === inView);
  const layoutsInView = plan.layouts.filter(({ id }) => view.some(({ layout }) => layout === id));
  const steps = hasty ? view : [...view, ...plan.steps.filter(({ id }) => id !== inView)];
  const layouts = hasty
    ? layoutsInView
    : [...layoutsInView, ...plan.layouts.filter((layout) => !layoutsInView.includes(layout))];
  const ofSteps = (part: StepPart): Question[] => steps.map(({ id }) => ({ part, of: id }));
  const ofLayouts = (part: LayoutPart): Question[] => layouts.map(({ id }) => ({ part, of: id }));
  if (hasty) return [...ofSteps("bounds"), ...ofLayouts("floor")];
  return [
    ...ofSteps("bounds"),
    ...ofLayouts("floor"),
    ...(standing ? [{ part: "standing", of: inView } as const] : []),
    // The strength is looked at over what the proof leaves.
    ...steps.flatMap(({ id }): Question[] => [
      { part: "certificates", of: id },
      { part: "strength", of: id },
    ]),
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
