/** The bounds as the report keeps them. */

import type { StepBounds as EngineBounds } from "../statics";
import type { StepBounds, StepCertificates } from "./parts";

export function boundsFrom(bounds: EngineBounds): StepBounds {
  switch (bounds.status) {
    case "unstable":
      return { boxTips: [], stands: null };
    case "box tips":
      return { boxTips: bounds.edges, stands: bounds.stands.map((stand) => ({ ...stand, over: null })) };
    case "bounded":
      return {
        boxTips: [],
        stands: bounds.stands.map((over) => {
          const { stand, staticsLeast, staticsMost } = over;
          return { stand, staticsLeast, staticsMost, over };
        }),
      };
  }
}

export function certificatesFrom(bounds: EngineBounds): StepCertificates {
  const stands =
    bounds.status === "bounded"
      ? bounds.stands.map(({ stand, certified, outer, gap }) => ({ stand, certified, outer, gap }))
      : null;
  return { bounds: boundsFrom(bounds), stands };
}
