/** Taking a DXF drawing over: a whole-screen dialog whose contents come when it is first opened. */

import { Modal } from "@mantine/core";
import { lazy, Suspense } from "react";
import type { DrawingSource } from "./source";

const ImportForm = lazy(() => import("./ImportForm"));

export interface ImportDialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly source: DrawingSource;
}

export function ImportDialog({ opened, onClose, source }: ImportDialogProps) {
  const close = (): void => {
    source.stop();
    onClose();
  };
  return (
    <Modal
      opened={opened}
      onClose={close}
      fullScreen
      title="Import a DXF drawing"
      closeButtonProps={{ "aria-label": "Close" }}
    >
      {opened && (
        <Suspense>
          <ImportForm source={source} done={close} />
        </Suspense>
      )}
    </Modal>
  );
}
