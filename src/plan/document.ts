/** The plan as it was read and will be written: the optional keys of plan-format may be left out. */

import type {
  Bay,
  Display,
  Layout,
  LineMass,
  Piece,
  Placement,
  Plan,
  PointMass,
  Slab,
  Stand,
  StandType,
  Step,
  Walkway,
} from "./types";

type MayLeaveOut<Whole, Keys extends keyof Whole> = Omit<Whole, Keys> & { readonly [Key in Keys]?: Whole[Key] };

export type LineMassDocument = MayLeaveOut<LineMass, "uncertainty" | "basis">;
export type PointMassDocument = MayLeaveOut<PointMass, "uncertainty" | "basis" | "centreWithin">;
export type MassDocument = LineMassDocument | PointMassDocument;

export type PieceDocument = MayLeaveOut<
  Omit<Piece, "masses">,
  "ends" | "pose" | "underside" | "restZones" | "noRestZones" | "workWindows" | "section"
> & { readonly masses: readonly MassDocument[] };

export type StandTypeDocument = MayLeaveOut<
  StandType,
  | "ratedLoad"
  | "ratedLoadCentre"
  | "designFactor"
  | "ratedForWorkUnder"
  | "marking"
  | "stiffness"
  | "casters"
  | "liftingPoints"
>;
export type StandDocument = MayLeaveOut<Stand, "lastInspected" | "heightOffset">;
export type PlacementDocument = MayLeaveOut<Placement, "angle" | "shim">;
export type LayoutDocument = Omit<Layout, "placements"> & { readonly placements: readonly PlacementDocument[] };
export type StepDocument = MayLeaveOut<
  Step,
  "absent" | "parts" | "bow" | "loads" | "peopleUnder" | "setDown" | "craneHolds" | "chocked" | "braced" | "readings"
>;
export type WalkwayDocument = MayLeaveOut<Walkway, "lane">;
export type SlabDocument = MayLeaveOut<Slab, "joints">;
export type BayDocument = MayLeaveOut<Omit<Bay, "walkways" | "slab">, "obstacles" | "noFootZones"> & {
  readonly walkways?: readonly WalkwayDocument[];
  readonly slab?: SlabDocument | null;
};

export type PlanDocument = MayLeaveOut<
  Omit<Plan, "display" | "piece" | "standTypes" | "stands" | "layouts" | "steps" | "bay">,
  "revision" | "notes" | "criteria"
> & {
  readonly display?: Partial<Display>;
  readonly piece: PieceDocument;
  readonly standTypes: readonly StandTypeDocument[];
  readonly stands: readonly StandDocument[];
  readonly layouts: readonly LayoutDocument[];
  readonly steps: readonly StepDocument[];
  readonly bay?: BayDocument | null;
};
