/** The bar over the plan view while something is drawn, changed or traced: what is asked for, typed numbers, the ends. */

import { lazy, Suspense, useEffect, useRef } from "react";
import { theDrafting, useDrafting } from "../../store";
import { DisplayUnits } from "../../ui";
import { usePlan } from "../connect";
import styles from "./drawing.module.css";

const ToolBar = lazy(() => import("./ToolBar"));

export function DrawingBar() {
  const tool = useDrafting((state) => state.tool);
  const whole = useDrafting((state) => state.wholeSheet);
  const { display } = usePlan();
  const bar = useRef<HTMLElement>(null);
  const inHand = tool.kind === "draw" || tool.kind === "scale picture" || tool.kind === "move picture";
  // Keys and screen readers begin here; a finger sees no keyboard come up, because no field is focused.
  useEffect(() => {
    if (inHand) bar.current?.focus({ preventScroll: true });
  }, [inHand]);
  if (tool.kind === "none") return null;
  return (
    <DisplayUnits display={display}>
      <section
        ref={bar}
        className={styles.bar}
        aria-label="Drawing by hand"
        data-whole-sheet={whole}
        tabIndex={-1}
        onKeyDown={(event) => {
          if (event.key !== "Escape" || event.target === event.currentTarget) return;
          event.stopPropagation();
          theDrafting().leave();
        }}
      >
        <Suspense>
          <ToolBar tool={tool} />
        </Suspense>
      </section>
    </DisplayUnits>
  );
}
