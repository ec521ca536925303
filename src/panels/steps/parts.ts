/** Half-built pieces: stretches that are there in a step, and the cuts between them that carry nothing. */

export type Stretch = readonly [number, number];

/** A cut at s: the stretch that holds it becomes two. null (the whole piece) is one stretch over the length. */
export function cutAt(parts: readonly Stretch[] | null, length: number, s: number): readonly Stretch[] | null {
  const before = parts ?? [[0, length] as const];
  const after = before.flatMap(([from, to]): readonly Stretch[] =>
    s > from && s < to
      ? [
          [from, s],
          [s, to],
        ]
      : [[from, to]],
  );
  return tidied(after, length);
}

/** The joint between stretch `index` and the next one is made: from this step on it carries. Only where they touch. */
export function joinAfter(parts: readonly Stretch[], length: number, index: number): readonly Stretch[] | null {
  const [left, right] = [parts[index], parts[index + 1]];
  if (left === undefined || right === undefined || left[1] !== right[0]) return parts;
  return tidied([...parts.slice(0, index), [left[0], right[1]], ...parts.slice(index + 2)], length);
}

/** The whole piece as one stretch is written as null. */
export function tidied(parts: readonly Stretch[], length: number): readonly Stretch[] | null {
  const [only] = parts;
  return parts.length === 1 && only?.[0] === 0 && only[1] === length ? null : parts;
}
