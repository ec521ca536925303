/** The twin of the dimension lines across the walkways, for screen readers. */

import { walkwayVerdict } from "../../checks";
import { criteriaOf } from "../../plan";
import { shown, useEditor } from "../../store";
import styles from "../canvas.module.css";
import { floorInView, settledFloor } from "./WalkwaysInPlan";
import { walkwayWords } from "./words";

export function WalkwaysInWords() {
  const plan = useEditor((state) => (state.gesture === null ? shown(state) : null));
  const floor = useEditor((state) => (state.gesture === null && settledFloor(state) ? floorInView(state) : null));
  if (plan === null || floor === null || floor.walkways.length === 0) return null;
  return (
    <ul className={styles.hiddenWords} aria-label="Walkways">
      {floor.walkways.map((walkway, index) => (
        <li key={`${index} ${walkway.name}`}>
          {walkway.name}: {walkwayWords(walkway, walkwayVerdict(walkway, criteriaOf(plan)), plan.display)}
        </li>
      ))}
    </ul>
  );
}
