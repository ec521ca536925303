/** A new plan, one screen: the questions somebody in the shop can answer, each of which takes "don't know". */

import { lazy, Suspense } from "react";
import type { PlanDocument } from "../../plan";
import { Dialog } from "../../ui";

const NewPlanForm = lazy(() => import("./NewPlanForm"));

export interface NewPlanDialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  /** Takes the plan that the answers make. */
  readonly onMade: (plan: PlanDocument) => void;
  /** The units to begin with: those of the plan that was open. */
  readonly units: "us" | "metric";
}

export function NewPlanDialog({ opened, onClose, onMade, units }: NewPlanDialogProps) {
  return (
    <Dialog opened={opened} onClose={onClose} whole title="My piece: a new plan">
      {opened && (
        <Suspense>
          <NewPlanForm units={units} make={onMade} />
        </Suspense>
      )}
    </Dialog>
  );
}
