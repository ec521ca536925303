/** Shear, moment and deflection on the axis of the elevation, and what they are where one points. */

import { memo, useMemo } from "react";
import type { Point } from "../../plan";
import type { Curves, Extremes, PartLevel, StepLevel } from "../../statics";
import { lineWeight, typeSize } from "../../ui";
import type { ElevationMap } from "../camera";
import { type Box, placeLabels } from "../labels";
import type { Look } from "../look";
import { crisp, fill, line, type Paper, Sketch, stroke, trace, widthOf, write } from "../sketch";
import { forceWords, lengthWords, momentWords } from "../words";
import { readingAt } from "./readings";

/** One diagram. */
interface Kind {
  readonly name: string;
  readonly colour: "shear" | "moment" | "deflection";
  readonly values: (curves: Curves) => readonly number[] | null;
  readonly extremes: (part: PartLevel) => Extremes | null;
  readonly words: (value: number, look: Look) => string;
}

const kinds: readonly Kind[] = [
  {
    name: "Shear",
    colour: "shear",
    values: ({ shear }) => shear,
    extremes: ({ shear }) => shear,
    words: (value, look) => forceWords(value, look.display),
  },
  {
    name: "Moment, sagging up",
    colour: "moment",
    values: ({ moment }) => moment,
    extremes: ({ moment }) => moment,
    words: (value, look) => momentWords(value, look.display),
  },
  {
    name: "Deflection",
    colour: "deflection",
    values: ({ deflection }) => deflection,
    extremes: ({ deflection }) => deflection,
    words: (value, look) => lengthWords(value, look.display),
  },
];

/** A lane of the stage, px. */
interface Lane {
  readonly top: number;
  readonly height: number;
}

function lanes(top: number, height: number): readonly Lane[] {
  const each = height / kinds.length;
  return kinds.map((_, index) => ({ top: top + index * each, height: each }));
}

interface DiagramProps {
  readonly level: StepLevel | null;
  /** Upper edge and height of the diagrams on the stage, px. */
  readonly top: number;
  readonly height: number;
  readonly map: ElevationMap;
  readonly look: Look;
}

/** Where zero lies in a lane and how many px a unit is. */
function scaleOf(kind: Kind, level: StepLevel, lane: Lane): { readonly zero: number; readonly unit: number } {
  const ends = level.parts.flatMap((part) => {
    const extremes = kind.extremes(part);
    return extremes === null ? [] : [extremes.most.value, extremes.least.value];
  });
  const most = Math.max(0, ...ends);
  const least = Math.min(0, ...ends);
  const room = lane.height - inset.top - inset.bottom;
  const range = most - least;
  if (range < 1e-12) return { zero: lane.top + lane.height / 2, unit: 0 };
  return { zero: lane.top + inset.top + (most / range) * room, unit: room / range };
}
/** Room kept in a lane above and below its curve, px: its name stands in the upper one. */
const inset = { top: 22, bottom: 19 } as const;

export const Diagrams = memo(function Diagrams({ level, top, height, map, look }: DiagramProps) {
  const draw = useMemo(
    () => (paper: Paper) => {
      kinds.forEach((kind, index) => {
        drawLane(paper, kind, level, lanes(top, height)[index]!, map, look);
      });
    },
    [level, top, height, map, look],
  );
  return <Sketch draw={draw} />;
});

function drawLane(paper: Paper, kind: Kind, level: StepLevel | null, lane: Lane, map: ElevationMap, look: Look): void {
  const { drawing, paper: ground, inkSoft, rule, line: axis } = look.colours;
  const colour = drawing[kind.colour];
  const { width } = map.size;
  line(paper, [0, crisp(lane.top)], [width, crisp(lane.top)], { colour: rule, width: lineWeight.thin });
  const title = { colour: inkSoft, size: typeSize.small, align: "left", rim: ground } as const;
  if (level === null) {
    write(paper, kind.name, [10, lane.top + 11], title);
    return;
  }
  const { zero, unit } = scaleOf(kind, level, lane);
  let drawn = false;
  for (const part of level.parts) {
    const values = part.curves === null ? null : kind.values(part.curves);
    line(paper, [map.x(part.from), crisp(zero)], [map.x(part.to), crisp(zero)], {
      colour: axis,
      width: lineWeight.thin,
    });
    if (part.curves === null || values === null) continue;
    drawn = true;
    const points = part.curves.s.map((s, station): readonly [number, number] => [
      map.x(s),
      zero - values[station]! * unit,
    ]);
    trace(paper, [[map.x(part.from), zero], ...points, [map.x(part.to), zero]], true);
    fill(paper, colour, 0.13);
    trace(paper, points, false);
    stroke(paper, { colour, width: lineWeight.outline });
  }
  for (const { text, at } of extremesOf(kind, level, lane, map, look))
    write(paper, text, at, { colour, size: typeSize.small, rim: ground });
  const tips = level.parts.every(({ stable }) => !stable);
  const without = tips ? "no numbers, the piece tips" : "none";
  write(paper, drawn && unit > 0 ? kind.name : `${kind.name}: ${without}`, [10, lane.top + 11], title);
}

