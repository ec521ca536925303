/** The library room's public face. */

export { demoBeam, demoDie } from "./demos";
export { type GenericStand, genericStands } from "./genericStands";
export {
  type Density,
  densities,
  type ElasticConstants,
  inch,
  ksi,
  poundForce,
  type SteelGrade,
  steel,
  steelDensity,
  steelGrades,
} from "./materials";
export {
  levelToleranceOf,
  type NewPlanAnswers,
  newPlan,
  type PieceKind,
  type RatedPer,
  standPositions,
  uncertaintyOf,
} from "./newPlan";
export {
  type Box,
  type BuiltUpI,
  box,
  builtUpI,
  type PlanSection,
  type Plate,
  type Section,
  type SectionDimensions,
  sectionToPlan,
  solid,
} from "./section";
export { findSection, type SectionFamily, sectionFamilies, sectionNames, sectionSource } from "./sections";
export { areaProperties, type Outline, shearStiffnessArea } from "./shapes";
export { cellTorsion, flangeJunction, iTorsion, rectangleTorsion } from "./torsion";
