/** The floor, and the stands from the side: legs, top, shim, gap. */

import { memo, useMemo } from "react";
import type { Plan, StandId } from "../../plan";
import { dash, lineWeight, typeSize } from "../../ui";
import type { ElevationMap } from "../camera";
import type { Look } from "../look";
import { arrowHead, crisp, fill, hatch, line, type Paper, Sketch, stroke, trace, write } from "../sketch";
import { lengthWords } from "../words";
import { type Profile, type StandProfile, sideOf } from "./profile";

interface Common {
  readonly map: ElevationMap;
  readonly look: Look;
}

export const FloorInElevation = memo(function FloorInElevation({
  floor,
  map,
  look,
}: Common & { readonly floor: (s: number) => number }) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing } = look.colours;
      const { width } = map.size;
      const [left, right] = [map.y(floor(map.toS(0))), map.y(floor(map.toS(width)))];
      const depth = 7;
      trace(
        paper,
        [
          [0, left],
          [width, right],
          [width, right + depth],
          [0, left + depth],
        ],
        true,
      );
      const box = { left: 0, right: width, top: Math.min(left, right), bottom: Math.max(left, right) + depth };
      hatch(paper, box, { colour: drawing.floor, width: lineWeight.hair }, { spacing: 7 });
      const flat = left === right;
      line(paper, [0, flat ? crisp(left) : left], [width, flat ? crisp(right) : right], {
        colour: drawing.floor,
        width: lineWeight.outline,
      });
    },
    [floor, map, look],
  );
  return <Sketch draw={draw} />;
});

export const StandsInElevation = memo(function StandsInElevation({
  plan,
  profile,
  selected,
  map,
  look,
}: Common & { readonly plan: Plan; readonly profile: Profile; readonly selected: readonly StandId[] }) {
  const draw = useMemo(
    () => (paper: Paper) => {
      for (const stand of profile.stands)
        drawStand(paper, plan, stand, selected.includes(stand.placement.stand), map, look);
    },
    [plan, profile, selected, map, look],
  );
  return <Sketch draw={draw} />;
});

/** Thickness of a top as drawn, m: the file gives none. */
const topThickness = 0.09;

function drawStand(
  paper: Paper,
  plan: Plan,
  stand: StandProfile,
  selected: boolean,
  map: ElevationMap,
  look: Look,
): void {
  const { drawing, accent } = look.colours;
  const { placement } = stand;
  const side = sideOf(plan, placement);
  const x = (offset: number): number => map.x(placement.s + offset);
  const surface = stand.top - stand.shim;
  const thickness = Math.min(topThickness, placement.height / 3);
  const shoulderY = map.y(surface - thickness);
  const floorY = map.y(stand.floor);
  for (const { shoulder, foot } of side.legs) {
    line(paper, [x(shoulder), shoulderY], [x(foot), floorY], { colour: drawing.leg, width: lineWeight.heavy });
    const plate = Math.max(3, side.plate * map.scale);
    line(paper, [x(foot) - plate, floorY - 1], [x(foot) + plate, floorY - 1], {
      colour: drawing.standLine,
      width: lineWeight.heavy,
    });
  }
  const [left, right] = [x(-side.half), x(side.half)];
  trace(
    paper,
    [
      [left, map.y(surface)],
      [right, map.y(surface)],
      [right, shoulderY],
      [left, shoulderY],
    ],
    true,
  );
  fill(paper, drawing.topFill);
  stroke(paper, {
    colour: selected ? accent : drawing.standLine,
    width: selected ? lineWeight.chosen : lineWeight.outline,
  });
  if (stand.shim > 0) {
    trace(
      paper,
      [
        [left, map.y(stand.top)],
        [right, map.y(stand.top)],
        [right, map.y(surface)],
        [left, map.y(surface)],
      ],
      true,
    );
    fill(paper, drawing.shim, 0.85);
  }
}

/** Gaps with their size, shims with their thickness: written over everything else. */
export const GapsInElevation = memo(function GapsInElevation({
  plan,
  profile,
  map,
  look,
}: Common & { readonly plan: Plan; readonly profile: Profile }) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, paper: ground } = look.colours;
      for (const stand of profile.stands) {
        const { placement } = stand;
        const side = sideOf(plan, placement);
        const right = map.x(placement.s + side.half);
        if (stand.gap !== null && stand.underside !== null) {
          const x = crisp(right + 9);
          const [top, under] = [map.y(stand.top), map.y(stand.underside)];
          const pen = { colour: drawing.gap, width: lineWeight.thin };
          line(paper, [right + 2, top], [x + 4, top], pen);
          line(paper, [right + 2, under], [x + 4, under], pen);
          line(paper, [x, under - 12], [x, under - 2], pen);
          arrowHead(paper, [x, under], [0, 1], 6, drawing.gap);
          line(paper, [x, top + 2], [x, top + 12], pen);
          arrowHead(paper, [x, top], [0, -1], 6, drawing.gap);
          write(paper, `gap ${lengthWords(stand.gap, look.display)}`, [x + 7, top + 9], {
            colour: drawing.gap,
            size: typeSize.small,
            align: "left",
            rim: ground,
          });
        } else if (placement.shim > 0) {
          const y = map.y(stand.top - stand.shim / 2);
          line(paper, [right + 2, y], [right + 9, y + 8], { colour: drawing.shim, width: lineWeight.thin });
          write(paper, `shim ${lengthWords(placement.shim, look.display)}`, [right + 12, y + 9], {
            colour: drawing.shim,
            size: typeSize.small,
            align: "left",
            rim: ground,
          });
        }
        if (stand.underside === null)
          line(paper, [map.x(placement.s), map.y(stand.top) - 20], [map.x(placement.s), map.y(stand.top)], {
            colour: drawing.gap,
            width: lineWeight.thin,
            dash: dash.absent,
          });
      }
    },
    [plan, profile, map, look],
  );
  return <Sketch draw={draw} />;
});
