/** A layout from above: the piece, the tops under it, what each carries and which governs. One scale for all of a plan. */

import { type Layout, type Plan, type Point, type StandId, typeOf } from "../../plan";
import type { StandRow } from "../stands/rows";
import stepsStyles from "./steps.module.css";

/** The four corners of a top, m in the piece frame: along (−sin a, cos a), square to it (cos a, sin a). */
export function topCorners(
  { s, t, angle }: { readonly s: number; readonly t: number; readonly angle: number },
  top: { readonly length: number; readonly width: number },
): readonly Point[] {
  const a = (angle * Math.PI) / 180;
  const corner = (along: number, square: number): Point => [
    s - along * Math.sin(a) + square * Math.cos(a),
    t + along * Math.cos(a) + square * Math.sin(a),
  ];
  const [l, w] = [top.length / 2, top.width / 2];
  return [corner(-l, -w), corner(l, -w), corner(l, w), corner(-l, w)];
}

/** Room for every top of every layout of the plan, so that all pictures have one scale. */
function extent(plan: Plan): { readonly from: Point; readonly to: Point } {
  const points = [
    ...plan.piece.outline,
    ...plan.layouts.flatMap(({ placements }) =>
      placements.flatMap((placement) => topCorners(placement, typeOf(plan, placement.stand).top)),
    ),
  ];
  const [ss, ts] = [points.map(([s]) => s), points.map(([, t]) => t)];
  return { from: [Math.min(...ss), Math.min(...ts)], to: [Math.max(...ss), Math.max(...ts)] };
}

/** Long pieces lie one under the other, so that places compare along one axis; others stand side by side. */
export function isLong(plan: Plan): boolean {
  const { from, to } = extent(plan);
  return to[0] - from[0] > 2 * (to[1] - from[1]);
}

/** Room round the drawing for marks and figures, px, and the height of a row of them. */
const room = { side: 44, edge: 8, row: 16 } as const;

/** Two stands nearer than this along the piece have their figures in different rows, px. */
const crowded = 74;

/** Rows of figures that a picture has room for, and the least height of what is drawn, px. */
const figuresUnder = 2;
const leastTall = 60;

interface PictureProps {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly rows: readonly StandRow[];
  /** The stand nearest to its rating: drawn heavier and named so. */
  readonly governing: StandId | null;
  /** Of the picture, px; it is less high where the piece is long. */
  readonly width: number;
  readonly height: number;
  /** What a stand carries, in words. */
  readonly words: (row: StandRow) => string;
}

export function LayoutPicture({ plan, layout, rows, governing, width, height, words }: PictureProps) {
  const { from, to } = extent(plan);
  const [length, across] = [to[0] - from[0], to[1] - from[1]];
  const along = [...rows].sort((a, b) => a.placement.s - b.placement.s || b.placement.t - a.placement.t);
  const tall = height - 2 * room.edge - (1 + figuresUnder) * room.row;
  const scale = Math.min((width - 2 * room.side) / length, Math.max(tall, leastTall) / across);
  const labelRows = rowsOfFigures(along, scale);
  const under = Math.max(0, ...labelRows) + 1;
  const left = (width - length * scale) / 2;
  const top = room.edge + room.row;
  const bottom = top + across * scale;
  const px = ([s, t]: Point): Point => [left + (s - from[0]) * scale, top + (to[1] - t) * scale];
  const path = (points: readonly Point[]) => points.map((point) => px(point).join(",")).join(" ");
  /** Where the figures of a stand are written. */
  const foot = (index: number): number => bottom + room.edge + room.row * (labelRows[index]! + 0.6);
  return (
    <svg
      className={stepsStyles.layoutPicture}
      role="img"
      aria-label={`${layout.name} from above`}
      width={width}
      height={bottom + room.edge + under * room.row}
    >
      <polygon className={stepsStyles.layoutPiece} points={path(plan.piece.outline)} />
      {along.map(({ placement }, index) => {
        const [x, y] = px([placement.s, placement.t]);
        return (
          <line key={placement.stand} className={stepsStyles.layoutLead} x1={x} x2={x} y1={y} y2={foot(index) - 12} />
        );
      })}
      {along.map((row, index) => {
        const { placement, type, verdict } = row;
        const [x] = px([placement.s, placement.t]);
        const corners = topCorners(placement, type.top);
        const upper = Math.min(...corners.map((corner) => px(corner)[1]));
        const governs = placement.stand === governing;
        const inLine = along.some((other) => other !== row && Math.abs(other.placement.s - placement.s) * scale < 24);
        return (
          <g key={placement.stand} data-verdict={verdict} data-governs={governs} className={stepsStyles.layoutStand}>
            <polygon className={stepsStyles.layoutTop} data-verdict={verdict} points={path(corners)} />
            <text x={x} y={upper - 5}>
              {placement.stand}
            </text>
            <text x={x} y={foot(index)}>
              {inLine ? `${placement.stand}: ${words(row)}` : words(row)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** A row for the figures of each stand, so that no two that are near each other share one. */
function rowsOfFigures(along: readonly StandRow[], scale: number): readonly number[] {
  const ends: number[] = [];
  return along.map(({ placement }) => {
    const at = placement.s * scale;
    const free = ends.findIndex((end) => at - end >= crowded);
    const row = free < 0 ? ends.length : free;
    ends[row] = at;
    return row;
  });
}
