/**
 * Published data on materials. SI. What could not be read again in the publication named is marked "from memory" in its
 * source and has to be looked at before it is relied on.
 */

/** One inch, m, and one pound-force, N; both exact (international yard and pound, 1959; standard gravity, 1901). */
export const inch = 0.0254;
export const poundForce = 4.4482216152605;
/** 1000 lbf/in², Pa. */
export const ksi = (1000 * poundForce) / inch ** 2;

export interface ElasticConstants {
  /** Young's modulus, Pa. */
  readonly E: number;
  /** Shear modulus, Pa. */
  readonly G: number;
  readonly source: string;
}

/** Structural steel as the two families of standards take it. */
export const steel = {
  aisc: { E: 29000 * ksi, G: 11200 * ksi, source: "AISC 360 (from memory)" },
  eurocode: { E: 210e9, G: 81e9, source: "EN 1993-1-1 §3.2.6 (from memory)" },
} as const satisfies Record<string, ElasticConstants>;

export interface Density {
  readonly name: string;
  /** kg/m³. */
  readonly density: number;
  readonly source: string;
}

/** For weights from plate sizes and volumes. */
export const densities: readonly Density[] = [
  { name: "structural steel", density: 7850, source: "EN 1991-1-1; AISC Manual, 490 lb/ft³ (from memory)" },
  { name: "grey cast iron", density: 7200, source: "handbook value, 450 lb/ft³ (from memory)" },
  { name: "ductile iron", density: 7100, source: "handbook value, 443 lb/ft³ (from memory)" },
  { name: "aluminium 6061", density: 2700, source: "handbook value, 169 lb/ft³ (from memory)" },
  { name: "tool steel D2", density: 7700, source: "handbook value, 481 lb/ft³ (from memory)" },
  { name: "tool steel H13", density: 7800, source: "handbook value (from memory)" },
  { name: "tool steel A2", density: 7860, source: "handbook value, 491 lb/ft³ (from memory)" },
  { name: "stainless steel 304", density: 8000, source: "handbook value, 500 lb/ft³ (from memory)" },
  { name: "concrete, normal, reinforced", density: 2400, source: "handbook value, 150 lb/ft³ (from memory)" },
];

/** Density of structural steel, kg/m³. */
export const steelDensity = 7850;

export interface SteelGrade {
  readonly name: string;
  /** Least yield stress, Pa, of the thickness named. */
  readonly yield: number;
  readonly source: string;
}

/** Steels that a section is usually made of; the certificate of the piece goes before. */
export const steelGrades: readonly SteelGrade[] = [
  { name: "A36", yield: 36 * ksi, source: "ASTM A36, 36 ksi (from memory)" },
  { name: "A572 Gr. 50", yield: 50 * ksi, source: "ASTM A572, 50 ksi (from memory)" },
  { name: "A992", yield: 50 * ksi, source: "ASTM A992, 50 ksi (from memory)" },
  { name: "A500 Gr. C", yield: 50 * ksi, source: "ASTM A500, rectangular, 50 ksi (from memory)" },
  { name: "S235", yield: 235e6, source: "EN 10025-2, up to 16 mm (from memory)" },
  { name: "S275", yield: 275e6, source: "EN 10025-2, up to 16 mm (from memory)" },
  { name: "S355", yield: 355e6, source: "EN 10025-2, up to 16 mm (from memory)" },
];
