/** A dialog over the page, with its title and a way out. It lets the focus back to where it was. */

import { lazy, Suspense, useState } from "react";
import type { DialogProps } from "./DialogFrame";

export type { DialogProps };

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
