/** Where the top of a stand can bear, and the contact points that stand for it (docs/mechanics.md, M1 to M4). */

import {
  commonStretches,
  joinTouching,
  type Line,
  type Stretch,
  standFrame,
  stretchesInPolygon,
  withoutStretches,
} from "../geometry";
import type { NamedPolygon, Placement, Polygon, StandType, UndersideSegment } from "../plan";
import { staticsTolerance } from "./constants";
import { remember } from "./remember";
import { type Side, undersideBeside, undersideSteps } from "./underside";

/** A bearing interval of a top: [from, to] along it from its middle, m, on one part, with its contact points. */
export interface BearingInterval {
  readonly from: number;
  readonly to: number;
  /** Index of the part. */
  readonly part: number;
  readonly points: readonly BearingPoint[];
}

export interface BearingPoint {
  readonly s: number;
  readonly t: number;
  /** Along the top from its middle, m. */
  readonly c: number;
  /** Share of the stand's bearing length, and so of its stiffness; the shares of a stand add up to 1. */
  readonly share: number;
  /** Height of the underside over the datum plane, m. */
  readonly underside: number;
}

/** What of the piece decides where it can bear. */
export interface BearingGround {
  readonly outline: Polygon;
  /** null = anywhere. */
  readonly restZones: readonly Polygon[] | null;
  readonly noRestZones: readonly NamedPolygon[];
  readonly underside: readonly UndersideSegment[];
  /** The stretches of the piece that are there, ascending, m. */
  readonly parts: readonly Stretch[];
}

/** M2: Gauss–Lobatto rule of five points on [−1, 1], weights adding up to 1 (Abramowitz and Stegun, table 25.6). */
const lobatto: readonly { readonly node: number; readonly weight: number }[] = [
  { node: -1, weight: 1 / 20 },
  { node: -Math.sqrt(3 / 7), weight: 49 / 180 },
  { node: 0, weight: 16 / 45 },
  { node: Math.sqrt(3 / 7), weight: 49 / 180 },
  { node: 1, weight: 1 / 20 },
];

/**
 * The bearing intervals of a placed top, as the result file lists them: ascending along the top; part after part where
 * the top lies along the common end of two. Empty where it bears nowhere. Remembered by the identity of what it reads.
 */
export function bearingIntervals(
  { outline, restZones, noRestZones, underside, parts }: BearingGround,
  placement: Placement,
  type: Pick<StandType, "top">,
): readonly BearingInterval[] {
  return found(placement, type, outline, restZones, noRestZones, underside, parts);
}

const found = remember(
  (
    placement: Placement,
    type: Pick<StandType, "top">,
    outline: Polygon,
    restZones: readonly Polygon[] | null,
    noRestZones: readonly NamedPolygon[],
    underside: readonly UndersideSegment[],
    parts: readonly Stretch[],
  ): readonly BearingInterval[] => {
    const line = topLine(placement, type);
    const bearing = bearingStretches({ outline, restZones, noRestZones }, line);
    const square = alongSection(line);
    const steps = square ? [] : undersideSteps(underside);
    const intervals: BearingStretch[] = [];
    for (const [index, part] of parts.entries()) {
      for (const whole of commonStretches(bearing, onPart(line, part, square))) {
        for (const stretch of cutAt(whole, cutsOf(line, steps, part))) intervals.push({ stretch, index, part });
      }
    }
    if (!square) intervals.sort((a, b) => a.stretch[0] - b.stretch[0]);
    let total = 0;
    for (const { stretch } of intervals) total += stretch[1] - stretch[0];
    return intervals.map(({ stretch, index, part }) => ({
      from: stretch[0],
      to: stretch[1],
      part: index,
      points: pointsOf(line, stretch, part, underside, (stretch[1] - stretch[0]) / total),
    }));
  },
);

interface BearingStretch {
  readonly stretch: Stretch;
  readonly index: number;
  readonly part: Stretch;
}

