/**
 * The plan document: what a plan file holds, as types.
 *
 * Base units throughout: metre, kilogram, newton, pascal, degree (angles only; slopes are m/m), ISO 8601 dates.
 * Bay frame (x, y, z): floor plan, z up. Piece frame (s, t, z): s along the piece from its datum end, t across it
 * (positive to the left when one looks along +s), z up from the datum plane.
 *
 * `Plan` is complete: every optional key carries its value or its default. `PlanDocument` is what was read and will be
 * written: optional keys stay left out where the file left them out. `complete` turns the second into the first.
 */

declare const brand: unique symbol;
type Branded<Name extends string> = string & { readonly [brand]: Name };

export type MassId = Branded<"mass">;
export type StandTypeId = Branded<"stand type">;
export type StandId = Branded<"stand">;
export type LayoutId = Branded<"layout">;
export type StepId = Branded<"step">;

/** A point in a plane: (s, t) in the piece frame or (x, y) in the bay frame, m. */
export type Point = readonly [number, number];
/** A simple polygon, either winding, the first point not repeated, m. */
export type Polygon = readonly Point[];

export interface Plan {
  readonly format: "trestleboard-plan";
  readonly version: 1;
  readonly title: string;
  readonly revision: number;
  readonly notes: string;
  readonly display: Display;
  readonly piece: Piece;
  readonly standTypes: readonly StandType[];
  readonly stands: readonly Stand[];
  readonly layouts: readonly Layout[];
  readonly steps: readonly Step[];
  readonly bay: Bay | null;
  /** Only what differs from the defaults; `criteriaOf` gives the whole. */
  readonly criteria: CriteriaChanges;
}

export type LengthUnit = "ft-in" | "in" | "mm" | "m";
export type ForceUnit = "lb" | "kip" | "kg" | "t" | "N" | "kN";

/** How the screen and the sheet show quantities; null = by `units`. Never changes a stored number. */
export interface Display {
  readonly units: "us" | "metric";
  readonly length: LengthUnit | null;
  readonly force: ForceUnit | null;
}

export interface Piece {
  readonly name: string;
  /** How the two ends are told apart on the piece itself. */
  readonly ends: { readonly datum: string; readonly far: string };
  /** (x, y) = pose.xy + R(heading)·(s, t); heading in degrees, counter-clockwise from +x. */
  readonly pose: Pose;
  readonly outline: Polygon;
  /** Overall height above the underside, m, > 0. */
  readonly depth: number;
  readonly stiffness: "rigid" | readonly StiffnessSegment[];
  readonly underside: readonly UndersideSegment[];
  readonly masses: readonly Mass[];
  /** null = the piece may rest anywhere within its outline. */
  readonly restZones: readonly Polygon[] | null;
  readonly noRestZones: readonly NamedPolygon[];
  readonly workWindows: readonly WorkWindow[];
  readonly section: SectionStrength | readonly SectionSegment[] | null;
}

export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly heading: number;
}

/** EI in N·m²; kGA in N, null = shear-rigid; GJ in N·m², null = twist-rigid. */
export interface StiffnessSegment {
  readonly from: number;
  readonly to: number;
  readonly EI: number;
  readonly kGA: number | null;
  readonly GJ: number | null;
}

/** Height of the bearing surface over the datum plane, linear from z[0] at `from` to z[1] at `to`, m. */
export interface UndersideSegment {
  readonly from: number;
  readonly to: number;
  readonly z: readonly [number, number];
}

/** How a weight is known. */
export type WeightBasis = "scale" | "hook" | "maker" | "model" | "calculated" | "guess";

interface MassCommon {
  readonly id: MassId;
  readonly name: string;
  readonly t: number;
  readonly z: number;
  /** ± fraction of this item, 0 ≤ uncertainty < 1. */
  readonly uncertainty: number;
  readonly basis: WeightBasis | null;
}

export interface LineMass extends MassCommon {
  readonly kind: "line";
  readonly from: number;
  readonly to: number;
  /** kg/m at `from` and at `to`, linear between. */
  readonly massPerLength: readonly [number, number];
}

export interface PointMass extends MassCommon {
  readonly kind: "point";
  readonly s: number;
  /** kg. */
  readonly mass: number;
  /** The centre may lie ± so far from (s, t), m. */
  readonly centreWithin: { readonly s: number; readonly t: number };
}

export type Mass = LineMass | PointMass;

export interface NamedPolygon {
  readonly name: string;
  readonly polygon: Polygon;
}

export interface WorkWindow extends NamedPolygon {
  /** Distance to be kept free of stands, m. */
  readonly clearance: number;
}

/** Strength data of a section, SI; a key left out is not known. */
export interface SectionStrength {
  readonly depth?: number;
  readonly flangeWidth?: number;
  readonly flangeThickness?: number;
  readonly webThickness?: number;
  readonly fillet?: number;
  readonly sectionModulus?: number;
  readonly shearArea?: number;
  readonly radiusOfGyrationY?: number;
  readonly webs?: number;
  readonly yield?: number;
  readonly E?: number;
}

export interface SectionSegment extends SectionStrength {
  readonly from: number;
  readonly to: number;
}

export type TopMaterial = "steel" | "hardwood" | "uhmw-pe" | "rubber";

