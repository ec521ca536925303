/** Contacts that only push: thresholds of lift-off and what comes after (published-checks.md, section 4). */

import { describe, expect, it } from "vitest";
import { type Beam, solve, solveTwoWay } from "../helpers/beam";
import { published } from "../helpers/published";

const source = "Equal spans with one support out of level, one-way contact, derived by the force method; recomputed";
const [l, w, EI, k] = [10, 40, 1e5, 1e10];
/** wl⁴/EI, m: the unit of all settlements. k·l³/EI = 1e8, so the supports yield by 1e-8 of it. */
const unit = (w * l ** 4) / EI;
const tolerance = { absolute: 1e-7 };

/** Reactions, in wl, with one or more supports lowered by so much of wl⁴/EI (negative: raised). */
function shares(spans: number, lowered: Readonly<Record<number, number>>): number[] {
  const supports = Array.from({ length: spans + 1 }, (_, index) => ({
    s: index * l,
    k,
    lower: (lowered[index] ?? 0) * unit,
  }));
  return solve({ length: spans * l, EI, lines: [{ w }], supports }).reactions.map((reaction) => reaction / (w * l));
}

/** δ at which a support lets go: its reaction falls linearly until then, so half of it is enough to say. */
function threshold(spans: number, expected: number, which: readonly number[], sign: 1 | -1, lets: number): number {
  const lowered = (delta: number) => Object.fromEntries(which.map((index) => [index, sign * delta]));
  const [level, half] = [shares(spans, {})[lets]!, shares(spans, lowered(expected / 2))[lets]!];
  return ((expected / 2) * level) / (level - half);
}

interface Threshold {
  readonly what: string;
  readonly spans: number;
  readonly which: readonly number[];
  /** 1 lowered, −1 raised. */
  readonly sign: 1 | -1;
  /** Support that lets go first, and at which δ. */
  readonly lets: number;
  readonly delta: number;
  /** Reactions, in wl, at a δ beyond. */
  readonly after?: { readonly delta: number; readonly shares: readonly number[] };
}

const thresholds: readonly Threshold[] = [
  {
    what: "two spans, middle lowered",
    spans: 2,
    which: [1],
    sign: 1,
    lets: 1,
    delta: 5 / 24,
    after: { delta: 0.4, shares: [1, 0, 1] },
  },
  {
    what: "two spans, middle raised",
    spans: 2,
    which: [1],
    sign: -1,
    lets: 0,
    delta: 1 / 8,
    after: { delta: 0.2, shares: [0, 2, 0] },
  },
  {
    what: "two spans, one end lowered",
    spans: 2,
    which: [0],
    sign: 1,
    lets: 0,
    delta: 1 / 4,
    after: { delta: 0.3, shares: [0, 2, 0] },
  },
  {
    what: "three spans, inner lowered",
    spans: 3,
    which: [1],
    sign: 1,
    lets: 1,
    delta: 1.1 / 9.6,
    after: { delta: 0.3, shares: [0.8125, 0, 2.0625, 0.125] },
  },
  {
    what: "three spans, end lowered",
    spans: 3,
    which: [0],
    sign: 1,
    lets: 0,
    delta: 0.25,
    after: { delta: 0.4, shares: [0, 2, 0.5, 0.5] },
  },
  {
    what: "three spans, inner raised",
    spans: 3,
    which: [1],
    sign: -1,
    lets: 0,
    delta: 1 / 9,
    after: { delta: 0.2, shares: [0, 2.25, 0, 0.75] },
  },
  {
    what: "three spans, end raised",
    spans: 3,
    which: [0],
    sign: -1,
    lets: 1,
    delta: 1.1 / 3.6,
    after: { delta: 0.5, shares: [0.9375, 0, 1.6875, 0.375] },
  },
  {
    what: "three spans, both inner lowered",
    spans: 3,
    which: [1, 2],
    sign: 1,
    lets: 1,
    delta: 11 / 12,
    after: { delta: 1.2, shares: [1.5, 0, 0, 1.5] },
  },
  {
    what: "three spans, both inner raised",
    spans: 3,
    which: [1, 2],
    sign: -1,
    lets: 0,
    delta: 1 / 3,
    after: { delta: 0.4, shares: [0, 1.5, 1.5, 0] },
  },
  { what: "four spans, middle lowered", spans: 4, which: [2], sign: 1, lets: 2, delta: 13 / 192 },
  { what: "four spans, second lowered", spans: 4, which: [1], sign: 1, lets: 1, delta: 8 / 69 },
  { what: "four spans, end lowered", spans: 4, which: [0], sign: 1, lets: 0, delta: 11 / 45 },
  { what: "four spans, second raised", spans: 4, which: [1], sign: -1, lets: 2, delta: 13 / 132 },
  { what: "four spans, middle raised", spans: 4, which: [2], sign: -1, lets: 1, delta: 4 / 33 },
];

describe.each(thresholds)("$what", ({ what, spans, which, sign, lets, delta }) => {
  it("first lift-off", () => {
    published({
      source,
      item: `${what}: δ at which support ${lets + 1} lets go, wl⁴/EI`,
      expected: delta,
      computed: threshold(spans, delta, which, sign, lets),
      tolerance,
    });
    const at = (factor: number) =>
      shares(spans, Object.fromEntries(which.map((index) => [index, sign * factor * delta])))[lets]!;
    expect(at(0.999)).toBeGreaterThan(0);
    expect(at(1.001)).toBe(0);
  });
});

describe.each(thresholds.filter(({ after }) => after !== undefined))("$what", ({ what, spans, which, sign, after }) => {
  it("reactions beyond it", () => {
    const got = shares(spans, Object.fromEntries(which.map((index) => [index, sign * after!.delta])));
    for (const [index, expected] of after!.shares.entries()) {
      published({
        source,
        item: `${what} by ${after!.delta}: R${index + 1}/wl`,
        expected,
        computed: got[index]!,
        tolerance,
      });
    }
  });
});

