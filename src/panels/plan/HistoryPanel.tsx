/** The visible history: every edit by name; choosing one goes there, back or forward. */

import { theEditor } from "../../store";
import { Icon, Section } from "../../ui";
import { useCalm } from "../connect";
import stepsStyles from "../steps/steps.module.css";

export function HistoryPanel() {
  const { entries, at } = useCalm((state) => state.history);
  return (
    <Section title="History">
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

function clock(time: number): string {
  return new Date(time).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
}
