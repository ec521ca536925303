/** What is in hand, and under it what the hand is asked for; or, in its place, why the last corner was not taken. */

import { useDrafting } from "../../store";
import styles from "./drawing.module.css";

export function BarHead({ title, ask }: { readonly title: string; readonly ask?: string }) {
  const refusal = useDrafting((state) => state.refusal);
  return (
    <div className={styles.barHead}>
      <h2 className={styles.barTitle}>{title}</h2>
      {refusal !== null ? (
        <p className={styles.barRefusal} role="alert">
          {refusal}
        </p>
      ) : (
        ask !== undefined && (
          <p className={styles.ask} aria-live="polite">
            {ask}
          </p>
        )
      )}
    </div>
  );
}
