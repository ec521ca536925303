/** What the page and the worker say to each other. Plans go over as documents; both sides complete them alike. */

import type { Answers, Part } from "../checks";
import type { LayoutDocument, LayoutId, PlanDocument, StepId } from "../plan";

/** The parts that take longer than a frame, by what they speak of. */
export type LayoutPart = "floor";
export type StepPart = Exclude<keyof Answers, LayoutPart>;

export type Question =
  | { readonly part: StepPart; readonly of: StepId }
  | { readonly part: LayoutPart; readonly of: LayoutId };

/** What is to be answered: the whole document, or only the layouts where nothing else has changed since the last. */
export type Subject =
  | { readonly kind: "document"; readonly revision: number; readonly document: PlanDocument }
  | {
      readonly kind: "layouts";
      readonly revision: number;
      readonly since: number;
      readonly layouts: readonly LayoutDocument[];
    };

export interface Reply {
  readonly revision: number;
  readonly question: Question;
  readonly answer: Part<unknown>;
  /** false = what is known so far, valid as far as it goes; the whole answer follows unless the work is stopped. */
  readonly whole: boolean;
}

/** The worker's side. */
export interface Engine {
  /**
   * Answers the questions in order, each by a call of `reply` as soon as it is known, and long ones by one before. Looks for a newer subject or a stop
   * between answers, and in long ones every few ms, and gives up then. Resolves when no more replies will come; false
   * where it does not know the document that the layouts belong to.
   */
  readonly answer: (
    subject: Subject,
    questions: readonly Question[],
    reply: (reply: Reply) => void,
  ) => Promise<boolean>;
  readonly stop: () => void;
}
