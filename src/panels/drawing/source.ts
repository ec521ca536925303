/** What the import asks of the reader of drawings; the app passes one in. Lengths in drawing units. */

import type { Point } from "../../plan";

export interface DrawingLayer {
  readonly name: string;
  /** How many lines, arcs and outlines are on it. */
  readonly count: number;
  /** What is on it as the data of an SVG path, y up, coarse: to be recognised, not measured. */
  readonly picture: string;
  readonly least: Point;
  readonly most: Point;
  /** The area of the greatest loop on it, gaps that are small for the drawing left aside; 0 where there is none. */
  readonly area: number;
}

export interface ReadDrawing {
  readonly layers: readonly DrawingLayer[];
  /** m to one drawing unit; null where the file does not say. */
  readonly metresAUnit: number | null;
  /** What of the file carries no outline. */
  readonly leftOut: readonly string[];
}

export type DrawingAnswer =
  | { readonly ok: true; readonly drawing: ReadDrawing }
  | { readonly ok: false; readonly message: string };

/** An end that meets no other: where, and how far off the nearest other end is; null where there is none. */
export interface OpenEnd {
  readonly at: Point;
  readonly distance: number | null;
}

export interface JoinedLoops {
  /** Closed loops, the greatest first. */
  readonly loops: readonly (readonly Point[])[];
  readonly gaps: readonly OpenEnd[];
}

export interface DrawingSource {
  readonly read: (bytes: Uint8Array) => Promise<DrawingAnswer>;
  /** Joins what is on some layers of the drawing that was read last. */
  readonly join: (layers: readonly string[], tolerance: number) => Promise<JoinedLoops>;
  /** Gives up what is under way and forgets the drawing. */
  readonly stop: () => void;
}
