/** What a dialog is drawn with. Loaded with the first dialog that is opened. */

import { Modal } from "@mantine/core";
import type { ReactNode } from "react";
import styles from "./ui.module.css";

export interface DialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly title: string;
  /** Over the whole page; else as wide as its contents need, at most 640 px. */
  readonly whole?: boolean;
  readonly children: ReactNode;
}

export default function DialogFrame({ opened, onClose, title, whole = false, children }: DialogProps) {
  return (
    <Modal.Root opened={opened} onClose={onClose} fullScreen={whole} size={640}>
      <Modal.Overlay />
      <Modal.Content>
        {/* Not a header element: a page has one banner. */}
        <div className={styles.dialogHead}>
          <Modal.Title>{title}</Modal.Title>
          <Modal.CloseButton aria-label="Close" />
        </div>
        <Modal.Body>{children}</Modal.Body>
      </Modal.Content>
    </Modal.Root>
  );
}
