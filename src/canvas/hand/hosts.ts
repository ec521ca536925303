/** The hand on each drawing: what is gripped, what a press selects and what a drag does. */

import { pieceFrame, toInner } from "../../geometry";
import type { Point, Pose } from "../../plan";
import { type Camera, type Editor, noSelection, shown, stepInView } from "../../store";
import { type ElevationMap, type PlanMap, zoomed } from "../camera";
import type { Box } from "../labels";
import type { Look } from "../look";
import type { TouchedDimension } from "../TypedDimension";
import { hitElevation, hitPlan, type Target } from "./hit";
import { marquee, sideInElevation, topInPlan } from "./marquee";
import type { Grip, PointerHost, Stroke } from "./pointers";
import { snapsOf } from "./snaps";
import { movePiece, moveStands, turnPiece, turnStand } from "./strokes";

/** What the hand needs of the drawings as they stand now. */
export interface Drawn {
  readonly camera: Camera;
  readonly plan: PlanMap;
  readonly elevation: ElevationMap;
  readonly look: Look;
}

export interface HandOptions {
  readonly editor: Editor;
  readonly drawn: () => Drawn;
  readonly setCamera: (camera: Camera | null) => void;
  readonly setCursor: (cursor: string) => void;
  /** Draws the box that selects, px; null takes it away. */
  readonly showBox: (box: Box | null) => void;
  /** A dimension has been touched: it is to be typed. */
  readonly typeDimension: (dimension: TouchedDimension) => void;
}

const cursors: Readonly<Record<Target["kind"], string>> = {
  stand: "grab",
  "turn stand": "alias",
  "move piece": "move",
  "turn piece": "alias",
  mass: "pointer",
  piece: "pointer",
  dimension: "text",
  diagrams: "crosshair",
  nothing: "default",
};

/** A press on what selects; on nothing, what was selected is let go. */
function press(
  editor: Editor,
  target: Target,
  add: boolean,
  typeDimension: (dimension: TouchedDimension) => void,
): void {
  switch (target.kind) {
    case "stand":
      if (add) editor.toggleStand(target.id);
      else editor.select({ kind: "stands", ids: [target.id] });
      break;
    case "mass":
      editor.select({ kind: "mass", id: target.id });
      break;
    case "piece":
      editor.select({ kind: "piece" });
      break;
    case "dimension":
      editor.select({ kind: "stands", ids: [target.stand] });
      typeDimension(target);
      break;
    case "nothing":
      editor.select(noSelection);
      break;
    case "turn stand":
    case "move piece":
    case "turn piece":
    case "diagrams":
      break;
    default:
      target satisfies never;
  }
}

/** Dragging empty paper moves it; `across` names what moves up and down with it. */
function panStroke({ drawn, setCamera }: HandOptions, from: Point, across: "t" | "z"): Stroke {
  const { camera } = drawn();
  return {
    move: ([x, y]) =>
      setCamera({
        ...camera,
        s: camera.s - (x - from[0]) / camera.scale,
        [across]: camera[across] + (y - from[1]) / camera.scale,
      }),
    end: () => {},
    cancel: () => setCamera(camera),
  };
}

/** Two fingers: scale by their distance, and the point between them stays between them. */
function pinch({ drawn, setCamera }: HandOptions, from: readonly [Point, Point], across: "t" | "z") {
  const { camera, plan, elevation } = drawn();
  const size = across === "t" ? plan.size : elevation.size;
  const middle = ([a, b]: readonly [Point, Point]): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const spread = ([a, b]: readonly [Point, Point]): number => Math.max(10, Math.hypot(b[0] - a[0], b[1] - a[1]));
  const [mx, my] = middle(from);
  const s = camera.s + (mx - size.width / 2) / camera.scale;
  const q = camera[across] - (my - size.height / 2) / camera.scale;
  return {
    move: (to: readonly [Point, Point]) => {
      const { scale } = zoomed(camera, spread(to) / spread(from), { s });
      const [tx, ty] = middle(to);
      setCamera({
        ...camera,
        scale,
        s: s - (tx - size.width / 2) / scale,
        [across]: q + (ty - size.height / 2) / scale,
      });
    },
  };
}

