/** The piece from above: outline, centre line, where it may rest and where not, the ends of its parts. */

import { memo, useMemo } from "react";
import { clipToStrip } from "../../geometry";
import { type Piece, type Point, type Polygon, partsOf, pieceLength, type Step } from "../../plan";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import { shortened } from "../growing/parts";
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
      const there = ringsOf(piece, step, map.scale).map(toPixels);
      if (!bare)
        for (const ring of there) {
          trace(paper, ring, true);
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
      // What is not there yet shows thin beside what is.
      trace(paper, toPixels(piece.outline), true);
      if (step.parts !== null) stroke(paper, { colour: drawing.absent, width: lineWeight.thin, dash: dash.absent });
      for (const ring of there) {
        trace(paper, ring, true);
        stroke(paper, {
          colour: selected ? accent : drawing.pieceLine,
          width: selected ? lineWeight.chosen : lineWeight.outline,
        });
      }
    },
    [piece, step, zones, bare, selected, map, look],
  );
  return <Sketch draw={draw} />;
});

/** The outlines of the parts that are there, a gap at each joint that carries nothing. */
function ringsOf(piece: Piece, step: Step, scale: number): readonly Polygon[] {
  if (step.parts === null) return [piece.outline];
  return shortened(partsOf(piece, step), scale).flatMap(([from, to]) => clipToStrip(piece.outline, from, to));
}
