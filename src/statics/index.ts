/** The statics room's public face. */
export type * from "./answers";
export type * from "./model";
export { type AddedLoad, leastTippingForce, type MarginEdge, standingRegion, tippingForceAt } from "./tipping/added";
export { type Moments, momentsAbout } from "./tipping/moments";
export {
  bearingStands,
  beyond,
  edgesOf,
  neverBears,
  onTheEdge,
  type SupportEdge,
  standsNotToLose,
  supportPolygon,
} from "./tipping/polygon";
export * from "./tipping/pushing";
export { outlineOf, type PartTipping, type TippingEdge, tippingOf } from "./tipping/tipping";
