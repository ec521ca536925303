/** From a plan's step to the mechanics of it: parts of beam, contact points, loads. */

import { pieceFrame, standFrame, toOuter } from "../geometry";
import type { Load, MassId, Piece, Placement, Plan, Stand, StandType, Step } from "../plan";
import { layoutOf, partsOf, standOf, typeOf } from "../plan";
import type { StepLevel } from "./answers";
import { type BearingGround, type BearingInterval, bearingIntervals } from "./contacts";
import { loadsOnParts } from "./loads";
import type { BeamSegment, ContactPoint, PartModel, StandModel, StepModel } from "./model";
import { remember } from "./remember";
import { standStiffness } from "./stiffness";

/** A stand of the step with what the contact points need of it. */
interface PlacedStand {
  readonly model: StandModel;
  readonly intervals: readonly BearingInterval[];
  /** Height of its top over the floor under it, m. */
  readonly top: number;
}

/**
 * The mechanics of one step with nominal weights and loads and all errors 0. Remembered by the identity of what it reads;
 * the contacts besides by what they read, so that moving one stand finds only its own again.
 */
export function assembleStep(plan: Plan, step: Step): StepModel {
  return assembledStep(plan, step).model;
}

/** A remembered step: its model, and its level answer once there is one. */
export interface AssembledStep {
  readonly model: StepModel;
  level: StepLevel | null;
}

/** What a step's mechanics is made of. */
interface Sources {
  readonly piece: Piece;
  readonly placements: readonly Placement[];
  readonly register: Pick<Plan, "stands" | "standTypes">;
  readonly slope: readonly [number, number];
  readonly loads: readonly Load[];
  readonly absent: readonly MassId[];
  readonly parts: readonly (readonly [number, number])[];
}

export function assembledStep(plan: Plan, step: Step): AssembledStep {
  const { piece, stands, standTypes, bay } = plan;
  const { placements } = layoutOf(plan, step);
  const slope = bay?.floor.slope ?? noSlope;
  return remembered(placements, piece, stands, standTypes, slope, step.loads, step.absent, partsOf(piece, step));
}

const noSlope = [0, 0] as const;
const remembered = remember(
  (
    placements: readonly Placement[],
    piece: Piece,
    stands: readonly Stand[],
    standTypes: readonly StandType[],
    slope: readonly [number, number],
    loads: readonly Load[],
    absent: readonly MassId[],
    parts: readonly (readonly [number, number])[],
  ): AssembledStep => {
    const register = { stands, standTypes };
    return { model: assemble({ piece, placements, register, slope, loads, absent, parts }), level: null };
  },
);

function assemble({ piece, placements, register, slope, loads, absent, parts }: Sources): StepModel {
  const ground = { ...piece, parts };
  const stands = placements.map((placement) => placedStand(register, ground, placement));
  const items = loadsOnParts(parts, piece.masses, absent, loads);
  const heightOfFloor = floorHeight(piece, slope);
  return {
    parts: parts.map(
      ([from, to], index): PartModel => ({
        from,
        to,
        segments: segmentsOf(piece.stiffness, from, to),
        contacts: contactsOn(stands, index, [from, to], heightOfFloor),
        loads: items[index]!,
      }),
    ),
    stands: stands.map(({ model }) => model),
  };
}

function placedStand(register: Sources["register"], ground: BearingGround, placement: Placement): PlacedStand {
  const stand = standOf(register, placement.stand);
  const type = typeOf(register, placement.stand);
  const intervals = bearingIntervals(ground, placement, type);
  const { cos, sin } = standFrame(placement);
  return {
    model: {
      stand: placement.stand,
      s: placement.s,
      t: placement.t,
      along: [-sin, cos],
      ...standStiffness(type),
      topWidth: type.top.width,
      legSpacing: type.legSpacing,
      intervals,
    },
    intervals,
    top: placement.height + stand.heightOffset + placement.shim,
  };
}

/** Height of the bay's floor under (s, t), m; 0 at the bay's origin. */
function floorHeight(piece: Piece, [slopeX, slopeY]: readonly [number, number]): (s: number, t: number) => number {
  if (slopeX === 0 && slopeY === 0) return () => 0;
  const frame = pieceFrame(piece.pose);
  return (s, t) => {
    const [x, y] = toOuter(frame, [s, t]);
    return slopeX * x + slopeY * y;
  };
}

/** The contact points of all stands on one part, ascending in s. */
function contactsOn(
  stands: readonly PlacedStand[],
  part: number,
  [from, to]: readonly [number, number],
  heightOfFloor: (s: number, t: number) => number,
): ContactPoint[] {
  const contacts: ContactPoint[] = [];
  for (const [stand, { model, intervals, top }] of stands.entries()) {
    for (const [interval, { part: on, points }] of intervals.entries()) {
      if (on !== part) continue;
      for (const { s, t, c, share, underside } of points) {
        const sigma = (s - from) / (to - from);
        contacts.push({
          stand,
          interval,
          s,
          t,
          c,
          stiffness: model.stiffness * share,
          // M5: h = floor + height + heightOffset + shim − underside
          height: heightOfFloor(s, t) + top - underside,
          bow: 4 * sigma * (1 - sigma),
        });
      }
    }
  }
  return contacts.sort((a, b) => a.s - b.s);
}

/** The beam of one part; `null` and "rigid" become Infinity. */
function segmentsOf(stiffness: Piece["stiffness"], from: number, to: number): BeamSegment[] {
  if (stiffness === "rigid") return [{ from, to, EI: Infinity, kGA: Infinity, GJ: Infinity }];
  return stiffness
    .filter((segment) => segment.from < to && segment.to > from)
    .map((segment) => ({
      from: Math.max(segment.from, from),
      to: Math.min(segment.to, to),
      EI: segment.EI,
      kGA: segment.kGA ?? Infinity,
      GJ: segment.GJ ?? Infinity,
    }));
}
