/** Where people trip over a stand's legs, from above. */

import { memo, useMemo } from "react";
import { tripHulls, tripZoneOf } from "../../floor";
import { standFrame } from "../../geometry";
import { criteriaOf, type StandId, typeOf } from "../../plan";
import { shown, standIn, useEditor } from "../../store";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { continueTrace, fill, type Paper, Sketch, stroke } from "../sketch";

export const TripZoneInPlan = memo(function TripZoneInPlan({
  stand,
  map,
  look,
}: {
  readonly stand: StandId;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const placement = useEditor((state) => standIn(state, stand));
  const type = useEditor((state) => typeOf(shown(state), stand));
  const outline = useEditor((state) => shown(state).piece.outline);
  const criteria = useEditor((state) => criteriaOf(shown(state)));
  const zone = useMemo(
    () =>
      placement === null
        ? null
        : tripZoneOf(stand, tripHulls(type, placement.height, standFrame(placement), criteria), criteria, outline),
    [placement, type, outline, criteria, stand],
  );
  const draw = useMemo(() => {
    if (zone === null || zone.polygons.length === 0) return null;
    return (paper: Paper) => {
      const { drawing } = look.colours;
      paper.beginPath();
      for (const { outer, holes } of zone.polygons)
        for (const ring of [outer, ...holes]) continueTrace(paper, ring.map(map.piece), true);
      fill(paper, drawing.tripZone, 0.5);
      stroke(paper, { colour: drawing.leg, width: lineWeight.hair, dash: dash.zone });
    };
  }, [zone, map, look]);
  return draw === null ? null : <Sketch draw={draw} />;
});
