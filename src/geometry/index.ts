/** The geometry room's public face. */
export { collinearTolerance, convexHull } from "./hull";
