/** The geometry room's public face. */

export { clipToHalfPlane, clipToHalfPlanes, clipToStrip, type HalfPlane, signedArea } from "./halfplane";
export { collinearTolerance, convexHull } from "./hull";
