/** Sentences on walkways, trip zones, zones and clearances. */

import type { SentencesOf } from "./sentence";

export const floorSentences: SentencesOf<
  | "walkway-narrow"
  | "trip-zone-in-walkway"
  | "foot-on-no-foot-zone"
  | "stands-overlap"
  | "outside-bay"
  | "work-window-blocked"
> = {
  "walkway-narrow": (fact, say) => {
    const walkway = named("walkway", fact.details.walkway);
    if (fact.value === null) return waiting(fact, "The clear width of the walkways");
    if (fact.value === 0) return `There is no way through ${walkway}. Move the stands or the piece out of it.`;
    const wide = `${capital(walkway)} is ${say.length(fact.value)} wide at its narrowest; ${say.length(fact.limit ?? 0)} is needed`;
    return fact.verdict === "holds" ? `${wide}.` : `${wide}. Move the stands or the piece away from it.`;
  },

  "trip-zone-in-walkway": (fact, say) => {
    const { why, stands } = fact.details;
    const walkway = named("walkway", fact.details.walkway);
    switch (why) {
      case "lane":
        return `Legs or feet of ${standNames(stands, say.list)} reach into the painted lane of ${walkway}. Move them out of it, or take stands with straight legs.`;
      case "legs":
        return `Stand legs make ${walkway} too narrow: people would trip over them. Move the stands, or take stands with straight legs.`;
      case "clear":
        return fact.verdict === "holds"
          ? "No stand's legs are in a walkway."
          : waiting(fact, "Whether stand legs are in a walkway");
    }
  },

  "foot-on-no-foot-zone": (fact, say) => {
    const { stands, zones } = fact.details;
    if (fact.verdict === "holds") return "No foot stands where the floor may not be loaded.";
    if (stands.length === 0) return waiting(fact, "Whether a foot stands where the floor may not be loaded");
    return `Feet of ${standNames(stands, say.list)} stand on ${say.list(zones.map((zone) => zone || "a no-foot zone"))}, where no foot may. Move them off it.`;
  },

  "stands-overlap": (fact, say) => {
    const { pairs } = fact.details;
    if (fact.verdict === "holds") return "No stand runs into another or into an obstacle.";
    if (pairs.length === 0) return waiting(fact, "Whether stands run into each other");
    const told = pairs.map(({ stand, other, isStand }) =>
      isStand ? `stand ${stand} and stand ${other}` : `stand ${stand} and ${other || "an obstacle"}`,
    );
    return `${capital(say.list(told))} are in the same place. Move them apart.`;
  },

  "outside-bay": (fact, say) => {
    const { stands, piece } = fact.details;
    if (fact.verdict === "holds") return "Piece and stands are inside the bay.";
    if (!piece && stands.length === 0) return waiting(fact, "Whether everything is inside the bay");
    const told = [...(piece ? ["the piece"] : []), ...(stands.length > 0 ? [standNames(stands, say.list)] : [])];
    return `${capital(say.list(told))} reach${told.length === 1 && stands.length <= 1 ? "es" : ""} outside the bay. Move the piece or the stands in.`;
  },

  "work-window-blocked": (fact, say) => {
    const window = named("work window", fact.details.window);
    if (fact.value === null) return waiting(fact, "Whether a stand blocks a work window");
    const near = `${capital(standNames(fact.details.stands, say.list))} stands ${say.length(fact.value)} from ${window}; ${say.length(fact.limit ?? 0)} is to be kept clear`;
    if (fact.verdict === "holds") return `${near}.`;
    const blocked =
      fact.value === 0 ? `${capital(standNames(fact.details.stands, say.list))} stands in ${window}` : near;
    return `${blocked}. Move the stand away from it.`;
  },
};

function waiting(fact: { readonly verdict: string }, what: string): string {
  return fact.verdict === "pending" ? `${what} is still being computed.` : `${what} could not be computed.`;
}

const named = (what: string, name: string) => (name === "" ? `a ${what}` : `${what} ${name}`);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function standNames(stands: readonly string[], list: (names: readonly string[]) => string): string {
  return stands.length === 1 ? `stand ${stands[0]}` : `stands ${list(stands)}`;
}
