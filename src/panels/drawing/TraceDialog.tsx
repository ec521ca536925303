/** Choosing what is traced: a picture, or a page of a PDF. */

import { lazy, Suspense } from "react";
import { Dialog } from "../../ui";
import type { PictureSource } from "./pictureSource";

const TraceForm = lazy(() => import("./TraceForm"));

export interface TraceDialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly source: PictureSource;
}

export function TraceDialog({ opened, onClose, source }: TraceDialogProps) {
  return (
    <Dialog opened={opened} onClose={onClose} title="Trace over a picture or a PDF page">
      {opened && (
        <Suspense>
          <TraceForm source={source} done={onClose} />
        </Suspense>
      )}
    </Dialog>
  );
}
