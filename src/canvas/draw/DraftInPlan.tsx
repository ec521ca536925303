/** What is being drawn or changed by hand, over the plan view: corners, edges to come, what the hand keeps to. */

import { memo, useMemo } from "react";
import type { Point } from "../../plan";
import {
  type Aim,
  type ChangeTool,
  type DrawTool,
  frameOf,
  type Shape,
  shapeNatures,
  shapeOf,
  useDrafting,
  useShown,
} from "../../store";
import { dash, lineWeight, typeSize } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { crisp, fill, line, type Paper, Sketch, stroke, trace, widthOf, write } from "../sketch";
import { lengthWords } from "../words";
import { cornerHandles, middleHandles } from "./hitShape";

interface DraftProps {
  readonly map: PlanMap;
  readonly look: Look;
}

type ToPixel = (point: Point) => Point;

export const DraftInPlan = memo(function DraftInPlan({ map, look }: DraftProps) {
  const tool = useDrafting((state) => state.tool);
  const aim = useDrafting((state) => state.aim);
  const changed = useShown((plan) => (tool.kind === "change" ? plan : null));
  const draw = useMemo(() => {
    const frame = frameOf(tool);
    if (frame === null) return null;
    const px: ToPixel = frame === "piece" ? map.piece : map.bay;
    return (paper: Paper) => {
      switch (tool.kind) {
        case "draw":
          drawSoFar(paper, tool, aim, px, look);
          break;
        case "change": {
          const shape = changed === null ? null : shapeOf(changed, tool.ref);
          if (shape !== null) drawHandles(paper, shape, tool, px, look);
          break;
        }
        case "scale picture":
          drawMeasure(paper, aim === null ? tool.points : [...tool.points.slice(0, 1), aim.at], px, look);
          break;
        case "none":
        case "move picture":
          break;
        default:
          tool satisfies never;
      }
      if (aim !== null) drawAim(paper, aim, px, map, look);
    };
  }, [tool, aim, changed, map, look]);
  return draw === null ? null : <Sketch draw={draw} />;
});

function drawSoFar(paper: Paper, tool: DrawTool, aim: Aim | null, px: ToPixel, look: Look): void {
  const { accent, paper: ground } = look.colours;
  const points = tool.points.map(px);
  const to = aim === null ? null : px(aim.at);
  const first = tool.points[0];
  const pen = { colour: accent, width: lineWeight.heavy };
  if (tool.form === "rectangle" && first !== undefined && aim !== null) {
    const ring = ([first, [aim.at[0], first[1]], aim.at, [first[0], aim.at[1]]] as const).map(px);
    trace(paper, ring, true);
    fill(paper, accent, 0.1);
    stroke(paper, pen);
    const size = `${lengthWords(Math.abs(aim.at[0] - first[0]), look.display)} × ${lengthWords(Math.abs(aim.at[1] - first[1]), look.display)}`;
    writeBeside(paper, size, px(aim.at), look);
  } else {
    if (points.length >= 3) {
      trace(paper, points, true);
      fill(paper, accent, 0.08);
    }
    trace(paper, points, false);
    stroke(paper, pen);
    const last = tool.points.at(-1);
    if (to !== null && last !== undefined && aim !== null) {
      line(paper, px(last), to, { ...pen, dash: dash.zone });
      const length = Math.hypot(aim.at[0] - last[0], aim.at[1] - last[1]);
      writeBeside(paper, lengthWords(length, look.display), to, look);
    }
  }
  for (const [index, point] of points.entries()) drawKnob(paper, point, index === 0 ? 6 : 4.5, ground, accent);
}

