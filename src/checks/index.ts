/** The checks room's public face: plan → report. */
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
} from "./engine";
export * from "./parts";
export * from "./report";
