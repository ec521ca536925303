/** The geometry room's public face. */
export { type Barrier, clearanceAt } from "./barriers";
export {
  edgeInTheWay,
  rectangleBetween,
  shifted,
  withCornerAfter,
  withCornerAt,
  withoutCorner,
} from "./corners";
export { pointToBoundary, pointToPolygon, polygonToPolygon } from "./distance";
export { farthestFrom } from "./farthest";
export {
  directionOf,
  type Frame,
  frameAt,
  frameWithin,
  pieceFrame,
  polygonToOuter,
  rectangleIn,
  standFrame,
  toInner,
  toOuter,
} from "./frames";
export { grow } from "./grow";
export { clipToHalfPlane, clipToHalfPlanes, clipToStrip, type HalfPlane, signedArea } from "./halfplane";
export { collinearTolerance, convexHull } from "./hull";
export { cornerOf, datumOf, holesOf, type Laying, laidOut, laidPoint, turnsAlong } from "./layOut";
export { footSpacing, legsAt } from "./legs";
export {
  commonStretches,
  joinTouching,
  type Line,
  type Stretch,
  stretchesInPolygon,
  withoutStretches,
} from "./lineInPolygon";
export {
  type Box,
  boundingBox,
  counterClockwise,
  edgesOf,
  isConvex,
  polygonArea,
  polygonHolds,
  whereInPolygon,
} from "./polygon";
export { difference, intersection, type Region, regionsArea, union } from "./regions";
export { distanceBetween, type Gap, pointToSegment, segmentToSegment } from "./segments";
export { areaOutside, overlap, sharedArea } from "./sharedArea";
export {
  airyPoint,
  besselPoint,
  type Station,
  snap,
  specialSpots,
  stationsAcross,
  stationsAlong,
} from "./snapping";
export { type Thinned, thinned } from "./thin";
export { geometryTolerance } from "./tolerances";
export { type WidestPath, widestPath } from "./widestPath";
