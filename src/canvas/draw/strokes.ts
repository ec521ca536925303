/** What a drag does with a drawn shape or a traced picture; each stroke on a shape is one gesture of the editor. */

import { shifted, withCornerAt } from "../../geometry";
import type { Point } from "../../plan";
import {
  type Drafting,
  type Editor,
  edits,
  type Shape,
  type ShapeRef,
  shapeNatures,
  shown,
  stepInView,
  whyNotOutline,
  whyNotSimple,
} from "../../store";
import type { PlanMap } from "../camera";
import type { Stroke } from "../hand/pointers";
import { aimWith, frameOn, roundOn } from "./aim";
import { inLineWith, marksOf } from "./marks";

export const still: Stroke = { move: () => {}, end: () => {}, cancel: () => {} };

/** Shows the shape with other points for as long as they can stand; else says why not, and shows the last that could. */
function show(editor: Editor, drafting: Drafting, ref: ShapeRef, points: readonly Point[]): void {
  const refusal =
    (shapeNatures[ref.kind].closed ? whyNotSimple(points) : null) ??
    (ref.kind === "outline" ? whyNotOutline(shown(editor.state()), points) : null);
  drafting.refuse(refusal);
  if (refusal === null) editor.gesture.move((document) => edits["shape.points"].run(document, { ref, points }));
}

const tidy = ([p, q]: Point): Point => [Math.round(p * 1e6) / 1e6, Math.round(q * 1e6) / 1e6];

/** Drags a corner; the map is that at the start, so that a datum end that goes along does not run away. */
export function cornerStroke(
  editor: Editor,
  drafting: Drafting,
  map: PlanMap,
  shape: Shape,
  corner: number,
  finger: boolean,
): Stroke {
  const state = editor.state();
  const { frame } = shapeNatures[shape.kind];
  const others = marksOf(shown(state), stepInView(state), frame, shape);
  const neighbours = [corner - 1, corner + 1].flatMap((index) => {
    const at = (index + shape.points.length) % shape.points.length;
    return inLineWith(shape.points[at]!, `corner ${at + 1}`);
  });
  const marks = { ...others, lines: [...others.lines, ...neighbours] };
  editor.gesture.start(`Move a corner of ${shape.name}`);
  return {
    move: (pixel) => {
      const there = aimWith(editor, map, frame, marks, pixel, finger);
      drafting.aimAt(there);
      show(editor, drafting, shape, withCornerAt(shape.points, corner, tidy(there.at)));
    },
    end: () => {
      const { refusal } = drafting.state();
      editor.gesture.finish();
      drafting.choose({ kind: shape.kind, index: shape.index }, corner);
      drafting.refuse(refusal);
    },
    cancel: () => {
      editor.gesture.cancel();
      drafting.aimAt(null);
    },
  };
}

/** Moves a shape as a whole: by round numbers, so that a round shape stays round. */
export function shiftStroke(editor: Editor, drafting: Drafting, map: PlanMap, shape: Shape, from: Point): Stroke {
  const { frame } = shapeNatures[shape.kind];
  const { to } = frameOn(map, frame);
  const start = to(from);
  const round = roundOn(editor, map);
  editor.gesture.start(`Move ${shape.name}`);
  return {
    move: (pixel) => {
      const now = to(pixel);
      const by = ([0, 1] as const).map((axis) => Math.round((now[axis] - start[axis]) / round) * round);
      show(editor, drafting, shape, shifted(shape.points, [by[0]!, by[1]!]).map(tidy));
    },
    end: editor.gesture.finish,
    cancel: editor.gesture.cancel,
  };
}

/** Moves the traced picture. */
export function pictureStroke(drafting: Drafting, map: PlanMap, from: Point): Stroke {
  const { picture } = drafting.state();
  if (picture === null) return still;
  const [x, y] = map.toBay(from);
  return {
    move: (pixel) => {
      const [nowX, nowY] = map.toBay(pixel);
      drafting.setPicture({ ...picture, x: picture.x + nowX - x, y: picture.y + nowY - y });
    },
    end: () => {},
    cancel: () => drafting.setPicture(picture),
  };
}
