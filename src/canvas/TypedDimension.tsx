/** A field over a dimension that has been touched: the stand goes where the typed number says. */

import { useEffect, useRef } from "react";
import type { Point, StandId } from "../plan";
import { layoutInView, shown, standIn, theEditor, useEditor } from "../store";
import { QuantityField } from "../ui";
import styles from "./canvas.module.css";

export interface TouchedDimension {
  readonly stand: StandId;
  /** Middle of its figures on the plan view, px. */
  readonly at: Point;
}

export function TypedDimension({ stand, at, close }: TouchedDimension & { readonly close: () => void }) {
  const holder = useRef<HTMLFieldSetElement>(null);
  const placement = useEditor((state) => standIn(state, stand));
  const datum = useEditor((state) => shown(state).piece.ends.datum);
  useEffect(() => holder.current?.querySelector("input")?.focus(), []);
  if (placement === null) return null;

  const commit = (s: number): string | null => {
    const editor = theEditor();
    const layout = layoutInView(editor.state()).id;
    if (!editor.run("stand.move", { layout, stand, s, t: placement.t }) && s !== placement.s)
      return editor.state().notice?.text ?? "This place will not do.";
    close();
    return null;
  };
  return (
    <fieldset
      ref={holder}
      className={styles.typed}
      style={{ left: at[0], top: at[1] }}
      onKeyDown={(event) => {
        if (event.key === "Escape") close();
      }}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) close();
      }}
    >
      <QuantityField label={`${stand} from ${datum}`} kind="length" value={placement.s} commit={commit} step={0} bare />
    </fieldset>
  );
}
