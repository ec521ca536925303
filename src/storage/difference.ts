/**
 * What one JSON value has that another has not. Values share what they have in common by identity, as documents of one
 * history do: what is the same object is not looked into, so a difference costs what has changed.
 */

type Json = unknown;

/** null in the place of a difference: the two are the same. */
export type Difference =
  /** Another value altogether. */
  | { readonly to: Json }
  /** An object with some keys changed, some new, some gone. */
  | { readonly keys: Readonly<Record<string, Difference>>; readonly gone?: readonly string[] }
  /** A list of the same length with some items changed, by index. */
  | { readonly items: Readonly<Record<string, Difference>> };

const isObject = (value: Json): value is Readonly<Record<string, Json>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export function differenceOf(before: Json, after: Json): Difference | null {
  if (before === after) return null;
  if (Array.isArray(before) && Array.isArray(after) && before.length === after.length) {
    const items = differencesOf(Object.keys(after), before as never, after as never);
    return Object.keys(items).length === 0 ? null : { items };
  }
  if (isObject(before) && isObject(after)) {
    const keys = differencesOf(Object.keys(after), before, after);
    const gone = Object.keys(before).filter((key) => !Object.hasOwn(after, key));
    if (gone.length > 0) return { keys, gone };
    return Object.keys(keys).length === 0 ? null : { keys };
  }
  return { to: after };
}

function differencesOf(
  keys: readonly string[],
  before: Readonly<Record<string, Json>>,
  after: Readonly<Record<string, Json>>,
): Record<string, Difference> {
  return Object.fromEntries(
    keys.flatMap((key): [string, Difference][] => {
      const difference = Object.hasOwn(before, key) ? differenceOf(before[key], after[key]) : { to: after[key] };
      return difference === null ? [] : [[key, difference]];
    }),
  );
}

/** The value that differs so from `before`, sharing with it what is the same. Fails where `before` has another form. */
export function applied(before: Json, difference: Difference | null): Json {
  if (difference === null) return before;
  if ("to" in difference) return difference.to;
  if ("items" in difference) {
    if (!Array.isArray(before)) throw new TypeError("a list was expected");
    return before.map((item: Json, index) => applied(item, difference.items[index] ?? null));
  }
  if (!isObject(before)) throw new TypeError("an object was expected");
  const after: Record<string, Json> = { ...before };
  for (const key of difference.gone ?? []) delete after[key];
  for (const [key, change] of Object.entries(difference.keys)) after[key] = applied(before[key], change);
  return after;
}
