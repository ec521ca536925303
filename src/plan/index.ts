/** The plan room's public face. */
export type * from "./document";
export * from "./types";
