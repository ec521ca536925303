/** What the map of where a person may stand says in words. */

import type { PlaceTakes } from "../../checks";
import type { Display, Point } from "../../plan";
import { forceWords, lengthWords } from "../words";

/** The bands of the map, from least to most: under the first force, from each force on. */
export function bandWords(forces: readonly number[], display: Display): readonly string[] {
  const [least] = forces;
  if (least === undefined) return [];
  return [
    `less than ${forceWords(least, display)}`,
    ...forces.map((force, index) => `${forceWords(force, display)}${index === forces.length - 1 ? " or more" : ""}`),
  ];
}

/** A place, from the datum end and from the axis. */
export function whereWords([s, t]: Point, display: Display): string {
  const across = lengthWords(Math.abs(t), display);
  const side = across === lengthWords(0, display) ? "" : `, ${across} to the ${t > 0 ? "left" : "right"}`;
  return `${lengthWords(s, display)} along${side}`;
}

/** What one place takes: the force that tips the piece there, and the one that is too much for a stand, with its name. */
export function placeWords({ tips, tipping, level, first }: PlaceTakes, display: Display): string {
  if (tips || tipping === 0) return "it tips without any weight here";
  const tipped = tipping === null ? "no weight tips it here" : `tips at ${forceWords(tipping, display)}`;
  if (level === 0) return `${tipped}; stand ${first?.stand ?? ""} is over its rating without any weight here`;
  if (level === null) return `${tipped}; no weight is too much for a stand`;
  if (first === null) return `${tipped}, before a stand passes its rating or goes light`;
  const gives = first.why === "limit" ? "passes its rating" : "goes light";
  return `${tipped}; stand ${first.stand} ${gives} at ${forceWords(level, display)}`;
}
