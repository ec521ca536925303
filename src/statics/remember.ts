/** Answers kept for one first key; a layout is used by no more steps than this, or the oldest are found again. */
const mostAnswers = 32;

/**
 * Remembers answers by the identity of everything they are computed from. They live as long as the first key: choose the
 * one that is replaced most often, so that nothing is kept of plans that are gone.
 */
export function remember<Keys extends readonly [object, ...unknown[]], Answer>(
  compute: (...keys: Keys) => Answer,
): (...keys: Keys) => Answer {
  const known = new WeakMap<object, { readonly keys: Keys; readonly answer: Answer }[]>();
  return (...keys) => {
    let entries = known.get(keys[0]);
    if (entries === undefined) {
      entries = [];
      known.set(keys[0], entries);
    }
    for (const entry of entries) if (sameKeys(entry.keys, keys)) return entry.answer;
    const answer = compute(...keys);
    if (entries.length === mostAnswers) entries.shift();
    entries.push({ keys, answer });
    return answer;
  };
}

function sameKeys(first: readonly unknown[], second: readonly unknown[]): boolean {
  for (let index = 0; index < first.length; index++) if (first[index] !== second[index]) return false;
  return true;
}
