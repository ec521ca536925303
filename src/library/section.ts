/** Cross-sections with all that a plan and a person want to know of them, and how they go into a plan. */

import type { SectionStrength } from "../plan";
import { type ElasticConstants, steelDensity } from "./materials";
import { areaProperties, channelOutline, iOutline, type Outline, rectangleOutline, shearStiffnessArea } from "./shapes";
import { cellTorsion, iTorsion, rectangleTorsion } from "./torsion";

/** Section data but for what the steel gives. */
export type SectionDimensions = Omit<SectionStrength, "yield" | "E">;

/** A cross-section, SI. Bending is about the horizontal axis, the way it lies on stands. */
export interface Section {
  readonly name: string;
  readonly area: number;
  /** Second moment about the horizontal and about the vertical axis through the centroid, m⁴. */
  readonly secondMoment: number;
  readonly secondMomentWeak: number;
  /** Saint-Venant torsion constant, m⁴. */
  readonly torsionConstant: number;
  /** Shear area for stiffness, m² (`shearStiffnessArea`). */
  readonly shearStiffnessArea: number;
  /** What the strength checks need. */
  readonly dimensions: SectionDimensions;
  /** For drawing it, m: outer rings counter-clockwise, holes clockwise, centroid not at the origin. */
  readonly outline: Outline;
}

/** What a section makes of a piece: its values for `piece.section`, for a segment of `piece.stiffness`, and its weight. */
export interface PlanSection {
  readonly section: SectionStrength;
  readonly stiffness: { readonly EI: number; readonly kGA: number; readonly GJ: number };
  /** kg/m, of steel. */
  readonly massPerLength: number;
}

/** @param yieldStress least yield stress of the steel, Pa; null = not known, and the strength checks will say so. */
export function sectionToPlan(section: Section, yieldStress: number | null, { E, G }: ElasticConstants): PlanSection {
  return {
    section: { ...section.dimensions, ...(yieldStress === null ? {} : { yield: yieldStress }), E },
    stiffness: {
      EI: E * section.secondMoment,
      kGA: G * section.shearStiffnessArea,
      GJ: G * section.torsionConstant,
    },
    massPerLength: steelDensity * section.area,
  };
}

interface Parts {
  readonly name: string;
  readonly outline: Outline;
  readonly shearStiffnessArea: number;
  readonly torsionConstant: number;
  readonly dimensions: Omit<SectionDimensions, "sectionModulus" | "radiusOfGyrationY">;
}

/** Adds what follows from the outline. */
function sectionOf({ dimensions, ...parts }: Parts): Section {
  const { area, z, secondMoment, secondMomentWeak } = areaProperties(parts.outline);
  const heights = parts.outline.flat().map((point) => point[1]);
  const farthest = Math.max(Math.max(...heights) - z, z - Math.min(...heights));
  return {
    ...parts,
    area,
    secondMoment,
    secondMomentWeak,
    dimensions: {
      ...dimensions,
      // S = I ÷ z_max, the lesser of top and bottom; r_y = √(I_y ÷ A)
      sectionModulus: secondMoment / farthest,
      radiusOfGyrationY: Math.sqrt(secondMomentWeak / area),
    },
  };
}

export interface RolledI {
  readonly depth: number;
  readonly width: number;
  readonly web: number;
  readonly flange: number;
  /** Radius of the fillets between flange and web. */
  readonly fillet: number;
  /** As published. */
  readonly torsionConstant: number;
}

/** A rolled I with parallel flanges. */
export function rolledI(name: string, shape: RolledI): Section {
  const { depth, width, web, flange, fillet, torsionConstant } = shape;
  const plate = { width, thickness: flange };
  return sectionOf({
    name,
    outline: [iOutline(depth, web, { reach: (width - web) / 2, thickness: flange, slope: 0, fillet, toe: 0 })],
    shearStiffnessArea: shearStiffnessArea(iStrips(plate, { width: depth - 2 * flange, thickness: web }, plate)),
    torsionConstant,
    dimensions: webDimensions(depth, width, flange, web, fillet),
  });
}

