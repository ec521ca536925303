/** Edits of what is drawn by hand: shapes added, reshaped, named and removed, and whole drawings taken over. */

import { boundingBox, directionOf } from "../../geometry";
import {
  type BayDocument,
  complete,
  type NamedPolygon,
  type PieceDocument,
  type PlanDocument,
  type Point,
  type Polygon,
  type WalkwayDocument,
  type WorkWindow,
} from "../../plan";
import { changed } from "../change";
import { newShapeName, type ShapeKind, type ShapeRef, shapeNatures, shapeOf } from "../drawing/shapes";
import { edit } from "./command";
import { type Keeping, withOutline } from "./outline";

/** How far stands keep from a zone for work that has just been drawn, m. Custom, no source; changed at will. */
const usualClearance = 0.3;

function inPiece(document: PlanDocument, update: (piece: PieceDocument) => PieceDocument): PlanDocument {
  return changed(document, { piece: update(document.piece) });
}

/** Without a bay there is nothing to change in it. */
function inBay(document: PlanDocument, update: (bay: BayDocument) => BayDocument): PlanDocument {
  return document.bay == null ? document : changed(document, { bay: update(document.bay) });
}

/** Lists of zones, each with one more, one less or one changed. `null` takes it out. */
type Update<Item> = (list: readonly Item[]) => readonly Item[];
const add =
  <Item>(item: Item): Update<Item> =>
  (list) => [...list, item];
const at =
  <Item>(index: number, update: (item: Item) => Item | null): Update<Item> =>
  (list) =>
    list.flatMap((item, place) => {
      if (place !== index) return [item];
      const after = update(item);
      return after === null ? [] : [after];
    });

/** The walkways with the ends that two points say. */
const between = (walkway: WalkwayDocument, [from, to]: readonly Point[]): WalkwayDocument =>
  changed(walkway, { from: from ?? walkway.from, to: to ?? walkway.to });

/** What an update does to a shape of a list: its points, its name, or away with it. */
interface ShapeUpdate {
  readonly zone: Update<NamedPolygon>;
  readonly window: Update<WorkWindow>;
  readonly area: Update<Polygon>;
  readonly walkway: Update<WalkwayDocument>;
}

function updated(document: PlanDocument, kind: ShapeKind, update: ShapeUpdate): PlanDocument {
  switch (kind) {
    case "restZone":
      return inPiece(document, (piece) => {
        const after = update.area(piece.restZones ?? []);
        return changed(piece, { restZones: after.length === 0 ? null : after });
      });
    case "noRestZone":
      return inPiece(document, (piece) => changed(piece, { noRestZones: update.zone(piece.noRestZones ?? []) }));
    case "workWindow":
      return inPiece(document, (piece) => changed(piece, { workWindows: update.window(piece.workWindows ?? []) }));
    case "obstacle":
      return inBay(document, (bay) => changed(bay, { obstacles: update.zone(bay.obstacles ?? []) }));
    case "noFootZone":
      return inBay(document, (bay) => changed(bay, { noFootZones: update.zone(bay.noFootZones ?? []) }));
    case "walkway":
    case "lane":
      return inBay(document, (bay) => changed(bay, { walkways: update.walkway(bay.walkways ?? []) }));
    case "outline":
    case "bay":
      return document;
    default:
      return kind satisfies never;
  }
}

function withBayOutline(document: PlanDocument, outline: Polygon): PlanDocument {
  const bay: BayDocument = document.bay ?? { floor: { slope: [0, 0] }, outline };
  return changed(document, { bay: changed(bay, { outline }) });
}

function withPoints(document: PlanDocument, { kind, index }: ShapeRef, points: readonly Point[]): PlanDocument {
  if (kind === "outline") return withOutline(document, points, "places");
  if (kind === "bay") return withBayOutline(document, points);
  return updated(document, kind, {
    area: at(index, () => points),
    zone: at(index, (zone) => changed(zone, { polygon: points })),
    window: at(index, (zone) => changed(zone, { polygon: points })),
    walkway: at(index, (walkway) => (kind === "lane" ? changed(walkway, { lane: points }) : between(walkway, points))),
  });
}

const nameOf = (document: PlanDocument, ref: ShapeRef): string =>
  shapeOf(complete(document), ref)?.name ?? shapeNatures[ref.kind].word;

