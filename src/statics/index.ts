/** The statics room's public face. */
export type * from "./answers";
export { assembleStep } from "./assemble";
export * from "./bounds";
export { gravity, staticsTolerance } from "./constants";
export { diagramAt } from "./diagrams";
export { levelAt, solveStep } from "./level";
export type * from "./model";
export { PartSolver, type SolveStatus } from "./partSolver";
export { perturb } from "./perturb";
export {
  type Governing,
  type SectionKey,
  type StrengthAnswer,
  sectionsAt,
  sectionsOf,
} from "./strength/sections";
export { fullStrengthLength, lateralBuckling, sag, topPressure } from "./strength/stability";
export { bending, greatestMoment, greatestShear, shear, shearShare } from "./strength/stress";
export {
  cripplingOmega,
  type WebForce,
  webCrippling,
  webCripplingOver,
  webYielding,
  webYieldingOver,
  yieldingOmega,
} from "./strength/web";
export { type AddedLoad, leastTippingForce, type MarginEdge, standingRegion, tippingForceAt } from "./tipping/added";
export { type LevelForce, type LevelGives, levelForce, levelGives } from "./tipping/levelForce";
export { contour, levelRegion } from "./tipping/levelRegion";
export { type Moments, momentsAbout } from "./tipping/moments";
export {
  bearingStands,
  beyond,
  edgesOf,
  neverBears,
  type SupportEdge,
  standsNotToLose,
  supportPolygon,
} from "./tipping/polygon";
export * from "./tipping/pushing";
export { type StandingContour, type StandingMap, standingMap } from "./tipping/standingMap";
export { outlineOf, type PartTipping, type TippingEdge, tippingOf } from "./tipping/tipping";
