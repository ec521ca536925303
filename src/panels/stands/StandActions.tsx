/** What can be done to the chosen stands, or to all: the actions of the table that speak of stands and need no place. */

import { Button } from "@mantine/core";
import { actions, theEditor } from "../../store";
import { useCalm } from "../connect";
import styles from "../panels.module.css";

const shown = ["stands.all", "stands.space", "stands.mirror", "stands.copy"];
const offered = actions.filter(({ id }) => shown.includes(id));

export function StandActions() {
  const enabled = useCalm((state) => offered.map((action) => action.enabled(state)).join());
  const on = enabled.split(",");
  return (
    <div className={styles.actions}>
      {offered.map((action, index) => (
        <Button
          key={action.id}
          size="compact-md"
          variant="default"
          disabled={on[index] !== "true"}
          onClick={() => action.run(theEditor())}
        >
          {action.label}
        </Button>
      ))}
    </div>
  );
}
