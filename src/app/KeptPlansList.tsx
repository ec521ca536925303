/** The plans kept in this browser: to go on with one, or to delete one for good. */

import { Button } from "@mantine/core";
import { useEffect, useState } from "react";
import { useEditor } from "../store";
import { Icon } from "../ui";
import styles from "./app.module.css";
import type { KeptPlan, Session } from "./session";

export default function KeptPlans({ session, close }: { readonly session: Session; readonly close: () => void }) {
  const [plans, setPlans] = useState<readonly KeptPlan[] | null>(null);
  const open = useEditor((state) => state.origin.record);
  useEffect(() => {
    let gone = false;
    void session.keptPlans().then((kept) => {
      if (!gone) setPlans(kept);
    });
    return () => {
      gone = true;
    };
  }, [session]);
  if (plans === null) return null;
  if (plans.length === 0) return <p>None yet. Every plan is kept here as it is made.</p>;
  return (
    <ul className={styles.kept}>
      {plans.map((plan) => (
        <KeptRow
          key={plan.id}
          plan={plan}
          isOpen={plan.id === open}
          goOn={() => {
            close();
            void session.openKept(plan.id);
          }}
          remove={() => {
            setPlans(plans.filter(({ id }) => id !== plan.id));
            void session.deleteKept(plan.id);
          }}
        />
      ))}
    </ul>
  );
}

interface RowProps {
  readonly plan: KeptPlan;
  readonly isOpen: boolean;
  readonly goOn: () => void;
  readonly remove: () => void;
}

/** Deleting cannot be undone: it is asked once more, in place. */
function KeptRow({ plan, isOpen, goOn, remove }: RowProps) {
  const [asking, setAsking] = useState(false);
  const title = plan.title === "" ? "Untitled plan" : plan.title;
  return (
    <li className={styles.keptRow}>
      <button type="button" className={styles.keptTitle} onClick={goOn} disabled={isOpen}>
        <span>{title}</span>
        <time dateTime={new Date(plan.saved).toISOString()}>
          {isOpen ? "open now" : new Date(plan.saved).toLocaleString([], { dateStyle: "medium", timeStyle: "short" })}
        </time>
      </button>
      {isOpen ? null : asking ? (
        <Button size="compact-md" color="red" onClick={remove}>
          Delete for good
        </Button>
      ) : (
        <Button
          size="compact-md"
          variant="subtle"
          aria-label={`Delete ${title}`}
          leftSection={<Icon name="bin" size={16} />}
          onClick={() => setAsking(true)}
        >
          Delete
        </Button>
      )}
    </li>
  );
}
