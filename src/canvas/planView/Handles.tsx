/** The handles of what is selected, and what a stand being dragged has snapped to. */

import { memo, useMemo } from "react";
import { type Piece, type Placement, type StandType, typeOf } from "../../plan";
import { type SnapLine, selectedStands, shown, standIn, useEditor } from "../../store";
import { dash, lineWeight, typeSize } from "../../ui";
import type { PlanMap } from "../camera";
import { type Handle, knobRadius, pieceMoveHandle, pieceTurnHandle, standTurnHandle } from "../hand/handles";
import type { Look } from "../look";
import { arrowHead, crisp, fill, line, type Paper, Sketch, stroke, widthOf, write } from "../sketch";

interface HandlesProps {
  readonly map: PlanMap;
  readonly look: Look;
}

export const Handles = memo(function Handles({ map, look }: HandlesProps) {
  const only = useEditor((state) => (selectedStands(state).length === 1 ? selectedStands(state)[0]! : null));
  const placement = useEditor((state) => (only === null ? null : standIn(state, only)));
  const type = useEditor((state) => (only === null ? null : typeOf(shown(state), only)));
  const piece = useEditor((state) => (state.selection.kind === "piece" ? shown(state).piece : null));
  const draw = useMemo(() => {
    if (placement !== null && type !== null)
      return (paper: Paper) => drawStandHandles(paper, placement, type, map, look);
    if (piece !== null) return (paper: Paper) => drawPieceHandles(paper, piece, map, look);
    return null;
  }, [placement, type, piece, map, look]);
  return draw === null ? null : <Sketch draw={draw} />;
});

function drawStandHandles(paper: Paper, placement: Placement, type: StandType, map: PlanMap, look: Look): void {
  drawTurn(paper, standTurnHandle(placement, type, map), look);
}

function drawPieceHandles(paper: Paper, piece: Piece, map: PlanMap, look: Look): void {
  drawTurn(paper, pieceTurnHandle(piece, map), look);
  const { accent, onAccent } = look.colours;
  const [x, y] = pieceMoveHandle(piece, map).at;
  knob(paper, [x, y], knobRadius.move, accent, accent);
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    line(paper, [x, y], [x + dx * 7, y + dy * 7], { colour: onAccent, width: lineWeight.outline });
    arrowHead(paper, [x + dx * 10, y + dy * 10], [dx, dy], 5, onAccent);
  }
}

function drawTurn(paper: Paper, { from, at }: Handle, look: Look): void {
  const { accent, paper: ground } = look.colours;
  line(paper, from, at, { colour: accent, width: lineWeight.thin });
  knob(paper, at, knobRadius.turn, ground, accent);
  const [x, y] = at;
  paper.beginPath();
  paper.arc(x, y, 5, -0.25 * Math.PI, 1.25 * Math.PI);
  stroke(paper, { colour: accent, width: lineWeight.outline });
  arrowHead(paper, [x + 5.5, y - 5.2], [0.55, -0.83], 5, accent);
}

function knob(paper: Paper, [x, y]: readonly [number, number], radius: number, ground: string, rim: string): void {
  paper.beginPath();
  paper.arc(x, y, radius, 0, 2 * Math.PI);
  fill(paper, ground);
  stroke(paper, { colour: rim, width: lineWeight.outline });
}

/** Lines of what has been snapped to, with their names. */
export const Snaps = memo(function Snaps({ map, look }: HandlesProps) {
  const snaps = useEditor((state) => state.snaps);
  const draw = useMemo(
    () => (snaps.length === 0 ? null : (paper: Paper) => drawSnaps(paper, snaps, map, look)),
    [snaps, map, look],
  );
  return draw === null ? null : <Sketch draw={draw} />;
});

function drawSnaps(paper: Paper, snaps: readonly SnapLine[], map: PlanMap, look: Look): void {
  const { drawing, paper: ground } = look.colours;
  const { width, height } = map.size;
  const pen = { colour: drawing.snap, width: lineWeight.thin, dash: dash.zone };
  for (const snap of snaps) {
    const text = { colour: drawing.snap, size: typeSize.small, strong: true, rim: ground };
    if (snap.axis === "s") {
      const x = crisp(map.piece([snap.at, 0])[0]);
      line(paper, [x, 0], [x, height], pen);
      const half = widthOf(snap.name, text) / 2;
      write(paper, snap.name, [Math.min(width - half - 6, Math.max(half + 6, x)), 14], text);
    } else {
      const y = crisp(map.piece([0, snap.at])[1]);
      line(paper, [0, y], [width, y], pen);
      write(paper, snap.name, [8, y - 10], { ...text, align: "left" });
    }
  }
}
