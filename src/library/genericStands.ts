/**
 * Stands to start from, of the kinds that shops have. None carries a rating: what the plate says is typed. Heights are
 * those of the name, the other sizes are customary (no source) and to be measured on the stand itself.
 */

import type { StandTypeDocument, StandTypeId } from "../plan";

export interface GenericStand {
  readonly type: StandTypeDocument;
  /** Prefix of the marks given to stands of this kind. */
  readonly mark: string;
  /** Height to begin with, m: one that the stand can be set to. */
  readonly height: number;
}

const horse: Omit<StandTypeDocument, "id" | "name"> = {
  legs: "a-frame",
  height: { min: 0.762, max: 0.762, increment: 0 },
  top: { length: 1.524, width: 0.203, material: "hardwood" },
  legSpacing: 1.219,
  splay: { along: 15, across: 0 },
  foot: { length: 0.15, width: 0.1 },
  ratedLoad: null,
  selfMass: 80,
};

function named(
  id: string,
  name: string,
  mark: string,
  sizes: Partial<StandTypeDocument>,
  height?: number,
): GenericStand {
  const type = { id: id as StandTypeId, name, ...horse, ...sizes };
  return { type, mark, height: height ?? type.height.min };
}

export const genericStands: readonly GenericStand[] = [
  named("low-horse", "Low horse, 610 mm", "L", {
    height: { min: 0.61, max: 0.61, increment: 0 },
    top: { length: 1.219, width: 0.152, material: "hardwood" },
    legSpacing: 0.914,
    selfMass: 45,
  }),
  named("horse", "Horse, 762 mm", "H", {}),
  named("straight-leg-horse", "Straight-leg horse, 762 mm", "S", {
    legs: "vertical",
    splay: { along: 0, across: 0 },
    top: { length: 1.524, width: 0.305, material: "hardwood" },
    selfMass: 90,
  }),
  named("caster-horse", "Horse on retracting casters, 762 mm", "C", { casters: { retractLoad: 900 }, selfMass: 110 }),
  named("adjustable", "Adjustable stand, 711 to 1067 mm", "A", {
    height: { min: 0.711, max: 1.067, increment: 0.025 },
    top: { length: 0.914, width: 0.203, material: "steel" },
    legSpacing: 0.762,
    selfMass: 95,
  }),
  named("die-stand", "Die stand, 457 mm, plastic top", "D", {
    legs: "vertical",
    splay: { along: 0, across: 0 },
    height: { min: 0.457, max: 0.457, increment: 0 },
    top: { length: 0.914, width: 0.305, material: "uhmw-pe" },
    legSpacing: 0.711,
    foot: { length: 0.15, width: 0.15 },
    selfMass: 120,
  }),
  named(
    "timber-crib",
    "Timber crib, 600 mm",
    "T",
    {
      legs: "vertical",
      splay: { along: 0, across: 0 },
      height: { min: 0.3, max: 1.2, increment: 0.1 },
      top: { length: 1.2, width: 0.9, material: "hardwood" },
      legSpacing: 1,
      foot: { length: 0.2, width: 0.2 },
      selfMass: 250,
    },
    0.6,
  ),
];
