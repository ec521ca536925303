/** The plan room's public face. */
export { complete } from "./complete";
export * from "./criteria";
export type * from "./document";
export { mostBytes, type ReadAnswer, read, tooLarge } from "./file/read";
export type { Refusal } from "./file/refusal";
export { type Fault, faultIn, mostCorners } from "./file/simple";
export { write } from "./file/write";
export * from "./lookup";
export { memo } from "./memo";
export * from "./types";
export { editQuantity, formatQuantity } from "./units/format";
export { type ParsedQuantity, parseQuantity, type QuantityError } from "./units/parse";
export { gravity, type QuantityKind } from "./units/units";
