/** Immutable updates that share what does not change: an update that changes nothing gives back the same object. */

export type Changes<Whole> = { readonly [Key in keyof Whole]?: Whole[Key] | undefined };

/** The object with some keys set; a key given as `undefined` is left out of the result. */
export function changed<Whole extends object>(whole: Whole, changes: Changes<NoInfer<Whole>>): Whole {
  const before = whole as Record<string, unknown>;
  const entries = Object.entries(changes).filter(([key, value]) =>
    value === undefined ? Object.hasOwn(before, key) : before[key] !== value,
  );
  if (entries.length === 0) return whole;
  const after: Record<string, unknown> = { ...before };
  for (const [key, value] of entries) {
    if (value === undefined) delete after[key];
    else after[key] = value;
  }
  return after as Whole;
}

/** The list with the item of that id replaced by `update(item)`; the same list where nothing changes. */
export function withItem<Item extends { readonly id: string }>(
  list: readonly Item[],
  id: Item["id"],
  update: (item: Item) => Item,
): readonly Item[] {
  return mapped(list, (item) => (item.id === id ? update(item) : item));
}

/** `list.map(update)`, or the list itself where every item stays the same. */
export function mapped<Item>(list: readonly Item[], update: (item: Item) => Item): readonly Item[] {
  const after = list.map(update);
  return after.every((item, index) => item === list[index]) ? list : after;
}

/** The items that `keep` accepts, or the list itself where it accepts all. */
export function kept<Item>(list: readonly Item[], keep: (item: Item) => boolean): readonly Item[] {
  return list.every(keep) ? list : list.filter(keep);
}

/** The list with the item moved to another index. */
export function reordered<Item>(list: readonly Item[], from: number, to: number): readonly Item[] {
  if (from === to || from < 0 || from >= list.length) return list;
  const rest = list.filter((_, index) => index !== from);
  const at = Math.max(0, Math.min(rest.length, to));
  return [...rest.slice(0, at), list[from] as Item, ...rest.slice(at)];
}

/** The first of `base`, `base-2`, `base-3` … that no item of the list has as its id. */
export function freeId(list: readonly { readonly id: string }[], base: string): string {
  const taken = new Set(list.map((item) => item.id));
  if (!taken.has(base)) return base;
  for (let number = 2; ; number += 1) if (!taken.has(`${base}-${number}`)) return `${base}-${number}`;
}
