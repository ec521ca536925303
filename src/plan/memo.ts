/** Remembers the answer of `compute` for as long as the object it was computed from lives. */
export function memo<Source extends object, Answer>(compute: (source: Source) => Answer): (source: Source) => Answer {
  const known = new WeakMap<Source, { readonly answer: Answer }>();
  return (source) => {
    let entry = known.get(source);
    if (entry === undefined) {
      entry = { answer: compute(source) };
      known.set(source, entry);
    }
    return entry.answer;
  };
}
