/**
 * The camera: one scale and one place along the piece for both drawings. Lengths in m, screen in CSS pixels, y down.
 */

import { boundingBox, type Frame, frameWithin, pieceFrame, toInner, toOuter } from "../geometry";
import { type Bay, memo, type Plan, type Point, type Pose, type Walkway } from "../plan";
import type { Camera } from "../store";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The sizes of what is drawn, px: the plan view, the elevation, and the diagrams that share the elevation's stage. */
export interface Sheet {
  readonly width: number;
  readonly plan: number;
  readonly elevation: number;
  readonly diagrams: number;
}

/** px a metre. */
export const scaleLimits = { least: 2, most: 4000 } as const;

/** How far a press may stray and still be a press, px. */
export const pressTravel = { mouse: 3, touch: 8 } as const;

/** What must be seen of a plan, m. */
export interface Extent {
  readonly s: readonly [number, number];
  readonly t: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Room left free round the fitted drawing, px: for dimensions above, reactions below, names at the sides. */
const margins = { side: 56, planTop: 34, planBottom: 62, elevationTop: 34, elevationBottom: 80 } as const;

/** Heights that the diagrams take together, px: not shown under the least, no larger than the most. */
const lanes = { least: 150, most: 330 } as const;

/**
 * How a sheet is divided between the drawings that show an extent: each gets what it needs at the largest scale that the
 * width allows; of what is left over, the diagrams take as much as serves them, then the plan view.
 */
export function divided(width: number, height: number, extent: Extent, diagrams: boolean): Sheet {
  const scale = scaleAcross(extent, width);
  const plan = spanOf(extent.t) * scale + margins.planTop + margins.planBottom;
  const elevation = spanOf(extent.z) * scale + margins.elevationTop + margins.elevationBottom;
  const least = diagrams ? Math.min(lanes.most, Math.max(lanes.least, height * 0.24)) : 0;
  const withLanes = diagrams && height - least >= smallest.plan + smallest.elevation;
  const room = height - (withLanes ? least : 0);
  if (plan + elevation >= room) {
    const share = Math.round(room * (plan / (plan + elevation)));
    return { width, plan: share, elevation: room - share, diagrams: height - room };
  }
  const spare = room - plan - elevation;
  const more = withLanes ? Math.min(lanes.most - least, spare * 0.5) : 0;
  const left = spare - more;
  const planHeight = Math.round(plan + left * 0.62);
  const diagramHeight = Math.round((withLanes ? least : 0) + more);
  return { width, plan: planHeight, elevation: height - diagramHeight - planHeight, diagrams: diagramHeight };
}

/** Heights under which a drawing says nothing, px. */
const smallest = { plan: 130, elevation: 130 } as const;

const spanOf = ([least, most]: readonly [number, number]): number => Math.max(most - least, 0.1);
const scaleAcross = (extent: Extent, width: number): number =>
  (width - 2 * Math.min(margins.side, width * 0.09)) / spanOf(extent.s);

/** The camera that shows an extent as large as the sheet allows. */
export function fitted(extent: Extent, sheet: Sheet): Camera {
  const planRoom = sheet.plan - margins.planTop - margins.planBottom;
  const elevationRoom = sheet.elevation - margins.elevationTop - margins.elevationBottom;
  const scale = withinLimits(
    Math.min(
      scaleAcross(extent, sheet.width),
      Math.max(planRoom, 24) / spanOf(extent.t),
      sheet.elevation === 0 ? Infinity : Math.max(elevationRoom, 24) / spanOf(extent.z),
    ),
  );
  return {
    scale,
    s: middle(extent.s),
    t: middle(extent.t) - (margins.planBottom - margins.planTop) / 2 / scale,
    z: middle(extent.z) - (margins.elevationBottom - margins.elevationTop) / 2 / scale,
  };
}

const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2;
const withinLimits = (scale: number): number => Math.min(scaleLimits.most, Math.max(scaleLimits.least, scale));

/** The extent of a plan that the fit shows: the piece, and the tops where they may come to stand. */
export function extentOf(plan: Pick<Plan, "piece" | "standTypes" | "layouts">): Extent {
  const ss = plan.piece.outline.map(([s]) => s);
  const ts = plan.piece.outline.map(([, t]) => t);
  const top = Math.max(0.4, ...plan.standTypes.map((type) => type.top.length));
  const height = Math.max(
    0.3,
    ...plan.layouts.flatMap(({ placements }) => placements.map((placement) => placement.height)),
  );
  const masses = plan.piece.masses.map((mass) => mass.z);
  return {
    s: [Math.min(...ss), Math.max(...ss)],
    t: [Math.min(-top / 2, ...ts), Math.max(top / 2, ...ts)],
    z: [0, height + Math.max(plan.piece.depth, ...masses)],
  };
}

/** The same with the whole bay round the piece, and all that lies in it. */
export function extentInBay(plan: Pick<Plan, "piece" | "standTypes" | "layouts" | "bay">): Extent {
  const alone = extentOf(plan);
  if (plan.bay === null) return alone;
  const toPiece = pieceFrame(plan.piece.pose);
  const { least, most } = boundingBox(
    partsOfBay(plan.bay)
      .flat()
      .map((point) => toInner(toPiece, point)),
  );
  return {
    s: [Math.min(alone.s[0], least[0]), Math.max(alone.s[1], most[0])],
    t: [Math.min(alone.t[0], least[1]), Math.max(alone.t[1], most[1])],
    z: alone.z,
  };
}

/** All that is drawn of a bay, part by part, (x, y) in m; parts that an edit leaves alone stay the same objects. */
export function partsOfBay(bay: Bay): readonly (readonly Point[])[] {
  return [
    bay.outline,
    ...bay.obstacles.map(({ polygon }) => polygon),
    ...bay.noFootZones.map(({ polygon }) => polygon),
    ...bay.walkways.flatMap(spanOfWalkway),
  ];
}

const spanOfWalkway = memo(({ from, to, lane }: Walkway): readonly (readonly Point[])[] => [
  [from, to],
  ...(lane === null ? [] : [lane]),
]);

/** Whether a place of the piece frame lies on the plan view's paper. */
export function onPaper({ scale, s, t }: Camera, { width, plan }: Sheet, [ps, pt]: Point): boolean {
  return Math.abs(ps - s) * scale <= width / 2 && Math.abs(pt - t) * scale <= plan / 2;
}

/** Zooms by a factor about a point of a drawing that stays where it is; `across` is t (plan) or z (elevation) there. */
export function zoomed(
  camera: Camera,
  factor: number,
  about: { readonly s: number; readonly t?: number; readonly z?: number },
): Camera {
  const scale = withinLimits(camera.scale * factor);
  const kept = camera.scale / scale;
  const toward = (centre: number, point: number | undefined): number =>
    point === undefined ? centre : point + (centre - point) * kept;
  return { scale, s: toward(camera.s, about.s), t: toward(camera.t, about.t), z: toward(camera.z, about.z) };
}

/** Where things of the plan view lie on its stage. */
export interface PlanMap {
  readonly size: Size;
  readonly scale: number;
  /** (s, t) of the piece as shown → px. */
  readonly piece: (point: Point) => Point;
  /** (x, y) of the bay → px. */
  readonly bay: (point: Point) => Point;
  /** px → (s, t) of the piece as shown. */
  readonly toPiece: (pixel: Point) => Point;
  /** px → (x, y) of the bay. */
  readonly toBay: (pixel: Point) => Point;
}

/**
 * The plan view lies along the piece: s to the right, t up. `level` is the pose that the sheet is aligned with; while
 * the piece is moved in the bay the sheet keeps the pose it had, and the piece is drawn where it goes.
 */
export function planMap(camera: Camera, size: Size, level: Pose, shown: Pose): PlanMap {
  const sheet = pieceFrame(level);
  const piece: Frame = level === shown ? atRest : frameWithin(inverse(sheet), pieceFrame(shown));
  const { scale } = camera;
  const toPixel = ([p, q]: Point): Point => [
    size.width / 2 + (p - camera.s) * scale,
    size.height / 2 - (q - camera.t) * scale,
  ];
  const fromPixel = ([x, y]: Point): Point => [
    camera.s + (x - size.width / 2) / scale,
    camera.t - (y - size.height / 2) / scale,
  ];
  return {
    size,
    scale,
    piece: (point) => toPixel(toOuter(piece, point)),
    bay: (point) => toPixel(toInner(sheet, point)),
    toPiece: (pixel) => toInner(piece, fromPixel(pixel)),
    toBay: (pixel) => toOuter(sheet, fromPixel(pixel)),
  };
}

const atRest: Frame = { origin: [0, 0], cos: 1, sin: 0 };

/** The frame that undoes another. */
function inverse(frame: Frame): Frame {
  return { origin: toInner(frame, [0, 0]), cos: frame.cos, sin: -frame.sin };
}

/** Where things of the elevation lie on its stage; the diagrams beneath share `x`. */
export interface ElevationMap {
  readonly size: Size;
  readonly scale: number;
  readonly x: (s: number) => number;
  readonly y: (z: number) => number;
  readonly toS: (x: number) => number;
  readonly toZ: (y: number) => number;
}

/** `shift`: how far along the sheet the piece has been moved by the running gesture, m. */
export function elevationMap(camera: Camera, size: Size, shift: number): ElevationMap {
  const { scale } = camera;
  return {
    size,
    scale,
    x: (s) => size.width / 2 + (s + shift - camera.s) * scale,
    y: (z) => size.height / 2 - (z - camera.z) * scale,
    toS: (x) => camera.s - shift + (x - size.width / 2) / scale,
    toZ: (y) => camera.z - (y - size.height / 2) / scale,
  };
}

/** How far along the sheet the piece lies from where the sheet is aligned with it, m. */
export function shiftAlong(level: Pose, shown: Pose): number {
  return level === shown ? 0 : toInner(pieceFrame(level), [shown.x, shown.y])[0];
}
