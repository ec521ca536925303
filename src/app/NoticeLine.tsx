/** One sentence under the header: why something was refused, what was saved, where the plan is being edited. */

import { CloseButton } from "@mantine/core";
import { theEditor, useEditor } from "../store";
import styles from "./app.module.css";

export function NoticeLine() {
  const notice = useEditor((state) => state.notice);
  const saving = useEditor((state) => state.saving);
  if (notice !== null)
    return (
      <div className={styles.notice} data-kind={notice.kind} role={notice.kind === "refusal" ? "alert" : "status"}>
        <span>{notice.text}</span>
        <CloseButton size="sm" aria-label="Close this message" onClick={() => theEditor().say(null)} />
      </div>
    );
  switch (saving.status) {
    case "saved":
    case "saving":
      return null;
    case "elsewhere":
      return (
        <div className={styles.notice} data-kind="refusal" role="status">
          This plan is open in another window, which keeps it. What you do here is kept only in a file.
        </div>
      );
    case "failed":
      return (
        <div className={styles.notice} data-kind="refusal" role="alert">
          Nothing is kept: {saving.why}. Save the plan to a file.
        </div>
      );
    default:
      return saving satisfies never;
  }
}
