/**
 * Pointers on a drawing, mouse, pen and fingers alike: press, drag, two fingers, wheel. Our own, with capture. What is
 * under the pointer, and what a drag of it does, the host says.
 */

import type { Point } from "../../plan";
import { pressTravel } from "../camera";

/** A drag under way. */
export interface Stroke {
  /** `free`: a key is held that says not to snap. */
  readonly move: (to: Point, free: boolean) => void;
  readonly end: () => void;
  readonly cancel: () => void;
}

/** What a pointer has taken hold of. */
export interface Grip {
  /** Pressed and let go in one place. `add`: with a modifier that adds to the selection. */
  readonly press: (add: boolean) => void;
  /** Pressed and moved. `box`: with the key that draws a box over what is to be selected. */
  readonly drag: (box: boolean) => Stroke;
}

export interface PointerHost {
  readonly grip: (at: Point, finger: boolean) => Grip;
  /** A mouse or pen passes over, pressing nothing; null when it leaves. */
  readonly hover: (at: Point | null) => void;
  /** Two fingers: the two points that lay under them shall lie under them again. */
  readonly pinch: (from: readonly [Point, Point]) => { readonly move: (to: readonly [Point, Point]) => void };
  readonly zoom: (factor: number, at: Point) => void;
  readonly pan: (by: Point) => void;
  readonly doublePress: (at: Point) => void;
}

interface Down {
  readonly id: number;
  readonly at: Point;
}

type Phase =
  | { readonly kind: "idle" }
  | { readonly kind: "pressed"; readonly by: Down; readonly finger: boolean; readonly grip: Grip }
  | { readonly kind: "dragging"; readonly by: Down; readonly stroke: Stroke }
  | { readonly kind: "pinching"; readonly move: (to: readonly [Point, Point]) => void };

/** Two presses within this time and distance are one double press, ms and px. */
const doublePress = { time: 350, distance: 24 } as const;

/** Change of scale of one wheel pixel. */
const wheelRate = 0.0015;

/** Listens on an element; gives the function that stops. */
export function listen(element: HTMLElement, host: PointerHost): () => void {
  const down = new Map<number, Point>();
  let phase: Phase = { kind: "idle" };
  let lastPress: { readonly time: number; readonly at: Point } | null = null;

  const pixel = (event: MouseEvent): Point => {
    const box = element.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const twoPoints = (): readonly [Point, Point] => {
    const [first, second] = [...down.values()];
    return [first!, second!];
  };

  function cancelStroke(): void {
    if (phase.kind === "dragging") phase.stroke.cancel();
    phase = { kind: "idle" };
  }

  function onDown(event: PointerEvent): void {
    if (event.pointerType === "mouse" && event.button !== 0) return;
    element.focus({ preventScroll: true });
    element.setPointerCapture(event.pointerId);
    const at = pixel(event);
    down.set(event.pointerId, at);
    if (down.size === 2) {
      cancelStroke();
      phase = { kind: "pinching", move: host.pinch(twoPoints()).move };
    } else if (down.size === 1) {
      const finger = event.pointerType === "touch";
      phase = { kind: "pressed", by: { id: event.pointerId, at }, finger, grip: host.grip(at, finger) };
    }
  }

  function onMove(event: PointerEvent): void {
    const at = pixel(event);
    if (!down.has(event.pointerId)) {
      if (event.pointerType !== "touch") host.hover(at);
      return;
    }
    down.set(event.pointerId, at);
    if (phase.kind === "pinching") {
      if (down.size >= 2) phase.move(twoPoints());
      return;
    }
    if (phase.kind === "pressed") {
      const travel = Math.hypot(at[0] - phase.by.at[0], at[1] - phase.by.at[1]);
      if (travel < (phase.finger ? pressTravel.touch : pressTravel.mouse)) return;
      phase = { kind: "dragging", by: phase.by, stroke: phase.grip.drag(event.shiftKey && !phase.finger) };
    }
    if (phase.kind === "dragging" && phase.by.id === event.pointerId) phase.stroke.move(at, event.altKey);
  }

  function onUp(event: PointerEvent): void {
    if (!down.delete(event.pointerId)) return;
    const at = pixel(event);
    switch (phase.kind) {
      case "dragging":
        phase.stroke.move(at, event.altKey);
        phase.stroke.end();
        break;
      case "pressed":
        press(event, at, phase.grip);
        break;
      case "pinching":
      case "idle":
        break;
      default:
        phase satisfies never;
    }
    if (down.size === 0 || phase.kind !== "pinching") phase = { kind: "idle" };
  }

  function press(event: PointerEvent, at: Point, grip: Grip): void {
    const time = event.timeStamp;
    const again =
      lastPress !== null &&
      time - lastPress.time < doublePress.time &&
      Math.hypot(at[0] - lastPress.at[0], at[1] - lastPress.at[1]) < doublePress.distance;
    lastPress = again ? null : { time, at };
    if (again) host.doublePress(at);
    else grip.press(event.shiftKey || event.ctrlKey || event.metaKey);
  }

  function onCancel(event: PointerEvent): void {
    if (down.delete(event.pointerId)) cancelStroke();
  }

  /** Takes a drag back; what else Escape means is for another press. */
  function onKey(event: KeyboardEvent): void {
    if (event.key !== "Escape" || phase.kind !== "dragging") return;
    event.preventDefault();
    cancelStroke();
  }

  function onWheel(event: WheelEvent): void {
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    if (event.shiftKey) host.pan([-(event.deltaX || event.deltaY) * unit, 0]);
    else host.zoom(Math.exp(-event.deltaY * unit * wheelRate * (event.ctrlKey ? 6 : 1)), pixel(event));
  }

  // A finger that is lifted leaves too; what it has read stays to be read.
  const onLeave = (event: PointerEvent): void => {
    if (event.pointerType !== "touch") host.hover(null);
  };
  element.addEventListener("pointerdown", onDown);
  element.addEventListener("pointermove", onMove);
  element.addEventListener("pointerup", onUp);
  element.addEventListener("pointercancel", onCancel);
  element.addEventListener("pointerleave", onLeave);
  element.addEventListener("wheel", onWheel, { passive: false });
  element.addEventListener("keydown", onKey);
  return () => {
    cancelStroke();
    element.removeEventListener("pointerdown", onDown);
    element.removeEventListener("pointermove", onMove);
    element.removeEventListener("pointerup", onUp);
    element.removeEventListener("pointercancel", onCancel);
    element.removeEventListener("pointerleave", onLeave);
    element.removeEventListener("wheel", onWheel);
    element.removeEventListener("keydown", onKey);
  };
}
