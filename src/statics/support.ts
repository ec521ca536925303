/** Whether a resultant passes inside the hull of the contact points (docs/mechanics.md, M18). */

import { convexHull } from "../geometry";
import type { Point } from "../plan";
import { staticsTolerance } from "./constants";
import type { PartModel } from "./model";

/** The hull of a part's contacts. */
export class Support {
  /** s from which the resultant's moment is taken: the part's left end, m. */
  readonly origin: number;
  /** Corners, counter-clockwise, m; none where the contacts lie on one line. */
  readonly points: readonly Point[];
  /** Index of the contact at each corner. */
  readonly corners: readonly number[];
  /** The edges: unit normal inwards and offset, three numbers each. */
  private readonly edges: Float64Array;
  /** How far inside all edges the resultant must pass, m. */
  private readonly least: number;

  constructor({ from, to, contacts }: PartModel) {
    const hull = convexHull(outermost(contacts));
    this.origin = from;
    this.points = hull.length < 3 ? [] : hull;
    this.corners = this.points.map(([s, t]) => contacts.findIndex((contact) => contact.s === s && contact.t === t));
    this.edges = Float64Array.from(
      this.points.flatMap((point, index) => edge(point, hull[(index + 1) % hull.length]!)),
    );
    this.least = staticsTolerance.inside * (to - from);
  }

  /** @param resultant W, W·(s_R − from), W·t_R, N and N·m. */
  holds(resultant: Float64Array): boolean {
    const { edges } = this;
    const weight = resultant[0]!;
    if (!(weight > 0) || edges.length === 0) return false;
    const s = this.origin + resultant[1]! / weight;
    const t = resultant[2]! / weight;
    for (let at = 0; at < edges.length; at += 3) {
      if (!(edges[at]! * s + edges[at + 1]! * t - edges[at + 2]! > this.least)) return false;
    }
    return true;
  }
}

/** Of the contacts at one s the two with least and greatest t; no other can be a corner. */
function outermost(contacts: PartModel["contacts"]): Point[] {
  const points: Point[] = [];
  for (let first = 0; first < contacts.length; ) {
    const { s } = contacts[first]!;
    let [least, most] = [Infinity, -Infinity];
    for (; first < contacts.length && contacts[first]!.s === s; first++) {
      least = Math.min(least, contacts[first]!.t);
      most = Math.max(most, contacts[first]!.t);
    }
    points.push([s, least]);
    if (most > least) points.push([s, most]);
  }
  return points;
}

function edge([s, t]: Point, [nextS, nextT]: Point): [number, number, number] {
  const length = Math.hypot(nextS - s, nextT - t);
  const [normalS, normalT] = [(t - nextT) / length, (nextS - s) / length];
  return [normalS, normalT, normalS * s + normalT * t];
}
