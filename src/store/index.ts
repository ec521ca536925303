/** The store room's public face. */
export { type Changes, changed, freeId, kept, mapped, reordered, withItem } from "./change";
export { type EditArguments, type EditId, edits, type StandMove } from "./commands";
export type { Action } from "./commands/action";
export { actionFor, actions } from "./commands/actions";
export { type KeyPress, keyName } from "./commands/keymap";
export { nextMark } from "./commands/marks";
export { nudgeOf } from "./commands/nudgeStep";
export type { Keeping } from "./commands/outline";
export { cutAt, type JointSpot, joinAfter, jointSpots, type Stretch, tidied, toggledJoint } from "./commands/parts";
export { toggleJoint } from "./commands/readActions";
export { walkEnds } from "./commands/standActions";
export * from "./drawing";
export { createEditor, type Editor, type EditorOptions } from "./editor";
export type { Change, Gesture } from "./gesture";
export { canRedo, canUndo, type History, type HistoryEntry } from "./history";
export { provideEditor, theEditor, useEditor, useEditorList, useShown } from "./hooks";
export { revisionOf } from "./revision";
export {
  isSelected,
  layoutInView,
  levelInView,
  mayRedo,
  mayUndo,
  reportInView,
  selectedStands,
  shown,
  standIdsInView,
  standIn,
  stepInView,
} from "./selectors";
export * from "./state";
