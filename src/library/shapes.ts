/**
 * Cross-sections as outlines, and the properties that follow from them. Across y, up z, m; outer rings counter-clockwise,
 * holes clockwise.
 */

import type { Point } from "../plan";

export type Outline = readonly (readonly Point[])[];

/** Straight stretches that a fillet is drawn with: its area is then exact to some thousandths. */
const arcSteps = 12;

export interface AreaProperties {
  readonly area: number;
  /** Of the centroid. */
  readonly y: number;
  readonly z: number;
  /** Second moment about the horizontal axis through the centroid, m⁴. */
  readonly secondMoment: number;
  /** About the vertical one. */
  readonly secondMomentWeak: number;
}

/** Area, centroid and second moments of an outline, by Green's theorem; exact for the polygon. */
export function areaProperties(outline: Outline): AreaProperties {
  let [area, firstY, firstZ, yy, zz] = [0, 0, 0, 0, 0];
  for (const ring of outline)
    for (let i = 0; i < ring.length; i++) {
      const [y0, z0] = ring[i]!;
      const [y1, z1] = ring[(i + 1) % ring.length]!;
      const cross = y0 * z1 - y1 * z0;
      area += cross / 2;
      firstY += (cross * (y0 + y1)) / 6;
      firstZ += (cross * (z0 + z1)) / 6;
      yy += (cross * (y0 * y0 + y0 * y1 + y1 * y1)) / 12;
      zz += (cross * (z0 * z0 + z0 * z1 + z1 * z1)) / 12;
    }
  const [y, z] = [firstY / area, firstZ / area];
  return { area, y, z, secondMoment: zz - area * z * z, secondMomentWeak: yy - area * y * y };
}

/** A horizontal strip of a section, as the shear over its depth sees it. */
export interface Strip {
  readonly height: number;
  readonly width: number;
}

/**
 * L5: shear area for stiffness, m²: A_s = I² ÷ ∫ Q²/b dz, from the energy of the shear stress V·Q/(I·b); strips from the
 * top down. 5/6 of the area for a rectangle, little more than the web for an I.
 */
export function shearStiffnessArea(strips: readonly Strip[]): number {
  const area = strips.reduce((sum, { height, width }) => sum + height * width, 0);
  let depth = 0;
  let first = 0;
  for (const { height, width } of strips) {
    first += height * width * (depth + height / 2);
    depth += height;
  }
  const centroid = first / area;
  let [top, Q, I, energy] = [-centroid, 0, 0, 0];
  for (const { height, width } of strips) {
    const bottom = top + height;
    I += (width * (bottom ** 3 - top ** 3)) / 3;
    // Q grows by −∫ b·z dz going down; Q²/b is a quartic in z, for which three Gauss points are exact.
    const at = (z: number): number => Q - (width * (z * z - top * top)) / 2;
    const [middle, half] = [(top + bottom) / 2, height / 2];
    const offset = half * Math.sqrt(0.6);
    const sum = 5 * at(middle - offset) ** 2 + 8 * at(middle) ** 2 + 5 * at(middle + offset) ** 2;
    energy += ((half / 9) * sum) / width;
    Q = at(bottom);
    top = bottom;
  }
  return I ** 2 / energy;
}

/** A corner of an outline and the radius with which it is rounded off, inwards or outwards; 0 = sharp. */
export interface Corner {
  readonly at: Point;
  readonly radius: number;
}

/** The ring of some corners, each rounded by an arc that touches both sides. The radii must fit. */
export function roundedRing(corners: readonly Corner[]): Point[] {
  return corners.flatMap(({ at, radius }, i) => {
    if (radius === 0) return [at];
    const before = direction(at, corners.at(i - 1)!.at);
    const after = direction(at, corners[(i + 1) % corners.length]!.at);
    const half = Math.acos(before[0] * after[0] + before[1] * after[1]) / 2;
    const bisector = direction([0, 0], [before[0] + after[0], before[1] + after[1]]);
    // The centre lies on the bisector, r ÷ sin(θ/2) from the corner; the arc turns through π − θ.
    const away = radius / Math.sin(half);
    const centre: Point = [at[0] + away * bisector[0], at[1] + away * bisector[1]];
    const turn = before[0] * after[1] - before[1] * after[0] < 0 ? 1 : -1;
    const sweep = turn * (Math.PI - 2 * half);
    const middle = Math.atan2(-bisector[1], -bisector[0]);
    return Array.from({ length: arcSteps + 1 }, (_, k): Point => {
      const angle = middle + sweep * (k / arcSteps - 0.5);
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
  });
}

function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** A rectangle, its corners rounded where `radius` is over 0. */
export function rectangleOutline(width: number, depth: number, radius = 0): Point[] {
  const [y, z] = [width / 2, depth / 2];
  const corners: Point[] = [
    [y, -z],
    [y, z],
    [-y, z],
    [-y, -z],
  ];
  return roundedRing(corners.map((at) => ({ at, radius })));
}

export interface HalfFlange {
  /** From the face of the web to the toe. */
  readonly reach: number;
  /** At the middle of the reach. */
  readonly thickness: number;
  /** Rise of the inner face towards the web; 0 for parallel faces. */
  readonly slope: number;
  /** Radius between flange and web. */
  readonly fillet: number;
  /** Radius at the toe, on the inner face. */
  readonly toe: number;
}

/** The right-hand side of a section with two equal flanges, its web's face at y = `web`, from the bottom up. */
function rightHand(depth: number, web: number, { reach, thickness, slope, fillet, toe }: HalfFlange): Corner[] {
  const [atToe, atWeb] = [thickness - (slope * reach) / 2, thickness + (slope * reach) / 2];
  const upper: Corner[] = [
    { at: [web, depth / 2 - atWeb], radius: fillet },
    { at: [web + reach, depth / 2 - atToe], radius: toe },
    { at: [web + reach, depth / 2], radius: 0 },
  ];
  return [...upper.map(({ at: [y, z], radius }): Corner => ({ at: [y, -z], radius })).reverse(), ...upper];
}

/** An I with equal flanges, the web in the middle. */
export function iOutline(depth: number, web: number, flange: HalfFlange): Point[] {
  const right = rightHand(depth, web / 2, flange);
  return roundedRing([...right, ...right.map(({ at: [y, z], radius }): Corner => ({ at: [-y, z], radius })).reverse()]);
}

/** A channel, the back of its web at y = 0. */
export function channelOutline(depth: number, web: number, flange: HalfFlange): Point[] {
  const back: Corner[] = [
    { at: [0, depth / 2], radius: 0 },
    { at: [0, -depth / 2], radius: 0 },
  ];
  return roundedRing([...back, ...rightHand(depth, web, flange)]);
}