export interface StandType {
  readonly id: StandTypeId;
  readonly name: string;
  readonly legs: "a-frame" | "vertical";
  /** Floor to top of the bearing surface, m. */
  readonly height: { readonly min: number; readonly max: number; readonly increment: number };
  readonly top: { readonly length: number; readonly width: number; readonly material: TopMaterial };
  /** Between the two leg frames, along the top, m. */
  readonly legSpacing: number;
  /** Degrees from vertical; `along` = square to the top's length. */
  readonly splay: { readonly along: number; readonly across: number };
  /** Bearing plate under each leg, m; length square to the top. */
  readonly foot: { readonly length: number; readonly width: number };
  /** N on one stand, spread over the top; null = not known. */
  readonly ratedLoad: number | null;
  /** N at the middle of the top; null = not known. */
  readonly ratedLoadCentre: number | null;
  readonly designFactor: number | null;
  readonly ratedForWorkUnder: boolean | null;
  /** What its plate says, word for word. */
  readonly marking: string;
  /** N/m, the whole stand, pad included; null = not known. */
  readonly stiffness: number | null;
  /** kg. */
  readonly selfMass: number;
  /** N on the stand at which the casters retract; null = no casters. */
  readonly casters: { readonly retractLoad: number } | null;
  readonly liftingPoints: boolean;
}

export type StandCondition = "in-service" | "inspect" | "out-of-service";

/** One stand of the register. */
export interface Stand {
  readonly id: StandId;
  readonly type: StandTypeId;
  readonly condition: StandCondition;
  readonly lastInspected: string | null;
  /** How much higher than said this very stand is, m. */
  readonly heightOffset: number;
}

export interface Placement {
  readonly stand: StandId;
  readonly s: number;
  readonly t: number;
  /** Degrees counter-clockwise from square to the piece. */
  readonly angle: number;
  readonly height: number;
  readonly shim: number;
  /** m; left out = the criterion. */
  readonly levelTolerance?: number;
}

export interface Layout {
  readonly id: LayoutId;
  readonly name: string;
  readonly placements: readonly Placement[];
}

/** A force at a point of the piece, N in (s, t, z). */
export interface Load {
  readonly name: string;
  readonly s: number;
  readonly t: number;
  readonly z: number;
  readonly force: readonly [number, number, number];
}

/** What was found when the piece came down, in m or N; `stand` is null for a weight. */
export interface Reading {
  readonly stand: StandId | null;
  readonly kind: "gap" | "reaction" | "height" | "weight";
  readonly value: number;
  readonly tolerance: number;
}

export interface Step {
  readonly id: StepId;
  readonly name: string;
  readonly layout: LayoutId;
  readonly absent: readonly MassId[];
  /** Stretches [from, to] that are there, joined to nothing; null = the whole piece. */
  readonly parts: readonly (readonly [number, number])[] | null;
  /** ± m over each part; null = the criterion straightness. */
  readonly bow: number | null;
  readonly loads: readonly Load[];
  readonly peopleUnder: boolean;
  readonly setDown: boolean;
  readonly craneHolds: boolean;
  readonly chocked: boolean;
  readonly braced: boolean;
  readonly readings: readonly Reading[];
}

export interface Walkway {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  /** Clear width needed, m; left out = the criterion walkwayWidth. */
  readonly width?: number;
  readonly lane: Polygon | null;
}

export interface Slab {
  readonly thickness: number;
  /** Pa. */
  readonly compressiveStrength: number;
  /** Pa/m. */
  readonly subgradeModulus: number;
  /** null = not known where they are. */
  readonly joints: readonly (readonly [Point, Point])[] | null;
}

export interface Bay {
  /** Rise per metre in x and in y. */
  readonly floor: { readonly slope: readonly [number, number] };
  readonly outline: Polygon;
  readonly obstacles: readonly NamedPolygon[];
  readonly noFootZones: readonly NamedPolygon[];
  readonly walkways: readonly Walkway[];
  readonly slab: Slab | null;
}

/** Every criterion of a plan with its value: what the file changes over the defaults. Units in `criteriaTable`. */
export interface Criteria {
  readonly levelTolerance: number;
  readonly topTilt: number;
  readonly straightness: number;
  readonly setDownFactor: number;
  readonly tipReserve: number;
  readonly tipReserveUnder: number;
  readonly cgMargin: number;
  readonly tiltLimit: number;
  readonly personLoad: number;
  readonly horizontalFraction: number;
  readonly pushLeast: number;
  readonly slideReserve: number;
  readonly closeFraction: number;
  readonly tripHeight: number;
  readonly toeClearance: number;
  readonly headroom: number;
  readonly walkwayWidth: number;
  readonly friction: Readonly<Record<TopMaterial, number>>;
  readonly floorFriction: number;
  readonly bearingPressure: Readonly<Record<TopMaterial, number>>;
  readonly allowableStressFactor: number;
  readonly sagLimit: number | null;
  readonly slabFactor: number;
  readonly require: readonly FindingCode[];
}

export type CriteriaChanges = {
  readonly [Key in keyof Criteria]?: Criteria[Key] extends Readonly<Record<TopMaterial, number>>
    ? Partial<Criteria[Key]>
    : Criteria[Key];
};

/** The codes of findings, in the order of the specification. */
export const findingCodes = [
  "tips",
  "tilts",
  "tip-reserve",
  "stand-never-bears",
  "stand-lifts-off",
  "stand-over-rating",
  "rating-centre",
  "casters-still-down",
  "shim-loose",
  "stand-tips-over",
  "rolls-over",
  "slides",
  "single-stand-loss",
  "stand-not-in-service",
  "stand-not-rated-under",
  "crane-holds",
  "not-under-piece",
  "no-rest-overlap",
  "heights-mismatch",
  "bearing-pressure",
  "bending",
  "shear",
  "web-yielding",
  "web-crippling",
  "lateral-buckling",
  "sag",
  "slab",
  "walkway-narrow",
  "trip-zone-in-walkway",
  "foot-on-no-foot-zone",
  "stands-overlap",
  "outside-bay",
  "work-window-blocked",
  "readings-disagree",
] as const;
export type FindingCode = (typeof findingCodes)[number];
