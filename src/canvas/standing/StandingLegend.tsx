/** The key to the map of where a person may stand, and in words what the place asked about takes. */

import { knownValue, standingAt, standingForces } from "../../checks";
import { levelInView, reportInView, shown, stepInView, useEditor } from "../../store";
import styles from "../canvas.module.css";
import type { Look } from "../look";
import { lengthWords } from "../words";
import { bandWords, placeWords } from "./words";

export function StandingLegend({ look }: { readonly look: Look }) {
  const on = useEditor((state) => state.view.overlays.standing);
  return on ? <Legend look={look} /> : null;
}

function Legend({ look }: { readonly look: Look }) {
  const plan = useEditor(shown);
  const standing = useEditor((state) => reportInView(state).standing);
  const { colours, display } = look;
  const words = bandWords(standingForces(plan), display);
  return (
    <div className={styles.legend}>
      <p className={styles.legendHead}>
        Where a person may stand{standing.status === "pending" ? ", being computed" : ""}
        {standing.status === "failed" ? `: not computed, ${standing.why}` : ""}
      </p>
      <ul className={styles.bands}>
        {words.map((band, index) => (
          <li key={band}>
            <span className={styles.swatch} style={{ background: colours.drawing.standing[index] }} /> {band}
          </li>
        ))}
        <li>
          <span className={styles.tippingSwatch} /> tips
        </li>
      </ul>
      <Place look={look} />
    </div>
  );
}

function Place({ look: { display } }: { readonly look: Look }) {
  const plan = useEditor(shown);
  const step = useEditor(stepInView);
  const level = useEditor(levelInView);
  const tipping = useEditor((state) => knownValue(reportInView(state).tipping));
  const spot = useEditor((state) => state.view.spot);
  const moving = useEditor((state) => state.gesture !== null);
  if (spot === null) return <p className={styles.place}>Point at a place, or touch it: what it takes is told.</p>;
  if (level === null || tipping === null || moving) return null;
  const takes = standingAt(plan, step, level, tipping, spot);
  const [s, t] = spot;
  const side = Math.abs(t) < 5e-4 ? "" : `, ${lengthWords(Math.abs(t), display)} to the ${t > 0 ? "left" : "right"}`;
  const place = `${lengthWords(s, display)} from ${plan.piece.ends.datum}${side}`;
  return (
    <p className={styles.place} role="status" data-testid="standing-place">
      <strong>{place}:</strong> {takes === null ? "nothing of the piece is there" : placeWords(takes, display)}.
    </p>
  );
}
