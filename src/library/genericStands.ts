/**
 * Stands to start from, of the kinds that shops have. None carries a rating: what the plate says is typed. Heights are
 * those of the name, the other sizes are customary (no source) and to be measured on the stand itself.
 */

import type { Display, StandTypeDocument, StandTypeId } from "../plan";

export interface GenericStand {
  /** Named in millimetres. */
  readonly type: StandTypeDocument;
  /** The same, named in the units of a plan: "Horse, 30 in". */
  readonly typeIn: (units: Display["units"]) => StandTypeDocument;
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

/** A height in a name, to the nearest inch or millimetre: names are nominal. */
type Say = (height: number) => string;
const sayIn: Readonly<Record<Display["units"], Say>> = {
  us: (height) => `${Math.round(height / 0.0254)} in`,
  metric: (height) => `${Math.round(height * 1000)} mm`,
};

function named(
  id: string,
  name: (say: Say) => string,
  mark: string,
  sizes: Partial<StandTypeDocument>,
  height?: number,
): GenericStand {
  const typeIn = (units: Display["units"]) => ({ id: id as StandTypeId, name: name(sayIn[units]), ...horse, ...sizes });
  const type = typeIn("metric");
  return { type, typeIn, mark, height: height ?? type.height.min };
}

export const genericStands: readonly GenericStand[] = [
  named("low-horse", (say) => `Low horse, ${say(0.61)}`, "L", {
    height: { min: 0.61, max: 0.61, increment: 0 },
    top: { length: 1.219, width: 0.152, material: "hardwood" },
    legSpacing: 0.914,
    selfMass: 45,
  }),
  named("horse", (say) => `Horse, ${say(0.762)}`, "H", {}),
  named("straight-leg-horse", (say) => `Straight-leg horse, ${say(0.762)}`, "S", {
    legs: "vertical",
    splay: { along: 0, across: 0 },
    top: { length: 1.524, width: 0.305, material: "hardwood" },
    selfMass: 90,
  }),
  named("caster-horse", (say) => `Horse on retracting casters, ${say(0.762)}`, "C", {
    casters: { retractLoad: 900 },
    selfMass: 110,
  }),
  named("adjustable", (say) => `Adjustable stand, ${say(0.711).replace(/ .*/, "")} to ${say(1.067)}`, "A", {
    height: { min: 0.711, max: 1.067, increment: 0.025 },
    top: { length: 0.914, width: 0.203, material: "steel" },
    legSpacing: 0.762,
    selfMass: 95,
  }),
  named("die-stand", (say) => `Die stand, ${say(0.457)}, plastic top`, "D", {
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
    (say) => `Timber crib, ${say(0.6)}`,
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
