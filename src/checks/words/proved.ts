/** What is not proved to 0.1 % of the weight, in words: how far beyond the values found a reaction might yet go. */

import type { StepCertificates } from "../parts";
import type { Say } from "./say";

/** One sentence for each stand whose bounds are not certified; none where all are. */
export function unprovedSentences({ bounds, stands }: StepCertificates, say: Say): readonly string[] {
  return (stands ?? []).flatMap(({ stand, certified, outer }, index) => {
    const found = bounds.stands?.[index]?.over;
    if (certified !== null || found == null) return [];
    const sides = [
      ...side("lighter", "less", found.least, outer.least, say),
      ...side("heavier", "more", found.most, outer.most, say),
    ];
    return sides.map((words) => `${stand}: ${words}`);
  });
}

function side(beyond: string, than: string, found: number, outer: number, say: Say): string[] {
  const [a, b] = [say.force(found), say.force(outer)];
  return a === b ? [] : [`nothing ${beyond} than ${a} was found; that it carries not ${than} than ${b} is proved.`];
}
