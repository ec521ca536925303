/** Righting and overturning about one edge of a support polygon (docs/mechanics-tipping.md, T2 to T4). */

import type { Mass } from "../../plan";
import type { LineLoad, PartModel, PointLoad } from "../model";
import { beyond, type SupportEdge } from "./polygon";

/** The two sides of the balance about an edge, N·m, both ≥ 0. */
export interface Moments {
  readonly righting: number;
  readonly overturning: number;
}

/** T3 and T4: righting and overturning moment about an edge of everything on a part, the person left out, N·m. */
export function momentsAbout(edge: SupportEdge, part: PartModel, masses: readonly Mass[]): Moments {
  let righting = 0;
  let overturning = 0;
  for (const load of part.loads) {
    const item = momentsOf(edge, load, masses);
    righting += item.righting;
    overturning += item.overturning;
  }
  return { righting, overturning };
}

function momentsOf(edge: SupportEdge, load: LineLoad | PointLoad, masses: readonly Mass[]): Moments {
  if (load.source.kind === "load") {
    // A step's load may not be there: it counts only where it overturns.
    return { righting: 0, overturning: load.kind === "point" ? Math.max(0, turning(edge, load)) : 0 };
  }
  const mass = masses[load.source.index]!;
  const { righting, overturning } = load.kind === "line" ? lineMoments(edge, load) : pointMoments(edge, load, mass);
  return { righting: (1 - mass.uncertainty) * righting, overturning: (1 + mass.uncertainty) * overturning };
}

/** T2: moment of a point load about an edge, overturning positive, N·m: its vertical force and its F·z together. */
function turning(edge: SupportEdge, { s, down, momentS, momentT }: PointLoad): number {
  const [ns, nt] = edge.outward;
  // down·n·(p − p₀) + (n·F)·z; momentT holds down·t and F_t·z, so the point is taken on the axis.
  return down * beyond(edge, s, 0) + ns * momentS + nt * momentT;
}

/** T4: a mass at a point, from its farthest place if that is beyond the edge, else from its nearest (the same place). */
function pointMoments(edge: SupportEdge, load: PointLoad, mass: Mass): Moments {
  const [ns, nt] = edge.outward;
  const within = mass.kind === "point" ? mass.centreWithin : { s: 0, t: 0 };
  const moment = turning(edge, load) + load.down * (Math.abs(ns) * within.s + Math.abs(nt) * within.t);
  return moment > 0 ? { righting: 0, overturning: moment } : { righting: -moment, overturning: 0 };
}

/** T3: a line of mass, split where the line of the edge crosses it. */
function lineMoments(edge: SupportEdge, { from, to, intensity, t }: LineLoad): Moments {
  const [start, end] = [beyond(edge, from, t), beyond(edge, to, t)];
  const length = to - from;
  const at = (share: number) => intensity[0] + share * (intensity[1] - intensity[0]);
  const stretch = (a: number, b: number): number => {
    // ∫ q·x ds of two linear functions, by Simpson's rule, which is exact for them.
    const [xa, xb] = [start + a * (end - start), start + b * (end - start)];
    const middle = (at(a) + at(b)) * (xa + xb);
    return (((b - a) * length) / 6) * (at(a) * xa + middle + at(b) * xb);
  };
  if (start <= 0 && end <= 0) return { righting: -stretch(0, 1), overturning: 0 };
  if (start >= 0 && end >= 0) return { righting: 0, overturning: stretch(0, 1) };
  const crossing = start / (start - end);
  const [before, after] = [stretch(0, crossing), stretch(crossing, 1)];
  return start < 0 ? { righting: -before, overturning: after } : { righting: -after, overturning: before };
}
