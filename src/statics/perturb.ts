import type { Plan } from "../plan";
import type { Witness } from "./answers";
import { gravity } from "./constants";
import type { ContactPoint, LoadItem, PartModel, PointLoad, StandModel, StepModel } from "./model";

/**
 * The step as it would be with given errors, weights, centres and loads: heights, stiffnesses and loads changed as
 * docs/mechanics.md, M24, says. `levelAt` then gives the reactions there, which verifies a witness by an independent solve.
 *
 * @param model the step with nominal values.
 */
export function perturb(model: StepModel, plan: Pick<Plan, "piece">, witness: Witness): StepModel {
  const { masses } = plan.piece;
  const factorOf = ({ source }: LoadItem): number =>
    source.kind === "mass"
      ? (witness.masses[masses[source.index]!.id] ?? 1)
      : (witness.loads[String(source.index)] ?? 1);
  const stands = model.stands.map(
    (stand): StandModel => (stand.estimated ? { ...stand, stiffness: stand.stiffness * witness.stiffness } : stand),
  );
  const contactAt = (contact: ContactPoint, bow: number): ContactPoint => {
    const { stand, estimated } = model.stands[contact.stand]!;
    // h + d + ε·c − β·4σ(1 − σ)
    const raised = (witness.heights[stand] ?? 0) + (witness.tilts[stand] ?? 0) * contact.c - bow * contact.bow;
    const stiffness = estimated ? contact.stiffness * witness.stiffness : contact.stiffness;
    return { ...contact, stiffness, height: contact.height + raised };
  };
  const couplesOf = (item: LoadItem): PointLoad[] => {
    if (item.source.kind !== "mass" || item.kind !== "point") return [];
    const mass = masses[item.source.index]!;
    const away = witness.centres[mass.id];
    if (away === undefined || mass.kind !== "point") return [];
    const force = mass.mass * (1 + mass.uncertainty) * gravity;
    return [{ ...item, down: 0, momentS: away[0] * force, momentT: away[1] * force }];
  };
  return {
    stands,
    parts: model.parts.map((part, index): PartModel => {
      const bow = witness.bows[String(index)] ?? 0;
      return {
        ...part,
        contacts: part.contacts.map((contact) => contactAt(contact, bow)),
        loads: part.loads.flatMap((item) => [scaled(item, factorOf(item)), ...couplesOf(item)]),
      };
    }),
  };
}

function scaled(item: LoadItem, factor: number): LoadItem {
  if (factor === 1) return item;
  if (item.kind === "line") {
    return { ...item, intensity: [item.intensity[0] * factor, item.intensity[1] * factor] };
  }
  return { ...item, down: item.down * factor, momentS: item.momentS * factor, momentT: item.momentT * factor };
}
