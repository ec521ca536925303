/** Support polygon, reserves, margins and the least tipping force of every part (docs/mechanics-tipping.md, T1 to T7). */

import { clipToStrip } from "../../geometry";
import type { Mass, Piece, Point, Polygon } from "../../plan";
import type { PartLevel, StepLevel } from "../answers";
import { staticsTolerance } from "../constants";
import type { PartModel, StepModel } from "../model";
import { type AddedLoad, leastTippingForce } from "./added";
import { momentsAbout } from "./moments";
import { bearingStands, beyond, edgesOf, farthestBeyond, type SupportEdge, supportPolygon } from "./polygon";

export interface TippingEdge extends SupportEdge {
  /** Of the nominal resultant inside the edge, m; negative where it is passed, null where there is no downward resultant. */
  readonly distance: number | null;
  /** Righting ÷ overturning, the person counted; null if next to nothing overturns, and in an unstable part. */
  readonly reserve: number | null;
  /** Righting − overturning, the person left out, N·m; null in an unstable part. */
  readonly margin: number | null;
  /** Of what is planned, the person left out, N·m; of an unstable part too. */
  readonly righting: number;
  readonly overturning: number;
  /** Overturning moment of the standard person at the farthest point of the outline, N·m. */
  readonly person: number;
}

export interface PartTipping {
  /** The support polygon, counter-clockwise in (s, t); empty where the contacts lie on one line. */
  readonly edges: readonly TippingEdge[];
  /** The least downward force, anywhere on the part's outline, that tips it; null if none can, and in an unstable part. */
  readonly addedLoad: AddedLoad | null;
  /** The outline of the part: rings, counter-clockwise, m. */
  readonly outline: readonly (readonly Point[])[];
}

/**
 * Support polygon, reserves, margins and the least tipping force of every part of a step.
 *
 * @param model the assembled step; loads nominal, `source` naming the mass (index in `piece.masses`) or the load.
 * @param most greatest reaction of each stand over what is not known, N; null while or where it is not known.
 * @param personLoad weight of a standard person, N.
 */
export function tippingOf(
  model: StepModel,
  level: StepLevel,
  piece: Pick<Piece, "outline" | "masses">,
  most: readonly (number | null)[] | null,
  personLoad: number,
): PartTipping[] {
  const bears = bearingStands(model, level, most);
  return model.parts.map((part, index) => {
    const answer = level.parts[index]!;
    const outline = outlineOf(piece.outline, part);
    const edges = edgesOf(supportPolygon(part, bears)).map((edge) =>
      tippingEdge(edge, part, answer, piece.masses, outline, personLoad),
    );
    const length = part.to - part.from;
    return { edges, addedLoad: answer.stable ? leastTippingForce(edges, outline, length) : null, outline };
  });
}

/** The outline of a part: that of the piece between its ends, m. */
export function outlineOf(outline: Polygon, { from, to }: Pick<PartModel, "from" | "to">): Point[][] {
  return clipToStrip(outline, from, to);
}

function tippingEdge(
  edge: SupportEdge,
  part: PartModel,
  { resultant, stable }: PartLevel,
  masses: readonly Mass[],
  outline: readonly (readonly Point[])[],
  personLoad: number,
): TippingEdge {
  const { s, t } = resultant;
  const distance = s === null || t === null ? null : -beyond(edge, s, t);
  const { righting, overturning } = momentsAbout(edge, part, masses);
  const person = personLoad * Math.max(0, farthestBeyond(edge, outline).distance);
  // T5: reserve = righting ÷ (overturning + person)
  const all = overturning + person;
  const reserve = all < staticsTolerance.inside * resultant.force * (part.to - part.from) ? null : righting / all;
  // T6: M_e = righting − overturning
  const moments = { righting, overturning, person };
  if (!stable) return { ...edge, distance, reserve: null, margin: null, ...moments };
  return { ...edge, distance, reserve, margin: righting - overturning, ...moments };
}
