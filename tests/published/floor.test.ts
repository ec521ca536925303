/** Special spots along a uniform piece, and the area of a grown hull, against closed forms and printed values. */

import { describe, expect, it } from "vitest";
import { airyPoint, besselPoint, grow, polygonArea, specialSpots } from "../../src/geometry";
import type { Polygon } from "../../src/plan";
import { printedTo, published } from "../helpers/published";

/** Moment of a bar of length 1 and weight 1 on two supports a from its ends. */
const moment = (a: number, x: number) => -(x ** 2) / 2 + (x > a ? (x - a) / 2 : 0);

/** Slope at x of the half bar, 0 at the middle: −∫ M from x to ½, in one pass of Simpson's rule a panel. */
function slopes(a: number, panels: number): number[] {
  const step = 0.5 / panels;
  const slope = [0];
  for (let panel = panels - 1; panel >= 0; panel--) {
    const [from, to] = [panel * step, (panel + 1) * step];
    const area = (step / 6) * (moment(a, from) + 4 * moment(a, (from + to) / 2) + moment(a, to));
    slope.unshift(slope[0]! - area);
  }
  return slope;
}

/** ∫ y′² over the half bar. */
function shortening(a: number): number {
  const slope = slopes(a, 2000);
  const ends = slope[0]! ** 2 + slope.at(-1)! ** 2;
  const inner = slope.slice(1, -1).reduce((sum, value, index) => sum + (index % 2 === 0 ? 4 : 2) * value ** 2, 0);
  return ((0.5 / 2000) * (ends + inner)) / 3;
}

describe("two supports under a uniform piece", () => {
  it("Bessel: the axis is shortened least", () => {
    const source = "Bessel points, printed in length metrology: 0.5594 of the length apart";
    published({
      source,
      item: "spacing ÷ length",
      expected: 0.5594,
      computed: 1 - 2 * besselPoint,
      tolerance: printedTo(4),
    });
    const a = besselPoint;
    published({
      source: "Derived: d/da ∫y′² = 0 is a⁴ + 18a³ − 11a² − 3a + 1 = 0",
      item: "left side at the Bessel point",
      expected: 0,
      computed: a ** 4 + 18 * a ** 3 - 11 * a ** 2 - 3 * a + 1,
      tolerance: { absolute: 1e-13 },
    });
    // The least of a smooth function, by the parabola through three places.
    const step = 2e-4;
    const [before, here, after] = [besselPoint - step, besselPoint, besselPoint + step].map(shortening) as [
      number,
      number,
      number,
    ];
    const least = besselPoint + (step / 2) * ((before - after) / (before - 2 * here + after));
    published({
      source: "Derived: least of ∫y′², integrated numerically",
      item: "a ÷ length",
      expected: least,
      computed: besselPoint,
      tolerance: { absolute: 1e-6 },
    });
  });

  it("Airy: the ends are level", () => {
    const source = "G. B. Airy, Mem. R. Astron. Soc. 15 (1846); gauge-block practice";
    published({
      source,
      item: "marks of a 1000 mm bar, mm from its ends",
      expected: 211.3,
      computed: 1000 * airyPoint,
      tolerance: printedTo(1),
    });
    published({
      source,
      item: "marks of a 1000 mm bar, mm apart",
      expected: 577.4,
      computed: 1000 * (1 - 2 * airyPoint),
      tolerance: printedTo(1),
    });
    published({
      source: "Derived: slope at the end, integrated numerically",
      item: "slope",
      expected: 0,
      computed: slopes(airyPoint, 2000)[0]!,
      tolerance: { absolute: 1e-9 },
    });
  });

  it("both are offered, from either end", () => {
    expect(specialSpots(2).map(({ value }) => value)).toEqual([besselPoint, 1 - besselPoint, airyPoint, 1 - airyPoint]);
    expect(specialSpots(5)).toEqual([]);
  });
});

describe("equal reactions on rigid level supports", () => {
  it("three: 1.319 m from the ends of a beam on supports 3 m apart", () => {
    const source = "Philippine CE board problem, three level supports with equal reactions";
    // The overhang x of supports s = 3 m apart: a/L = x/(2s + 2x).
    const fraction = specialSpots(3)[0]!.value;
    const overhang = (3 * 2 * fraction) / (1 - 2 * fraction);
    published({ source, item: "overhang, m", expected: 1.319, computed: overhang, tolerance: printedTo(3) });
    published({
      source: "Derived: 18(x/s)² + 8(x/s) − 7 = 0",
      item: "a ÷ L",
      expected: 0.152729,
      computed: fraction,
      tolerance: printedTo(6),
    });
  });

  it("four, equally spaced", () => {
    const spots = specialSpots(4)
      .map(({ value }) => value)
      .sort();
    const source = "Derived: 12(x/s)² + 10(x/s) − 7 = 0, x/s = (√109 − 5)/12";
    published({ source, item: "a ÷ L", expected: 0.116046, computed: spots[0]!, tolerance: printedTo(7) });
    published({ source, item: "s ÷ L", expected: 0.2559693, computed: spots[1]! - spots[0]!, tolerance: printedTo(7) });
    expect(spots[3]! - spots[2]!).toBeCloseTo(spots[1]! - spots[0]!, 14);
    expect(spots[2]! - spots[1]!).toBeCloseTo(spots[1]! - spots[0]!, 14);
  });
});

describe("a grown hull", () => {
  const hull: Polygon = [
    [0, 0],
    [0.9, 0],
    [0.7, 0.2],
    [0.2, 0.2],
  ];
  it.each([0.02, 0.05, 0.2])("radius %d", (radius) => {
    const perimeter = 0.9 + 0.5 + 2 * Math.hypot(0.2, 0.2);
    published({
      source: "J. Steiner (1840): area of a convex body grown by r is A + perimeter·r + πr²",
      item: `trapezium grown by ${radius}, m²`,
      expected: 0.14 + perimeter * radius + Math.PI * radius ** 2,
      computed: polygonArea(grow(hull, radius)),
      tolerance: { relative: 1e-3 },
    });
  });
});
