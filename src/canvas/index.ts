/** The canvas room's public face. */
export { Drawings } from "./Drawings";
export { oncePerFrame } from "./frames";
export { StandingBar } from "./standing/StandingBar";
