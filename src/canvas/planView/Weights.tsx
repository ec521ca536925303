/** Masses, the centre of gravity, the load centre and the tipping lines, from above. */

import { memo, useMemo } from "react";
import type { StepTipping } from "../../checks";
import { type Mass, type Piece, presentMasses, type Step } from "../../plan";
import type { StepLevel } from "../../statics";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { fill, line, type Paper, Sketch, stroke, trace } from "../sketch";
import { drawCentre, drawTarget } from "../symbols";

export const MassesInPlan = memo(function MassesInPlan({
  piece,
  step,
  chosen,
  map,
  look,
}: {
  readonly piece: Piece;
  readonly step: Step;
  readonly chosen: string | null;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, accent, paper: ground } = look.colours;
      const present = new Set(presentMasses(piece, step));
      const colourOf = (mass: Mass): string =>
        mass.id === chosen ? accent : present.has(mass) ? drawing.mass : drawing.absent;
      for (const mass of piece.masses) {
        if (mass.kind !== "line" || mass.t === 0) continue;
        line(paper, map.piece([mass.from, mass.t]), map.piece([mass.to, mass.t]), {
          colour: colourOf(mass),
          width: lineWeight.outline,
          dash: dash.centre,
        });
      }
      for (const mass of piece.masses) {
        if (mass.kind !== "point") continue;
        const colour = colourOf(mass);
        const [x, y] = map.piece([mass.s, mass.t]);
        paper.beginPath();
        paper.arc(x, y, 5, 0, 2 * Math.PI);
        fill(paper, ground);
        stroke(
          paper,
          present.has(mass)
            ? { colour, width: lineWeight.outline }
            : { colour, width: lineWeight.thin, dash: dash.absent },
        );
        paper.beginPath();
        paper.arc(x, y, 1.5, 0, 2 * Math.PI);
        fill(paper, colour);
      }
    },
    [piece, step, chosen, map, look],
  );
  return <Sketch draw={draw} />;
});

/** Tipping lines with the load centre in them. */
export const TippingInPlan = memo(function TippingInPlan({
  tipping,
  level,
  map,
  look,
}: {
  readonly tipping: StepTipping | null;
  readonly level: StepLevel | null;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, paper: ground, verdict } = look.colours;
      for (const part of tipping ?? []) {
        const ring = part.edges.map(({ from }) => map.piece(from));
        trace(paper, ring, true);
        stroke(paper, { colour: ground, width: 4 });
        trace(paper, ring, true);
        stroke(paper, { colour: drawing.tippingLine, width: lineWeight.outline, dash: dash.hidden });
        for (const edge of part.edges) {
          if (edge.distance === null || edge.distance > 0) continue;
          line(paper, map.piece(edge.from), map.piece(edge.to), {
            colour: verdict.fails.ink,
            width: lineWeight.chosen,
          });
        }
      }
      if (level?.cg != null) drawCentre(paper, map.piece([level.cg.s, level.cg.t]), drawing.centreOfGravity, ground);
      for (const { resultant } of level?.parts ?? [])
        if (resultant.s !== null && resultant.t !== null)
          drawTarget(paper, map.piece([resultant.s, resultant.t]), drawing.loadCentre, ground);
    },
    [tipping, level, map, look],
  );
  return <Sketch draw={draw} />;
});
