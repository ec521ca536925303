/** Rules for places along the piece and for lists of stretches of it. */

import { found, type Issue, issue, shown } from "./refusal";

export type Path = readonly (string | number)[];

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Wrong where a place lies beyond the far end. */
export function wrongPlace(s: number, length: number, path: Path): Issue | null {
  return s <= length ? null : issue(found(shown(s), `at most the length of the piece, ${length} m`), ...path);
}

/** Wrong where a stretch has its ends the wrong way round, or one beyond the piece. */
export function wrongStretch(
  { from, to }: Stretch,
  length: number,
  path: Path,
  [fromKey, toKey]: EndKeys,
): Issue | null {
  if (from < 0) return issue(found(shown(from), "0 or more, as the piece begins at 0 m"), ...path, fromKey);
  if (from >= to) return issue(found(shown(to), `more than ${from} m, where the stretch begins`), ...path, toKey);
  return wrongPlace(to, length, [...path, toKey]);
}

/** The keys of the ends of a stretch. */
export type EndKeys = readonly [string | number, string | number];
export const endKeys: EndKeys = ["from", "to"];

export interface StretchRules {
  readonly keys: EndKeys;
  /** Whether the stretches have to cover the piece from end to end. */
  readonly cover: boolean;
}

/** Wrong where stretches do not ascend, overlap, or leave out what they have to cover. */
export function wrongStretches(
  list: readonly Stretch[],
  length: number,
  path: Path,
  { keys, cover }: StretchRules,
): Issue | null {
  let end = 0;
  for (const [index, stretch] of list.entries()) {
    const wrong = wrongStretch(stretch, length, [...path, index], keys);
    if (wrong !== null) return wrong;
    if (stretch.from < end) {
      const what = `a stretch from ${stretch.from} m after one that ends at ${end} m`;
      return issue(found(what, "stretches that ascend and do not overlap"), ...path);
    }
    if (cover && stretch.from > end) return gap(end, stretch.from, length, path);
    end = stretch.to;
  }
  return cover && end < length ? gap(end, length, length, path) : null;
}

function gap(from: number, to: number, length: number, path: Path): Issue {
  const right = `stretches that cover the piece from 0 m to ${length} m without a gap`;
  return issue(found(`nothing from ${from} m to ${to} m`, right), ...path);
}

/** The places that a search for one off every part goes through: their order by s is kept, whatever the parts are. */
export class Places<Place extends { readonly s: number }> {
  private readonly ascending: readonly Place[];

  constructor(places: readonly Place[]) {
    this.ascending = places.toSorted((one, other) => one.s - other.s);
  }

  /** A place that lies on no part (the ends of a part are on it) and is not passed over. */
  offEveryPart(parts: readonly (readonly [number, number])[], passOver: (place: Place) => boolean): Place | undefined {
    let end = Number.NEGATIVE_INFINITY;
    for (const [from, to] of [...parts, [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] as const]) {
      for (let index = this.firstBeyond(end); index < this.ascending.length; index += 1) {
        const place = this.ascending[index]!;
        if (place.s >= from) break;
        if (!passOver(place)) return place;
      }
      end = to;
    }
    return undefined;
  }

  private firstBeyond(s: number): number {
    let low = 0;
    for (let high = this.ascending.length; low < high; ) {
      const middle = (low + high) >> 1;
      if (this.ascending[middle]!.s > s) high = middle;
      else low = middle + 1;
    }
    return low;
  }
}
