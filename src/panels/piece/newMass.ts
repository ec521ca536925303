/** Weights as they begin, before anything is typed into them. */

import { uncertaintyOf } from "../../library";
import {
  type LineMassDocument,
  type MassDocument,
  type MassId,
  type Piece,
  type PointMassDocument,
  pieceLength,
} from "../../plan";
import { freeId } from "../../store";

/** Half-way along, half-way up, 100 kg, a guess until somebody says better. */
export function newPointMass(id: MassId, piece: Piece): PointMassDocument {
  return {
    id,
    name: "Weight",
    kind: "point",
    s: pieceLength(piece) / 2,
    t: 0,
    z: piece.depth / 2,
    mass: 100,
    uncertainty: uncertaintyOf.guess,
    basis: "guess",
  };
}

/** Along the whole piece, half-way up, 10 kg/m. */
export function newLineMass(id: MassId, piece: Piece): LineMassDocument {
  return {
    id,
    name: "Weight along",
    kind: "line",
    from: 0,
    to: pieceLength(piece),
    massPerLength: [10, 10],
    t: 0,
    z: piece.depth / 2,
    uncertainty: uncertaintyOf.guess,
    basis: "guess",
  };
}

export interface Block {
  readonly name: string;
  /** Where it lies along the piece, m. */
  readonly from: number;
  readonly to: number;
  /** Its middle across the piece, its width, its height, and how far its underside is above the datum plane, m. */
  readonly t: number;
  readonly width: number;
  readonly height: number;
  readonly base: number;
  /** kg/m³. */
  readonly density: number;
}

/** A block or plate from its sizes: a line at its t of density × width × height a metre, calculated. */
export function blockMass(id: MassId, block: Block): LineMassDocument {
  const perLength = block.density * block.width * block.height;
  return {
    id,
    name: block.name,
    kind: "line",
    from: block.from,
    to: block.to,
    massPerLength: [perLength, perLength],
    t: block.t,
    z: block.base + block.height / 2,
    uncertainty: uncertaintyOf.calculated,
    basis: "calculated",
  };
}

export interface WeighedSection {
  readonly name: string;
  /** kg/m. */
  readonly massPerLength: number;
  readonly basis: "maker" | "calculated";
}

/** The weight of a section over a stretch: by the maker's table, or calculated from its plates. */
export function sectionMass(
  masses: readonly MassDocument[],
  { name, massPerLength, basis }: WeighedSection,
  stretch: { readonly from: number; readonly to: number },
  depth: number,
): LineMassDocument {
  return {
    id: freeId(masses, "section") as MassId,
    name,
    kind: "line",
    from: stretch.from,
    to: stretch.to,
    massPerLength: [massPerLength, massPerLength],
    t: 0,
    z: depth / 2,
    uncertainty: uncertaintyOf[basis],
    basis,
  };
}
