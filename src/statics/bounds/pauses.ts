/** Work that pauses, so that whoever runs it can look for messages, stop it, or show what is known so far. */

/** At a pause it may hand out a way to ask what is known so far, which holds until the work goes on. */
export type Pausing<Answer> = Generator<(() => Answer) | undefined, Answer>;

/** Runs such work to its end. */
export function ended<Answer>(work: Generator<unknown, Answer>): Answer {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
  }
}

/** The same work with its answer, and what is known so far, turned into something else. */
export function* mapped<From, To>(work: Pausing<From>, to: (answer: From) => To): Pausing<To> {
  for (;;) {
    const next = work.next();
    if (next.done === true) return to(next.value);
    const soFar = next.value;
    yield soFar && (() => to(soFar()));
  }
}
