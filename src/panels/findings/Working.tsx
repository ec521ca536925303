/** How far the slow answers have come, with a stop; on one line, so that nothing is pushed along. */

import { Button } from "@mantine/core";
import styles from "../panels.module.css";
import { useBackground } from "./background";

export function Working() {
  const { progress, stop, goOn } = useBackground();
  switch (progress.status) {
    case "done":
      return null;
    case "working":
      return (
        <span className={styles.working}>
          <progress value={progress.answered} max={progress.of} aria-label="Answers that have come" />
          <Button size="compact-md" variant="subtle" onClick={stop}>
            Stop
          </Button>
        </span>
      );
    case "stopped":
      return (
        <span className={styles.working}>
          stopped
          <Button size="compact-md" variant="subtle" onClick={goOn}>
            Go on
          </Button>
        </span>
      );
    default:
      return progress satisfies never;
  }
}
