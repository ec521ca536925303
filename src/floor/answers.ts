/** What the floor room answers for one layout: plain numbers and polygons, m, m², bay frame unless said. */

import type { Region } from "../geometry";
import type { LayoutId, Point, Polygon, StandId } from "../plan";

/** A stand seen from above. */
export interface Footprint {
  /** Middles of the feet: frame − then +, in a frame the −square foot first, square = (cos a, sin a). */
  readonly feet: readonly [Point, Point, Point, Point];
  /** Bearing plates of the feet, in the same order. */
  readonly plates: readonly [Polygon, Polygon, Polygon, Polygon];
  /** The top, length × width. */
  readonly top: Polygon;
  /** Convex hull of each leg frame, foot plates to top: frame −, frame +. */
  readonly legHulls: readonly [Polygon, Polygon];
}

/** Where people trip over a stand's legs. */
export interface TripZone {
  readonly stand: StandId;
  /** Outer rings counter-clockwise, holes clockwise, rings not closed. Empty where all of it lies under the piece. */
  readonly polygons: readonly Region[];
  readonly area: number;
  /** Greatest distance of a point of it from the piece's outline; 0 when it is empty. */
  readonly reach: number;
}

/** A named zone of which a stand takes some area. */
export interface SharedZone {
  readonly name: string;
  readonly area: number;
}

/** A work window seen from one stand. */
export interface WindowDistance {
  readonly name: string;
  /** From the window to the nearest of top and leg frames (full height); 0 where they touch or overlap. */
  readonly distance: number;
  /** What it is to be. */
  readonly clearance: number;
  /** Area that the window shares with top and leg frames; 0 where they only touch. */
  readonly area: number;
}

/** One stand of the layout on its floor. */
export interface StandOnFloor {
  readonly stand: StandId;
  readonly footprint: Footprint;
  readonly tripZone: TripZone;
  /** True where the top is below headroom: people walk into it. */
  readonly topInTheWay: boolean;
  /** No-rest zones of the piece under which its top reaches. */
  readonly noRestZones: readonly SharedZone[];
  /** No-foot zones of the bay that its foot plates stand on. */
  readonly noFootZones: readonly SharedZone[];
  /** Obstacles that its top or leg frames run into. */
  readonly obstacles: readonly SharedZone[];
  /** Area of top and leg frames outside the bay; 0 without a bay. */
  readonly outsideBay: number;
  /** Every work window of the piece. */
  readonly windows: readonly WindowDistance[];
}

/** Two stands whose tops or leg frames overlap. */
export interface StandOverlap {
  readonly stands: readonly [StandId, StandId];
  readonly area: number;
}

/** A stand that reaches into a walkway's painted lane. */
export interface LaneOverlap {
  readonly stand: StandId;
  /** Area of foot plates in the lane. */
  readonly feet: number;
  /** Area of the trip zone in the lane. */
  readonly tripZone: number;
}

export interface WalkwayWidth {
  readonly name: string;
  /** Diameter of the widest disc that gets through; 0 where none does. */
  readonly clearWidth: number;
  /** The same without the leg frames' hulls, tops kept. */
  readonly withoutLegs: number;
  /** The walkway's width, or the criterion. */
  readonly required: number;
  /** Middle of the disc where it fits tightest; null with a clear width of 0. */
  readonly narrowestAt: Point | null;
  /** Unit vector from one side of the pinch to the other; null where the start or the end is what is narrow. */
  readonly across: Point | null;
  /** Only where there is a lane. */
  readonly lane: readonly LaneOverlap[];
}

export interface FloorReport {
  readonly layout: LayoutId;
  /** As the layout's placements. */
  readonly stands: readonly StandOnFloor[];
  readonly standOverlaps: readonly StandOverlap[];
  /** Area of the piece outside the bay; 0 without a bay. */
  readonly pieceOutsideBay: number;
  /** Empty without a bay. */
  readonly walkways: readonly WalkwayWidth[];
}
