/** The map of where a person may stand, laid over the piece from above, and the place that is asked about. */

import { memo, useMemo } from "react";
import { type PartStanding, type StepStanding, type StepTipping, standingForces } from "../../checks";
import type { Plan, Point } from "../../plan";
import type { StepLevel } from "../../statics";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { type Name, named } from "../planView/named";
import { boxOf, continueTrace, fill, hatch, line, type Paper, Sketch, stroke, trace } from "../sketch";
import { forceWords } from "../words";

interface MapProps {
  readonly standing: StepStanding | null;
  /** The answer belongs to an earlier plan. */
  readonly dimmed: boolean;
  readonly tipping: StepTipping | null;
  readonly map: PlanMap;
  readonly look: Look;
}

/** How strongly the last map is drawn while another is on its way. */
const dimness = 0.3;

/** Bands of equal force under the piece's lines. */
export const StandingInPlan = memo(function StandingInPlan({ standing, dimmed, tipping, map, look }: MapProps) {
  const draw = useMemo(
    () => (paper: Paper) => {
      tipping?.forEach(({ outline }, index) => {
        drawPart(paper, standing?.[index] ?? null, outline, standing !== null, dimmed, map, look);
      });
    },
    [standing, dimmed, tipping, map, look],
  );
  return <Sketch draw={draw} />;
});

function drawPart(
  paper: Paper,
  standing: PartStanding | null,
  outline: readonly (readonly Point[])[],
  answered: boolean,
  dimmed: boolean,
  map: PlanMap,
  look: Look,
): void {
  const { drawing, paper: ground, verdict, ink } = look.colours;
  const rings = (paths: readonly (readonly Point[])[]): void => {
    paper.beginPath();
    for (const path of paths) continueTrace(paper, path.map(map.piece), true);
  };
  rings(outline);
  fill(paper, answered && !dimmed ? drawing.standing[0] : ground);
  if (!answered) return;
  if (standing === null) {
    for (const ring of outline.map((path) => path.map(map.piece))) {
      trace(paper, ring, true);
      hatch(paper, boxOf(ring), { colour: verdict.fails.ink, width: lineWeight.thin }, { spacing: 8 });
    }
    return;
  }
  const strength = dimmed ? dimness : 1;
  standing.contours.forEach(({ level }, index) => {
    rings(level.flatMap(({ outer, holes }) => [outer, ...holes]));
    fill(paper, drawing.standing[Math.min(index + 1, 3)]!, strength);
  });
  if (dimmed) return;
  for (const { level, tipping } of standing.contours) {
    rings(tipping);
    stroke(paper, { colour: drawing.tippingLine, width: lineWeight.thin, dash: dash.hidden });
    rings(level.flatMap(({ outer, holes }) => [outer, ...holes]));
    stroke(paper, { colour: ink, width: lineWeight.thin });
  }
}

/** The force of each contour, beside the piece where the contour ends along it. */
export function standingNames(
  standing: StepStanding | null,
  level: StepLevel | null,
  plan: Plan,
  map: PlanMap,
  look: Look,
): readonly Name[] {
  const box = boxOf(plan.piece.outline.map(map.piece));
  const forces = standingForces(plan);
  return (standing ?? []).flatMap((part, index) => {
    const ends = level?.parts[index];
    if (part === null || ends === undefined) return [];
    return part.contours.flatMap((contour, at): readonly Name[] => {
      const along = contour.level.flatMap(({ outer }) => outer.map(([s]) => s));
      if (along.length === 0) return [];
      const inside = [Math.min(...along), Math.max(...along)].filter(
        (s) => (s - ends.from) * map.scale > 6 && (ends.to - s) * map.scale > 6,
      );
      return inside.map((s) => {
        const [x] = map.piece([s, 0]);
        const places: Point[] = [0, 1, 2].flatMap((row): Point[] => [
          [x, box.bottom + 12 + row * 15],
          [x, box.top - 12 - row * 15],
        ]);
        return named(forceWords(forces[at]!, look.display), places, look.colours.ink, { from: map.piece([s, 0]) });
      });
    });
  });
}

/** The place that is asked about. */
export const SpotInPlan = memo(function SpotInPlan({
  spot,
  map,
  look,
}: {
  readonly spot: Point;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { accent, paper: ground } = look.colours;
      const [x, y] = map.piece(spot);
      for (const pen of [
        { colour: ground, width: 5 },
        { colour: accent, width: lineWeight.heavy },
      ]) {
        line(paper, [x - 9, y], [x + 9, y], pen);
        line(paper, [x, y - 9], [x, y + 9], pen);
      }
    },
    [spot, map, look],
  );
  return <Sketch draw={draw} />;
});
