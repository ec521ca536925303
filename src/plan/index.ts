/** The plan room's public face. */
export { complete } from "./complete";
export * from "./criteria";
export type * from "./document";
export * from "./lookup";
export { memo } from "./memo";
export * from "./types";
