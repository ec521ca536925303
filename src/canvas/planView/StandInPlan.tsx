/** One stand from above: legs and feet, top, centre, mark. Drawn again only when it or the sheet changes. */

import { memo, useMemo } from "react";
import { footprintOf } from "../../floor";
import { standFrame } from "../../geometry";
import { type Placement, type StandId, type StandType, typeOf } from "../../plan";
import { isSelected, shown, standIn, useEditor } from "../../store";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { fill, line, type Paper, Sketch, stroke, trace } from "../sketch";

interface StandProps {
  readonly stand: StandId;
  readonly map: PlanMap;
  readonly look: Look;
}

/** What lies under the piece. */
export const StandInPlan = memo(function StandInPlan({ stand, map, look }: StandProps) {
  const placement = useEditor((state) => standIn(state, stand));
  const type = useEditor((state) => typeOf(shown(state), stand));
  const draw = useMemo(
    () => (placement === null ? null : (paper: Paper) => drawStand(paper, placement, type, map, look)),
    [placement, type, map, look],
  );
  return draw === null ? null : <Sketch draw={draw} />;
});

function drawStand(paper: Paper, placement: Placement, type: StandType, map: PlanMap, look: Look): void {
  const { drawing } = look.colours;
  const frame = standFrame(placement);
  const { feet, plates, top } = footprintOf(type, placement.height, frame);
  const toPixels = (points: typeof top) => points.map(map.piece);

  const half = type.top.width / 2;
  const reach = type.legSpacing / 2;
  const shoulder = ([p, q]: readonly [number, number]) =>
    map.piece([frame.origin[0] + p * frame.cos - q * frame.sin, frame.origin[1] + p * frame.sin + q * frame.cos]);
  const shoulders = [
    shoulder([-half, -reach]),
    shoulder([half, -reach]),
    shoulder([-half, reach]),
    shoulder([half, reach]),
  ];
  feet.forEach((foot, leg) => {
    line(paper, shoulders[leg]!, map.piece(foot), { colour: drawing.leg, width: lineWeight.outline });
  });
  for (const plate of plates) {
    trace(paper, toPixels(plate), true);
    fill(paper, drawing.standFill);
    stroke(paper, { colour: drawing.standLine, width: lineWeight.thin });
  }
  trace(paper, toPixels(top), true);
  fill(paper, drawing.topFill);
  stroke(paper, { colour: drawing.standLine, width: lineWeight.outline });
}

/** What lies over the piece: the hidden edges of the top, the centre, the choice. */
export const StandMark = memo(function StandMark({ stand, map, look }: StandProps) {
  const placement = useEditor((state) => standIn(state, stand));
  const type = useEditor((state) => typeOf(shown(state), stand));
  const selected = useEditor(isSelected(stand));
  const draw = useMemo(() => {
    if (placement === null) return null;
    return (paper: Paper) => {
      const { drawing, accent } = look.colours;
      const { top } = footprintOf(type, placement.height, standFrame(placement));
      const ring = top.map(map.piece);
      trace(paper, ring, true);
      stroke(
        paper,
        selected
          ? { colour: accent, width: lineWeight.chosen }
          : { colour: drawing.standLine, width: lineWeight.thin, dash: dash.hidden },
      );
      const [x, y] = map.piece([placement.s, placement.t]);
      line(paper, [x - 5, y], [x + 5, y], { colour: drawing.standLine, width: lineWeight.thin });
      line(paper, [x, y - 5], [x, y + 5], { colour: drawing.standLine, width: lineWeight.thin });
    };
  }, [placement, type, map, look, selected]);
  return draw === null ? null : <Sketch draw={draw} />;
});
