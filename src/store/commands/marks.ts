/** Marks of new stands. */

import type { StandDocument, StandType } from "../../plan";

/** The next mark of a kind of stand: after H-7 comes H-8; a kind without stands yet begins at 1. */
export function nextMark(
  stands: readonly Pick<StandDocument, "id" | "type">[],
  type: Pick<StandType, "id" | "name">,
): string {
  const own = stands.filter((stand) => stand.type === type.id);
  const mark =
    own.map(({ id }) => /^(.*?)-?\d+$/.exec(id)?.[1]).find((prefix) => prefix !== undefined && prefix !== "") ??
    type.name.charAt(0).toUpperCase();
  const taken = new Set<string>(stands.map(({ id }) => id));
  for (let number = own.length + 1; ; number += 1) if (!taken.has(`${mark}-${number}`)) return `${mark}-${number}`;
}
