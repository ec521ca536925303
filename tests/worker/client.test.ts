import { describe, expect, test } from "vitest";
import { known, type Part } from "../../src/checks";
import { complete, type PlanDocument } from "../../src/plan";
import { edits, revisionOf } from "../../src/store";
import { createClient, createEngine, type Engine, type Question, type Reply, type Subject } from "../../src/worker";
import { beam, h1, layoutA, stepOne } from "../store/plans";

interface Asked {
  readonly subject: Subject;
  readonly questions: readonly Question[];
  readonly reply: (reply: Reply) => void;
  readonly end: (understood?: boolean) => Promise<void>;
}

/** An engine that answers when it is told to. */
function handEngine() {
  const asked: Asked[] = [];
  let stops = 0;
  const engine: Engine = {
    answer: (subject, questions, reply) =>
      new Promise((resolve) => {
        asked.push({
          subject,
          questions,
          reply,
          end: async (understood = true) => {
            resolve(understood);
            await new Promise((next) => setTimeout(next));
          },
        });
      }),
    stop: () => {
      stops += 1;
    },
  };
  return { engine: engine as never, asked, stops: () => stops };
}

const moved = (s: number, document: PlanDocument = beam): PlanDocument =>
  edits["stand.move"].run(document, { layout: layoutA, stand: h1, s, t: 0 });

function clientOn(hand: ReturnType<typeof handEngine>) {
  let answers = 0;
  const client = createClient({ engine: hand.engine, answered: () => (answers += 1) });
  const ask = (document: PlanDocument, hasty = false) =>
    client.ask({ document, revision: revisionOf(document), step: stepOne, hasty });
  const bounds = (document: PlanDocument): Part<unknown> => {
    const plan = complete(document);
    return client.answers.bounds(plan, plan.steps[0]!);
  };
  return { client, ask, bounds, answers: () => answers };
}

const boundsOf: Question = { part: "bounds", of: stepOne };
const answer = { boxTips: null, stands: [] };

describe("the engine's client", () => {
  test("one request is in flight, one waits, the newest; the one between is never sent", async () => {
    const hand = handEngine();
    const { ask } = clientOn(hand);
    const documents = [2, 3, 4].map((s) => moved(s));
    for (const document of documents) ask(document);
    expect(hand.asked.map(({ subject }) => subject.revision)).toEqual([revisionOf(documents[0]!)]);
    expect(hand.stops()).toBe(2);
    await hand.asked[0]!.end();
    expect(hand.asked.map(({ subject }) => subject.revision)).toEqual([documents[0]!, documents[2]!].map(revisionOf));
    await hand.asked[1]!.end();
    expect(hand.asked).toHaveLength(2);
  });

  test("the step in view is asked first, and while a gesture runs nothing else", () => {
    const hand = handEngine();
    const { ask } = clientOn(hand);
    ask(beam, true);
    expect(hand.asked[0]!.questions).toEqual([boundsOf, { part: "floor", of: layoutA }]);
    const whole = handEngine();
    clientOn(whole).ask(beam);
    expect(whole.asked[0]!.questions.slice(0, 2)).toEqual([boundsOf, { part: "bounds", of: "weld" }]);
    expect(new Set(whole.asked[0]!.questions.map(({ part }) => part))).toEqual(
      new Set(["bounds", "floor", "strength", "certificates", "margins"]),
    );
  });

  test("an answer is known for what it was computed from, and again after going back; for another plan it is the last", async () => {
    const hand = handEngine();
    const { ask, bounds, answers } = clientOn(hand);
    expect(bounds(beam)).toEqual({ status: "pending", last: null });
    ask(beam);
    hand.asked[0]!.reply({ revision: 0, question: boundsOf, answer: known(answer), whole: true });
    expect(answers()).toBe(1);
    expect(bounds(beam)).toEqual(known(answer));
    expect(bounds(moved(3))).toEqual({ status: "pending", last: answer });
    expect(bounds(moved(1, moved(3)))).toEqual({ status: "pending", last: answer });
    expect(bounds(beam)).toEqual(known(answer));
    // The title is read by no part: the answer stays.
    expect(bounds({ ...beam, title: "Another" })).toEqual(known(answer));
    await hand.asked[0]!.end();
    ask(beam);
    expect(hand.asked[1]!.questions).not.toContainEqual(boundsOf);
  });

  test("what is known so far is shown, and the question stays to be asked until its whole answer is here", async () => {
    const hand = handEngine();
    const { ask, bounds } = clientOn(hand);
    ask(beam);
    const finer = { boxTips: null, stands: [1] };
    hand.asked[0]!.reply({ revision: 0, question: boundsOf, answer: known(answer), whole: false });
    expect(bounds(beam)).toEqual(known(answer));
    await hand.asked[0]!.end();
    ask(beam);
    expect(hand.asked[1]!.questions).toContainEqual(boundsOf);
    hand.asked[1]!.reply({ revision: 0, question: boundsOf, answer: known(finer), whole: true });
    expect(bounds(beam)).toEqual(known(finer));
    await hand.asked[1]!.end();
    ask(beam);
    expect(hand.asked[2]!.questions).not.toContainEqual(boundsOf);
  });

  test("the progress counts whole answers; what a person stopped is asked again only when they go on or change the plan", async () => {
    const hand = handEngine();
    const { client, ask } = clientOn(hand);
    expect(client.progress()).toEqual({ status: "done" });
    ask(beam);
    const of = hand.asked[0]!.questions.length;
    expect(client.progress()).toEqual({ status: "working", answered: 0, of });
    hand.asked[0]!.reply({ revision: 0, question: boundsOf, answer: known(answer), whole: false });
    expect(client.progress()).toEqual({ status: "working", answered: 0, of });
    hand.asked[0]!.reply({ revision: 0, question: boundsOf, answer: known(answer), whole: true });
    expect(client.progress()).toEqual({ status: "working", answered: 1, of });
    client.stop();
    expect(hand.stops()).toBe(1);
    await hand.asked[0]!.end();
    expect(client.progress()).toEqual({ status: "stopped" });
    ask(beam);
    expect(hand.asked).toHaveLength(1);
    client.goOn();
    expect(hand.asked[1]!.questions).toHaveLength(of - 1);
    client.stop();
    await hand.asked[1]!.end();
    const other = moved(3);
    ask(other);
    expect(hand.asked).toHaveLength(3);
    expect(client.progress()).toMatchObject({ status: "working" });
    await hand.asked[2]!.end();
    expect(client.progress()).toEqual({ status: "done" });
    client.stop();
    ask(other);
    expect(hand.asked).toHaveLength(3);
    // A map that is asked for after a stop is meant to come.
    client.ask({ document: other, revision: revisionOf(other), step: stepOne, hasty: false, standing: true });
    expect(hand.asked).toHaveLength(4);
  });

  test("where only layouts have changed since the last, only they are sent", async () => {
    const hand = handEngine();
    const { ask } = clientOn(hand);
    ask(beam);
    await hand.asked[0]!.end();
    const next = moved(4);
    ask(next);
    expect(hand.asked[1]!.subject).toEqual({
      kind: "layouts",
      revision: revisionOf(next),
      since: revisionOf(beam),
      layouts: next.layouts,
    });
    await hand.asked[1]!.end(false);
    expect(hand.asked[2]!.subject).toEqual({ kind: "document", revision: revisionOf(next), document: next });
  });

  test("an engine that dies fails what was asked, in words", async () => {
    const client = createClient({
      engine: { answer: () => Promise.reject(new Error("out of memory")), stop: () => {} } as never,
      answered: () => {},
    });
    client.ask({ document: beam, revision: revisionOf(beam), step: stepOne, hasty: false });
    await new Promise((next) => setTimeout(next));
    const plan = complete(beam);
    expect(client.answers.bounds(plan, plan.steps[0]!)).toEqual({
      status: "failed",
      why: "the engine stopped: out of memory",
    });
  });
});

