/** Reactions: arrows under the floor with their numbers, each with what it means for its stand. */

import { memo, useMemo } from "react";
import type { VerdictSoFar } from "../../checks";
import type { StandId } from "../../plan";
import type { StepLevel } from "../../statics";
import { lineWeight, typeSize, verdictShapes } from "../../ui";
import type { ElevationMap } from "../camera";
import { inkOf, type Look } from "../look";
import { arrowHead, crisp, line, type Paper, rowsFor, Sketch, widthOf, write } from "../sketch";
import { forceWords } from "../words";
import type { Profile } from "./profile";

/** Arrows: the longest, the shortest and the gap to the floor line; figures under them in rows, px. */
const sizes = { longest: 30, shortest: 12, clear: 9, row: 17 } as const;

/** The longest arrow that leaves so many rows of figures on the paper, px; 0 where there is no room for any. */
export function longestOver(rows: number, room: number): number {
  const left = room - sizes.clear - sizes.row * rows - 4;
  return left < sizes.shortest ? 0 : Math.min(sizes.longest, left);
}

/** Stands whose middles are nearer than this along the piece stand in one line, across it, px: their numbers are named. */
const inLine = 24;

export const Reactions = memo(function Reactions({
  level,
  verdicts,
  profile,
  selected,
  map,
  look,
}: {
  readonly level: StepLevel | null;
  /** Of the level answer's stands, in order. */
  readonly verdicts: readonly (VerdictSoFar | null)[];
  readonly profile: Profile;
  readonly selected: readonly StandId[];
  readonly map: ElevationMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, paper: ground, accent } = look.colours;
      const most = Math.max(1, ...(level?.stands ?? []).map(({ reaction }) => reaction ?? 0));
      const standsInLine = (s: number): number =>
        profile.stands.filter(({ placement }) => Math.abs(placement.s - s) * map.scale < inLine).length;
      const labels = profile.stands.map(({ placement, floor }, index) => {
        const shared = standsInLine(placement.s) > 1;
        const stand = level?.stands.find((one) => one.stand === placement.stand);
        const reaction = stand?.reaction ?? null;
        const words =
          level === null || stand === undefined
            ? "…"
            : reaction === null
              ? "tips"
              : `${stand.estimated ? "≈ " : ""}${forceWords(reaction, look.display)}`;
        const text = shared ? `${placement.stand}: ${words}` : words;
        const verdict = level !== null && reaction === null ? "fails" : (verdicts[index] ?? null);
        const sign = verdict === "fails" || verdict === "close" || verdict === "unknown" ? verdict : null;
        return {
          placement,
          shared,
          text,
          reaction,
          sign,
          ink: inkOf(look, verdict),
          at: map.x(placement.s),
          floor: map.y(floor),
          width: widthOf(text, { size: typeSize.body, strong: true }) + (sign === null ? 0 : 20),
        };
      });
      const rows = rowsFor(labels);
      const room = map.size.height - Math.max(...labels.map(({ floor }) => floor));
      const longest = longestOver(Math.max(0, ...rows) + 1, room);
      labels.forEach((label, index) => {
        const foot = label.floor + sizes.clear + longest;
        const x = crisp(label.at);
        if (label.reaction !== null && label.reaction > 0 && longest > 0) {
          const length = Math.max(Math.min(15, longest), (label.reaction / most) * longest);
          const tip = foot - longest;
          line(paper, [x, tip + length], [x, tip + 6], { colour: drawing.reaction, width: lineWeight.heavy });
          arrowHead(paper, [x, tip], [0, -1], 10, drawing.reaction);
        }
        const y = foot + 11 + sizes.row * rows[index]!;
        if (rows[index]! > 0 && !label.shared)
          line(paper, [x, foot + 2], [x, y - 9], { colour: drawing.reaction, width: lineWeight.hair });
        const shift = label.sign === null ? 0 : 10;
        if (label.sign !== null) drawSign(paper, label.sign, [label.at - label.width / 2 + 8, y], look);
        write(paper, label.text, [label.at + shift, y], {
          colour: selected.includes(label.placement.stand) && label.sign === null ? accent : label.ink,
          size: typeSize.body,
          strong: true,
          rim: ground,
        });
      });
    },
    [level, verdicts, profile, selected, map, look],
  );
  return <Sketch draw={draw} />;
});

/** The shape of a verdict, 16 px, about a point. */
function drawSign(
  paper: Paper,
  verdict: "fails" | "close" | "unknown",
  [x, y]: readonly [number, number],
  look: Look,
): void {
  const { outline, sign } = verdictShapes[verdict];
  const { ink, wash } = look.colours.verdict[verdict];
  paper.save();
  paper.translate(x - 8, y - 8);
  paper.scale(0.8, 0.8);
  paper.fillStyle = wash;
  paper.strokeStyle = ink;
  paper.lineWidth = 1.8;
  paper.lineJoin = "round";
  paper.lineCap = "round";
  paper.setLineDash([]);
  const shape = new Path2D(outline);
  paper.fill(shape);
  paper.stroke(shape);
  paper.stroke(new Path2D(sign));
  paper.restore();
}
