/** Loops of a drawing made into what a plan takes: an outline with its holes, a bay with what stands in it. Metres. */

import { cornerOf, datumOf, holesOf, type Laying, laidOut, thinned } from "../../geometry";
import { mostCorners, type NamedPolygon, type Point, type Polygon } from "../../plan";
import { whyNotSimple } from "../../store";

type Loop = readonly Point[];

export interface Taken {
  readonly polygon: Polygon;
  /** How many corners were left out, and how far off the thinned outline may lie, m. */
  readonly dropped: number;
  readonly within: number;
}

export type Arranged<Made> =
  | ({ readonly ok: true } & Made)
  /** One sentence: what is wrong with the drawing. */
  | { readonly ok: false; readonly message: string };

export interface PieceFromDrawing {
  readonly outline: Taken;
  readonly holes: readonly Polygon[];
  /** Loops inside the outline that cross themselves: they are left out. */
  readonly unusable: number;
}

export interface BayFromDrawing {
  readonly outline: Taken;
  readonly obstacles: readonly NamedPolygon[];
  readonly noFootZones: readonly NamedPolygon[];
  readonly unusable: number;
}

/** A loop laid out, thinned where it has too many corners; the sentence where it cannot stand in a plan. */
function taken(loop: Loop, laying: Laying, origin: Point): Taken | string {
  const whole = laidOut(loop, laying, origin);
  const { ring, within } = thinned(whole, mostCorners);
  const fault = whyNotSimple(ring);
  if (fault !== null) return fault;
  return { polygon: ring, dropped: whole.length - ring.length, within };
}

function usable(loops: readonly Loop[], laying: Laying, origin: Point): readonly Polygon[] {
  return loops.flatMap((loop) => {
    const made = taken(loop, laying, origin);
    return typeof made === "string" ? [] : [made.polygon];
  });
}

/** The piece from the loops of its layers: `outer` is the index of the one that is its outline. */
export function pieceFrom(loops: readonly Loop[], outer: number, laying: Laying): Arranged<PieceFromDrawing> {
  const loop = loops[outer];
  if (loop === undefined) return { ok: false, message: nothingCloses };
  const origin = datumOf(loop, laying);
  const outline = taken(loop, laying, origin);
  if (typeof outline === "string") return { ok: false, message: `This outline will not do: ${lowered(outline)}` };
  const inside = holesOf(loop, loops);
  const holes = usable(inside, laying, origin);
  return { ok: true, outline, holes, unusable: inside.length - holes.length };
}

/** Loops of one layer, by the layer's name. */
export interface NamedLoops {
  readonly name: string;
  readonly loops: readonly Loop[];
}

/** The bay: the greatest loop of its outline's layers, what lies in it, and what other layers bring. */
export function bayFrom(
  outlines: readonly Loop[],
  outer: number,
  obstacles: readonly NamedLoops[],
  noFootZones: readonly NamedLoops[],
  laying: Laying,
): Arranged<BayFromDrawing> {
  const loop = outlines[outer];
  if (loop === undefined) return { ok: false, message: nothingCloses };
  const origin = cornerOf(loop, laying);
  const outline = taken(loop, laying, origin);
  if (typeof outline === "string") return { ok: false, message: `This outline will not do: ${lowered(outline)}` };
  let unusable = 0;
  const named = (lists: readonly NamedLoops[]): readonly NamedPolygon[] =>
    lists.flatMap(({ name, loops }) => {
      const outermost = loops.filter(
        (one) => !loops.some((other) => other !== one && holesOf(other, [one]).length > 0),
      );
      const polygons = usable(outermost, laying, origin);
      unusable += outermost.length - polygons.length;
      return polygons.map((polygon, index) => ({ name: `${name} ${index + 1}`, polygon }));
    });
  const own = { name: "obstacle", loops: holesOf(loop, outlines) };
  return { ok: true, outline, obstacles: named([own, ...obstacles]), noFootZones: named(noFootZones), unusable };
}

const nothingCloses = "Nothing on these layers closes to an outline; join the gaps or choose other layers.";

const lowered = (sentence: string): string => `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;

/** What a typed size says of the drawing. */
export type SizeAnswer =
  | { readonly kind: "agrees" }
  /** The drawing is off by this factor: typed ÷ drawn. */
  | { readonly kind: "differs"; readonly factor: number };

/** A drawing is taken to agree with a size that is typed to within half a per cent: people type round numbers. */
const agreement = 0.005;

export function compareSize(drawn: number, typed: number): SizeAnswer {
  const factor = typed / drawn;
  return Math.abs(factor - 1) <= agreement ? { kind: "agrees" } : { kind: "differs", factor };
}

/** The layers to begin with: those on which the greatest loop lies. */
export function proposedLayers(layers: readonly { readonly name: string; readonly area: number }[]): readonly string[] {
  const greatest = layers.reduce((most, { area }) => Math.max(most, area), 0);
  if (greatest === 0) return layers.map(({ name }) => name);
  return layers.filter(({ area }) => area === greatest).map(({ name }) => name);
}
