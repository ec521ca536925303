/**
 * Stress of a slab on ground under the feet of stands: Westergaard's equations as in Y. H. Huang, Pavement Analysis and
 * Design, 2nd ed. (2004), section 4.2. Pa, m, N; equations as in docs/mechanics-floor.md.
 */

import { distanceBetween, geometryTolerance, pointToSegment, segmentToSegment } from "../geometry";
import type { Criteria, Point, Slab } from "../plan";

const poissonRatio = 0.15;

/** A foot on the slab. */
export interface LoadedFoot {
  readonly at: Point;
  /** N. */
  readonly force: number;
  /** Area of its plate, m². */
  readonly plateArea: number;
}

/** Tension at the underside of the slab (at its top for `corner`) under one foot, the other feet's share included, Pa. */
export interface SlabStress {
  readonly interior: number;
  /** null: no joint near; "unknown": not known where the joints are. */
  readonly edge: number | null | "unknown";
  /** null: no two joints that meet near; "unknown": not known where the joints are. */
  readonly corner: number | null | "unknown";
  /** The greatest of those that are known to apply. */
  readonly greatest: number;
}

/**
 * Force of a foot, N, from the greatest share of its leg frame and the stand's own weight, N: the whole frame share and
 * half the own weight, because a four-legged stand rocks onto a diagonal.
 *
 * (F10) P = legFramesMost·setDownFactor + ownWeight/2
 */
export function slabFootForce(legFrameMost: number, setDownFactor: number, ownWeight: number): number {
  return legFrameMost * setDownFactor + ownWeight / 2;
}

/** (F12) Modulus of elasticity of concrete, Pa: 4700·√f′c in MPa (ACI 318 19.2.2.1). */
export function concreteModulus(compressiveStrength: number): number {
  return 4700 * Math.sqrt(compressiveStrength / 1e6) * 1e6;
}

/** (F17) Rupture stress that is allowed, Pa: 0.62·√f′c in MPa (ACI 318 19.2.3.1) ÷ slabFactor. */
export function allowableSlabStress(slab: Slab, { slabFactor }: Pick<Criteria, "slabFactor">): number {
  return (0.62 * Math.sqrt(slab.compressiveStrength / 1e6) * 1e6) / slabFactor;
}

/** (F12) Radius of relative stiffness, m: l = (E·h³ / (12·(1 − ν²)·k))^¼. */
export function relativeStiffnessRadius(slab: Slab): number {
  const h = slab.thickness;
  return (
    ((concreteModulus(slab.compressiveStrength) * h ** 3) / (12 * (1 - poissonRatio ** 2) * slab.subgradeModulus)) **
    0.25
  );
}

/** (F11) Radius of the disc as large as the plate, m: a = √(area/π). */
export function loadedRadius(plateArea: number): number {
  return Math.sqrt(plateArea / Math.PI);
}

/** (F11) Equivalent radius of resisting section, m: b = √(1.6a² + h²) − 0.675h where a < 1.724h, else a. */
export function resistingRadius(a: number, h: number): number {
  return a < 1.724 * h ? Math.sqrt(1.6 * a ** 2 + h ** 2) - 0.675 * h : a;
}

/** (F13) σ = 0.316·P/h²·(4·log₁₀(l/b) + 1.069). */
export function interiorStress(P: number, h: number, l: number, b: number): number {
  return ((0.316 * P) / h ** 2) * (4 * Math.log10(l / b) + 1.069);
}

/** (F14) σ = 0.803·P/h²·(4·log₁₀(l/a) + 0.666·a/l − 0.034). */
export function edgeStress(P: number, h: number, l: number, a: number): number {
  return ((0.803 * P) / h ** 2) * (4 * Math.log10(l / a) + (0.666 * a) / l - 0.034);
}

/** (F15) σ = 3·P/h²·(1 − (1.772·a/l)^0.72). */
export function cornerStress(P: number, h: number, l: number, a: number): number {
  return ((3 * P) / h ** 2) * (1 - ((1.772 * a) / l) ** 0.72);
}

/** The stress under each of the feet, all of them standing at once. */
export function slabStresses(slab: Slab, feet: readonly LoadedFoot[]): SlabStress[] {
  const h = slab.thickness;
  const l = relativeStiffnessRadius(slab);
  return feet.map((foot) => {
    const a = loadedRadius(foot.plateArea);
    const b = resistingRadius(a, h);
    const others = feet.reduce((sum, other) => (other === foot ? sum : sum + fromOther(foot, other, h, l, b)), 0);
    const interior = interiorStress(foot.force, h, l, b) + others;
    const edge = applies(nearJoint(slab, foot.at, l), () => edgeStress(foot.force, h, l, a) + others);
    const corner = applies(nearCorner(slab, foot.at, l), () => cornerStress(foot.force, h, l, a) + others);
    const known = [interior, edge, corner].filter((stress) => typeof stress === "number");
    return { interior, edge, corner, greatest: Math.max(...known) };
  });
}

function applies(near: boolean | null, stress: () => number): number | null | "unknown" {
  if (near === null) return "unknown";
  return near ? stress() : null;
}

/** (F16) What another foot within 3l adds, Pa: 0.316·P/h²·max(0, 4·log₁₀(l/r) + 1.069), r its distance, not less than b. */
function fromOther(foot: LoadedFoot, other: LoadedFoot, h: number, l: number, b: number): number {
  const r = Math.max(b, distanceBetween(foot.at, other.at));
  return r > 3 * l ? 0 : Math.max(0, interiorStress(other.force, h, l, r));
}

/** Whether a joint lies within 1.5l; null where the joints are not known. */
function nearJoint({ joints }: Slab, at: Point, l: number): boolean | null {
  if (joints === null) return null;
  return joints.some(([from, to]) => pointToSegment(at, from, to).distance <= 1.5 * l);
}

/**
 * Whether two joints meet within 1.5l; null where the joints are not known. Two pieces of one straight joint are an
 * edge and no corner.
 */
function nearCorner({ joints }: Slab, at: Point, l: number): boolean | null {
  if (joints === null) return null;
  const meetsNear = ([a, b]: Joint, [c, d]: Joint): boolean => {
    const meeting = segmentToSegment(a, b, c, d);
    if (meeting.distance > geometryTolerance.touching || inLine(a, b, c, d)) return false;
    return distanceBetween(at, meeting.from) <= 1.5 * l;
  };
  return joints.some((joint, index) => joints.slice(index + 1).some((other) => meetsNear(joint, other)));
}

type Joint = readonly [Point, Point];

/** Whether two segments that touch run in one direction. */
function inLine(a: Point, b: Point, c: Point, d: Point): boolean {
  const [p, q] = [[b[0] - a[0], b[1] - a[1]] as const, [d[0] - c[0], d[1] - c[1]] as const];
  const across = Math.abs(p[0] * q[1] - p[1] * q[0]);
  return across <= geometryTolerance.touching * Math.hypot(...p) * Math.hypot(...q);
}
