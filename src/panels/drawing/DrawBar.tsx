/** The bar of a shape that is being drawn: what is asked for, the next corner by numbers, the ends. */

import { SegmentedControl } from "@mantine/core";
import { type DrawTool, type Form, shapeNatures, theDrafting } from "../../store";
import { BarButton } from "./BarButton";
import { BarHead } from "./BarHead";
import { CornerFields } from "./CornerFields";
import styles from "./drawing.module.css";

const forms: readonly { readonly value: Form; readonly label: string }[] = [
  { value: "rectangle", label: "Rectangle" },
  { value: "corners", label: "Corner by corner" },
];

export function DrawBar({ tool }: { readonly tool: DrawTool }) {
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
