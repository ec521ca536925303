/** Follows the pointer that carries a stand from a list, with the stand's mark beside it while it is off the drawings. */

import { useEffect, useState } from "react";
import type { Point } from "../../plan";
import { theEditor, useEditor } from "../../store";
import styles from "../canvas.module.css";
import { carry, type Over, setDown } from "./carried";
import type { Drawn } from "./hosts";

interface CarriedProps {
  readonly elements: () => Readonly<Record<"plan" | "elevation", HTMLElement | null>>;
  readonly drawn: () => Drawn | null;
}

export function CarriedStand({ elements, drawn }: CarriedProps) {
  const carried = useEditor((state) => state.carried);
  const [mark, setMark] = useState<Point | null>(null);

  useEffect(() => {
    if (carried === null) return;
    const editor = theEditor();
    const stop = (): void => {
      setMark(null);
      editor.carry(null);
    };
    const move = (event: PointerEvent): void => {
      const now = drawn();
      if (now === null) return;
      const over = overWhich(elements(), event);
      setMark(over === null ? [event.clientX, event.clientY] : null);
      carry(editor, carried, over, now, event.altKey);
    };
    const up = (event: PointerEvent): void => {
      move(event);
      setDown(editor, carried);
      stop();
    };
    const cancel = (): void => {
      editor.gesture.cancel();
      stop();
    };
    const key = (event: KeyboardEvent): void => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      cancel();
    };
    window.addEventListener("pointermove", move);
    window.addEventListener("pointerup", up);
    window.addEventListener("pointercancel", cancel);
    window.addEventListener("keydown", key, true);
    return () => {
      window.removeEventListener("pointermove", move);
      window.removeEventListener("pointerup", up);
      window.removeEventListener("pointercancel", cancel);
      window.removeEventListener("keydown", key, true);
    };
  }, [carried, elements, drawn]);

  return carried === null || mark === null ? null : (
    <div className={styles.carried} style={{ left: mark[0], top: mark[1] }} aria-hidden>
      {carried.stand}
    </div>
  );
}

function overWhich(elements: ReturnType<CarriedProps["elements"]>, { clientX, clientY }: PointerEvent): Over {
  for (const drawing of ["plan", "elevation"] as const) {
    const box = elements[drawing]?.getBoundingClientRect();
    if (box === undefined) continue;
    const at: Point = [clientX - box.left, clientY - box.top];
    if (at[0] >= 0 && at[0] <= box.width && at[1] >= 0 && at[1] <= box.height) return { drawing, at };
  }
  return null;
}
