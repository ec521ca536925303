/** Taking a DXF drawing over: a whole-screen dialog whose contents come when it is first opened. */

import { lazy, Suspense } from "react";
import { Dialog } from "../../ui";
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
    <Dialog opened={opened} onClose={close} title="Import a DXF drawing" whole>
      {opened && (
        <Suspense>
          <ImportForm source={source} done={close} />
        </Suspense>
      )}
    </Dialog>
  );
}
