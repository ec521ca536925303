/** Drawing by hand, as the store room shows it. */
export * from "./drafting";
export { theDrafting, useDrafting } from "./hooks";
export {
  newShapeName,
  type Shape,
  type ShapeKind,
  type ShapeNature,
  type ShapeRef,
  shapeNatures,
  shapeOf,
  shapesOf,
} from "./shapes";
export * from "./tracing";