function drawHandles(paper: Paper, shape: Shape, tool: ChangeTool, px: ToPixel, look: Look): void {
  const { accent, paper: ground } = look.colours;
  const { closed } = shapeNatures[shape.kind];
  const points = shape.points.map(px);
  trace(paper, points, closed);
  if (closed) fill(paper, accent, 0.08);
  stroke(paper, { colour: accent, width: lineWeight.heavy });
  for (const { at } of middleHandles(points, closed)) drawKnob(paper, at, 3.5, ground, accent);
  for (const index of cornerHandles(points)) {
    const chosen = index === tool.corner;
    drawSquare(paper, points[index]!, chosen ? 6.5 : 5, chosen ? accent : ground, accent);
  }
  const chosen = tool.corner === null ? undefined : points[tool.corner];
  if (chosen !== undefined && !cornerHandles(points).includes(tool.corner!))
    drawSquare(paper, chosen, 6.5, accent, accent);
}

function drawMeasure(paper: Paper, points: readonly Point[], px: ToPixel, look: Look): void {
  const { accent, paper: ground } = look.colours;
  const [from, to] = points.map(px);
  if (from !== undefined && to !== undefined) line(paper, from, to, { colour: accent, width: lineWeight.outline });
  for (const point of [from, to]) {
    if (point === undefined) continue;
    line(paper, [point[0] - 12, point[1]], [point[0] + 12, point[1]], { colour: accent, width: lineWeight.thin });
    line(paper, [point[0], point[1] - 12], [point[0], point[1] + 12], { colour: accent, width: lineWeight.thin });
    drawKnob(paper, point, 4, ground, accent);
  }
}

/** Cross hairs at the hand, the lines it keeps to, and their names. */
function drawAim(paper: Paper, aim: Aim, px: ToPixel, map: PlanMap, look: Look): void {
  const { drawing, accent, paper: ground } = look.colours;
  const at = px(aim.at);
  for (const [index, snap] of aim.lines.entries()) {
    // The line through the aim, along the other axis of the frame, which may lie askew on the sheet.
    const beyond = (by: number): Point => px(snap.axis === 0 ? [snap.at, aim.at[1] + by] : [aim.at[0] + by, snap.at]);
    const far = (map.size.width + map.size.height) / map.scale;
    line(paper, beyond(-far), beyond(far), { colour: drawing.snap, width: lineWeight.thin, dash: dash.zone });
    writeName(paper, snap.name, [at[0], at[1] - 20 - 16 * index], map, look);
  }
  const [x, y] = [crisp(at[0]), crisp(at[1])];
  const pen = { colour: aim.name === null ? accent : drawing.snap, width: lineWeight.outline };
  line(paper, [x - 9, y], [x + 9, y], pen);
  line(paper, [x, y - 9], [x, y + 9], pen);
  if (aim.name === null) return;
  drawKnob(paper, at, 6, ground, drawing.snap);
  writeName(paper, aim.name, [at[0], at[1] - 20], map, look);
}

function writeName(paper: Paper, name: string, [x, y]: Point, map: PlanMap, look: Look): void {
  const { drawing, paper: ground } = look.colours;
  const text = { colour: drawing.snap, size: typeSize.small, strong: true, rim: ground };
  const half = widthOf(name, text) / 2 + 6;
  write(paper, name, [Math.min(map.size.width - half, Math.max(half, x)), Math.max(12, y)], text);
}

function writeBeside(paper: Paper, words: string, [x, y]: Point, look: Look): void {
  const { ink, paper: ground } = look.colours;
  write(paper, words, [x + 12, y + 16], { colour: ink, size: typeSize.small, align: "left", rim: ground });
}

function drawKnob(paper: Paper, [x, y]: Point, radius: number, ground: string, rim: string): void {
  paper.beginPath();
  paper.arc(x, y, radius, 0, 2 * Math.PI);
  fill(paper, ground);
  stroke(paper, { colour: rim, width: lineWeight.outline });
}

function drawSquare(paper: Paper, [x, y]: Point, half: number, ground: string, rim: string): void {
  trace(
    paper,
    [
      [x - half, y - half],
      [x + half, y - half],
      [x + half, y + half],
      [x - half, y + half],
    ],
    true,
  );
  fill(paper, ground);
  stroke(paper, { colour: rim, width: lineWeight.outline });
}