export const shapeEdits = {
  /**
   * A shape as it has been drawn, in the frame of its kind, m. A second outline takes the place of the first, and what
   * lies on the piece keeps its share of the length; `walkway` says whose lane it is.
   */
  "shape.add": edit<{ kind: ShapeKind; points: readonly Point[]; walkway?: number }>({
    label: ({ kind }) => `Draw ${shapeNatures[kind].one}`,
    run: (document, { kind, points, walkway = 0 }) => {
      if (kind === "outline") return withOutline(document, points, "shares");
      if (kind === "bay") return withBayOutline(document, points);
      if (kind === "lane") return withPoints(document, { kind, index: walkway }, points);
      const name = newShapeName(complete(document), kind);
      const [from, to] = points as readonly [Point, Point];
      return updated(document, kind, {
        area: add(points),
        zone: add({ name, polygon: points }),
        window: add({ name, polygon: points, clearance: usualClearance }),
        walkway: add({ name, from, to }),
      });
    },
  }),
  /** Other points for a shape; what lies on the piece stays where it is. */
  "shape.points": edit<{ ref: ShapeRef; points: readonly Point[]; label?: string; burst?: string }>({
    label: ({ ref, label }, document) => label ?? `Change ${nameOf(document, ref)}`,
    run: (document, { ref, points }) => withPoints(document, ref, points),
    burst: ({ burst }) => burst ?? null,
  }),
  /** Names a zone, an obstacle or a walkway; others have none. */
  "shape.name": edit<{ ref: ShapeRef; name: string }>({
    label: ({ name }) => `Name ${name}`,
    run: (document, { ref, name }) =>
      updated(document, ref.kind, {
        area: (list) => list,
        zone: at(ref.index, (zone) => changed(zone, { name })),
        window: at(ref.index, (zone) => changed(zone, { name })),
        walkway: at(ref.index, (walkway) => changed(walkway, { name })),
      }),
  }),
  /** How wide a walkway has to be clear, m. */
  "walkway.width": edit<{ index: number; width: number }>({
    label: ({ index }, document) => `Change ${nameOf(document, { kind: "walkway", index })}`,
    run: (document, { index, width }) =>
      inBay(document, (bay) =>
        changed(bay, {
          walkways: at<WalkwayDocument>(index, (walkway) => changed(walkway, { width }))(bay.walkways ?? []),
        }),
      ),
  }),
  /** Removes a shape; the piece keeps its outline, and the bay goes with `plan.bay`. */
  "shape.remove": edit<{ ref: ShapeRef }>({
    label: ({ ref }, document) => `Remove ${nameOf(document, ref)}`,
    run: (document, { ref: { kind, index } }) =>
      updated(document, kind, {
        area: at<Polygon>(index, () => null),
        zone: at<NamedPolygon>(index, () => null),
        window: at<WorkWindow>(index, () => null),
        walkway: at<WalkwayDocument>(index, (walkway) =>
          kind === "lane" ? changed(walkway, { lane: undefined }) : null,
        ),
      }),
  }),

  /** Takes the piece's outline over from a drawing, with its holes; the holes of an earlier drawing go. */
  "drawing.piece": edit<{ outline: Polygon; holes: readonly Polygon[]; keeping: Keeping }>({
    label: () => "Take the outline over from a drawing",
    run: (document, { outline, holes, keeping }) => {
      const isHole = /^hole \d+$/;
      const others = (document.piece.noRestZones ?? []).filter(({ name }) => !isHole.test(name));
      const without = inPiece(document, (piece) =>
        others.length === (piece.noRestZones ?? []).length ? piece : changed(piece, { noRestZones: others }),
      );
      const zones = holes.map((polygon, index) => ({ name: `hole ${index + 1}`, polygon }));
      return inPiece(withOutline(without, outline, keeping), (piece) =>
        zones.length === 0 ? piece : changed(piece, { noRestZones: [...(piece.noRestZones ?? []), ...zones] }),
      );
    },
  }),
  /** Takes the bay over from a drawing; floor, walkways and slab stay. `centre`: the piece is put in its middle. */
  "drawing.bay": edit<{
    outline: Polygon;
    obstacles: readonly NamedPolygon[];
    noFootZones: readonly NamedPolygon[];
    centre: boolean;
  }>({
    label: () => "Take the bay over from a drawing",
    run: (document, { outline, obstacles, noFootZones, centre }) => {
      const withBay = inBay(withBayOutline(document, outline), (bay) => changed(bay, { obstacles, noFootZones }));
      return centre ? pieceInMiddle(withBay, outline) : withBay;
    },
  }),
};

/** The piece moved so that the middle of its box lies in the middle of the bay's. */
function pieceInMiddle(document: PlanDocument, bay: Polygon): PlanDocument {
  const { pose = { x: 0, y: 0, heading: 0 }, outline } = document.piece;
  const middle = ({ least, most }: ReturnType<typeof boundingBox>): Point => [
    (least[0] + most[0]) / 2,
    (least[1] + most[1]) / 2,
  ];
  const [cos, sin] = directionOf(pose.heading);
  const [s, t] = middle(boundingBox(outline));
  const [x, y] = middle(boundingBox(bay));
  const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6;
  return inPiece(document, (piece) =>
    changed(piece, { pose: { ...pose, x: tidy(x - s * cos + t * sin), y: tidy(y - s * sin - t * cos) } }),
  );
}
