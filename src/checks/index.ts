/** The checks room's public face: plan → report → findings, sentences, result file. */
export { findingsOf, layoutReportOf, reportInPassing, reportOf, stepReportOf } from "./assemble";
export { computed, marginsPart } from "./computed";
export {
  boundsPart,
  boundsWork,
  certificatesPart,
  certificatesWork,
  diagramsPart,
  floorPart,
  forFindings,
  levelPart,
  slabPart,
  strengthPart,
  strengthWork,
  tippingPart,
  withoutMargins,
} from "./engine";
export {
  type Explanation,
  entryOf,
  evaluate,
  explain,
  type NumberName,
  type NumberUnit,
  numberNames,
} from "./explain";
export { walkwayVerdict } from "./families/floor";
export { gatherNotChecked, linesOf, worstFirst } from "./findings";
export { goodUpTo, marginsSearch } from "./margins";
export { changeOf, type Mend, mended, mends, mendsSearch, shopShims } from "./mends";
export * from "./parts";
export * from "./report";
export { type Json, lineOf, refusalOf, resultOf } from "./result";
export { type PlaceTakes, standingAt, standingForces, standingSearch } from "./standing";
export { cautions, sayIn, unprovedSentences } from "./words";
