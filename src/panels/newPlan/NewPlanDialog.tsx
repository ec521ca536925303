/** A new plan, one screen: the questions somebody in the shop can answer, each of which takes "don't know". */

import { Modal } from "@mantine/core";
import { lazy, Suspense } from "react";
import type { PlanDocument } from "../../plan";

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
    <Modal
      opened={opened}
      onClose={onClose}
      fullScreen
      title="My piece: a new plan"
      closeButtonProps={{ "aria-label": "Close" }}
    >
      {opened && (
        <Suspense>
          <NewPlanForm units={units} make={onMade} />
        </Suspense>
      )}
    </Modal>
  );
}