/** The greatest and least values of each part, and where they are written, px. */
function extremesOf(kind: Kind, level: StepLevel, lane: Lane, map: ElevationMap, look: Look) {
  const { zero, unit } = scaleOf(kind, level, lane);
  if (unit === 0) return [];
  return level.parts.flatMap((part) => {
    const extremes = kind.extremes(part);
    if (extremes === null) return [];
    const range = extremes.most.value - extremes.least.value;
    const ends = [
      { ...extremes.most, off: -8 },
      { ...extremes.least, off: 9 },
    ];
    return ends
      .filter(({ value }) => Math.abs(value) >= 0.02 * range)
      .map(({ value, s, off }) => {
        const text = kind.words(value, look);
        const half = widthOf(text, { size: typeSize.small }) / 2;
        const y = zero - value * unit + off;
        const least = y < lane.top + 20 ? 22 + widthOf(kind.name, { size: typeSize.small }) : 6;
        const x = Math.min(map.size.width - half - 6, Math.max(half + least, map.x(s)));
        return { text, at: [x, y] as const, half };
      });
  });
}

/** What a reading must not cover in its lane: the lane's name and the extremes, px. */
function writtenIn(kind: Kind, level: StepLevel, lane: Lane, map: ElevationMap, look: Look): readonly Box[] {
  const name = {
    left: 10,
    right: 10 + widthOf(kind.name, { size: typeSize.small }),
    top: lane.top + 4,
    bottom: lane.top + 18,
  };
  const extremes = extremesOf(kind, level, lane, map, look).map(({ at: [x, y], half }) => ({
    left: x - half,
    right: x + half,
    top: y - 7,
    bottom: y + 7,
  }));
  return [name, ...extremes];
}

/** The reading line: every diagram's value at one place of the piece. */
export const Reading = memo(function Reading({
  at,
  from,
  ...drawn
}: DiagramProps & {
  /** m along the piece. */
  readonly at: number;
  /** Upper end of the line on the stage, px. */
  readonly from: number;
}) {
  const { level, top, height, map, look } = drawn;
  const draw = useMemo(
    () => (paper: Paper) => {
      const { accent, paper: ground, drawing } = look.colours;
      const x = crisp(map.x(at));
      line(paper, [x, from], [x, top + height], { colour: accent, width: lineWeight.thin });
      const right = x > map.size.width - 130;
      const place = { align: right ? "right" : "left", rim: ground, size: typeSize.small, strong: true } as const;
      const tx = x + (right ? -8 : 8);
      write(paper, lengthWords(at, look.display), [tx, top - 8], { ...place, colour: accent });
      if (level === null) return;
      const reading = readingAt(level, at);
      kinds.forEach((kind, index) => {
        const lane = lanes(top, height)[index]!;
        const value = reading?.[kind.colour] ?? null;
        if (value === null) return;
        const { zero, unit } = scaleOf(kind, level, lane);
        const y = zero - value * unit;
        paper.beginPath();
        paper.arc(x, y, 3.5, 0, 2 * Math.PI);
        fill(paper, drawing[kind.colour]);
        const text = kind.words(value, look);
        const half = widthOf(text, { size: typeSize.small, strong: true }) / 2;
        const inLane = (wished: number): number =>
          Math.min(lane.top + lane.height - 8, Math.max(lane.top + 10, wished));
        const sides = right ? [-1, 1] : [1, -1];
        const places = [0, -16, 16, -30, 30].flatMap((off) =>
          sides.map((side): Point => [x + side * (8 + half), inLane(y + off)]),
        );
        const wish = { text, width: 2 * half, height: 12, places, must: true };
        const within = { left: 2, right: map.size.width - 2, top: lane.top, bottom: lane.top + lane.height };
        const [middle] = placeLabels([wish], writtenIn(kind, level, lane, map, look), within);
        write(paper, text, middle ?? places[0]!, {
          rim: ground,
          size: typeSize.small,
          strong: true,
          colour: drawing[kind.colour],
        });
      });
    },
    [level, at, from, top, height, map, look],
  );
  return <Sketch draw={draw} />;
});
