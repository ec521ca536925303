/** The visible history: every edit by name; choosing one goes there, back or forward. */

import { theEditor } from "../../store";
import { Icon, Section } from "../../ui";
import { useCalm } from "../connect";
import styles from "../panels.module.css";
import stepsStyles from "../steps/steps.module.css";

export function HistoryPanel() {
  const { entries, at } = useCalm((state) => state.history);
  return (
    <Section title="History">
      <p className={styles.quiet}>
        It stays with the plan in this browser. Past two million characters the oldest changes are dropped.
      </p>
      <ol className={stepsStyles.history} reversed>
        {entries
          .map((entry, index) => (
            <li key={entry.id} data-undone={index > at}>
              <button
                type="button"
                className={stepsStyles.historyButton}
                aria-current={index === at ? "true" : undefined}
                onClick={() => theEditor().goTo(index)}
              >
                <span>{entry.label}</span>
                {index === at && <Icon name="tick" size={16} />}
                <time dateTime={new Date(entry.time).toISOString()}>{clock(entry.time)}</time>
              </button>
            </li>
          ))
          .reverse()}
      </ol>
    </Section>
  );
}

/** The time of day; on another day the day as well. */
function clock(time: number): string {
  const then = new Date(time);
  const hour = then.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const today = then.toDateString() === new Date().toDateString();
  return today ? hour : `${then.toLocaleDateString([], { month: "short", day: "numeric" })}, ${hour}`;
}
