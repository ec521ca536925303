/** Random rooms for the widest path, and two ways to find it that share nothing with the program's. */

import { Clipper, EndType, FillRule, JoinType, type PathsD } from "clipper2-ts";
import type { Barrier } from "../../src/geometry";
import type { Point, Polygon } from "../../src/plan";

export interface Room {
  readonly barriers: readonly Barrier[];
  readonly from: Point;
  readonly to: Point;
}

type Random = () => number;

/** A small generator with a seed (mulberry32). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A star-shaped polygon, seldom convex. */
function star(random: Random, middle: Point, least: number, most: number, corners: number): Polygon {
  const phase = random() * 2 * Math.PI;
  return Array.from({ length: corners }, (_, corner): Point => {
    const angle = phase + ((corner + 0.6 * random()) / corners) * 2 * Math.PI;
    const radius = least + (most - least) * random();
    return [middle[0] + radius * Math.cos(angle), middle[1] + radius * Math.sin(angle)];
  });
}

/** A U turned any way: a place may lie in its mouth. */
function horseshoe(random: Random, middle: Point, size: number): Polygon {
  const wall = size * (0.1 + 0.15 * random());
  const outline: Polygon = [
    [0, 0],
    [size, 0],
    [size, size],
    [size - wall, size],
    [size - wall, wall],
    [wall, wall],
    [wall, size],
    [0, size],
  ];
  const angle = random() < 0.3 ? (Math.floor(random() * 4) * Math.PI) / 2 : random() * 2 * Math.PI;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return outline.map(([p, q]) => {
    const [u, v] = [p - size / 2, q - size / 2];
    return [middle[0] + u * cos - v * sin, middle[1] + u * sin + v * cos];
  });
}

function bayOf(random: Random): Polygon {
  const choice = random();
  const [width, height] = [6, 5];
  if (choice < 0.3) {
    return [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ];
  }
  if (choice < 0.6) {
    // A wall reaches into the room.
    const at = 1 + 4 * random();
    const depth = height * random() * 0.9;
    return [
      [0, 0],
      [at, 0],
      [at + 0.1, depth],
      [at + 0.3, 0],
      [width, 0],
      [width, height],
      [0, height],
    ];
  }
  return star(random, [3, 2.5], 1.5, 3.2, 5 + Math.floor(random() * 6));
}

/** Three to ten barriers in a bay of some 6 × 5 m: stars, U's, boxes in line with the walls, grown hulls; overlapping or touching. */
export function randomRoom(seed: number): Room {
  const random = randomFrom(seed);
  const place = (): Point => [6 * random(), 5 * random()];
  const barriers: Barrier[] = [{ ring: bayOf(random), solid: "outside", radius: 0 }];
  const count = 2 + Math.floor(random() * 8);
  for (let index = 0; index < count; index++) {
    const choice = random();
    if (choice < 0.35) {
      barriers.push({
        ring: star(random, place(), 0.1, 0.6, 3 + Math.floor(random() * 6)),
        solid: "inside",
        radius: 0,
      });
    } else if (choice < 0.6) {
      barriers.push({ ring: horseshoe(random, place(), 0.5 + 2 * random()), solid: "inside", radius: 0 });
    } else if (choice < 0.8) {
      const [x, y] = [Math.round(place()[0] * 2) / 2, Math.round(place()[1] * 2) / 2];
      const [w, h] = [0.5 + Math.floor(random() * 3) / 2, 0.5 + Math.floor(random() * 6) / 2];
      const ring: Polygon = [
        [x, y],
        [x, y + h],
        [x + w, y + h],
        [x + w, y],
      ];
      barriers.push({ ring, solid: "inside", radius: 0 });
    } else {
      // Triangles are convex whatever their corners are.
      barriers.push({ ring: star(random, place(), 0.2, 0.7, 3), solid: "inside", radius: 0.02 + 0.2 * random() });
    }
  }
  return { barriers, from: standingPlace(random, barriers, 0), to: standingPlace(random, barriers, 3) };
}

/** The roomiest of a few places in the half of the bay that begins at x = `left`; sometimes simply the first. */
function standingPlace(random: Random, barriers: readonly Barrier[], left: number): Point {
  const places = Array.from({ length: random() < 0.1 ? 1 : 20 }, (): Point => [left + 3 * random(), 5 * random()]);
  return places.reduce((best, place) =>
    plainClearance(barriers, place) > plainClearance(barriers, best) ? place : best,
  );
}

