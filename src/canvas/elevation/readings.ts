/** Shear, moment and deflection at any place of the piece: exactly, not off the drawn curve. */

import type { Display } from "../../plan";
import { diagramAt, type PartLevel, type StepLevel } from "../../statics";
import { forceWords, lengthWords, momentWords } from "../words";

/** SI; null where there is none. At a jump the side to the right. */
export interface ReadingAt {
  readonly shear: number | null;
  readonly moment: number | null;
  readonly deflection: number | null;
}

/** What the diagrams show at s, m; null off every part. */
export function readingAt(level: StepLevel, s: number): ReadingAt | null {
  const part = level.parts.find(({ from, to }) => s >= from && s <= to);
  if (part === undefined) return null;
  if (part.cells === null || part.curves === null) return { shear: null, moment: null, deflection: null };
  const { shear, moment, v } = diagramAt(part.cells, s);
  const chord = chordAt(part, s);
  return { shear, moment, deflection: chord === null ? null : v - chord };
}

/** Height of the line that deflection is measured from, at s: v less deflection at both ends, straight between. */
function chordAt({ curves }: PartLevel, s: number): number | null {
  if (curves === null || curves.deflection === null) return null;
  const last = curves.s.length - 1;
  const at = (station: number): number => curves.v[station]! - curves.deflection![station]!;
  const [from, to] = [curves.s[0]!, curves.s[last]!];
  return to > from ? at(0) + ((at(last) - at(0)) * (s - from)) / (to - from) : at(0);
}

/** The same in one sentence. */
export function readingWords(level: StepLevel, s: number, display: Display): string {
  const reading = readingAt(level, s);
  const place = `${lengthWords(s, display)} along`;
  if (reading === null) return `${place}: no part of the piece is there.`;
  const { shear, moment, deflection } = reading;
  if (shear === null || moment === null) return `${place}: no numbers, the piece tips.`;
  const bent = deflection === null ? "" : `, deflection ${lengthWords(deflection, display)}`;
  return `${place}: shear ${forceWords(shear, display)}, moment ${momentWords(moment, display)}${bent}.`;
}
