/** The piece from above: outline, centre line, where it may rest and where not, the ends of its parts. */

import { memo, useMemo } from "react";
import { type Piece, type Point, type Polygon, partsOf, pieceLength, type Step } from "../../plan";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { boxOf, fill, hatch, line, type Paper, Sketch, stroke, trace } from "../sketch";

export const PieceInPlan = memo(function PieceInPlan({
  piece,
  step,
  zones,
  bare,
  selected,
  map,
  look,
}: {
  readonly piece: Piece;
  readonly step: Step;
  readonly zones: boolean;
  /** Something else fills it. */
  readonly bare: boolean;
  readonly selected: boolean;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, accent } = look.colours;
      const toPixels = (polygon: Polygon): readonly Point[] => polygon.map(map.piece);
      const outline = toPixels(piece.outline);
      if (!bare) {
        trace(paper, outline, true);
        fill(paper, drawing.pieceFill, 0.62);
      }

      if (zones) {
        for (const zone of piece.restZones ?? []) {
          trace(paper, toPixels(zone), true);
          fill(paper, drawing.bearingArea, 0.12);
          stroke(paper, { colour: drawing.bearingArea, width: lineWeight.thin });
        }
        for (const { polygon } of piece.noRestZones) {
          const ring = toPixels(polygon);
          trace(paper, ring, true);
          hatch(paper, boxOf(ring), { colour: drawing.keepOff, width: lineWeight.thin });
          trace(paper, ring, true);
          stroke(paper, { colour: drawing.keepOff, width: lineWeight.thin });
        }
        for (const { polygon } of piece.workWindows) {
          const ring = toPixels(polygon);
          trace(paper, ring, true);
          stroke(paper, { colour: drawing.keepClear, width: lineWeight.outline, dash: dash.zone });
        }
      }

      line(paper, map.piece([0, 0]), map.piece([pieceLength(piece), 0]), {
        colour: drawing.pieceLine,
        width: lineWeight.hair,
        dash: dash.centre,
      });
      trace(paper, outline, true);
      stroke(paper, {
        colour: selected ? accent : drawing.pieceLine,
        width: selected ? lineWeight.chosen : lineWeight.outline,
      });

      const ts = piece.outline.map(([, t]) => t);
      for (const end of partsOf(piece, step).flat()) {
        if (end <= 0 || end >= pieceLength(piece)) continue;
        line(paper, map.piece([end, Math.min(...ts)]), map.piece([end, Math.max(...ts)]), {
          colour: drawing.pieceLine,
          width: lineWeight.heavy,
        });
      }
    },
    [piece, step, zones, bare, selected, map, look],
  );
  return <Sketch draw={draw} />;
});
