/** The ui room's public face. */
import "./styles";

export type { BandNumbers } from "./band";
export { type Column, DataTable, type DataTableProps } from "./DataTable";
export { Dialog, type DialogProps } from "./Dialog";
export {
  CheckField,
  type Choice,
  ChoiceField,
  DraftField,
  type DraftFieldProps,
  MaybeField,
  TextBlock,
  TextField,
} from "./fields";
export { Icon, type IconName } from "./icons";
export {
  DisplayUnits,
  type Format,
  Quantity,
  QuantityField,
  type QuantityFieldProps,
  useDisplay,
  useFormat,
} from "./quantity";
export { ReactionBand, type ReactionBandProps } from "./ReactionBand";
export { Disclosure, Entry, Section, TitleBlock } from "./Section";
export { cssVariablesResolver, theme, useColours } from "./theme";
export * from "./tokens";
export { VerdictMark, VerdictShape, verdictShapes, verdictWords } from "./verdict";
