/** The canvas room's public face. */
export { Drawings, type DrawingsProps } from "./Drawings";
export { oncePerFrame } from "./frames";
export type { Dimension } from "./planView/Dimensions";
