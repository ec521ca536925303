/**
 * Another outline for the piece. The plan file counts everything along the piece from its datum end, the least s, and
 * wants it within the length, so what lies on the piece goes along: weights, stiffness, stands, zones, loads, parts.
 */

import { boundingBox, pieceFrame, shifted, toOuter } from "../../geometry";
import {
  type LineMassDocument,
  type MassDocument,
  type PieceDocument,
  type PlanDocument,
  type Point,
  type Polygon,
  type Pose,
  pieceLength,
  type StepDocument,
  type UndersideSegment,
} from "../../plan";
import { type Changes, changed, mapped } from "../change";

/**
 * What stays of a place on the piece: `places`, it lies in the bay where it lay; `shares`, its share of the length
 * (a new outline stands in for the old one). What ran to an end runs to the new end either way.
 */
export type Keeping = "places" | "shares";

const nowhere: Pose = { x: 0, y: 0, heading: 0 };

/** A place to a micrometre: the noise of adding is not written. */
const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6;

/** How places along the old outline come to lie along the new one. */
interface Along {
  readonly place: (s: number) => number;
  /** Null where nothing of the stretch is left. */
  readonly stretch: (from: number, to: number) => readonly [number, number] | null;
  /** What a length becomes. */
  readonly scale: number;
}

function alongOf(oldLength: number, newLength: number, begins: number, keeping: Keeping): Along {
  const scale = keeping === "shares" ? newLength / oldLength : 1;
  const place = (s: number): number => tidy(keeping === "shares" ? s * scale : s - begins);
  const within = (s: number): number => Math.min(newLength, Math.max(0, s));
  return {
    place,
    scale,
    stretch: (from, to) => {
      const after = [from === 0 ? 0 : within(place(from)), to === oldLength ? newLength : within(place(to))] as const;
      return after[0] < after[1] ? after : null;
    },
  };
}

/** The document with another outline, given in the piece frame as it was. */
export function withOutline(document: PlanDocument, outline: Polygon, keeping: Keeping): PlanDocument {
  const { piece } = document;
  const begins = boundingBox(outline).least[0];
  const whole = begins === 0 ? outline : shifted(outline, [-begins, 0]).map(([s, t]): Point => [tidy(s), t]);
  const [oldLength, newLength] = [pieceLength(piece), pieceLength({ outline: whole })];
  const reshaped = changed(piece, { outline: whole });
  if (begins === 0 && newLength === oldLength) return changed(document, { piece: reshaped });

  const along = alongOf(oldLength, newLength, begins, keeping);
  return changed(document, {
    piece: changed(reshaped, { ...onPiece(piece, along), ...posed(piece, begins) }),
    layouts: mapped(document.layouts, (layout) =>
      changed(layout, {
        placements: mapped(layout.placements, (placement) => changed(placement, { s: along.place(placement.s) })),
      }),
    ),
    steps: mapped(document.steps, (step) => changed(step, inStep(step, along))),
  });
}

/** The datum end lies where the new outline begins. */
function posed(piece: PieceDocument, begins: number): Changes<PieceDocument> {
  if (begins === 0) return {};
  const pose = piece.pose ?? nowhere;
  const [x, y] = toOuter(pieceFrame(pose), [begins, 0]);
  return { pose: { ...pose, x: tidy(x), y: tidy(y) } };
}

function onPiece(piece: PieceDocument, along: Along): Changes<PieceDocument> {
  const zone = (polygon: Polygon): Polygon => polygon.map(([s, t]) => [along.place(s), t] as const);
  const { stiffness, underside, section, restZones, noRestZones, workWindows } = piece;
  return {
    masses: mapped(piece.masses, (mass) => massAlong(mass, along)),
    ...(stiffness === "rigid" ? {} : { stiffness: stretched(stiffness, along) }),
    ...(underside === undefined ? {} : { underside: underside.flatMap((one) => undersideAlong(one, along)) }),
    ...(section != null && "length" in section ? { section: stretched(section, along) } : {}),
    ...(restZones == null ? {} : { restZones: restZones.map(zone) }),
    ...(noRestZones === undefined
      ? {}
      : { noRestZones: noRestZones.map((one) => ({ ...one, polygon: zone(one.polygon) })) }),
    ...(workWindows === undefined
      ? {}
      : { workWindows: workWindows.map((one) => ({ ...one, polygon: zone(one.polygon) })) }),
  };
}

function stretched<Stretch extends { readonly from: number; readonly to: number }>(
  list: readonly Stretch[],
  along: Along,
): readonly Stretch[] {
  return list.flatMap((item) => {
    const after = along.stretch(item.from, item.to);
    return after === null ? [] : [{ ...item, from: after[0], to: after[1] }];
  });
}

function massAlong(mass: MassDocument, along: Along): MassDocument {
  if (mass.kind === "line") return lineAlong(mass, along);
  const { centreWithin } = mass;
  return changed(mass, {
    s: along.place(mass.s),
    ...(centreWithin === undefined ? {} : { centreWithin: changed(centreWithin, { s: centreWithin.s * along.scale }) }),
  });
}

/** A weight stays what it was: over another stretch it weighs more or less a metre. */
function lineAlong(mass: LineMassDocument, along: Along): LineMassDocument {
  const after = along.stretch(mass.from, mass.to);
  if (after === null) return mass;
  const factor = (mass.to - mass.from) / (after[1] - after[0]);
  const [first, last] = mass.massPerLength;
  return changed(mass, {
    from: after[0],
    to: after[1],
    ...(Math.abs(factor - 1) < 1e-12 ? {} : { massPerLength: [first * factor, last * factor] as const }),
  });
}

/** A slope that is cut off keeps its slope; one that is drawn out ends at the height where it ended. */
function undersideAlong(segment: UndersideSegment, along: Along): readonly UndersideSegment[] {
  const after = along.stretch(segment.from, segment.to);
  if (after === null) return [];
  const [from, to] = [along.place(segment.from), along.place(segment.to)];
  const height = (s: number): number => {
    const share = Math.min(1, Math.max(0, (s - from) / (to - from)));
    return segment.z[0] + share * (segment.z[1] - segment.z[0]);
  };
  return [{ from: after[0], to: after[1], z: [height(after[0]), height(after[1])] }];
}

function inStep(step: StepDocument, along: Along): Changes<StepDocument> {
  const { loads, parts } = step;
  return {
    ...(loads === undefined ? {} : { loads: mapped(loads, (load) => changed(load, { s: along.place(load.s) })) }),
    ...(parts == null
      ? {}
      : {
          parts: parts.flatMap(([from, to]) => {
            const after = along.stretch(from, to);
            return after === null ? [] : [after];
          }),
        }),
  };
}
