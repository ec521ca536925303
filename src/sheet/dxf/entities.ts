/** The drawing entities that carry outlines, and handlers for the two that the parser reads too loosely. */

import DxfParser from "dxf-parser";

export interface Position {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}

export interface Vertex extends Position {
  readonly bulge?: number;
}

interface Common {
  readonly layer?: string;
  readonly inPaperSpace?: boolean;
  readonly visible?: boolean;
  readonly extrusionDirectionZ?: number;
  readonly extrusionDirection?: Position;
}

export type DrawingEntity = Common &
  (
    | { readonly type: "LINE"; readonly vertices: readonly Vertex[] }
    | { readonly type: "LWPOLYLINE" | "POLYLINE"; readonly vertices: readonly Vertex[]; readonly shape?: boolean }
    | { readonly type: "CIRCLE"; readonly center: Position; readonly radius: number }
    | {
        readonly type: "ARC";
        readonly center: Position;
        readonly radius: number;
        readonly startAngle: number;
        readonly endAngle: number;
      }
    | {
        readonly type: "ELLIPSE";
        readonly center: Position;
        readonly majorAxisEndPoint: Position;
        readonly axisRatio: number;
        readonly startAngle?: number;
        readonly endAngle?: number;
      }
    | {
        readonly type: "SPLINE";
        readonly controlPoints?: readonly Position[];
        readonly fitPoints?: readonly Position[];
        readonly knotValues?: readonly number[];
        readonly degreeOfSplineCurve: number;
        readonly closed?: boolean;
      }
    | {
        readonly type: "INSERT";
        readonly name: string;
        readonly position: Position;
        readonly xScale?: number;
        readonly yScale?: number;
        readonly rotation?: number;
        readonly columnCount?: number;
        readonly rowCount?: number;
        readonly columnSpacing?: number;
        readonly rowSpacing?: number;
      }
  );

export interface DrawingBlock {
  readonly position?: Position;
  readonly entities?: readonly DrawingEntity[];
}

export interface ParsedDrawing {
  readonly header?: Readonly<Record<string, unknown>>;
  readonly entities?: readonly DrawingEntity[];
  readonly blocks?: Readonly<Record<string, DrawingBlock>>;
}

interface Group {
  readonly code: number;
  readonly value: number | string | boolean;
}
interface Scanner {
  next(): Group;
  isEOF(): boolean;
}

/** Hands the groups of one entity to `take`, up to the next entity, with what every entity shares taken already. */
function eachGroup(scanner: Scanner, entity: Record<string, unknown>, take: (group: Group) => void): void {
  for (let group = scanner.next(); group.code !== 0 && !scanner.isEOF(); group = scanner.next()) {
    if (group.code === 8) entity.layer = group.value;
    else if (group.code === 60) entity.visible = group.value === 0;
    else if (group.code === 67) entity.inPaperSpace = group.value !== 0;
    else if (group.code === 230) entity.extrusionDirectionZ = group.value;
    else take(group);
  }
}

/** The parser's own leaves out the side on which a circle was drawn. */
class Circle {
  readonly ForEntityName = "CIRCLE";
  parseEntity(scanner: Scanner): Record<string, unknown> {
    const center = { x: 0, y: 0 };
    const entity: Record<string, unknown> = { type: "CIRCLE", center };
    eachGroup(scanner, entity, ({ code, value }) => {
      if (code === 10) center.x = Number(value);
      else if (code === 20) center.y = Number(value);
      else if (code === 40) entity.radius = value;
    });
    return entity;
  }
}

/** The parser's own loses vertices where a group that it does not know stands between them. */
class LightPolyline {
  readonly ForEntityName = "LWPOLYLINE";
  parseEntity(scanner: Scanner): Record<string, unknown> {
    const vertices: { x: number; y: number; bulge: number }[] = [];
    const entity: Record<string, unknown> = { type: "LWPOLYLINE", vertices, shape: false };
    eachGroup(scanner, entity, ({ code, value }) => {
      const last = vertices.at(-1);
      if (code === 70) entity.shape = (Number(value) & 1) === 1;
      else if (code === 10) vertices.push({ x: Number(value), y: 0, bulge: 0 });
      else if (code === 20 && last !== undefined) last.y = Number(value);
      else if (code === 42 && last !== undefined) last.bulge = Number(value);
    });
    return entity;
  }
}

/** Parses the text of a drawing file. Throws where it is not one. */
export function parseDrawing(text: string): ParsedDrawing | null {
  const parser = new DxfParser();
  for (const handler of [Circle, LightPolyline])
    parser.registerEntityHandler(handler as unknown as Parameters<DxfParser["registerEntityHandler"]>[0]);
  return parser.parse(text) as ParsedDrawing | null;
}