describe("the map of where a person may stand", () => {
  const map: Question = { part: "standing", of: stepOne };

  test("is asked for only where it is to be seen, and then it waits for no proof", async () => {
    const hand = handEngine();
    const { client, ask } = clientOn(hand);
    ask(beam);
    expect(hand.asked[0]!.questions).not.toContainEqual(map);
    client.ask({ document: beam, revision: revisionOf(beam), step: stepOne, hasty: false, standing: true });
    expect(hand.stops()).toBe(1);
    await hand.asked[0]!.end();
    const order = hand.asked[1]!.questions.map(({ part }) => part);
    expect(order).toContain("standing");
    expect(order.indexOf("standing")).toBeLessThan(order.indexOf("certificates"));
  });

  test("the engine answers it", async () => {
    const replies: Reply[] = [];
    await createEngine().answer({ kind: "document", revision: 1, document: beam }, [map], (reply) =>
      replies.push(reply),
    );
    expect(replies.map(({ answer: { status } }) => status)).toEqual(["known"]);
  });
});

describe("the engine", () => {
  test("gives up when a newer subject has come, and answers that one whole", async () => {
    const engine = createEngine();
    const replies: Reply[] = [];
    const questions: Question[] = [
      { part: "floor", of: layoutA },
      { part: "floor", of: layoutA },
    ];
    const first = engine.answer({ kind: "document", revision: 1, document: beam }, questions, (reply) =>
      replies.push(reply),
    );
    const second = engine.answer(
      { kind: "layouts", revision: 2, since: 1, layouts: moved(3).layouts },
      questions,
      (reply) => replies.push(reply),
    );
    expect(await Promise.all([first, second])).toEqual([true, true]);
    expect(replies.map(({ revision }) => revision)).toEqual([2, 2]);
    expect(replies.map(({ answer: { status } }) => status)).toEqual(["known", "known"]);
  });

  test("does not know layouts of a document that it never had", async () => {
    const engine = createEngine();
    expect(await engine.answer({ kind: "layouts", revision: 2, since: 1, layouts: [] }, [], () => {})).toBe(false);
  });
});
