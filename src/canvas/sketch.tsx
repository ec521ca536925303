/** Drawing by hand on Konva's canvas: lines, hatching, arrows and figures as on a shop drawing. Pixels, y down. */

import type { Context } from "konva/lib/Context";
import { memo } from "react";
import { Shape } from "react-konva/lib/ReactKonvaCore";
import type { Point } from "../plan";
import { typeface, typeSize } from "../ui";

export type Paper = CanvasRenderingContext2D;

/** One thing drawn by a function; drawn again when the function is another. */
export const Sketch = memo(function Sketch({ draw }: { readonly draw: (paper: Paper) => void }) {
  const scene = (context: Context): void => {
    const paper = context._context;
    paper.save();
    draw(paper);
    paper.restore();
  };
  return <Shape sceneFunc={scene} listening={false} perfectDrawEnabled={false} />;
});

export interface Pen {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

export function trace(paper: Paper, points: readonly Point[], closed: boolean): void {
  paper.beginPath();
  continueTrace(paper, points, closed);
}

/** Adds a further line or ring to the path, as a hole does. */
export function continueTrace(paper: Paper, points: readonly Point[], closed: boolean): void {
  points.forEach(([x, y], index) => {
    if (index === 0) paper.moveTo(x, y);
    else paper.lineTo(x, y);
  });
  if (closed) paper.closePath();
}

export function stroke(paper: Paper, pen: Pen): void {
  paper.strokeStyle = pen.colour;
  paper.lineWidth = pen.width;
  paper.setLineDash(pen.dash === undefined ? [] : [...pen.dash]);
  paper.stroke();
}

export function fill(paper: Paper, colour: string, opacity = 1): void {
  paper.globalAlpha = opacity;
  paper.fillStyle = colour;
  paper.fill();
  paper.globalAlpha = 1;
}

export function line(paper: Paper, from: Point, to: Point, pen: Pen): void {
  trace(paper, [from, to], false);
  stroke(paper, pen);
}

/** A coordinate on the middle of a pixel, so that a thin line stays thin. */
export const crisp = (value: number): number => Math.round(value - 0.5) + 0.5;

/** Lines at 45° within the current path. `rising`: from lower left to upper right. */
export function hatch(
  paper: Paper,
  box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
  pen: Pen,
  { spacing = 6, rising = true }: { readonly spacing?: number; readonly rising?: boolean } = {},
): void {
  paper.save();
  paper.clip();
  const left = Math.max(box.left, -50);
  const right = Math.min(box.right, paper.canvas.width + 50);
  const top = Math.max(box.top, -50);
  const bottom = Math.min(box.bottom, paper.canvas.height + 50);
  const drop = bottom - top;
  paper.beginPath();
  if (right > left && drop > 0) {
    const start = Math.floor((left - drop) / spacing) * spacing;
    for (let x = start; x < right; x += spacing) {
      paper.moveTo(x, rising ? bottom : top);
      paper.lineTo(x + drop, rising ? top : bottom);
    }
  }
  stroke(paper, pen);
  paper.restore();
}

export function boxOf(points: readonly Point[]): { left: number; top: number; right: number; bottom: number } {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** A filled arrow head with its point at `tip`, pointing along (dx, dy), a unit vector. */
export function arrowHead(paper: Paper, tip: Point, [dx, dy]: Point, length: number, colour: string): void {
  const half = length * 0.32;
  const [bx, by] = [tip[0] - dx * length, tip[1] - dy * length];
  trace(paper, [tip, [bx - dy * half, by + dx * half], [bx + dy * half, by - dx * half]], true);
  fill(paper, colour);
}

export interface TextStyle {
  readonly colour: string;
  readonly size?: number;
  readonly strong?: boolean;
  readonly align?: CanvasTextAlign;
  readonly baseline?: CanvasTextBaseline;
  /** Colour of a rim that keeps the text legible over lines. */
  readonly rim?: string;
}

export function write(paper: Paper, text: string, [x, y]: Point, style: TextStyle): void {
  paper.font = fontOf(style);
  paper.textAlign = style.align ?? "center";
  paper.textBaseline = style.baseline ?? "middle";
  if (style.rim !== undefined) {
    paper.strokeStyle = style.rim;
    paper.lineWidth = 4;
    paper.lineJoin = "round";
    paper.setLineDash([]);
    paper.strokeText(text, x, y);
  }
  paper.fillStyle = style.colour;
  paper.fillText(text, x, y);
}

export function fontOf({ size = typeSize.small, strong = false }: Pick<TextStyle, "size" | "strong">): string {
  return `${strong ? 600 : 400} ${size}px ${typeface}`;
}

let ruler: Paper | null = null;
const widths = new Map<string, number>();

/** Width of a text as it will be drawn, px. */
export function widthOf(text: string, style: Pick<TextStyle, "size" | "strong">): number {
  const key = `${style.size ?? ""}|${style.strong ?? ""}|${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  ruler ??= document.createElement("canvas").getContext("2d");
  if (ruler === null) return text.length * 7;
  ruler.font = fontOf(style);
  const { width } = ruler.measureText(text);
  if (widths.size > 2000) widths.clear();
  widths.set(key, width);
  return width;
}

/** Forgets the widths: the typeface has arrived since they were taken. */
export function forgetWidths(): void {
  widths.clear();
}

/**
 * Rows for labels that stand side by side, so that none overlaps: each takes the lowest row where it is free of those
 * before it. In and out in the order given; `at` is the middle, px.
 */
export function rowsFor(
  labels: readonly { readonly at: number; readonly width: number }[],
  clear = 8,
): readonly number[] {
  const order = labels.map((_, index) => index).sort((a, b) => labels[a]!.at - labels[b]!.at);
  const ends: number[] = [];
  const rows = new Array<number>(labels.length).fill(0);
  for (const index of order) {
    const { at, width } = labels[index]!;
    let row = ends.findIndex((end) => end + clear <= at - width / 2);
    if (row < 0) row = ends.length;
    ends[row] = at + width / 2;
    rows[index] = row;
  }
  return rows;
}
