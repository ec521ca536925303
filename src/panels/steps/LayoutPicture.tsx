/** A layout from above, small: the piece, the tops under it, which of them fails. One scale for all of a plan. */

import { type Layout, type Plan, type Point, typeOf } from "../../plan";
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

interface PictureProps {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly rows: readonly StandRow[];
}

export function LayoutPicture({ plan, layout, rows }: PictureProps) {
  const { from, to } = extent(plan);
  const margin = 0.03 * (to[0] - from[0]);
  const path = (points: readonly Point[]) => points.map(([s, t]) => `${s},${-t}`).join(" ");
  return (
    <svg
      className={stepsStyles.layoutPicture}
      role="img"
      aria-label={`${layout.name} from above`}
      viewBox={`${from[0] - margin} ${-to[1] - margin} ${to[0] - from[0] + 2 * margin} ${to[1] - from[1] + 2 * margin}`}
    >
      <polygon className={stepsStyles.layoutPiece} points={path(plan.piece.outline)} />
      {rows.map(({ placement, type, verdict }) => (
        <polygon
          key={placement.stand}
          className={stepsStyles.layoutTop}
          data-verdict={verdict}
          points={path(topCorners(placement, type.top))}
        />
      ))}
    </svg>
  );
}
