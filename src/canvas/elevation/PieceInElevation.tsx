/** The piece from the side, bent as the scale says, with its masses. */

import { memo, useMemo } from "react";
import { type Plan, type Point, pieceLength, presentMasses, type Step } from "../../plan";
import type { StepLevel } from "../../statics";
import { dash, lineWeight, typeSize } from "../../ui";
import type { ElevationMap } from "../camera";
import { absentStretches, shortened } from "../growing/parts";
import type { Look } from "../look";
import { fill, line, type Paper, Sketch, stroke, trace, write } from "../sketch";
import { drawCentre } from "../symbols";
import { heightOn, type PartProfile, type Profile, undersideAt, undersideStations } from "./profile";

export const PieceInElevation = memo(function PieceInElevation({
  plan,
  step,
  level,
  profile,
  selected,
  masses,
  map,
  look,
}: {
  readonly plan: Plan;
  readonly step: Step;
  readonly level: StepLevel | null;
  readonly profile: Profile;
  readonly selected: boolean;
  readonly masses: boolean;
  readonly map: ElevationMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, accent, paper: ground } = look.colours;
      const toPixel = ([s, z]: Point): Point => [map.x(s), map.y(z)];
      for (const absent of absentParts(plan, profile)) {
        trace(paper, outlineOf(plan, absent).map(toPixel), true);
        stroke(paper, { colour: drawing.absent, width: lineWeight.thin, dash: dash.absent });
      }
      for (const part of withGaps(profile.parts, map.scale)) {
        trace(paper, outlineOf(plan, part).map(toPixel), true);
        fill(paper, drawing.pieceFill);
        stroke(paper, {
          colour: selected ? accent : drawing.pieceLine,
          width: selected ? lineWeight.chosen : lineWeight.outline,
        });
      }
      if (masses) drawMasses(paper, plan, step, profile, map, look);
      if (level?.cg != null)
        drawCentre(
          paper,
          toPixel([level.cg.s, datumAt(profile, level.cg.s) + level.cg.z]),
          drawing.centreOfGravity,
          ground,
        );
      if (profile.times > 1)
        write(paper, `bend and gaps drawn ${profile.times} × as large`, [map.size.width - 10, 14], {
          colour: look.colours.inkSoft,
          size: typeSize.small,
          align: "right",
          rim: ground,
        });
    },
    [plan, step, level, profile, selected, masses, map, look],
  );
  return <Sketch draw={draw} />;
});

/** The parts as drawn: a joint that carries nothing shows as a gap. */
function withGaps(parts: readonly PartProfile[], scale: number): readonly PartProfile[] {
  const ends = shortened(
    parts.map(({ from, to }) => [from, to]),
    scale,
  );
  return parts.map((part, index) => ({ ...part, from: ends[index]![0], to: ends[index]![1] }));
}

/** What of the piece is not there yet, at the height of what is beside it. */
function absentParts(plan: Plan, { parts }: Profile): readonly PartProfile[] {
  const stretches = absentStretches(
    parts.map(({ from, to }) => [from, to]),
    pieceLength(plan.piece),
  );
  return stretches.map(([from, to]) => {
    const before = parts.filter((part) => part.to <= from).at(-1);
    const after = parts.find((part) => part.from >= to);
    const left = before ?? after;
    const right = after ?? before;
    const z = (part: PartProfile | undefined, s: number): number => (part === undefined ? 0 : heightOn(part.datum, s));
    return {
      from,
      to,
      datum: [
        [from, z(left, from)],
        [to, z(right, to)],
      ],
    };
  });
}

/** Lower edge along the underside, upper edge at the piece's depth, m. */
export function outlineOf(plan: Plan, { from, to, datum }: PartProfile): readonly Point[] {
  const stations = undersideStations(plan, from, to);
  const lower: Point[] = [];
  for (let index = 1; index < stations.length; index++) {
    const [a, b] = [stations[index - 1]!, stations[index]!];
    const inset = (b - a) * 1e-6;
    const between = datum.map(([s]) => s).filter((s) => s > a && s < b);
    for (const s of [a + inset, ...between, b - inset]) lower.push([s, heightOn(datum, s) + undersideAt(plan, s)]);
  }
  const inside = datum.map(([s]) => s).filter((s) => s > from && s < to);
  const upper = [from, ...inside, to].map((s): Point => [s, heightOn(datum, s) + plan.piece.depth]).reverse();
  return [...lower, ...upper];
}

export function datumAt(profile: Profile, s: number): number {
  const part = profile.parts.find(({ from, to }) => s >= from && s <= to) ?? profile.parts[0];
  return part === undefined ? 0 : heightOn(part.datum, s);
}

function drawMasses(paper: Paper, plan: Plan, step: Step, profile: Profile, map: ElevationMap, look: Look): void {
  const { drawing, paper: ground } = look.colours;
  const present = new Set(presentMasses(plan.piece, step));
  for (const mass of plan.piece.masses) {
    const there = present.has(mass);
    const colour = there ? drawing.mass : drawing.absent;
    if (mass.kind === "line") {
      if (mass.to - mass.from >= 0.98 * (profile.parts.at(-1)?.to ?? 0)) continue;
      const y = (s: number): number => map.y(datumAt(profile, s) + mass.z);
      line(paper, [map.x(mass.from), y(mass.from)], [map.x(mass.to), y(mass.to)], {
        colour,
        width: lineWeight.thin,
        dash: there ? dash.centre : dash.absent,
      });
      continue;
    }
    const [x, y] = [map.x(mass.s), map.y(datumAt(profile, mass.s) + mass.z)];
    paper.beginPath();
    paper.arc(x, y, 4.5, 0, 2 * Math.PI);
    fill(paper, ground);
    stroke(paper, { colour, width: lineWeight.outline, ...(there ? {} : { dash: dash.absent }) });
    paper.beginPath();
    paper.arc(x, y, 1.5, 0, 2 * Math.PI);
    fill(paper, colour);
  }
}
