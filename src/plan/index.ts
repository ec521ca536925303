/** The plan room's public face. */
export { complete } from "./complete";
export * from "./criteria";
export type * from "./document";
export { mostBytes, type ReadAnswer, read, tooLarge } from "./file/read";
export type { Refusal } from "./file/refusal";
export { write } from "./file/write";
export * from "./lookup";
export { memo } from "./memo";
export * from "./types";
