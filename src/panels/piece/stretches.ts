/** A long member in lengths with different sections: the stiffness and the strength data of one stretch side by side. */

import type { PlanSection } from "../../library";
import { type Piece, pieceLength, type SectionSegment, type SectionStrength, type StiffnessSegment } from "../../plan";

/** One stretch of the piece; `stiffness` null = rigid, `strength` null = not known. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly stiffness: { readonly EI: number; readonly kGA: number | null; readonly GJ: number | null } | null;
  readonly strength: SectionStrength | null;
}

type MakeUp = Pick<Piece, "stiffness" | "section">;

/** The stretches of the stiffness, each with the strength data that lies over its middle; a rigid piece is one stretch. */
export function stretchesOf(piece: Pick<Piece, "stiffness" | "section" | "outline">): readonly Stretch[] {
  if (piece.stiffness === "rigid")
    return [{ from: 0, to: pieceLength(piece), stiffness: null, strength: strengthAt(piece, pieceLength(piece) / 2) }];
  return piece.stiffness.map(({ from, to, EI, kGA, GJ }) => ({
    from,
    to,
    stiffness: { EI, kGA, GJ },
    strength: strengthAt(piece, (from + to) / 2),
  }));
}

const isSegments = (section: NonNullable<Piece["section"]>): section is readonly SectionSegment[] =>
  Array.isArray(section);

function strengthAt({ section }: Pick<Piece, "section">, s: number): SectionStrength | null {
  if (section === null) return null;
  if (!isSegments(section)) return section;
  const found = section.find(({ from, to }) => from <= s && s <= to);
  if (found === undefined) return null;
  const { from: _from, to: _to, ...strength } = found;
  return strength;
}

/** The keys of the piece that stretches make. One rigid stretch makes a rigid piece. */
export function makeUpOf(stretches: readonly Stretch[]): MakeUp {
  const [only] = stretches;
  if (stretches.length === 1 && only !== undefined)
    return { stiffness: only.stiffness === null ? "rigid" : segments(stretches), section: only.strength };
  const known = stretches.filter(({ strength }) => strength !== null);
  return {
    stiffness: segments(stretches),
    section: known.length === 0 ? null : known.map(({ from, to, strength }) => ({ ...strength, from, to })),
  };
}

/** A stretch without stiffness among others takes that of the stiffest: only a whole piece can be rigid. */
function segments(stretches: readonly Stretch[]): readonly StiffnessSegment[] {
  const known = stretches.flatMap(({ stiffness }) => (stiffness === null ? [] : [stiffness]));
  const stiffest = known.reduce((one, other) => (other.EI > one.EI ? other : one));
  return stretches.map(({ from, to, stiffness }) => ({ from, to, ...(stiffness ?? stiffest) }));
}

/** The stretches with a section in one of them. */
export function withSection(stretches: readonly Stretch[], index: number, section: PlanSection): readonly Stretch[] {
  return stretches.map((stretch, at) =>
    at === index ? { ...stretch, stiffness: section.stiffness, strength: section.section } : stretch,
  );
}

/** Two stretches in place of one, alike until one is changed; outside every stretch nothing changes. */
export function splitAt(stretches: readonly Stretch[], s: number): readonly Stretch[] {
  return stretches.flatMap((stretch) =>
    s > stretch.from && s < stretch.to
      ? [
          { ...stretch, to: s },
          { ...stretch, from: s },
        ]
      : [stretch],
  );
}

/** A stretch gone, the one before it (or after the first) reaching over its length. */
export function mergeAway(stretches: readonly Stretch[], index: number): readonly Stretch[] {
  const gone = stretches[index];
  if (gone === undefined || stretches.length === 1) return stretches;
  const kept = stretches.filter((_, at) => at !== index);
  return kept.map((stretch, at) =>
    at === Math.max(0, index - 1)
      ? index === 0
        ? { ...stretch, from: gone.from }
        : { ...stretch, to: gone.to }
      : stretch,
  );
}