/** Slope of the inner flange faces of American standard beams and channels (ASTM A6: 2 in 12). */
export const standardSlope = 1 / 6;

export interface TaperedShape {
  readonly depth: number;
  readonly width: number;
  readonly web: number;
  /** Mean thickness, at the middle of the reach. */
  readonly flange: number;
  /** From the outer face of the flange to where the fillet ends on the web. */
  readonly k: number;
  /** Radius between flange and web, and at the toes. */
  readonly fillet: number;
  readonly toe: number;
  /** As published. */
  readonly torsionConstant: number;
}

/** An American standard beam: an I with flanges that taper. */
export function taperedI(name: string, shape: TaperedShape): Section {
  const { depth, width, web, flange } = shape;
  const half = halfFlange((width - web) / 2, shape);
  const plate = { width, thickness: flange };
  return sectionOf({
    name,
    outline: [iOutline(depth, web, half)],
    shearStiffnessArea: shearStiffnessArea(iStrips(plate, { width: depth - 2 * flange, thickness: web }, plate)),
    torsionConstant: shape.torsionConstant,
    dimensions: webDimensions(depth, width, flange, web, shape.k - flange),
  });
}

/** An American standard channel, its web upright. */
export function channel(name: string, shape: TaperedShape): Section {
  const { depth, width, web, flange } = shape;
  const half = halfFlange(width - web, shape);
  const plate = { width, thickness: flange };
  return sectionOf({
    name,
    outline: [channelOutline(depth, web, half)],
    shearStiffnessArea: shearStiffnessArea(iStrips(plate, { width: depth - 2 * flange, thickness: web }, plate)),
    torsionConstant: shape.torsionConstant,
    dimensions: webDimensions(depth, width, flange, web, shape.k - flange),
  });
}

function halfFlange(reach: number, { flange, fillet, toe }: TaperedShape) {
  return { reach, thickness: flange, slope: standardSlope, fillet, toe };
}

export interface Tube {
  readonly depth: number;
  readonly width: number;
  readonly wall: number;
}

/**
 * A rectangular tube by the conventions of AISC: outside corners of 2t, inside of t, torsion by Bredt along the middle
 * line with corners of 1.5t, shear area 2·(depth − 3t)·t (AISC 360 G4).
 */
export function tube(name: string, { depth, width, wall: t }: Tube): Section {
  const corner = 1.5 * t;
  // A_o = (B − t)(H − t) − R_c²(4 − π), h = 2[(B − t) + (H − t)] − 2R_c(4 − π)
  const enclosed = (width - t) * (depth - t) - corner ** 2 * (4 - Math.PI);
  const round = 2 * (width - t + depth - t) - 2 * corner * (4 - Math.PI);
  const side = { width, thickness: t };
  const inner = rectangleOutline(width - 2 * t, depth - 2 * t, t).reverse();
  return sectionOf({
    name,
    outline: [rectangleOutline(width, depth, 2 * t), inner],
    shearStiffnessArea: shearStiffnessArea(iStrips(side, { width: depth - 2 * t, thickness: 2 * t }, side)),
    torsionConstant: cellTorsion(enclosed, [{ width: round, thickness: t }]),
    dimensions: {
      depth,
      flangeWidth: width,
      flangeThickness: t,
      webThickness: t,
      webs: 2,
      shearArea: 2 * (depth - 3 * t) * t,
    },
  });
}

export interface Plate {
  readonly width: number;
  readonly thickness: number;
}

export interface BuiltUpI {
  /** Upper and lower flange. */
  readonly top: Plate;
  readonly bottom: Plate;
  /** `width` is its clear height between the flanges. */
  readonly web: Plate;
  /** Leg of the fillet welds between web and flanges; 0 = left out of k, on the safe side of the web checks. */
  readonly weld: number;
}

/**
 * An I of three plates. The torsion constant is that of the plates and of their junctions without the welds; the plates
 * taken apart would give a few per cent less. The lower flange is the one on the stands.
 */
