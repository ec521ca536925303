/** The bay from above: outline, obstacles, zones without feet, walkways. */

import { memo, useMemo } from "react";
import type { Bay, Point } from "../../plan";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { boxOf, continueTrace, fill, hatch, line, type Paper, Sketch, stroke, trace } from "../sketch";

export const BayInPlan = memo(function BayInPlan({
  bay,
  map,
  look,
}: {
  readonly bay: Bay;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, paper: ground, table, inkSoft } = look.colours;
      const toPixels = (points: readonly Point[]) => points.map(map.bay);
      const outline = toPixels(bay.outline);

      paper.beginPath();
      paper.rect(0, 0, map.size.width, map.size.height);
      continueTrace(paper, outline, true);
      paper.fillStyle = table;
      paper.fill("evenodd");

      for (const [from, to] of bay.slab?.joints ?? [])
        line(paper, map.bay(from), map.bay(to), { colour: drawing.bayLine, width: lineWeight.hair });

      for (const walkway of bay.walkways) {
        if (walkway.lane !== null) {
          trace(paper, toPixels(walkway.lane), true);
          stroke(paper, { colour: drawing.walkway, width: lineWeight.thin, dash: dash.zone });
        }
        const [from, to] = [map.bay(walkway.from), map.bay(walkway.to)];
        line(paper, from, to, { colour: drawing.walkway, width: lineWeight.thin, dash: dash.centre });
        for (const [x, y] of [from, to]) {
          paper.beginPath();
          paper.arc(x, y, 4, 0, 2 * Math.PI);
          fill(paper, ground);
          stroke(paper, { colour: drawing.walkway, width: lineWeight.outline });
        }
      }

      for (const zone of bay.noFootZones) {
        const ring = toPixels(zone.polygon);
        trace(paper, ring, true);
        hatch(paper, boxOf(ring), { colour: drawing.noFoot, width: lineWeight.hair }, { spacing: 9, rising: false });
        trace(paper, ring, true);
        stroke(paper, { colour: drawing.noFoot, width: lineWeight.thin, dash: dash.zone });
      }

      for (const obstacle of bay.obstacles) {
        const ring = toPixels(obstacle.polygon);
        trace(paper, ring, true);
        fill(paper, drawing.obstacle, 0.35);
        hatch(paper, boxOf(ring), { colour: drawing.obstacle, width: lineWeight.thin }, { spacing: 5 });
        trace(paper, ring, true);
        stroke(paper, { colour: inkSoft, width: lineWeight.outline });
      }

      trace(paper, outline, true);
      stroke(paper, { colour: drawing.bayLine, width: lineWeight.outline });
    },
    [bay, map, look],
  );
  return <Sketch draw={draw} />;
});
