/** Where the marks of a reaction band lie: fractions of its width. Forces in N; null = not known. */

export interface BandNumbers {
  /** As planned. */
  readonly level: number | null;
  /** Lightest and heaviest. */
  readonly least: number | null;
  readonly most: number | null;
  /** Whatever the floor. */
  readonly staticsLeast: number | null;
  readonly staticsMost: number | null;
  readonly rating: number | null;
  /** On every reaction before it is held against the rating; 1 where nothing is set down. */
  readonly setDownFactor: number;
}

export interface BandMarks {
  /** The force at the right edge of the picture, N. */
  readonly full: number;
  /** The end of the bar: the rating; null where it is not known, then the bar is open. */
  readonly rating: number | null;
  /** The reaction that reaches the rating once the set-down factor is on it. */
  readonly limit: number | null;
  readonly level: number | null;
  readonly span: readonly [number, number] | null;
  /** The stretch of the span beyond the limit. */
  readonly over: readonly [number, number] | null;
  readonly statics: readonly [number, number] | null;
  /** The statics limit lies beyond the right edge. */
  readonly staticsCut: boolean;
}

/** Room to the right of the rating, as a share of it, so that passing it can be seen. */
const beyondRating = 0.15;
/** Room to the right of the heaviest reaction. */
const beyondMost = 0.05;

/**
 * The rating sets the scale, so that bands of equal stands compare at a glance; only a reaction beyond it stretches
 * the scale. The statics limits never do: they are cut at the edge, and `staticsCut` says so.
 */
export function bandMarks(numbers: BandNumbers): BandMarks {
  const { level, least, most, staticsLeast, staticsMost, rating, setDownFactor } = numbers;
  const greatest = Math.max(level ?? 0, most ?? 0);
  const full = Math.max(
    rating === null ? (staticsMost ?? 0) : rating * (1 + beyondRating),
    greatest * (1 + beyondMost),
    Number.MIN_VALUE,
  );
  const at = (force: number) => Math.min(1, Math.max(0, force / full));
  const limit = rating === null ? null : rating / setDownFactor;
  const span = least === null || most === null ? null : ([at(least), at(most)] as const);
  const passes = limit !== null && most !== null && least !== null && most > limit;
  return {
    full,
    rating: rating === null ? null : at(rating),
    limit: limit === null ? null : at(limit),
    level: level === null ? null : at(level),
    span,
    over: passes ? [at(Math.max(limit, least)), at(most)] : null,
    statics: staticsLeast === null || staticsMost === null ? null : [at(staticsLeast), at(staticsMost)],
    staticsCut: staticsMost !== null && staticsMost > full,
  };
}

/** What the picture says, in words, for those who do not see it. */
export function bandText(numbers: BandNumbers, format: (force: number) => string): string {
  const parts: string[] = [];
  if (numbers.level !== null) parts.push(`as planned ${format(numbers.level)}`);
  if (numbers.least !== null && numbers.most !== null)
    parts.push(`lightest ${format(numbers.least)}`, `heaviest ${format(numbers.most)}`);
  if (numbers.staticsLeast !== null && numbers.staticsMost !== null)
    parts.push(`whatever the floor ${format(numbers.staticsLeast)} to ${format(numbers.staticsMost)}`);
  parts.push(numbers.rating === null ? "rating not known" : `rated ${format(numbers.rating)}`);
  return parts.join(", ");
}