export function builtUpI(name: string, { top, bottom, web, weld }: BuiltUpI): Section {
  const depth = top.thickness + web.width + bottom.thickness;
  const half = (plate: Plate) => plate.width / 2;
  const [z1, z2, w] = [bottom.thickness, bottom.thickness + web.width, web.thickness / 2];
  const right = [
    [half(bottom), 0],
    [half(bottom), z1],
    [w, z1],
    [w, z2],
    [half(top), z2],
    [half(top), depth],
  ] as const;
  const left = right.map(([y, z]) => [-y, z] as const).reverse();
  return sectionOf({
    name,
    outline: [[...right, ...left]],
    shearStiffnessArea: shearStiffnessArea(iStrips(top, web, bottom)),
    torsionConstant: iTorsion(top, web, bottom, 0),
    dimensions: webDimensions(depth, bottom.width, bottom.thickness, web.thickness, weld),
  });
}

export interface Box {
  readonly top: Plate;
  readonly bottom: Plate;
  /** Each of the two webs; `width` is its clear height. */
  readonly web: Plate;
  /** Clear distance between the webs. */
  readonly between: number;
}

/**
 * A box of four plates: one closed cell (Bredt), and Σ b·t³/3 of what the flanges stand out beyond the webs. Its shear
 * area is that of both webs over the whole depth.
 */
export function box(name: string, { top, bottom, web, between }: Box): Section {
  const depth = top.thickness + web.width + bottom.thickness;
  const middle = between + web.thickness;
  const height = web.width + (top.thickness + bottom.thickness) / 2;
  const outside = between + 2 * web.thickness;
  const overhang = ({ width, thickness }: Plate) => (Math.max(0, width - outside) * thickness ** 3) / 3;
  const walls = [
    { width: middle, thickness: top.thickness },
    { width: middle, thickness: bottom.thickness },
    { width: height, thickness: web.thickness },
    { width: height, thickness: web.thickness },
  ];
  const [z1, z2] = [bottom.thickness, bottom.thickness + web.width];
  const right = [
    [bottom.width / 2, 0],
    [bottom.width / 2, z1],
    [outside / 2, z1],
    [outside / 2, z2],
    [top.width / 2, z2],
    [top.width / 2, depth],
  ] as const;
  const left = right.map(([y, z]) => [-y, z] as const).reverse();
  const hole = [
    [-between / 2, z1],
    [-between / 2, z2],
    [between / 2, z2],
    [between / 2, z1],
  ] as const;
  return sectionOf({
    name,
    outline: [[...right, ...left], hole],
    shearStiffnessArea: shearStiffnessArea(iStrips(top, { width: web.width, thickness: 2 * web.thickness }, bottom)),
    torsionConstant: cellTorsion(middle * height, walls) + overhang(top) + overhang(bottom),
    dimensions: {
      depth,
      flangeWidth: bottom.width,
      flangeThickness: bottom.thickness,
      webThickness: web.thickness,
      webs: 2,
      shearArea: 2 * depth * web.thickness,
    },
  });
}

/** A solid plate or bar, `depth` upright. Its shear area is ⅔ of its area: the mean stress is then the greatest one. */
export function solid(name: string, width: number, depth: number): Section {
  const strip = { height: depth, width };
  return sectionOf({
    name,
    outline: [rectangleOutline(width, depth)],
    shearStiffnessArea: shearStiffnessArea([strip]),
    torsionConstant: rectangleTorsion(width, depth).constant,
    dimensions: { depth, shearArea: (2 / 3) * width * depth },
  });
}

function iStrips(top: Plate, web: Plate, bottom: Plate) {
  return [
    { height: top.thickness, width: top.width },
    { height: web.width, width: web.thickness },
    { height: bottom.thickness, width: bottom.width },
  ];
}

/** Of a section with one web: A_w = d·t_w (AISC 360 G2.1), k = flangeThickness + fillet. */
function webDimensions(depth: number, width: number, flange: number, web: number, fillet: number) {
  return {
    depth,
    flangeWidth: width,
    flangeThickness: flange,
    webThickness: web,
    fillet,
    webs: 1,
    shearArea: depth * web,
  };
}
