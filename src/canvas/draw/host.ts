/** The hand on the plan view while something is drawn: it places corners, drags them, and moves the traced picture. */

import { withCornerAfter } from "../../geometry";
import type { Plan, Point, Step } from "../../plan";
import {
  type Aim,
  type ChangeTool,
  draftingOf,
  type Shape,
  type ShapeRef,
  shapeNatures,
  shapeOf,
  shapesOf,
  shown,
  stepInView,
} from "../../store";
import { touchTarget } from "../../ui";
import { hitPlan } from "../hand/hit";
import type { HandOptions } from "../hand/hosts";
import type { Grip, PointerHost } from "../hand/pointers";
import { aimWith, frameOn } from "./aim";
import { hitShape, type ShapeTarget } from "./hitShape";
import { type Marks, marksOf, withDrawn } from "./marks";
import { cornerStroke, pictureStroke, shiftStroke, still } from "./strokes";

/** Half the side of the least square in which a handle answers, px. */
const handleReach = { mouse: 9, finger: touchTarget / 2 } as const;

export function drawingHost(under: PointerHost, options: HandOptions): PointerHost {
  const { editor, drawn, setCursor } = options;
  const drafting = draftingOf(editor);
  const marksNow = rememberedMarks();
  const nothing: Grip = { press: () => {}, drag: () => still };

  /** What the tool in hand aims at, at a pixel. */
  function aim(pixel: Point, finger: boolean): Aim | null {
    const { tool } = drafting.state();
    const state = editor.state();
    const map = drawn().plan;
    switch (tool.kind) {
      case "draw": {
        const { frame } = shapeNatures[tool.shape];
        const marks = withDrawn(marksNow(shown(state), stepInView(state), frame), tool.points);
        return aimWith(editor, map, frame, marks, pixel, finger);
      }
      case "scale picture":
        return { at: map.toBay(pixel), lines: [], name: null };
      case "none":
      case "change":
      case "move picture":
        return null;
      default:
        return tool satisfies never;
    }
  }

  /** A press or a drag places: both corners of a rectangle in one drag, else the corner where it is let go. */
  function placing(at: Point, finger: boolean): Grip {
    const put = (pixel: Point): void => {
      const there = aim(pixel, finger);
      if (there !== null) drafting.place(there.at);
    };
    return {
      press: () => put(at),
      drag: () => {
        const { tool } = drafting.state();
        const both = tool.kind === "draw" && tool.form !== "corners" && tool.points.length === 0;
        if (both) put(at);
        let last = at;
        return {
          move: (pixel) => {
            last = pixel;
            drafting.aimAt(aim(pixel, finger));
          },
          end: () => put(last),
          cancel: () => {
            if (both) drafting.takeBack();
            drafting.aimAt(null);
          },
        };
      },
    };
  }

  /**
   * The shape under the hand that a press opens; null where the press means something else. Edges answer at once; the
   * inside of a zone of the piece only once the piece is chosen, and the inside of the bay not at all.
   */
  function shapeUnder(at: Point, finger: boolean): ShapeRef | null {
    const state = editor.state();
    const map = drawn().plan;
    const target = hitPlan(state, map, drawn().look, at, finger).kind;
    if (target !== "piece" && target !== "nothing") return null;
    const reach = finger ? handleReach.finger : handleReach.mouse;
    for (const shape of shapesOf(shown(state)).toReversed()) {
      const { frame, closed } = shapeNatures[shape.kind];
      if (shape.kind === "outline" || (frame === "piece" && !state.view.overlays.zones)) continue;
      const hit = hitShape(shape.points.map(frameOn(map, frame).px), closed, at, reach);
      if (hit === null) continue;
      const insideAnswers =
        frame === "piece" ? state.selection.kind === "piece" : target === "nothing" && shape.kind !== "bay";
      if (hit.kind === "inside" && !insideAnswers) continue;
      return { kind: shape.kind, index: shape.index };
    }
    return null;
  }

  /** The shape being changed and what of it lies under the hand. */
  function shapeAt(at: Point, finger: boolean, tool: ChangeTool): { shape: Shape; target: ShapeTarget | null } | null {
    const shape = shapeOf(shown(editor.state()), tool.ref);
    if (shape === null) return null;
    const { frame, closed } = shapeNatures[shape.kind];
    const pixels = shape.points.map(frameOn(drawn().plan, frame).px);
    return { shape, target: hitShape(pixels, closed, at, finger ? handleReach.finger : handleReach.mouse) };
  }

  function changing(tool: ChangeTool, at: Point, finger: boolean): Grip {
    const found = shapeAt(at, finger, tool);
    const elsewhere = under.grip(at, finger);
    if (found === null) return elsewhere;
    const { shape, target } = found;
    switch (target?.kind) {
      case "corner": {
        const choose = () => drafting.choose(tool.ref, target.index);
        return {
          press: choose,
          drag: () => {
            choose();
            return cornerStroke(editor, drafting, drawn().plan, shape, target.index, finger);
          },
        };
      }
      case "middle":
        return {
          press: () => {},
          drag: () => {
            const points = withCornerAfter(shape.points, target.index, shape.points[target.index]!);
            drafting.choose(tool.ref);
            return cornerStroke(editor, drafting, drawn().plan, { ...shape, points }, target.index + 1, finger);
          },
        };
      case "edge":
      case "inside":
        if (shape.kind === "outline" || shape.kind === "bay") break;
        return {
          press: () => drafting.choose(tool.ref),
          drag: () => shiftStroke(editor, drafting, drawn().plan, shape, at),
        };
      case undefined:
        break;
      default:
        target satisfies never;
    }
    return {
      press: (add) => {
        const other = shapeUnder(at, finger);
        if (other !== null) drafting.choose(other);
        else {
          drafting.leave();
          elsewhere.press(add);
        }
      },
      drag: elsewhere.drag,
    };
  }

  return {
    ...under,
    grip: (at, finger) => {
      const { tool } = drafting.state();
      switch (tool.kind) {
        case "none": {
          const usual = under.grip(at, finger);
          const shape = shapeUnder(at, finger);
          return shape === null ? usual : { press: () => drafting.choose(shape), drag: usual.drag };
        }
        case "draw":
        case "scale picture":
          return placing(at, finger);
        case "change":
          return changing(tool, at, finger);
        case "move picture":
          return { ...nothing, drag: () => pictureStroke(drafting, drawn().plan, at) };
        default:
          return tool satisfies never;
      }
    },
    hover: (at) => {
      const { tool } = drafting.state();
      switch (tool.kind) {
        case "none":
          under.hover(at);
          if (at !== null && shapeUnder(at, false) !== null) setCursor("pointer");
          break;
        case "draw":
        case "scale picture":
          setCursor("crosshair");
          drafting.aimAt(at === null ? null : aim(at, false));
          break;
        case "change": {
          const target = at === null ? null : (shapeAt(at, false, tool)?.target?.kind ?? null);
          if (target === null) under.hover(at);
          else setCursor(target === "middle" ? "copy" : target === "corner" ? "move" : "grab");
          break;
        }
        case "move picture":
          setCursor("grab");
          break;
        default:
          tool satisfies never;
      }
    },
    doublePress: (at) => {
      const { tool } = drafting.state();
      if (tool.kind === "none") under.doublePress(at);
      else if (tool.kind === "draw" && tool.form === "corners" && tool.points.length >= 3) drafting.close();
      else if (tool.kind === "draw" || tool.kind === "scale picture") placing(at, false).press(false);
    },
  };
}

/** The marks of a plan, gathered anew only when it is another: an outline from a drawing has thousands of corners. */
function rememberedMarks(): (plan: Plan, step: Step, frame: "piece" | "bay") => Marks {
  let last: { readonly of: readonly [Plan, Step, string]; readonly marks: Marks } | null = null;
  return (plan, step, frame) => {
    if (last === null || last.of[0] !== plan || last.of[1] !== step || last.of[2] !== frame)
      last = { of: [plan, step, frame], marks: marksOf(plan, step, frame) };
    return last.marks;
  };
}
