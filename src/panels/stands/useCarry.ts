/** A button of a list that a stand is carried from: pressed it does what it says, dragged it hands the stand over. */

import { type CSSProperties, type MouseEvent, type PointerEvent, useRef } from "react";
import { type CarriedStand, theEditor } from "../../store";

/** A press may stray so far and still be a press, px. */
const travel = { mouse: 4, touch: 8 } as const;

export interface CarryHandle {
  readonly style: CSSProperties;
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onClickCapture: (event: MouseEvent) => void;
}

/** `made`: what is carried once the drag begins. */
export function useCarry(made: () => CarriedStand): CarryHandle {
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const carried = useRef(false);
  return {
    style: { touchAction: "none", cursor: "grab" },
    onPointerDown: (event) => {
      carried.current = false;
      // However quick the hand is, its moves come here until the drag has begun.
      event.currentTarget.setPointerCapture(event.pointerId);
      from.current = event.button === 0 ? { x: event.clientX, y: event.clientY } : null;
    },
    onPointerMove: (event) => {
      if (from.current === null || event.buttons === 0) return;
      const strayed = Math.hypot(event.clientX - from.current.x, event.clientY - from.current.y);
      if (strayed < (event.pointerType === "touch" ? travel.touch : travel.mouse)) return;
      from.current = null;
      carried.current = true;
      theEditor().carry(made());
    },
    onClickCapture: (event) => {
      if (!carried.current) return;
      carried.current = false;
      event.preventDefault();
      event.stopPropagation();
    },
  };
}
