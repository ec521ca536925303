/** The sheet room's public face: drawing exchange. */
export type { DrawingPath } from "./dxf/flatten";
export { joinLoops, type Loops, type OpenEnd } from "./dxf/loops";
export { type Drawing, type DrawingReading, readDrawing } from "./dxf/readDrawing";
