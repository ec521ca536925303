/** Sentences on whether each stand touches, bears and keeps bearing. */

import type { SentencesOf } from "./sentence";

export const contactSentences: SentencesOf<
  "stand-never-bears" | "stand-lifts-off" | "casters-still-down" | "shim-loose" | "not-under-piece" | "no-rest-overlap"
> = {
  "stand-never-bears": (fact) => {
    switch (fact.verdict) {
      case "fails":
        return `Stand ${fact.stand} never bears, wherever the tops lie within their tolerance. Raise it with a shim, move it, or leave it out.`;
      case "pending":
        return `Whether stand ${fact.stand} ever bears is still being computed.`;
      case "unknown":
        return `Whether stand ${fact.stand} ever bears could not be computed.`;
      default:
        return `Stand ${fact.stand} bears.`;
    }
  },

  "stand-lifts-off": (fact, say) => {
    const { gap, level } = fact.details;
    const planned = `Stand ${fact.stand} carries ${say.force(level)} as planned`;
    switch (fact.verdict) {
      case "fails": {
        const nothing = `Stand ${fact.stand} carries nothing as planned`;
        if (gap === null) return `${nothing}: it is not under the piece. Move it there or take it out of the layout.`;
        if (gap === 0) return `${nothing}. Raise it with a shim or lower its neighbours.`;
        return `${nothing}, ${say.length(gap)} clear of the piece. Raise it with a shim of that gap or lower its neighbours.`;
      }
      case "close":
        return `${planned} but may go light: a top a little off level takes the load away. Shim it until a feeler shows that it touches.`;
      case "pending":
        return `${planned}; whether it may go light is still being computed.`;
      case "unknown":
        return `${planned}; whether it may go light could not be computed.`;
      default:
        return `Stand ${fact.stand} never goes light: it carries at least ${say.force(fact.value ?? 0)}.`;
    }
  },

  "casters-still-down": (fact, say) => {
    const { level, least } = fact.details;
    const retract = say.force(fact.limit ?? 0);
    const hold = "Hold there and look that its casters are clear of the floor before going on";
    switch (fact.verdict) {
      case "fails":
        return `Stand ${fact.stand} carries ${say.force(level)} as planned, too little for its casters, which retract at ${retract}: it still stands on wheels. ${hold}.`;
      case "close":
        return `Stand ${fact.stand} may carry as little as ${say.force(least ?? 0)} and its casters retract at ${retract}. ${hold}.`;
      case "pending":
        return `Stand ${fact.stand} carries ${say.force(level)} as planned and its casters retract at ${retract}; how little it may carry is still being computed. ${hold}.`;
      case "unknown":
        return `Stand ${fact.stand} carries ${say.force(level)} as planned and its casters retract at ${retract}; how little it may carry could not be computed. ${hold}.`;
      default:
        return `Stand ${fact.stand} carries at least ${say.force(least ?? 0)}, enough for its casters, which retract at ${retract}. ${hold}.`;
    }
  },

  "shim-loose": (fact, say) => {
    const shim = `The shim of ${say.length(fact.details.shim)} on stand ${fact.stand}`;
    switch (fact.verdict) {
      case "pending":
        return `${shim} is held as planned; whether it may work loose is still being computed.`;
      case "unknown":
        return `${shim} is held as planned; whether it may work loose could not be computed.`;
      case "holds":
        return `${shim} stays pressed.`;
      default:
        return `${shim} may work loose, because the stand may go light. Fix the shim in place.`;
    }
  },

  "not-under-piece": (fact) =>
    fact.verdict === "holds"
      ? `Stand ${fact.stand} is under the piece.`
      : `The top of stand ${fact.stand} is not under any surface that the piece may rest on. Move the stand under the piece or take it out of the layout.`,

  "no-rest-overlap": (fact, say) =>
    fact.verdict === "holds"
      ? `The top of stand ${fact.stand} keeps off the areas marked keep off.`
      : `The top of stand ${fact.stand} reaches under ${say.list(fact.details.zones.map((zone) => zone || "a keep-off area"))}, marked keep off. Move the stand clear of it.`,
};