/** Even-odd test and brute-force distances: clearance as a definition, for the raster. */
export function plainClearance(barriers: readonly Barrier[], [x, y]: Point): number {
  let clearance = Number.POSITIVE_INFINITY;
  for (const { ring, solid, radius } of barriers) {
    let inside = false;
    let nearest = Number.POSITIVE_INFINITY;
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const [ax, ay] = ring[j]!;
      const [bx, by] = ring[i]!;
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
      const [dx, dy] = [bx - ax, by - ay];
      const along = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      nearest = Math.min(nearest, Math.hypot(x - ax - along * dx, y - ay - along * dy));
    }
    if (inside === (solid === "inside")) return 0;
    clearance = Math.min(clearance, nearest - radius);
  }
  return Math.max(0, clearance);
}

/**
 * Width by flooding a raster from the widest place down: nodes every `step`, eight neighbours. Within 2·step·√2 of the
 * true width (clearance changes by no more than the way gone, and a way keeps within step/√2 of nodes).
 */
export function floodedWidth({ barriers, from, to }: Room, step: number): number {
  const [columns, rows] = [Math.ceil(6.6 / step), Math.ceil(6.6 / step)];
  const place = (node: number): Point => [-0.3 + (node % columns) * step, -0.8 + Math.floor(node / columns) * step];
  const clearances = Float64Array.from({ length: columns * rows }, (_, node) => plainClearance(barriers, place(node)));
  const nodeOf = ([x, y]: Point) => Math.round((x + 0.3) / step) + columns * Math.round((y + 0.8) / step);
  const order = Array.from(clearances.keys())
    .filter((node) => clearances[node]! > 0)
    .sort((a, b) => clearances[b]! - clearances[a]!);
  const parent = Int32Array.from({ length: columns * rows }, (_, node) => node);
  const head = (node: number): number => {
    let at = node;
    while (parent[at] !== at) at = parent[at] = parent[parent[at]!]!;
    return at;
  };
  const open = new Uint8Array(columns * rows);
  const [start, end] = [nodeOf(from), nodeOf(to)];
  const standing = 2 * Math.min(plainClearance(barriers, from), plainClearance(barriers, to));
  for (const node of order) {
    open[node] = 1;
    const column = node % columns;
    for (const dr of [-1, 0, 1]) {
      for (const dc of [-1, 0, 1]) {
        if (column + dc < 0 || column + dc >= columns) continue;
        const other = node + dr * columns + dc;
        if (open[other]) parent[head(other)] = head(node);
      }
    }
    if (open[start] && open[end] && head(start) === head(end)) return Math.min(standing, 2 * clearances[node]!);
  }
  return 0;
}

/**
 * Whether a disc of a diameter gets through, by the clipping library: the bay shrunk by half the diameter less the
 * barriers grown by it, and whether one connected piece of what is left holds both places.
 */
export function discGetsThrough({ barriers, from, to }: Room, diameter: number): boolean {
  const paths = (ring: Polygon): PathsD => {
    const path = ring.map(([x, y]) => ({ x, y }));
    return [Clipper.areaD(path) < 0 ? path.reverse() : path];
  };
  const inflated = (ring: Polygon, by: number) =>
    Clipper.inflatePathsD(paths(ring), by, JoinType.Round, EndType.Polygon, 2, 6, 1e-4);
  const bay = barriers.find(({ solid }) => solid === "outside")!;
  const grown = barriers
    .filter((barrier) => barrier !== bay)
    .flatMap(({ ring, radius }) => inflated(ring, radius + diameter / 2));
  const free = Clipper.differenceD(inflated(bay.ring, -diameter / 2), grown, FillRule.NonZero, 6);
  const outers = free.filter((path) => Clipper.areaD(path) > 0);
  const holds = (path: PathsD[number], [x, y]: Point) => Clipper.pointInPolygonD({ x, y }, path, 6) !== 2;
  // Of nested rings the innermost outer one is the piece that a free place lies in.
  const pieceOf = (place: Point) =>
    outers.filter((path) => holds(path, place)).sort((a, b) => Clipper.areaD(a) - Clipper.areaD(b))[0];
  const inHole = (place: Point) => {
    const piece = pieceOf(place);
    if (piece === undefined) return true;
    return free.some(
      (path) => Clipper.areaD(path) < 0 && holds(path, place) && -Clipper.areaD(path) < Clipper.areaD(piece),
    );
  };
  if (inHole(from) || inHole(to)) return false;
  return pieceOf(from) === pieceOf(to);
}
