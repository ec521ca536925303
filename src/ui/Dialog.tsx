/** A dialog over the page, with its title and a way out. It lets the focus back to where it was. */

import { lazy, type ReactNode, Suspense, useState } from "react";

export interface DialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly title: string;
  /** Over the whole page; else as wide as its contents need, at most 640 px. */
  readonly whole?: boolean;
  readonly children: ReactNode;
}

const DialogFrame = lazy(() => import("./DialogFrame"));

export function Dialog(props: DialogProps) {
  const [wanted, setWanted] = useState(false);
  if (props.opened && !wanted) setWanted(true);
  return wanted ? (
    <Suspense>
      <DialogFrame {...props} />
    </Suspense>
  ) : null;
}
