/** The dialog of the plans kept in this browser; its list is loaded when it is first opened. */

import { lazy, Suspense } from "react";
import { Dialog } from "../ui";
import type { Session } from "./session";

const KeptPlans = lazy(() => import("./KeptPlansList"));

interface KeptPlansProps {
  readonly session: Session;
  readonly opened: boolean;
  readonly onClose: () => void;
}

export function KeptPlansDialog({ session, opened, onClose }: KeptPlansProps) {
  return (
    <Dialog opened={opened} onClose={onClose} title="Plans kept in this browser">
      {opened && (
        <Suspense>
          <KeptPlans session={session} close={onClose} />
        </Suspense>
      )}
    </Dialog>
  );
}
