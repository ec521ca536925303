import type { Point } from "../plan";

/** A closed half-plane: the points with normal · p ≤ offset. `normal` need not be of unit length. */
export interface HalfPlane {
  readonly normal: Point;
  readonly offset: number;
}

/** A ring beginning where the outline comes into the half-plane and ending where it leaves it. */
interface Run {
  readonly enters: number;
  readonly leaves: number;
  readonly points: readonly Point[];
}

/**
 * The part of a simple polygon that lies in a half-plane, m: counter-clockwise rings, none where nothing is left.
 * A polygon that is not convex may fall into several. Exact to rounding; rings without area are dropped.
 *
 * Points on the border count as inside, so an outline edge along it stays as it is. Where the outline crosses the border
 * the crossings, taken along it, are by turns the end of one run of the outline and the beginning of another, because
 * the polygon is simple; the k-th end therefore joins the k-th beginning.
 */
export function clipToHalfPlane(polygon: readonly Point[], { normal, offset }: HalfPlane): Point[][] {
  const ring = signedArea(polygon) < 0 ? [...polygon].reverse() : polygon;
  const beyond = ring.map((p) => normal[0] * p[0] + normal[1] * p[1] - offset);
  if (beyond.every((d) => d <= 0)) return [[...ring]];
  // With the half-plane on the left hand, the border runs along (−normal[1], normal[0]).
  const along = (p: Point): number => normal[0] * p[1] - normal[1] * p[0];

  const runs = runsInside(ring, beyond, along);
  const leaving = [...runs].sort((a, b) => a.leaves - b.leaves);
  const entering = [...runs].sort((a, b) => a.enters - b.enters);
  const next = new Map(leaving.map((run, k) => [run, entering[k]!]));

  const rings: Point[][] = [];
  const left = new Set(runs);
  for (const first of runs) {
    const joined: Point[] = [];
    for (let run = first; left.delete(run); run = next.get(run)!) joined.push(...run.points);
    if (joined.length >= 3 && Math.abs(signedArea(joined)) > 0) rings.push(joined);
  }
  return rings;
}

/** The part of a simple polygon in all of the half-planes; see `clipToHalfPlane`. */
export function clipToHalfPlanes(polygon: readonly Point[], halfPlanes: readonly HalfPlane[]): Point[][] {
  let rings: Point[][] = [[...polygon]];
  for (const halfPlane of halfPlanes) rings = rings.flatMap((ring) => clipToHalfPlane(ring, halfPlane));
  return rings;
}

/** The part of a simple polygon with `from` ≤ first coordinate ≤ `to`; see `clipToHalfPlane`. */
export function clipToStrip(polygon: readonly Point[], from: number, to: number): Point[][] {
  return clipToHalfPlanes(polygon, [
    { normal: [1, 0], offset: to },
    { normal: [-1, 0], offset: -from },
  ]);
}

/** Area of a ring, m², positive where it runs counter-clockwise. */
export function signedArea(ring: readonly Point[]): number {
  // Shoelace about the first point: 2A = Σ (pᵢ − p₀) × (pᵢ₊₁ − p₀); far from the origin nothing is lost.
  let twice = 0;
  const o = ring[0];
  if (o === undefined) return 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const [p, q] = [ring[i]!, ring[i + 1]!];
    twice += (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);
  }
  return twice / 2;
}

function runsInside(ring: readonly Point[], beyond: readonly number[], along: (p: Point) => number): Run[] {
  const n = ring.length;
  const crossing = (i: number, j: number): Point => {
    const share = beyond[i]! / (beyond[i]! - beyond[j]!);
    const [p, q] = [ring[i]!, ring[j]!];
    return [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
  };
  const runs: Run[] = [];
  for (let i = 0; i < n; i++) {
    const before = (i + n - 1) % n;
    if (!(beyond[before]! > 0 && beyond[i]! <= 0)) continue;
    const enter = crossing(before, i);
    const points: Point[] = beyond[i] === 0 ? [] : [enter];
    let j = i;
    while (beyond[j]! <= 0) {
      points.push(ring[j]!);
      j = (j + 1) % n;
    }
    const last = (j + n - 1) % n;
    const leave = crossing(last, j);
    if (beyond[last] !== 0) points.push(leave);
    runs.push({ enters: along(enter), leaves: along(leave), points });
  }
  return runs;
}
