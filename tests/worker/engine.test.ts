/** Long proofs in the worker: what is known so far is said once, and a stop gets through at the next pause. */

import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { certificatesPart, knownValue, type Part, type StepCertificates } from "../../src/checks";
import type { PlanDocument } from "../../src/plan";
import { createEngine, type Question, type Reply, type Subject } from "../../src/worker";
import { randomNumbers, randomPlan } from "../statics/bounds/plans";

const plan = randomPlan(randomNumbers(5), {
  stands: 5,
  masses: 10,
  beam: "elastic",
  levelTolerance: 0.0005,
  topTilt: 0.001,
});
// Complete already: nothing that a document may leave out is left out.
const subject: Subject = { kind: "document", revision: 1, document: plan as unknown as PlanDocument };
const question: Question = { part: "certificates", of: plan.steps[0]!.id };
const standsOf = (answer: Part<unknown>) => knownValue(answer as Part<StepCertificates>)!.stands!;

describe("a long proof", () => {
  /** By this clock every look at it is 5 ms later, so that what happens when does not hang on the machine. */
  let now = 0;
  beforeEach(() => {
    vi.spyOn(performance, "now").mockImplementation(() => (now += 5));
  });
  afterEach(() => vi.restoreAllMocks());

  test("says what is known so far after 250 ms, with its gap, then the whole: that of a run without pauses", async () => {
    const replies: Reply[] = [];
    await createEngine().answer(subject, [question], (reply) => replies.push(reply));
    expect(replies.map(({ whole }) => whole)).toEqual([false, true]);
    const [meanwhile, whole] = replies.map(({ answer }) => standsOf(answer));
    expect(meanwhile!.some(({ certified }) => certified === null)).toBe(true);
    meanwhile!.forEach(({ gap, outer }, i) => {
      expect(gap).toBeGreaterThanOrEqual(whole![i]!.gap);
      expect(outer.most).toBeGreaterThanOrEqual(whole![i]!.outer.most);
      expect(outer.least).toBeLessThanOrEqual(whole![i]!.outer.least);
    });
    const alone = certificatesPart({ ...plan, piece: { ...plan.piece } }, plan.steps[0]!);
    expect(whole).toEqual(standsOf(alone));
  });

  test("is stopped at the next pause", async () => {
    const engine = createEngine();
    const replies: Reply[] = [];
    let stoppedAt = 0;
    const fresh = { ...subject, document: { ...subject.document, piece: { ...subject.document.piece } } };
    const understood = await engine.answer(fresh, [question, question], (reply) => {
      replies.push(reply);
      stoppedAt = now;
      engine.stop();
    });
    expect(understood).toBe(true);
    expect(replies.map(({ whole }) => whole)).toEqual([false]);
    expect(now - stoppedAt).toBeLessThanOrEqual(10);
  });
});
