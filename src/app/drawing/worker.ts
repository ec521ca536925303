/** Reads drawings beside the page, so that a large one holds nothing up. One drawing at a time. */

import type { DrawingAnswer, JoinedLoops } from "../../panels";
import { type Drawing, joinLoops, readDrawing } from "../../sheet";
import { layersOf } from "./layerPicture";

export type DrawingRequest =
  | { readonly id: number; readonly kind: "read"; readonly bytes: Uint8Array }
  | { readonly id: number; readonly kind: "join"; readonly layers: readonly string[]; readonly tolerance: number };

export interface DrawingReply {
  readonly id: number;
  readonly answer: DrawingAnswer | JoinedLoops;
}

let drawing: Drawing | null = null;

function read(bytes: Uint8Array): DrawingAnswer {
  const reading = readDrawing(bytes);
  drawing = reading.ok ? reading.drawing : null;
  if (!reading.ok) return reading;
  const { metresAUnit, leftOut } = reading.drawing;
  return { ok: true, drawing: { layers: layersOf(reading.drawing), metresAUnit, leftOut } };
}

function join(layers: readonly string[], tolerance: number): JoinedLoops {
  const paths = (drawing?.layers ?? []).filter(({ name }) => layers.includes(name)).flatMap((layer) => layer.paths);
  return joinLoops(paths, tolerance);
}

self.onmessage = ({ data }: MessageEvent<DrawingRequest>): void => {
  const answer = data.kind === "read" ? read(data.bytes) : join(data.layers, data.tolerance);
  self.postMessage({ id: data.id, answer } satisfies DrawingReply);
};
