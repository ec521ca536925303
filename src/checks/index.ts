/** The checks room's public face: plan → report → findings, sentences, result file. */
export { findingsOf, layoutReportOf, reportOf, stepReportOf } from "./assemble";
export {
  boundsPart,
  certificatesPart,
  computed,
  diagramsPart,
  floorPart,
  levelPart,
  marginsPart,
  slabPart,
  strengthPart,
  tippingPart,
  withoutMargins,
} from "./engine";
export { gatherNotChecked, linesOf, worstFirst } from "./findings";
export * from "./parts";
export * from "./report";
export { type Json, lineOf, refusalOf, resultOf } from "./result";
export { cautions, sayIn } from "./words";
