/** The floor room's public face. */
export type * from "./answers";
export { floorOf } from "./floor";
export { feetForces, footprintOf, legFrameHulls, standInBay } from "./footprint";
export {
  allowableSlabStress,
  concreteModulus,
  cornerStress,
  edgeStress,
  interiorStress,
  type LoadedFoot,
  loadedRadius,
  relativeStiffnessRadius,
  resistingRadius,
  type SlabStress,
  slabFootForce,
  slabStresses,
} from "./slab";
export { tripHulls, tripZoneOf } from "./tripZone";
