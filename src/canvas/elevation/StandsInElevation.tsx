/** The floor, and the stands from the side: legs, top, shim, gap. */

import { memo, useMemo } from "react";
import type { Plan, Point, StandId } from "../../plan";
import { lineWeight, typeSize } from "../../ui";
import type { ElevationMap } from "../camera";
import { type Box, type LabelWish, placeLabels } from "../labels";
import type { Look } from "../look";
import { arrowHead, crisp, fill, hatch, line, type Paper, Sketch, stroke, trace, widthOf, write } from "../sketch";
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

/** Gaps with their size, shims with their thickness: written over everything else, none on another. */
export const GapsInElevation = memo(function GapsInElevation({
  plan,
  profile,
  map,
  look,
}: Common & { readonly plan: Plan; readonly profile: Profile }) {
  const draw = useMemo(() => {
    const notes = profile.stands.flatMap((stand) => noteOf(stand, sideOf(plan, stand.placement).half, map, look));
    const within = { left: 4, top: 4, right: map.size.width - 4, bottom: map.size.height };
    const middles = placeLabels(notes, [floorBand(profile, map)], within);
    return (paper: Paper) => {
      notes.forEach((note, index) => {
        const at = middles[index] ?? note.places[0]!;
        note.draw(paper, at, at[0] >= map.x(note.s) ? 1 : -1);
        write(paper, note.text, at, { colour: note.colour, size: typeSize.small, rim: look.colours.paper });
      });
    };
  }, [plan, profile, map, look]);
  return <Sketch draw={draw} />;
});

/** The floor line with its hatching. */
function floorBand(profile: Profile, map: ElevationMap): Box {
  const ends = [map.y(profile.floor(map.toS(0))), map.y(profile.floor(map.toS(map.size.width)))];
  return { left: 0, right: map.size.width, top: Math.min(...ends) - 1, bottom: Math.max(...ends) + 8 };
}

interface Note extends LabelWish {
  readonly s: number;
  readonly colour: string;
  /** Draws what the text is about, on the right (1) or left (−1) of the stand. */
  readonly draw: (paper: Paper, at: Point, side: 1 | -1) => void;
}

/** What is to be said beside a stand: its gap, else its shim, else nothing. */
function noteOf(stand: StandProfile, half: number, map: ElevationMap, look: Look): readonly Note[] {
  const { drawing } = look.colours;
  const { placement } = stand;
  const edgeOn = (side: 1 | -1): number => map.x(placement.s + side * half);
  const note = (text: string, y: number, colour: string, draw: Note["draw"]): readonly Note[] => {
    const width = widthOf(text, { size: typeSize.small });
    const places = [0, 15, -32].flatMap((down): Point[] =>
      ([1, -1] as const).map((side) => [edgeOn(side) + side * (18 + width / 2), y + down]),
    );
    return [{ text, width, height: 14, places, must: true, s: placement.s, colour, draw }];
  };
  const top = map.y(stand.top);
  if (stand.gap !== null && stand.underside !== null) {
    const under = map.y(stand.underside);
    return note(`gap ${lengthWords(stand.gap, look.display)}`, top + 10, drawing.gap, (paper, _, side) => {
      const edge = edgeOn(side);
      const x = crisp(edge + side * 9);
      const pen = { colour: drawing.gap, width: lineWeight.thin };
      line(paper, [edge + side * 2, top], [x + side * 4, top], pen);
      line(paper, [edge + side * 2, under], [x + side * 4, under], pen);
      line(paper, [x, under - 12], [x, under - 2], pen);
      arrowHead(paper, [x, under], [0, 1], 6, drawing.gap);
      line(paper, [x, top + 2], [x, top + 12], pen);
      arrowHead(paper, [x, top], [0, -1], 6, drawing.gap);
    });
  }
  if (placement.shim === 0) return [];
  const middle = map.y(stand.top - stand.shim / 2);
  const text = `shim ${lengthWords(placement.shim, look.display)}`;
  return note(text, middle + 10, drawing.shim, (paper, at, side) => {
    const edge = edgeOn(side);
    const near = at[0] - side * (widthOf(text, { size: typeSize.small }) / 2 + 3);
    const toward: Point = (near - edge) * side > 0 ? [near, at[1]] : [at[0], at[1] + (at[1] < middle ? 8 : -8)];
    line(paper, [edge + side * 2, middle], toward, { colour: drawing.shim, width: lineWeight.thin });
  });
}
