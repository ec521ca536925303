/** Curves of a drawing as chords whose ends lie on the curve. Angles in rad, counter-clockwise; lengths in drawing units. */

import type { Point } from "../../plan";

/** Greatest angle of one chord: its middle lies within 0.06 % of the radius of the arc. */
const greatestChordAngle = (2 * Math.PI) / 90;
/** Chords a span of a spline is cut into. */
const chordsASpan = 16;

/** Points of an elliptical arc centre + cos a·major + sin a·minor from `start` over `sweep`, both ends included. */
export function arcPoints(center: Point, major: Point, minor: Point, start: number, sweep: number): Point[] {
  const chords = Math.max(1, Math.ceil(Math.abs(sweep) / greatestChordAngle));
  return Array.from({ length: chords + 1 }, (_, i): Point => {
    const angle = start + (sweep * i) / chords;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [center[0] + cos * major[0] + sin * minor[0], center[1] + cos * major[1] + sin * minor[1]];
  });
}

/** Sweep from one angle on to another, in (0, 2π]. */
export function sweepBetween(start: number, end: number): number {
  const sweep = (end - start) % (2 * Math.PI);
  return sweep <= 0 ? sweep + 2 * Math.PI : sweep;
}

/**
 * Points after `from` up to and with `to` along the arc of a polyline's bulge = tan(¼ of the included angle), positive
 * counter-clockwise.
 */
export function bulgePoints(from: Point, to: Point, bulge: number): Point[] {
  if (bulge === 0) return [to];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  // The centre lies off the chord's middle, to its left, by chord·(1 − bulge²) ÷ (4·bulge).
  const off = (1 - bulge * bulge) / (4 * bulge);
  const center: Point = [(from[0] + to[0]) / 2 - off * dy, (from[1] + to[1]) / 2 + off * dx];
  const radius: Point = [from[0] - center[0], from[1] - center[1]];
  const points = arcPoints(center, radius, [-radius[1], radius[0]], 0, 4 * Math.atan(bulge));
  return [...points.slice(1, -1), to];
}

/** Points of a polyline with a bulge at each vertex for the way to the next one. */
export function polylinePoints(
  vertices: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[],
  closed: boolean,
): Point[] {
  const first = vertices[0];
  if (first === undefined) return [];
  const points: Point[] = [[first.x, first.y]];
  const ways = closed ? vertices.length : vertices.length - 1;
  for (let i = 0; i < ways; i += 1) {
    const [from, to] = [vertices[i]!, vertices[(i + 1) % vertices.length]!];
    points.push(...bulgePoints([from.x, from.y], [to.x, to.y], from.bulge ?? 0));
  }
  return points;
}

/** Points of a B-spline without weights, by de Boor's algorithm (de Boor, A Practical Guide to Splines, 1978, ch. X). */
export function splinePoints(degree: number, knots: readonly number[], control: readonly Point[]): Point[] {
  if (control.length <= degree || knots.length !== control.length + degree + 1) return [...control];
  const points: Point[] = [];
  for (let span = degree; span < control.length; span += 1) {
    const [from, to] = [knots[span]!, knots[span + 1]!];
    if (to <= from) continue;
    for (let i = points.length === 0 ? 0 : 1; i <= chordsASpan; i += 1)
      points.push(onSpline(degree, knots, control, span, from + ((to - from) * i) / chordsASpan));
  }
  return points;
}

function onSpline(
  degree: number,
  knots: readonly number[],
  control: readonly Point[],
  span: number,
  at: number,
): Point {
  const points = control.slice(span - degree, span + 1).map(([x, y]): [number, number] => [x, y]);
  for (let level = 1; level <= degree; level += 1) {
    for (let j = degree; j >= level; j -= 1) {
      const low = knots[span - degree + j]!;
      const share = (at - low) / (knots[span + 1 + j - level]! - low);
      const [before, point] = [points[j - 1]!, points[j]!];
      points[j] = [before[0] + share * (point[0] - before[0]), before[1] + share * (point[1] - before[1])];
    }
  }
  return points[degree]!;
}
