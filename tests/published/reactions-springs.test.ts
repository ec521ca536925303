/** Beams on springs and beams that yield to shear (published-checks.md, sections 1.5, 3.1, 3.2 and 3.4), exact. */

import { describe, expect, it } from "vitest";
import { type Beam, solve, solveTwoWay } from "../helpers/beam";
import { printedTo, published } from "../helpers/published";
import { solveDense } from "../helpers/solveDense";

/** A unit of the last decimal: these rows were cut off, not rounded. */
const lastUnit = (decimals: number) => ({ absolute: 10 ** -decimals });

const EI = 2e7;
const L = 12;

describe("table 3.1: uniform beam, equal springs equally spaced, both ends among them, κ = kL³/EI", () => {
  const source =
    "Uniform beam on equal springs, shares of the weight by κ = kL³/EI, derived by the force method; recomputed";
  const table: readonly [kappa: number, ...shares: (readonly number[])[]][] = [
    [1, [0.3313356, 0.3373288], [0.248227, 0.2517731], [0.1985021, 0.2007109, 0.201574]],
    [10, [0.3155488, 0.3689024], [0.2344029, 0.2655971], [0.1869859, 0.2062035, 0.2136211]],
    [48, [0.275, 0.45], [0.2003546, 0.2996454], [0.1597454, 0.2195326, 0.2414441]],
    [100, [0.2485465, 0.502907], [0.1792071, 0.3207929], [0.1434682, 0.2280565, 0.2569507]],
    [1000, [0.1972948, 0.6054104], [0.1404333, 0.3595667], [0.1117167, 0.2544791, 0.2676084]],
    [1e6, [0.1875105, 0.624979], [0.1333409, 0.3666591], [0.0982436, 0.2856307, 0.2322514]],
  ];
  const sharesOf = (kappa: number, count: number) => {
    const supports = Array.from({ length: count }, (_, index) => ({
      s: (index * L) / (count - 1),
      k: (kappa * EI) / L ** 3,
    }));
    return solve({ length: L, EI, lines: [{ w: 1000 }], supports }).reactions.map((reaction) => reaction / (1000 * L));
  };

  it.each(table)("κ = %d", (kappa, ...rows) => {
    for (const [index, row] of rows.entries()) {
      const count = index + 3;
      const shares = sharesOf(kappa, count);
      for (const [at, expected] of row.entries()) {
        for (const computed of [shares[at]!, shares[count - 1 - at]!]) {
          published({
            source,
            item: `κ = ${kappa}, ${count} springs: share ${at + 1}`,
            expected,
            computed,
            tolerance: lastUnit(7),
          });
        }
      }
      const closed =
        count === 3
          ? (1 / 2 + (5 * kappa) / 384) / (3 / 2 + kappa / 48)
          : count === 4
            ? (1 / 2 + (11 * kappa) / 972) / (2 + (5 * kappa) / 162)
            : null;
      if (closed !== null) {
        published({
          source,
          item: `κ = ${kappa}, ${count} springs: closed form of share 2`,
          expected: closed,
          computed: shares[1]!,
          tolerance: { relative: 1e-9 },
        });
      }
    }
  });
});

describe("table 3.2: Timoshenko beam, Φ = 12·EI/(GA·l²), unyielding supports", () => {
  const source = "Timoshenko beam on equal spans, R_B = (5 + Φ)/(4 + Φ)·wl, derived by unit loads; recomputed";
  const [l, w, k, soft] = [10, 40, 1e10, 1000];
  const supports = (spans: number) => Array.from({ length: spans + 1 }, (_, index) => ({ s: index * l, k }));
  const share = (spans: number, phi: number): number => {
    const kGA = phi > 0 ? { kGA: (12 * soft) / (phi * l * l) } : {};
    return (
      solve({ length: spans * l, EI: soft, ...kGA, lines: [{ w }], supports: supports(spans) }).reactions[1]! / (w * l)
    );
  };
  const rows: readonly [phi: number, two: number, three: number | null][] = [
    [0, 1.25, 1.1],
    [0.1, 1.2439024, 1.0990099],
    [0.5, 1.2222222, 1.0952381],
    [1, 1.2, 1.0909091],
    [4, 1.125, 1.0714286],
    [100, 1.0096154, null],
  ];
  it.each(rows)("Φ = %d", (phi, two, three) => {
    published({
      source,
      item: `Φ = ${phi}, two spans: R_B/wl`,
      expected: two,
      computed: share(2, phi),
      tolerance: printedTo(7),
    });
    if (three !== null) {
      published({
        source,
        item: `Φ = ${phi}, three spans: inner R/wl`,
        expected: three,
        computed: share(3, phi),
        tolerance: printedTo(7),
      });
    }
  });
});