export function planHost(options: HandOptions): PointerHost {
  const { editor, drawn, setCamera } = options;
  const hit = (at: Point, finger: boolean): Target => hitPlan(editor.state(), drawn().plan, drawn().look, at, finger);

  /** After the piece has been moved, the sheet lies where it lay: the piece is seen where it was let go. */
  const keepInPlace = (before: Pose, after: Pose): void => {
    const { camera } = drawn();
    const [ds, dt] = toInner(pieceFrame(before), [after.x, after.y]);
    setCamera({ ...camera, s: camera.s - ds, t: camera.t - dt });
  };

  function drag(target: Target, from: Point, box: boolean): Stroke {
    const { plan } = drawn();
    const state = editor.state();
    switch (target.kind) {
      case "stand":
        return moveStands(editor, target.id, plan.toPiece(from), plan.toPiece, {
          along: false,
          snap: snapsOf(shown(state), stepInView(state), plan.scale),
        });
      case "turn stand":
        return turnStand(editor, target.id, plan.toPiece);
      case "move piece":
        return movePiece(editor, plan.toBay(from), plan.toBay, keepInPlace);
      case "turn piece":
        return turnPiece(editor, plan.toBay);
      case "mass":
      case "piece":
      case "dimension":
      case "diagrams":
      case "nothing":
        if (box) return marquee(editor, from, topInPlan(plan), options.showBox);
        return panStroke(options, from, "t");
      default:
        return target satisfies never;
    }
  }

  return {
    grip: (at, finger): Grip => {
      const target = hit(at, finger);
      return {
        press: (add) => press(editor, target, add, options.typeDimension),
        drag: (box) => drag(target, at, box),
      };
    },
    hover: (at) => options.setCursor(at === null ? "default" : cursors[hit(at, false).kind]),
    pinch: (from) => pinch(options, from, "t"),
    zoom: (factor, at) => {
      const { camera, plan } = drawn();
      const s = camera.s + (at[0] - plan.size.width / 2) / camera.scale;
      const t = camera.t - (at[1] - plan.size.height / 2) / camera.scale;
      setCamera(zoomed(camera, factor, { s, t }));
    },
    pan: ([dx]) => setCamera({ ...drawn().camera, s: drawn().camera.s - dx / drawn().camera.scale }),
    doublePress: (at) => {
      if (hit(at, false).kind === "nothing") setCamera(null);
    },
  };
}

export function elevationHost(options: HandOptions): PointerHost {
  const { editor, drawn, setCamera } = options;
  const hit = (at: Point, finger: boolean): Target => hitElevation(editor.state(), drawn().elevation, at, finger);
  const read = (at: Point): void => {
    const s = drawn().elevation.toS(at[0]);
    const ss = shown(editor.state()).piece.outline.map(([along]) => along);
    const [least, most] = [Math.min(...ss), Math.max(...ss)];
    const beyond = 12 / drawn().elevation.scale;
    const reading = s < least - beyond || s > most + beyond ? null : Math.min(most, Math.max(least, s));
    if (reading !== editor.state().view.reading) editor.look({ reading });
  };

  function drag(target: Target, from: Point, box: boolean): Stroke {
    const { elevation } = drawn();
    const state = editor.state();
    const toPiece = ([x, y]: Point): Point => [elevation.toS(x), elevation.toZ(y)];
    switch (target.kind) {
      case "stand":
        editor.look({ reading: null });
        return moveStands(editor, target.id, toPiece(from), toPiece, {
          along: true,
          snap: snapsOf(shown(state), stepInView(state), elevation.scale),
        });
      case "diagrams":
        read(from);
        return { move: read, end: () => {}, cancel: () => {} };
      case "turn stand":
      case "move piece":
      case "turn piece":
      case "mass":
      case "piece":
      case "dimension":
      case "nothing":
        if (box) return marquee(editor, from, sideInElevation(elevation), options.showBox);
        return panStroke(options, from, "z");
      default:
        return target satisfies never;
    }
  }

  return {
    grip: (at, finger): Grip => {
      const target = hit(at, finger);
      return {
        press: (add) => {
          if (target.kind === "diagrams") read(at);
          else press(editor, target, add, options.typeDimension);
        },
        drag: (box) => drag(target, at, box),
      };
    },
    hover: (at) => {
      if (at === null) {
        editor.look({ reading: null });
        options.setCursor("default");
        return;
      }
      options.setCursor(cursors[hit(at, false).kind]);
      read(at);
    },
    pinch: (from) => pinch(options, from, "z"),
    zoom: (factor, at) => {
      const { camera, elevation } = drawn();
      const s = camera.s + (at[0] - elevation.size.width / 2) / camera.scale;
      const z = camera.z - (Math.min(at[1], elevation.size.height) - elevation.size.height / 2) / camera.scale;
      setCamera(zoomed(camera, factor, { s, z }));
    },
    pan: ([dx]) => setCamera({ ...drawn().camera, s: drawn().camera.s - dx / drawn().camera.scale }),
    doublePress: (at) => {
      if (hit(at, false).kind === "nothing") setCamera(null);
    },
  };
}
