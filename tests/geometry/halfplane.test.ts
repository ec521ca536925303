import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clipToHalfPlane, clipToHalfPlanes, clipToStrip, signedArea } from "../../src/geometry";
import type { Point } from "../../src/plan";

const square: Point[] = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];
/** A comb with its teeth up: base 0..1 high, teeth at 0..1, 2..3, 4..5, to 3. Area 5 + 3·2 = 11. */
const comb: Point[] = [
  [0, 0],
  [5, 0],
  [5, 3],
  [4, 3],
  [4, 1],
  [3, 1],
  [3, 3],
  [2, 3],
  [2, 1],
  [1, 1],
  [1, 3],
  [0, 3],
];
const total = (rings: readonly Point[][]): number => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

describe("clipToHalfPlane", () => {
  it("cuts a square, leaves it whole, or leaves nothing", () => {
    expect(total(clipToHalfPlane(square, { normal: [1, 0], offset: 1 }))).toBe(4);
    expect(clipToHalfPlane(square, { normal: [1, 0], offset: 4 })).toEqual([square]);
    expect(clipToHalfPlane(square, { normal: [1, 0], offset: -1 })).toEqual([]);
    expect(clipToHalfPlane(square, { normal: [1, 0], offset: 0 })).toEqual([]);
    // The corner x + y ≤ 2 is a triangle of area 2.
    expect(total(clipToHalfPlane(square, { normal: [1, 1], offset: 2 }))).toBe(2);
  });

  it("gives a clockwise polygon back counter-clockwise", () => {
    const rings = clipToHalfPlane([...square].reverse(), { normal: [0, 1], offset: 3 });
    expect(rings).toHaveLength(1);
    expect(total(rings)).toBe(12);
  });

  it("cuts a comb into its teeth", () => {
    const teeth = clipToHalfPlane(comb, { normal: [0, -1], offset: -2 });
    expect(teeth.map(signedArea)).toEqual([1, 1, 1]);
    expect(clipToHalfPlane(comb, { normal: [0, 1], offset: 2 }).map(signedArea)).toEqual([8]);
  });

  it("cuts along edges of the outline", () => {
    // At the height of the roots: three teeth above, the base below.
    expect(total(clipToHalfPlane(comb, { normal: [0, -1], offset: -1 }))).toBeCloseTo(6, 12);
    expect(clipToHalfPlane(comb, { normal: [0, 1], offset: 1 }).map(signedArea)).toEqual([5]);
  });

  it("cuts a strip out of a polygon, at its own corners too", () => {
    expect(total(clipToStrip(comb, 1, 2))).toBeCloseTo(1, 12);
    expect(total(clipToStrip(comb, 0.5, 2.5))).toBeCloseTo(2 + 1 + 1, 12);
    expect(clipToStrip(comb, 6, 7)).toEqual([]);
  });

  it("splits every star into two pieces that make up the whole", () => {
    const star = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })), {
      minLength: 4,
      maxLength: 12,
    });
    fc.assert(
      fc.property(star, fc.integer({ min: -3, max: 3 }), fc.integer({ min: 0, max: 11 }), (spikes, offset, turned) => {
        const ring = spikes.flatMap(([outer, inner], i): Point[] => {
          const a = (2 * Math.PI * i) / spikes.length;
          const b = a + Math.PI / spikes.length;
          return [
            [outer * Math.cos(a), outer * Math.sin(a)],
            [inner * Math.cos(b), inner * Math.sin(b)],
          ];
        });
        const angle = (Math.PI * turned) / 6;
        const normal: Point = [Math.cos(angle), Math.sin(angle)];
        const one = clipToHalfPlane(ring, { normal, offset });
        const other = clipToHalfPlane(ring, { normal: [-normal[0], -normal[1]], offset: -offset });
        expect(total(one) + total(other)).toBeCloseTo(signedArea(ring), 9);
        for (const piece of one) {
          expect(signedArea(piece)).toBeGreaterThan(0);
          for (const p of piece) expect(normal[0] * p[0] + normal[1] * p[1]).toBeLessThanOrEqual(offset + 1e-9);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("takes several half-planes one after the other", () => {
    const rings = clipToHalfPlanes(square, [
      { normal: [1, 1], offset: 6 },
      { normal: [-1, 0], offset: -1 },
    ]);
    // 3 × 4 less the corner triangle x + y > 6: legs 2, area 2.
    expect(total(rings)).toBe(10);
  });
});
