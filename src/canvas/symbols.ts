/** The signs of a drawing that stand for a place. */

import type { Point } from "../plan";
import { lineWeight } from "../ui";
import { fill, line, type Paper, stroke } from "./sketch";

/** The quartered circle of a centre of gravity. */
export function drawCentre(paper: Paper, [x, y]: Point, colour: string, ground: string, radius = 7): void {
  paper.beginPath();
  paper.arc(x, y, radius, 0, 2 * Math.PI);
  fill(paper, ground);
  for (const quarter of [0, 2]) {
    paper.beginPath();
    paper.moveTo(x, y);
    paper.arc(x, y, radius, (quarter * Math.PI) / 2, ((quarter + 1) * Math.PI) / 2);
    paper.closePath();
    fill(paper, colour);
  }
  paper.beginPath();
  paper.arc(x, y, radius, 0, 2 * Math.PI);
  stroke(paper, { colour, width: lineWeight.outline });
}

/** Ring and cross hairs of a load centre, round a centre of gravity where they coincide. */
export function drawTarget(paper: Paper, [x, y]: Point, colour: string, ground: string): void {
  const radius = 11;
  for (const pen of [
    { colour: ground, width: 4 },
    { colour, width: lineWeight.outline },
  ]) {
    paper.beginPath();
    paper.arc(x, y, radius, 0, 2 * Math.PI);
    stroke(paper, pen);
  }
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const)
    line(paper, [x + dx * (radius - 2), y + dy * (radius - 2)], [x + dx * (radius + 6), y + dy * (radius + 6)], {
      colour,
      width: lineWeight.outline,
    });
}
