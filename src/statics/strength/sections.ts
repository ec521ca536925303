/** Where along the piece which section is, and what a strength check could say about it. */

import type { Piece, SectionSegment, SectionStrength } from "../../plan";
import { pieceLength } from "../../plan";

export type SectionKey = keyof SectionStrength;

/** The number compared, its limit, and where. */
export interface Governing {
  readonly value: number;
  readonly limit: number;
  /** m. */
  readonly s: number;
}

/** What a strength check says of a step. */
export type StrengthAnswer =
  /** Checked wherever there is a section; `worst` has the greatest value ÷ limit. */
  | { readonly status: "known"; readonly worst: Governing }
  /** Some section lacks what the check needs; `worst` is of the sections that lack nothing, null where none does. */
  | { readonly status: "unknown"; readonly missing: readonly SectionKey[]; readonly worst: Governing | null }
  /** There is no section where the check would look. */
  | { readonly status: "not-checked" };

/** The sections of a piece with the stretches that they cover, ascending; none where the piece gives no section. */
export function sectionsOf(piece: Pick<Piece, "section" | "outline">): readonly SectionSegment[] {
  const { section } = piece;
  if (section === null) return [];
  return isList(section) ? section : [{ ...section, from: 0, to: pieceLength(piece) }];
}

function isList(section: SectionStrength | readonly SectionSegment[]): section is readonly SectionSegment[] {
  return Array.isArray(section);
}

/** The sections at s: two at a border, none on a stretch that has none. */
export function sectionsAt(sections: readonly SectionSegment[], s: number): readonly SectionSegment[] {
  return sections.filter((section) => section.from <= s && s <= section.to);
}

/** What a section gives to a check: all the keys that it needs, or those it lacks. */
export type Given<Key extends SectionKey> =
  | { readonly whole: true; readonly section: Required<Pick<SectionStrength, Key>> }
  | { readonly whole: false; readonly missing: readonly Key[] };

export function given<Key extends SectionKey>(section: SectionStrength, keys: readonly Key[]): Given<Key> {
  const missing = keys.filter((key) => section[key] === undefined);
  return missing.length === 0
    ? { whole: true, section: section as Required<Pick<SectionStrength, Key>> }
    : { whole: false, missing };
}

/** One place that a check looked at: what it found there, or the keys that it lacked. */
export type Look = Governing | { readonly missing: readonly SectionKey[] };

/** Makes one answer of all the places that a check looked at. */
export function answerOf(looks: Iterable<Look>): StrengthAnswer {
  let worst: Governing | null = null;
  const missing = new Set<SectionKey>();
  for (const look of looks) {
    if ("missing" in look) for (const key of look.missing) missing.add(key);
    else if (worst === null || look.value * worst.limit > worst.value * look.limit) worst = look;
  }
  if (missing.size > 0) return { status: "unknown", missing: [...missing], worst };
  return worst === null ? { status: "not-checked" } : { status: "known", worst };
}
