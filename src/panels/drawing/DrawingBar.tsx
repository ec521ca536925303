/** The bar over the plan view while something is drawn, changed or traced: what is asked for, typed numbers, the ends. */

import { lazy, Suspense, useRef } from "react";
import { theDrafting, useDrafting } from "../../store";
import { DisplayUnits } from "../../ui";
import { usePlan } from "../connect";
import styles from "./drawing.module.css";

const loadToolBar = () => import("./ToolBar");
const ToolBar = lazy(loadToolBar);
/** Begins to load what the bar holds: whoever opens the menu is about to need it. */
export const foreseeTool = (): void => void loadToolBar();

export function DrawingBar() {
  const tool = useDrafting((state) => state.tool);
  const whole = useDrafting((state) => state.wholeSheet);
  const { display } = usePlan();
  const bar = useRef<HTMLElement>(null);
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
          <ToolBar tool={tool} bar={bar} />
        </Suspense>
      </section>
    </DisplayUnits>
  );
}
