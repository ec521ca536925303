/** The bar over the plan view while something is drawn, changed or traced: what is asked for, typed numbers, the ends. */

import { SegmentedControl } from "@mantine/core";
import { useEffect, useRef } from "react";
import { type DrawTool, type Form, shapeNatures, theDrafting, useDrafting } from "../../store";
import { DisplayUnits } from "../../ui";
import { usePlan } from "../connect";
import { BarButton } from "./BarButton";
import { BarHead } from "./BarHead";
import { ChangeBar } from "./ChangeBar";
import { CornerFields } from "./CornerFields";
import styles from "./drawing.module.css";
import { PictureBar } from "./PictureBar";

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
        {tool.kind === "draw" && <DrawBar tool={tool} />}
        {tool.kind === "change" && <ChangeBar tool={tool} />}
        {(tool.kind === "scale picture" || tool.kind === "move picture") && <PictureBar tool={tool} />}
      </section>
    </DisplayUnits>
  );
}

const forms: readonly { readonly value: Form; readonly label: string }[] = [
  { value: "rectangle", label: "Rectangle" },
  { value: "corners", label: "Corner by corner" },
];

function DrawBar({ tool }: { readonly tool: DrawTool }) {
  const { word, axes, closed } = shapeNatures[tool.shape];
  const drafting = theDrafting();
  const count = tool.points.length;
  return (
    <>
      <BarHead title={word} ask={askFor(tool)} />
      {closed && (
        <SegmentedControl
          size="xs"
          aria-label="How it is drawn"
          data={[...forms]}
          value={tool.form}
          onChange={(form) => drafting.setForm(form as Form)}
        />
      )}
      <CornerFields key={tool.shape} axes={axes} last={tool.points.at(-1) ?? null} add={drafting.place} />
      <div className={styles.barEnd}>
        <BarButton icon="undo" disabled={count === 0} onClick={drafting.takeBack}>
          Take back
        </BarButton>
        {tool.form === "corners" && (
          <BarButton icon="tick" strong disabled={count < 3} onClick={drafting.close}>
            Close
          </BarButton>
        )}
        <BarButton icon="close" onClick={drafting.leave}>
          Cancel
        </BarButton>
      </div>
    </>
  );
}

/** What the hand is asked for now. */
function askFor({ form, points }: DrawTool): string {
  switch (form) {
    case "rectangle":
      return points.length === 0 ? "Touch one corner, or drag to the one opposite." : "Touch the corner opposite.";
    case "line":
      return points.length === 0 ? "Touch where it begins." : "Touch where it ends.";
    case "corners":
      return points.length < 3
        ? `Touch corner ${points.length + 1}.`
        : `Touch corner ${points.length + 1}, or the first one again to close.`;
    default:
      return form satisfies never;
  }
}
