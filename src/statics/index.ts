/** The statics room's public face. */
export type * from "./answers";
export { assembleStep } from "./assemble";
export { gravity, staticsTolerance } from "./constants";
export type * from "./model";
