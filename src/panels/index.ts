/** The panels room's public face. */

export { DrawingBar } from "./drawing/DrawingBar";
export { DrawMenu, type DrawMenuProps } from "./drawing/DrawMenu";
export { ImportDialog, type ImportDialogProps } from "./drawing/ImportDialog";
export type { OpenedPicture, PictureSource, ReadPicture } from "./drawing/pictureSource";
export type { DrawingAnswer, DrawingLayer, DrawingSource, JoinedLoops } from "./drawing/source";
export { TraceDialog, type TraceDialogProps } from "./drawing/TraceDialog";
export { type Background, BackgroundContext } from "./findings/background";
export { type MendSearch, MendSearchContext } from "./findings/mends";
export { type Command, CommandsDialog, type CommandsDialogProps } from "./help/CommandsDialog";
export { LiveRegion } from "./LiveRegion";
export { NewPlanDialog, type NewPlanDialogProps } from "./newPlan/NewPlanDialog";
export { UnitsMenu } from "./plan/UnitsMenu";
export { SidePanel } from "./SidePanel";
export { StepStrip } from "./steps/StepStrip";