describe("3.4: seven separate springs, P over the middle one", () => {
  const source =
    "Boresi and Schmidt, Advanced Mechanics of Materials, ch. 10, example 10.2 with its springs kept apart; recomputed";
  const spring = { EI: 72e9 * 2.45e-6, k: 1.1e5, spacing: 1.1 };
  const beam: Beam = {
    length: 6 * spring.spacing,
    EI: spring.EI,
    points: [{ s: 3 * spring.spacing, P: 12000 }],
    supports: Array.from({ length: 7 }, (_, index) => ({ s: index * spring.spacing, k: spring.k })),
  };

  it("springs that pull as well", () => {
    const { twoWay, part, stands } = solveTwoWay(beam, 5000);
    for (const [index, expected] of [-453.881, 1215.742, 3093.906, 4288.464].entries()) {
      for (const at of [index, 6 - index]) {
        published({
          source,
          item: `two-way: spring ${at + 1}, N`,
          expected,
          computed: twoWay[at]!,
          tolerance: printedTo(3),
        });
      }
    }
    const settled = stands[3]!.settlement! - 5000 / spring.k;
    published({
      source,
      item: "two-way: greatest deflection, mm",
      expected: 38.986,
      computed: settled * 1000,
      tolerance: printedTo(4),
    });
    published({
      source,
      item: "two-way: greatest moment, kN·m",
      expected: 4.580124,
      computed: part.moment!.most.value / 1000,
      tolerance: printedTo(6),
    });
  });

  it("springs that only push", () => {
    const { reactions, part, stands } = solve(beam);
    for (const [index, expected] of [0, 713.623, 3076.047, 4420.658].entries()) {
      for (const at of [index, 6 - index]) {
        published({
          source,
          item: `one-way: spring ${at + 1}, N`,
          expected,
          computed: reactions[at]!,
          tolerance: lastUnit(3),
        });
      }
    }
    published({
      source,
      item: "one-way: greatest deflection, mm",
      expected: 40.1878,
      computed: stands[3]!.settlement! * 1000,
      tolerance: printedTo(4),
    });
    published({
      source,
      item: "one-way: greatest moment, kN·m",
      expected: 4.953624,
      computed: part.moment!.most.value / 1000,
      tolerance: printedTo(6),
    });
    published({
      source,
      item: "one-way: rise of the tips, mm",
      expected: 15.8865,
      computed: stands[0]!.gap! * 1000,
      tolerance: printedTo(4),
    });
  });
});

describe("three-moment equation with settlements R/k", () => {
  const source = "Clapeyron, three-moment equation with yielding supports (settlement R/k), solved by elimination";
  const layouts: readonly (readonly number[])[] = [
    [0, 6, 12],
    [0, 3, 7, 12],
    [0, 1.5, 4, 9, 12],
    [0, 2, 4.5, 6, 9.5, 12],
  ];

  it.each([1e7, 1e8, 1e9])("k = %d N/m", (k) => {
    const w = 5000;
    for (const places of layouts) {
      for (const stiff of [2e7, 3e8]) {
        const supports = places.map((s, index) => ({ s, k, lower: index === 1 ? 1e-5 : 0 }));
        const { reactions } = solve({ length: 12, EI: stiff, lines: [{ w }], supports });
        const expected = threeMoments(places, stiff, w, supports);
        // The equation lets supports pull; here none does.
        expect(Math.min(...expected)).toBeGreaterThan(0);
        for (const [index, value] of expected.entries()) {
          const item = `k = ${k}, EI = ${stiff}, ${places.length} supports: R${index + 1} ÷ W`;
          published({
            source,
            item,
            expected: value / (w * 12),
            computed: reactions[index]! / (w * 12),
            tolerance: { absolute: 1e-9 },
          });
        }
      }
    }
  });
});

/**
 * Reactions of a beam under w on supports at `places`, the first and last at its ends, from
 * M₋·l₋ + 2M·(l₋ + l₊) + M₊·l₊ = −w·(l₋³ + l₊³)/4 + 6EI·[(y₋ − y)/l₋ + (y₊ − y)/l₊], y = −lower − R/k (upward).
 */
function threeMoments(
  places: readonly number[],
  stiff: number,
  w: number,
  supports: readonly { readonly k: number; readonly lower: number }[],
): number[] {
  const count = places.length;
  const span = places.slice(1).map((s, index) => s - places[index]!);
  // Unknowns: the moment over each support, then its reaction.
  const rows: number[][] = [];
  const right: number[] = [];
  const equation = (terms: readonly (readonly [number, number])[], value: number) => {
    const row = new Array<number>(2 * count).fill(0);
    for (const [at, factor] of terms) row[at]! += factor;
    rows.push(row);
    right.push(value);
  };
  for (let i = 0; i < count; i++) {
    const [before, after] = [span[i - 1] ?? 0, span[i] ?? 0];
    // R = shares of the load on both spans + the slopes of the moment line
    const slopes: [number, number][] = [[count + i, 1]];
    if (i > 0) slopes.push([i - 1, -1 / before], [i, 1 / before]);
    if (i < count - 1) slopes.push([i, 1 / after], [i + 1, -1 / after]);
    equation(slopes, (w * (before + after)) / 2);
    if (i === 0 || i === count - 1) {
      equation([[i, 1]], 0);
      continue;
    }
    const bend = (6 * stiff) / before;
    const bendAfter = (6 * stiff) / after;
    const low = (at: number) => supports[at]!.lower;
    const give = (at: number) => 1 / supports[at]!.k;
    equation(
      [
        [i - 1, before],
        [i, 2 * (before + after)],
        [i + 1, after],
        [count + i - 1, bend * give(i - 1)],
        [count + i, -(bend + bendAfter) * give(i)],
        [count + i + 1, bendAfter * give(i + 1)],
      ],
      -(w * (before ** 3 + after ** 3)) / 4 + bend * (low(i) - low(i - 1)) + bendAfter * (low(i) - low(i + 1)),
    );
  }
  return solveDense(rows, right).slice(count);
}
