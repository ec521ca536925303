/** Three hints with the example at the first visit, until something has been done. No tour. */

import type { PlanDocument } from "../plan";
import { useEditor } from "../store";
import styles from "./app.module.css";

export function Hints({ example, create }: { readonly example: PlanDocument | null; readonly create: () => void }) {
  const untouched = useEditor((state) => state.document === example && state.history.entries.length === 1);
  if (!untouched) return null;
  return (
    <p className={styles.hints}>
      <span>Drag a stand</span>
      <span>Touch a number</span>
      <button type="button" className={styles.hintButton} onClick={create}>
        My piece
      </button>
    </p>
  );
}
