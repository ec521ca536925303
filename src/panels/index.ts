/** The panels room's public face. */
export { LiveRegion } from "./LiveRegion";
export { NewPlanDialog, type NewPlanDialogProps } from "./newPlan/NewPlanDialog";
export { UnitsMenu } from "./plan/UnitsMenu";
export { SidePanel } from "./SidePanel";
export { StepStrip } from "./steps/StepsPanel";