/** M1: the top's line, centred on its placement, in the direction (−sin a, cos a). */
function topLine(placement: Placement, type: Pick<StandType, "top">): Line {
  const { origin, cos, sin } = standFrame(placement);
  return { at: origin, along: [-sin, cos], from: -type.top.length / 2, to: type.top.length / 2 };
}

/** Inside the outline and the rest zones, outside the no-rest zones. */
function bearingStretches(
  { outline, restZones, noRestZones }: Pick<BearingGround, "outline" | "restZones" | "noRestZones">,
  line: Line,
): readonly Stretch[] {
  let stretches = stretchesInPolygon(line, outline);
  if (restZones !== null) {
    stretches = commonStretches(stretches, joinTouching(restZones.flatMap((zone) => stretchesInPolygon(line, zone))));
  }
  if (noRestZones.length > 0) {
    const forbidden = noRestZones.flatMap(({ polygon }) => stretchesInPolygon(line, polygon));
    stretches = joinTouching(withoutStretches(stretches, joinTouching(forbidden)));
  }
  return stretches.filter(longEnough);
}

function longEnough([from, to]: Stretch): boolean {
  return to - from >= staticsTolerance.place;
}

/** True where the whole top lies at one s. */
function alongSection({ along, from, to }: Line): boolean {
  return Math.abs(along[0]) * (to - from) <= staticsTolerance.place;
}

/** c at which a line that is not square to the piece passes s. */
function whereAt({ at, along }: Line, s: number): number {
  return (s - at[0]) / along[0];
}

/** The stretch of the top over one part, as a list of one or none; the part's ends belong to it. */
function onPart(line: Line, part: Stretch, square: boolean): Stretch[] {
  if (square) {
    const s = line.at[0];
    const near = staticsTolerance.place;
    return s >= part[0] - near && s <= part[1] + near ? [[line.from, line.to]] : [];
  }
  const [a, b] = [whereAt(line, part[0]), whereAt(line, part[1])];
  return [[Math.min(a, b), Math.max(a, b)]];
}

/** Where a top passes the steps of the underside within a part. */
function cutsOf(line: Line, steps: readonly number[], part: Stretch): number[] {
  return steps.filter((s) => s > part[0] && s < part[1]).map((s) => whereAt(line, s));
}

function cutAt(stretch: Stretch, cuts: readonly number[]): readonly Stretch[] {
  const [from, to] = stretch;
  const within = cuts.filter((c) => c > from && c < to).sort((a, b) => a - b);
  if (within.length === 0) return longEnough(stretch) ? [stretch] : [];
  const ends = [from, ...within, to];
  return ends
    .slice(1)
    .map((end, index): Stretch => [ends[index]!, end])
    .filter(longEnough);
}

function pointsOf(
  { at, along }: Line,
  [from, to]: Stretch,
  part: Stretch,
  underside: readonly UndersideSegment[],
  share: number,
): BearingPoint[] {
  const middle = (from + to) / 2;
  const middleS = at[0] + middle * along[0];
  const square = Math.abs(along[0]) * (to - from) <= staticsTolerance.place;
  return lobatto.map(({ node, weight }) => {
    const c = node === -1 ? from : node === 1 ? to : middle + (node * (to - from)) / 2;
    const s = Math.min(part[1], Math.max(part[0], at[0] + c * along[0]));
    const own = square ? null : middleS >= s ? 1 : -1;
    const height = underside.length === 0 ? 0 : surfaceAt(underside, s, part, own);
    return { s, t: at[1] + c * along[1], c, share: share * weight, underside: height };
  });
}

/** The surface that a point takes: that of its own side at a step, the lower one where its top lies along the step. */
function surfaceAt(underside: readonly UndersideSegment[], s: number, part: Stretch, own: Side | null): number {
  if (s - part[0] <= staticsTolerance.place) return undersideBeside(underside, s, 1);
  if (part[1] - s <= staticsTolerance.place) return undersideBeside(underside, s, -1);
  if (own !== null) return undersideBeside(underside, s, own);
  return Math.min(undersideBeside(underside, s, -1), undersideBeside(underside, s, 1));
}
