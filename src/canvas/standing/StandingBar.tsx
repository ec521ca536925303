/** Over the drawings while the map of where a person may stand is seen: its key, and what the place asked about takes. */

import { knownValue, standingAt } from "../../checks";
import { criteriaOf, type Display } from "../../plan";
import { levelInView, reportInView, shown, stepInView, useEditor } from "../../store";
import { useColours } from "../../ui";
import styles from "../canvas.module.css";
import { bandColour } from "./StandingInPlan";
import { bandWords, placeWords, whereWords } from "./words";

export function StandingBar() {
  const on = useEditor((state) => state.view.overlays.standing);
  return on ? <Bar /> : null;
}

function Bar() {
  const display = useEditor((state) => shown(state).display);
  const { personLoad } = useEditor((state) => criteriaOf(shown(state)));
  const standing = useEditor((state) => reportInView(state).standing);
  const colours = useColours();
  const forces = (standing.status === "pending" ? standing.last : knownValue(standing))?.forces ?? [personLoad];
  return (
    <section className={styles.standingBar} aria-label="Where a person may stand">
      <p className={styles.standingHead}>
        Where a person may stand{standing.status === "pending" ? ", being computed" : ""}
        {standing.status === "failed" ? `: not computed, ${standing.why}` : ""}
      </p>
      <ul className={styles.bands}>
        {bandWords(forces, display).map((band, index) => (
          <li key={band}>
            <span className={styles.swatch} style={{ background: bandColour(colours, index, forces.length) }} /> {band}
          </li>
        ))}
        <li>
          <span className={styles.tippingSwatch} /> tips
        </li>
      </ul>
      <Place display={display} />
    </section>
  );
}

function Place({ display }: { readonly display: Display }) {
  const plan = useEditor(shown);
  const step = useEditor(stepInView);
  const level = useEditor(levelInView);
  const tipping = useEditor((state) => knownValue(reportInView(state).tipping));
  const spot = useEditor((state) => state.view.spot);
  const moving = useEditor((state) => state.gesture !== null);
  if (spot === null) return <p className={styles.place}>Point at a place or touch it: what it takes is told here.</p>;
  const takes = level === null || tipping === null || moving ? null : standingAt(plan, step, level, tipping, spot);
  return (
    <p className={styles.place} role="status" data-testid="standing-place">
      <strong>{whereWords(spot, display)}:</strong> {takes === null ? "…" : `${placeWords(takes, display)}.`}
    </p>
  );
}
