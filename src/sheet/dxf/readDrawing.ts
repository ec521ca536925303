/** Reads a DXF drawing: its layers, the paths on them, and what one of its units is, where it says so. */

import { decodeDrawing } from "./decode";
import { parseDrawing } from "./entities";
import { type DrawingPath, flatten } from "./flatten";

export interface Drawing {
  /** Layers that carry paths, by name. */
  readonly layers: readonly { readonly name: string; readonly paths: readonly DrawingPath[] }[];
  /** m to one drawing unit; null where the file does not say and the person must be asked. */
  readonly metresAUnit: number | null;
  /** What of the file carries no outline: kinds of entities, blocks that are missing. */
  readonly leftOut: readonly string[];
}

export type DrawingReading =
  | { readonly ok: true; readonly drawing: Drawing }
  | { readonly ok: false; readonly message: string };

/** `$INSUNITS` → m (DXF reference, header variables). 0 and what is not listed: not said. */
const metresOfUnit: Readonly<Record<number, number>> = {
  1: 0.0254,
  2: 0.3048,
  4: 0.001,
  5: 0.01,
  6: 1,
  10: 0.9144,
  14: 0.1,
};

/** Reads the bytes of a DXF file. A file that is no drawing, or has none in it, is refused with one sentence. */
export function readDrawing(bytes: Uint8Array): DrawingReading {
  let parsed: ReturnType<typeof parseDrawing>;
  try {
    parsed = parseDrawing(decodeDrawing(bytes));
  } catch {
    parsed = null;
  }
  if (parsed === null)
    return { ok: false, message: "This file could not be read as a DXF drawing; export it again as ASCII DXF." };
  const { paths, leftOut } = flatten(parsed.entities ?? [], parsed.blocks ?? {});
  if (paths.length === 0)
    return {
      ok: false,
      message: "This drawing holds no lines in model space; draw the outline there and export it again.",
    };
  const byLayer = new Map<string, DrawingPath[]>();
  for (const path of paths) {
    const own = byLayer.get(path.layer);
    if (own === undefined) byLayer.set(path.layer, [path]);
    else own.push(path);
  }
  const layers = [...byLayer].map(([name, own]) => ({ name, paths: own })).sort((a, b) => (a.name < b.name ? -1 : 1));
  return {
    ok: true,
    drawing: { layers, metresAUnit: metresOfUnit[Number(parsed.header?.$INSUNITS)] ?? null, leftOut },
  };
}
