/** The map of where a person may stand, laid over the piece from above, and the place that is asked about. */

import { memo, useMemo } from "react";
import type { PartStanding, StepStanding, StepTipping } from "../../checks";
import type { Plan, Point } from "../../plan";
import type { StepLevel } from "../../statics";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { besideRing, type Name, named } from "../planView/named";
import { boxOf, continueTrace, fill, hatch, line, type Paper, Sketch, stroke, trace } from "../sketch";
import { forceWords } from "../words";

interface MapProps {
  readonly standing: StepStanding;
  /** The answer belongs to an earlier plan. */
  readonly dimmed: boolean;
  readonly tipping: StepTipping | null;
  readonly map: PlanMap;
  readonly look: Look;
}

/** How strongly the last map is drawn while another is on its way. */
const dimness = 0.3;

/** The ink of a band: the lowest is where not even a person may stand, the highest beyond the last force. */
export function bandColour({ colours }: Pick<Look, "colours">, band: number, forces: number): string {
  const [none, some, more, most] = colours.drawing.standing;
  if (band === 0) return none;
  if (band === forces) return most;
  return band === 1 && forces > 2 ? some : more;
}

/** Bands of equal force under the piece's lines. */
export const StandingInPlan = memo(function StandingInPlan({ standing, dimmed, tipping, map, look }: MapProps) {
  const draw = useMemo(
    () => (paper: Paper) => {
      tipping?.forEach(({ outline }, index) => {
        drawPart(paper, standing.parts[index] ?? null, outline, dimmed, map, look);
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
  dimmed: boolean,
  map: PlanMap,
  look: Look,
): void {
  const { drawing, paper: ground, verdict, ink } = look.colours;
  const strength = dimmed ? dimness : 1;
  const rings = (paths: readonly (readonly Point[])[]): void => {
    paper.beginPath();
    for (const path of paths) continueTrace(paper, path.map(map.piece), true);
  };
  rings(outline);
  fill(paper, ground);
  rings(outline);
  fill(paper, bandColour(look, 0, 1), strength);
  if (standing === null) {
    for (const ring of outline.map((path) => path.map(map.piece))) {
      trace(paper, ring, true);
      hatch(paper, boxOf(ring), { colour: verdict.fails.ink, width: lineWeight.thin }, { spacing: 8 });
    }
    return;
  }
  standing.contours.forEach(({ level }, index) => {
    rings(level.flatMap(({ outer, holes }) => [outer, ...holes]));
    fill(paper, bandColour(look, index + 1, standing.contours.length), strength);
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
  return (standing?.parts ?? []).flatMap((part, index) => {
    const ends = level?.parts[index];
    if (part === null || ends === undefined) return [];
    return part.contours.flatMap((contour): readonly Name[] => {
      const along = contour.level.flatMap(({ outer }) => outer.map(([s]) => s));
      if (along.length === 0) return [];
      const inside = [Math.min(...along), Math.max(...along)].filter(
        (s) => (s - ends.from) * map.scale > 6 && (ends.to - s) * map.scale > 6,
      );
      return inside.map((s) => {
        const [x] = map.piece([s, 0]);
        const places = besideRing(x, box, map);
        return named(forceWords(contour.force, look.display), places, look.colours.ink, { from: map.piece([s, 0]) });
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