it("reactions at the thresholds of three spans", () => {
  const rows: readonly [what: string, lowered: Record<number, number>, shares: readonly number[]][] = [
    ["inner raised by 1/9", { 1: -1 / 9 }, [0, 13 / 6, 1 / 6, 2 / 3]],
    ["end raised by 1.1/3.6", { 0: -1.1 / 3.6 }, [0.8888889, 0, 1.8333333, 0.2777778]],
  ];
  for (const [what, lowered, expected] of rows) {
    for (const [index, share] of shares(3, lowered).entries()) {
      published({
        source,
        item: `three spans, ${what}: R${index + 1}/wl`,
        expected: expected[index]!,
        computed: share,
        tolerance: { absolute: 3e-7 },
      });
    }
  }
});

describe("influence of lowering one support, EI/l³", () => {
  const matrices: readonly (readonly (readonly number[])[])[] = [
    [
      [-1.5, 3, -1.5],
      [3, -6, 3],
      [-1.5, 3, -1.5],
    ],
    [
      [-1.6, 3.6, -2.4, 0.4],
      [3.6, -9.6, 8.4, -2.4],
    ],
    [
      [-45 / 28, 102 / 28, -72 / 28, 18 / 28, -3 / 28],
      [102 / 28, -276 / 28, 264 / 28, -108 / 28, 18 / 28],
      [-72 / 28, 264 / 28, -384 / 28, 264 / 28, -72 / 28],
    ],
  ];
  it.each(matrices.map((matrix, index) => ({ spans: index + 2, matrix })))("$spans spans", ({ spans, matrix }) => {
    const level = shares(spans, {});
    const small = 0.02;
    for (const [lowered, row] of matrix.entries()) {
      const moved = shares(spans, { [lowered]: small });
      for (const [index, expected] of row.entries()) {
        // Reactions are in wl and settlements in wl⁴/EI, so their quotient is in EI/l³.
        const computed = (moved[index]! - level[index]!) / small;
        published({
          source,
          item: `${spans} spans: change of R${index + 1} per lowering of support ${lowered + 1}, EI/l³`,
          expected,
          computed,
          tolerance: { absolute: 5e-6 },
        });
      }
    }
  });
});

it("two spans, w and P in the middle of the first", () => {
  const beam = (P: number): Beam => ({
    length: 2 * l,
    EI,
    lines: [{ w }],
    points: [{ s: l / 2, P: P * w * l }],
    supports: [0, l, 2 * l].map((s) => ({ s, k })),
  });
  const far = (P: number) => solve(beam(P)).reactions[2]!;
  published({
    source,
    item: "w and P mid first span: P at which the far end lets go, wl",
    expected: 4,
    computed: (2 * far(0.5) - 0.5 * far(2)) / (far(0.5) - far(2)),
    tolerance: { absolute: 1e-6 },
  });
  for (const [index, expected] of [3, 5, 0].entries()) {
    published({
      source,
      item: `w and P = 6wl mid first span, one-way: R${index + 1}/wl`,
      expected,
      computed: solve(beam(6)).reactions[index]! / (w * l),
      tolerance,
    });
  }
  for (const [index, expected] of [2.8125, 5.375, -0.1875].entries()) {
    published({
      source,
      item: `w and P = 6wl mid first span, two-way: R${index + 1}/wl`,
      expected,
      computed: solveTwoWay(beam(6), w * l).twoWay[index]! / (w * l),
      tolerance: { absolute: 3e-7 },
    });
  }
});

describe("long heavy beam on a floor of 161 stands, 1/80 m apart", () => {
  const floor = (length: number) =>
    Array.from({ length: 161 }, (_, index) => ({ s: index / 80, k: 1e7 / length, lower: 0 }));
  const timoshenko = "Timoshenko, Strength of Materials I (beam on a rigid plane), from memory; recomputed";

  it("one end raised by h = wc⁴/24EI", () => {
    const stands = floor(2);
    stands[160] = { ...stands[160]!, lower: -1 / 24 };
    const { reactions, part } = solve({ length: 2, EI: 1, lines: [{ w: 1 }], supports: stands });
    published({
      source: timoshenko,
      item: "end raised by 1/24, EI = w = 1: force at the raised end",
      expected: 0.5,
      computed: reactions[160]!,
      tolerance: { absolute: 2e-4 },
    });
    published({
      source: timoshenko,
      item: "end raised by 1/24: greatest moment, wc²/8",
      expected: 0.125,
      computed: part.moment!.most.value,
      tolerance: { absolute: 2e-4 },
    });
    const touchdown = stands.findLastIndex((_, index) => index < 160 && reactions[index]! > 1e-9);
    published({
      source: timoshenko,
      item: "end raised by 1/24: lifted length c, to the spacing of the stands",
      expected: 1,
      computed: 2 - stands[touchdown]!.s,
      tolerance: { absolute: 1 / 80 },
    });
  });

  it("overhanging the edge by c", () => {
    const c = 0.5;
    const { reactions, part } = solve({ length: 2 + c, EI: 1, lines: [{ w: 1 }], supports: floor(2) });
    published({
      source: timoshenko,
      item: "overhang of 0.5, EI = w = 1: force on the edge",
      expected: 1.0303301,
      computed: reactions[160]!,
      tolerance: { absolute: 2e-3 },
    });
    published({
      source: timoshenko,
      item: "overhang of 0.5: moment over the edge, wc²/2",
      expected: -0.125,
      computed: part.moment!.least.value,
      tolerance: { absolute: 1e-9 },
    });
  });
});
