/** Tipping lines, reserves and margins. */

import type { Entry } from "./entry";

const thisTool = "common practice; docs/mechanics-tipping.md";

export const tippingEntries = {
  "inside the tipping line": {
    label: "load centre inside the tipping line",
    formula: "distance of the load centre from the line through the edge's two ends",
    source: "plane geometry",
    unit: "m",
    of: ({ context, edge, part = 0 }, put) => {
      const { s, t } = context.level.parts[part]!.resultant;
      if (edge === undefined || edge.distance === null || s === null || t === null) return null;
      const { from, outward } = edge;
      return {
        value: edge.distance,
        text: `${put(-outward[0])} * (${put(s)} - ${put(from[0])}) + ${put(-outward[1])} * (${put(t)} - ${put(from[1])})`,
      };
    },
  },

  "reserve against tipping": {
    label: "reserve against tipping",
    formula: "righting ÷ (overturning + a person at the farthest point beyond the line)",
    source: "customary overturning factor",
    unit: "1",
    of: ({ edge }, put) =>
      edge === undefined || edge.reserve === null
        ? null
        : {
            value: edge.reserve,
            text: `${put(edge.righting)} / (${put(edge.overturning)} + ${put(edge.person)})`,
          },
  },

  "margin against tipping": {
    label: "margin against tipping",
    formula: "M = righting − overturning, the person left out",
    source: thisTool,
    unit: "N·m",
    of: ({ edge }, put) =>
      edge === undefined || edge.margin === null
        ? null
        : { value: edge.margin, text: `${put(edge.righting)} - ${put(edge.overturning)}` },
  },

  "least force that tips": {
    label: "least force that tips it",
    formula: "margin of the edge ÷ distance of the point beyond it, the least over edges and outline",
    source: "statics: moments about the edge",
    unit: "N",
    of: ({ context, part = 0 }, put) => {
      const { addedLoad, edges } = context.tipping[part]!;
      if (addedLoad === null) return null;
      for (const { from, outward, margin } of edges) {
        const beyond = outward[0] * (addedLoad.s - from[0]) + outward[1] * (addedLoad.t - from[1]);
        const force = margin === null || beyond <= 0 ? null : Math.max(0, margin) / beyond;
        if (force === null || Math.abs(force - addedLoad.value) > 1e-9 * Math.max(1, force)) continue;
        const distance = `${put(outward[0])} * (${put(addedLoad.s)} - ${put(from[0])}) + ${put(outward[1])} * (${put(addedLoad.t)} - ${put(from[1])})`;
        return { value: addedLoad.value, text: `max(0, ${put(margin!)}) / (${distance})` };
      }
      return null;
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;
