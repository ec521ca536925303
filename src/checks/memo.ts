import type { Pausing } from "../statics";

/**
 * Remembers answers by the identity of what they were computed from: objects weakly, primitives by value. Two calls
 * with the same objects give the same answer object, so unchanged sub-objects of a plan keep their answers.
 */
export function memoByIdentity<Arguments extends readonly unknown[], Answer>(
  keysOf: (...args: Arguments) => readonly [object, ...unknown[]],
  compute: (...args: Arguments) => Answer,
): (...args: Arguments) => Answer {
  const root = new Branch<Answer>();
  return (...args) => {
    let branch = root;
    for (const key of keysOf(...args)) branch = branch.next(key);
    if (branch.leaf === undefined) branch.leaf = { answer: compute(...args) };
    return branch.leaf.answer;
  };
}

/** The same for work that pauses: what is given up before its end is not remembered. */
export function workByIdentity<Arguments extends readonly unknown[], Answer>(
  keysOf: (...args: Arguments) => readonly [object, ...unknown[]],
  work: (...args: Arguments) => Pausing<Answer>,
): (...args: Arguments) => Pausing<Answer> {
  const placeOf = memoByIdentity(keysOf, (): { done: { readonly answer: Answer } | null } => ({ done: null }));
  return function* (...args) {
    const place = placeOf(...args);
    place.done ??= { answer: yield* work(...args) };
    return place.done.answer;
  };
}

class Branch<Answer> {
  leaf: { readonly answer: Answer } | undefined;
  private readonly objects = new WeakMap<object, Branch<Answer>>();
  private readonly primitives = new Map<unknown, Branch<Answer>>();

  next(key: unknown): Branch<Answer> {
    const isObject = (typeof key === "object" && key !== null) || typeof key === "function";
    const known = isObject ? this.objects.get(key) : this.primitives.get(key);
    if (known !== undefined) return known;
    const branch = new Branch<Answer>();
    if (isObject) this.objects.set(key, branch);
    else this.primitives.set(key, branch);
    return branch;
  }
}
