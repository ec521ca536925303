/** What a place being drawn keeps to, each by its name: corners, edges and lines of what is there, else round numbers. */

import { distanceBetween, pieceFrame, pointToSegment, toInner, toOuter } from "../../geometry";
import { type Plan, type Point, partsOf, pieceLength, type Step } from "../../plan";
import { type Aim, type NamedLine, type Shape, type ShapeRef, shapeNatures, shapesOf } from "../../store";

export interface Marks {
  readonly corners: readonly { readonly at: Point; readonly name: string }[];
  readonly edges: readonly { readonly from: Point; readonly to: Point; readonly name: string }[];
  readonly lines: readonly NamedLine[];
}

/** What is there to keep to in a frame; `except` leaves out the shape that is being changed. */
export function marksOf(plan: Plan, step: Step, frame: "piece" | "bay", except: ShapeRef | null = null): Marks {
  const toPiece = pieceFrame(plan.piece.pose);
  const into = ({ kind, points }: Shape): readonly Point[] => {
    const own = shapeNatures[kind].frame;
    if (own === frame) return points;
    return points.map((point) => (frame === "bay" ? toOuter(toPiece, point) : toInner(toPiece, point)));
  };
  const shapes = shapesOf(plan)
    .filter(({ kind, index }) => kind !== except?.kind || index !== except.index)
    .map((shape) => ({ ...shape, points: into(shape) }));
  return {
    corners: shapes.flatMap(({ kind, name, points }) =>
      points.map((at) => ({ at, name: kind === "walkway" ? `end of ${name}` : `corner of ${name}` })),
    ),
    edges: shapes.flatMap(({ kind, name, points }) =>
      points.flatMap((from, index) => {
        const to = points[index + 1] ?? (shapeNatures[kind].closed ? points[0] : undefined);
        return to === undefined ? [] : [{ from, to, name: `edge of ${name}` }];
      }),
    ),
    lines: frame === "piece" ? linesOfPiece(plan, step) : [],
  };
}

function linesOfPiece({ piece }: Plan, step: Step): readonly NamedLine[] {
  const length = pieceLength(piece);
  const joints = partsOf(piece, step)
    .flat()
    .filter((s) => s > 0 && s < length);
  return [
    { axis: 0, at: 0, name: piece.ends.datum },
    { axis: 0, at: length, name: piece.ends.far },
    { axis: 0, at: length / 2, name: "middle" },
    ...[...new Set(joints)].map((at): NamedLine => ({ axis: 0, at, name: "joint" })),
    { axis: 1, at: 0, name: "axis" },
  ];
}

/** The marks with what has been drawn so far: the first corner to close on, and every corner to be in line with. */
export function withDrawn(marks: Marks, points: readonly Point[]): Marks {
  return {
    corners: [
      ...points.map((at, index) => ({ at, name: index === 0 ? "first corner" : `corner ${index + 1}` })),
      ...marks.corners,
    ],
    edges: marks.edges,
    lines: [...marks.lines, ...points.flatMap((point, index) => inLineWith(point, `corner ${index + 1}`))],
  };
}

/** The two lines through a point. */
export function inLineWith(point: Point, name: string): readonly NamedLine[] {
  return ([0, 1] as const).map((axis) => ({ axis, at: point[axis], name: `in line with ${name}` }));
}

/**
 * Where a hand at `wished` is taken to mean: a corner in reach, else along each way a line in reach, else an edge in
 * reach, else the nearest round numbers. Metres.
 */
export function aimed(wished: Point, marks: Marks, reach: number, round: number): Aim {
  const corner = nearest(marks.corners, ({ at }) => distanceBetween(at, wished), reach);
  if (corner !== null) return { at: corner.at, lines: [], name: corner.name };

  const lines = ([0, 1] as const).map((axis) =>
    nearest(
      marks.lines.filter((line) => line.axis === axis),
      ({ at }) => Math.abs(at - wished[axis]),
      reach,
    ),
  );
  const rounded = (axis: 0 | 1): number => lines[axis]?.at ?? Math.round(wished[axis] / round) * round;
  const kept = lines.filter((line) => line !== null);
  if (kept.length > 0) return { at: [rounded(0), rounded(1)], lines: kept, name: null };

  const edge = nearest(marks.edges, ({ from, to }) => pointToSegment(wished, from, to).distance, reach);
  if (edge !== null) return { at: onEdge(wished, edge, round), lines: [], name: edge.name };
  return { at: [rounded(0), rounded(1)], lines: [], name: null };
}

/** The place on an edge under the hand; on an edge that lies square, at a round number along it. */
function onEdge(wished: Point, { from, to }: { readonly from: Point; readonly to: Point }, round: number): Point {
  const { to: foot } = pointToSegment(wished, from, to);
  for (const axis of [0, 1] as const) {
    if (from[axis] !== to[axis]) continue;
    const across = axis === 0 ? 1 : 0;
    const [least, most] = [Math.min(from[across], to[across]), Math.max(from[across], to[across])];
    const along = Math.min(most, Math.max(least, Math.round(foot[across] / round) * round));
    return axis === 0 ? [from[0], along] : [along, from[1]];
  }
  return foot;
}

function nearest<Item>(items: readonly Item[], distance: (item: Item) => number, reach: number): Item | null {
  let best: Item | null = null;
  let least = reach;
  for (const item of items) {
    const off = distance(item);
    if (off > least || (off === least && best !== null)) continue;
    best = item;
    least = off;
  }
  return best;
}
