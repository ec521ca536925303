/**
 * Continuous and overhanging beams on unyielding supports (published-checks.md, section 1), met to the printed digits
 * with supports so stiff that their own yield is below them: k·l³/EI = 1e10.
 */

import { describe, it } from "vitest";
import type { Extreme } from "../../src/statics";
import { type Beam, solve, solveTwoWay } from "../helpers/beam";
import { printedTo, published } from "../helpers/published";

const aisc = "AISC Steel Construction Manual, Tables 3-22c and 3-23 (continuous beams), from memory; recomputed";
const lindeburg =
  "Lindeburg, Civil Engineering Reference Manual, 15th ed., continuous beams (read in a reprint); AISC Manual Table 3-22c";
const overhangs =
  "AISC Steel Construction Manual, Table 3-23, cases 24 to 26 (overhanging beams), from memory; recomputed";

/** Span, m, bending stiffness, N·m², and the stiffest support that a plan may have, N/m. */
const l = 10;
const EI = 1000;
const k = 1e10;

const onSpans = (spans: number): Pick<Beam, "length" | "EI" | "supports"> => ({
  length: spans * l,
  EI,
  supports: Array.from({ length: spans + 1 }, (_, index) => ({ s: index * l, k })),
});

/** Rows of tables 1.1 and 1.2: what is printed, in fractions of wl or P, of wl² or Pl, of wl⁴/EI or Pl³/EI. */
interface Row {
  readonly spans: number;
  readonly source: string;
  readonly reactions: readonly number[];
  readonly decimals: number;
  /** Hogging moments over the inner supports from the left, sagging ones in the spans from the left. */
  readonly supportMoments: readonly number[];
  readonly spanMoments: readonly number[];
  /** Decimals to which those in the spans are printed; 7 if left out. */
  readonly spanDecimals?: number;
  readonly deflection?: { readonly value: number; readonly decimals: number; readonly at: number };
}

const uniform: readonly Row[] = [
  {
    spans: 1,
    source: aisc,
    reactions: [0.5, 0.5],
    decimals: 7,
    supportMoments: [],
    spanMoments: [0.125],
    deflection: { value: 0.0130208, decimals: 7, at: 0.5 },
  },
  {
    spans: 2,
    source: lindeburg,
    reactions: [3 / 8, 5 / 4, 3 / 8],
    decimals: 7,
    supportMoments: [-1 / 8],
    spanMoments: [0.0703125],
    deflection: { value: 0.00541612, decimals: 8, at: 0.421535 },
  },
  {
    spans: 3,
    source: lindeburg,
    reactions: [0.4, 1.1, 1.1, 0.4],
    decimals: 7,
    supportMoments: [-0.1, -0.1],
    spanMoments: [0.08, 0.025, 0.08],
    deflection: { value: 0.00688421, decimals: 8, at: 0.446037 },
  },
  {
    spans: 4,
    source: aisc,
    reactions: [0.392857, 1.142857, 0.928571, 1.142857, 0.392857],
    decimals: 6,
    supportMoments: [-0.107143, -0.071429, -0.107143],
    spanMoments: [0.0771684, 0.036352],
    deflection: { value: 0.00646038, decimals: 8, at: 0.439715 },
  },
  {
    spans: 5,
    source: aisc,
    reactions: [0.394737, 1.131579, 0.973684, 0.973684, 1.131579, 0.394737],
    decimals: 6,
    supportMoments: [-0.105263, -0.078947],
    spanMoments: [0.0779086, 0.033241, 0.0460526],
    deflection: { value: 0.0065716, decimals: 7, at: 0.4414 },
  },
];

const atMiddles: readonly Row[] = [
  {
    spans: 1,
    source: aisc,
    reactions: [0.5, 0.5],
    decimals: 7,
    supportMoments: [],
    spanMoments: [0.25],
    deflection: { value: 1 / 48, decimals: 8, at: 0.5 },
  },
  {
    spans: 2,
    source: lindeburg,
    reactions: [5 / 16, 11 / 8, 5 / 16],
    decimals: 7,
    supportMoments: [-3 / 16],
    spanMoments: [5 / 32],
    deflection: { value: 0.00931695, decimals: 8, at: 0.447214 },
  },
  {
    spans: 3,
    source: aisc,
    reactions: [0.35, 1.15, 1.15, 0.35],
    decimals: 7,
    supportMoments: [-0.15],
    spanMoments: [0.175, 0.1, 0.175],
    deflection: { value: 0.0115728, decimals: 7, at: 0.46291 },
  },
  {
    spans: 4,
    source: aisc,
    reactions: [0.339286, 1.214286, 0.892857, 1.214286, 0.339286],
    decimals: 6,
    supportMoments: [-9 / 56, -3 / 28, -9 / 56],
    spanMoments: [0.169643, 0.116071],
    spanDecimals: 6,
    deflection: { value: 0.0109246, decimals: 7, at: 0.458831 },
  },
];

describe.each(uniform)("table 1.1: $spans equal spans, w on all", (row) => {
  const w = 40;
  const { part, reactions } = solve({ ...onSpans(row.spans), lines: [{ w }] });
  compare(row, "w", part.curves!, reactions, w * l, w * l * l, (w * l ** 4) / EI);
});

describe.each(atMiddles)("table 1.2: $spans equal spans, P at the middle of each", (row) => {
  const P = 400;
  const points = Array.from({ length: row.spans }, (_, index) => ({ s: (index + 0.5) * l, P }));
  const { part, reactions } = solve({ ...onSpans(row.spans), points });
  compare(row, "P", part.curves!, reactions, P, P * l, (P * l ** 3) / EI);
});

type Drawn = NonNullable<ReturnType<typeof solve>["part"]["curves"]>;

function compare(
  row: Row,
  load: string,
  curves: Drawn,
  got: readonly number[],
  force: number,
  moment: number,
  bend: number,
): void {
  const source = row.source;
  const what = (item: string) => `${row.spans} equal spans under ${load}: ${item}`;
  it("reactions", () => {
    for (const [index, expected] of row.reactions.entries()) {
      published({
        source,
        item: what(`R${index + 1}`),
        expected,
        computed: got[index]! / force,
        tolerance: printedTo(row.decimals),
      });
    }
  });
  it("moments", () => {
    for (const [index, expected] of row.supportMoments.entries()) {
      const computed = extremeIn(curves, "moment", (index + 1) * l, (index + 1) * l, Math.min).value / moment;
      published({
        source,
        item: what(`moment over support ${index + 2}`),
        expected,
        computed,
        tolerance: printedTo(6),
      });
    }
    for (const [index, expected] of row.spanMoments.entries()) {
      const computed = extremeIn(curves, "moment", index * l, (index + 1) * l, Math.max).value / moment;
      published({
        source,
        item: what(`greatest moment in span ${index + 1}`),
        expected,
        computed,
        tolerance: printedTo(row.spanDecimals ?? 7),
      });
    }
  });
  it("deflection of the end span and its place", () => {
    const { value, decimals, at } = row.deflection!;
    const least = extremeIn(curves, "deflection", 0, l, Math.min);
    published({
      source,
      item: what("greatest deflection"),
      expected: value,
      computed: -least.value / bend,
      tolerance: printedTo(decimals),
    });
    published({
      source,
      item: what("place of it, in spans"),
      expected: at,
      computed: least.s / l,
      tolerance: printedTo(at === 0.4414 ? 4 : 6),
    });
  });
}

/** Extreme of a drawn curve between two places; its stations hold every extreme. */
function extremeIn(
  curves: Drawn,
  kind: "moment" | "deflection",
  from: number,
  to: number,
  pick: (...values: number[]) => number,
): Extreme {
  const inside = curves.s.flatMap((s, index) => (s >= from && s <= to ? [{ value: curves[kind]![index]!, s }] : []));
  const value = pick(...inside.map((place) => place.value));
  return inside.find((place) => place.value === value)!;
}

describe("table 1.3: two equal spans, one loaded (the far end pulls, so a load over each support is added and taken off)", () => {
  it("w on the first span", () => {
    const w = 40;
    const { twoWay, part } = solveTwoWay({ ...onSpans(2), lines: [{ w, from: 0, to: l }] }, w * l);
    const at = { source: lindeburg, tolerance: printedTo(7) };
    for (const [index, expected] of [7 / 16, 5 / 8, -1 / 16].entries()) {
      published({
        ...at,
        item: `two spans, w on the first: R${index + 1}`,
        expected,
        computed: twoWay[index]! / (w * l),
      });
    }
    const { value, s } = part.moment!.most;
    published({
      ...at,
      item: "two spans, w on the first: greatest moment, wl²",
      expected: 49 / 512,
      computed: value / (w * l * l),
    });
    published({ ...at, item: "two spans, w on the first: place of it, in spans", expected: 7 / 16, computed: s / l });
    published({
      ...at,
      item: "two spans, w on the first: moment over B, wl²",
      expected: -1 / 16,
      computed: part.moment!.least.value / (w * l * l),
    });
  });

  it("P in the first span", () => {
    const P = 400;
    const middle = solveTwoWay({ ...onSpans(2), points: [{ s: l / 2, P }] }, P).twoWay;
    for (const [index, expected] of [13 / 32, 11 / 16, -3 / 32].entries()) {
      published({
        source: aisc,
        item: `two spans, P mid first span: R${index + 1}`,
        expected,
        computed: middle[index]! / P,
        tolerance: printedTo(7),
      });
    }
    const a = 3;
    const b = l - a;
    const off = solveTwoWay({ ...onSpans(2), points: [{ s: a, P }] }, P).twoWay;
    const expected = [
      (b * (4 * l * l - a * (l + a))) / (4 * l ** 3),
      (a * (2 * l * l + b * (l + a))) / (2 * l ** 3),
      (-a * b * (l + a)) / (4 * l ** 3),
    ];
    for (const [index, value] of expected.entries()) {
      published({
        source: lindeburg,
        item: `two spans, P at 0.3 l: R${index + 1}/P`,
        expected: value,
        computed: off[index]! / P,
        tolerance: printedTo(7),
      });
    }
  });
});

describe("table 1.4: overhangs, l = 10, a = 3, w = 2, P = 5, in units of EI", () => {
  const a = 3;
  const two = {
    length: l + a,
    EI,
    supports: [
      { s: 0, k },
      { s: l, k },
    ],
  };
  const tolerance = printedTo(5);
  const row = (item: string, expected: number, computed: number) =>
    published({ source: overhangs, item: `overhang: ${item}`, expected, computed, tolerance });

  it("w on span and overhang", () => {
    const { reactions, part } = solve({ ...two, lines: [{ w: 2 }] });
    row("w everywhere, R1", 9.1, reactions[0]!);
    row("w everywhere, R2", 16.9, reactions[1]!);
    row("w everywhere, M1", 20.7025, part.moment!.most.value);
    row("w everywhere, place of M1", 4.55, part.moment!.most.s);
    row("w everywhere, M2", -9, part.moment!.least.value);
    row("w everywhere, tip deflection × EI (upward positive)", 139.75, part.droop![1] * EI);
  });

  it("w on the overhang only", () => {
    const { twoWay, part } = solveTwoWay({ ...two, lines: [{ w: 2, from: l, to: l + a }] }, 10);
    row("w on overhang, R1", -0.9, twoWay[0]!);
    row("w on overhang, R2", 6.9, twoWay[1]!);
    row("w on overhang, tip deflection × EI", -110.25, part.droop![1] * EI);
    published({
      source: overhangs,
      item: "overhang: w on overhang, greatest rise in the span × EI",
      expected: 57.735,
      computed: part.deflection!.most.value * EI,
      tolerance: printedTo(4),
    });
    published({
      source: overhangs,
      item: "overhang: w on overhang, place of it (l/√3)",
      expected: 5.7735,
      computed: part.deflection!.most.s,
      tolerance: printedTo(4),
    });
  });

  it("P at the tip", () => {
    const { twoWay, part } = solveTwoWay({ ...two, points: [{ s: l + a, P: 5 }] }, 10);
    row("P at tip, R1", -1.5, twoWay[0]!);
    row("P at tip, R2", 6.5, twoWay[1]!);
    row("P at tip, tip deflection × EI", -195, part.droop![1] * EI);
    published({
      source: overhangs,
      item: "overhang: P at tip, greatest rise in the span × EI",
      expected: 96.225,
      computed: part.deflection!.most.value * EI,
      tolerance: printedTo(4),
    });
    published({
      source: overhangs,
      item: "overhang: P at tip, place of it",
      expected: 5.7735,
      computed: part.deflection!.most.s,
      tolerance: printedTo(4),
    });
  });

  it("both overhangs, w everywhere", () => {
    const source = "Overhanging beams, derived by statics and the elastic line; recomputed";
    const { reactions, part } = solve({
      length: l + 2 * a,
      EI,
      lines: [{ w: 2 }],
      supports: [
        { s: a, k },
        { s: a + l, k },
      ],
    });
    const at = { source, tolerance: printedTo(4) };
    published({ ...at, item: "both overhangs: R", expected: 16, computed: reactions[0]! });
    published({ ...at, item: "both overhangs: moment at mid span", expected: 16, computed: part.moment!.most.value });
    published({
      ...at,
      item: "both overhangs: mid deflection × EI (downward)",
      expected: 147.9167,
      computed: -part.deflection!.least.value * EI,
    });
    published({
      ...at,
      item: "both overhangs: tip deflection × EI (downward)",
      expected: -94.75,
      computed: -part.droop![0] * EI,
    });
  });

  it("tipping limits", () => {
    const source = "Overhanging beams, tipping limits, derived by statics; recomputed";
    const load = (w: number, P: number) => solve({ ...two, lines: [{ w }], points: [{ s: l + a, P }] }).reactions[0]!;
    // The far reaction falls linearly with the tip load, so two loads give the one at which it is gone.
    const [at0, at20] = [load(2, 1e-9), load(2, 20)];
    published({
      source,
      item: "tip load at which the far support is relieved, w = 2, l = 10, a = 3",
      expected: 30.3333,
      computed: (20 * at0) / (at0 - at20),
      tolerance: printedTo(4),
    });
  });
});

describe("1.5: worked examples", () => {
  const kip = 4448.2216152605;
  const foot = 0.3048;
  const inch = 0.0254;

  it("three-moment equation, unequal spans", () => {
    const source =
      "Handbook of Civil Engineering Calculations, 2nd ed. (McGraw-Hill 2007), p. 1.63 (read in a reprint)";
    const { reactions, part } = solve({
      length: 25 * foot,
      EI: 1e4,
      lines: [
        { w: (2 * kip) / foot, from: 0, to: 10 * foot },
        { w: (3 * kip) / foot, from: 10 * foot, to: 25 * foot },
      ],
      points: [
        { s: 5 * foot, P: 6 * kip },
        { s: 19 * foot, P: 10 * kip },
      ],
      supports: [0, 10, 25].map((at) => ({ s: at * foot, k })),
    });
    for (const [index, [printed, full]] of (
      [
        [4.98, 4.9755],
        [52.87, 52.8742],
        [23.15, 23.1503],
      ] as const
    ).entries()) {
      const item = `unequal spans: R${"ABC"[index]}, kip`;
      published({
        source,
        item,
        expected: printed,
        computed: reactions[index]! / kip,
        tolerance: { absolute: 0.0051 },
      });
      published({
        source,
        item: `${item}, full precision`,
        expected: full,
        computed: reactions[index]! / kip,
        tolerance: printedTo(4),
      });
    }
    published({
      source,
      item: "unequal spans: moment over B, kip·ft",
      expected: -80.245,
      computed: part.moment!.least.value / kip / foot,
      tolerance: printedTo(3),
    });
  });

  it("settlement of the middle support", () => {
    // Forces and EI a thousandth of the example's, which leaves the settlement as it is and makes the supports stiffer.
    const scale = 1e-3;
    const source =
      "Hibbeler, Structural Analysis, 8th ed., ch. 10, worked example (settlement), from memory; recomputed";
    const beam = {
      length: 48 * foot,
      EI: scale * 29000 * 750 * kip * inch * inch,
      points: [{ s: 12 * foot, P: scale * 20 * kip }],
    };
    // R_B is 5.5555 in full; the 5.556 quoted carries the rounding of the settlement's share, so one unit is allowed.
    const settled = solve({
      ...beam,
      supports: [
        { s: 0, k },
        { s: 24 * foot, k, lower: 1.5 * inch },
        { s: 48 * foot, k },
      ],
    });
    for (const [index, expected] of [12.222, 5.556, 2.222].entries()) {
      published({
        source,
        item: `middle support 1.5 in low: R${"ABC"[index]}, kip`,
        expected,
        computed: settled.reactions[index]! / (scale * kip),
        tolerance: { absolute: 1e-3 },
      });
    }
    const level = solveTwoWay({ ...beam, supports: [0, 24, 48].map((at) => ({ s: at * foot, k })) }, scale * 20 * kip);
    for (const [index, expected] of [8.125, 13.75, -1.875].entries()) {
      published({
        source,
        item: `without settlement: R${"ABC"[index]}, kip`,
        expected,
        computed: level.twoWay[index]! / (scale * kip),
        tolerance: printedTo(4),
      });
    }
  });

  it("equal reactions on three and four level supports", () => {
    const w = 300;
    const x = 1.3194;
    const three = solve({ length: 6 + 2 * x, EI, lines: [{ w }], supports: [0, 3, 6].map((s) => ({ s: x + s, k })) });
    const source = "Civil engineering licensure problem, equal reactions on three supports (read in a reprint)";
    for (const [index, reaction] of three.reactions.entries()) {
      published({
        source,
        item: `overhang 1.3194 m: R${index + 1}, N`,
        expected: 863.88,
        computed: reaction,
        tolerance: { absolute: 0.06 },
      });
    }
    published({
      source,
      item: "overhang 1.3194 m: moment over A, N·m",
      expected: -261.12,
      computed: three.part.moment!.least.value,
      tolerance: printedTo(2),
    });
    published({
      source,
      item: "overhang 1.3194 m: moment over B, N·m",
      expected: -206.94,
      computed: extremeIn(three.part.curves!, "moment", x + 3, x + 3, Math.min).value,
      tolerance: { absolute: 0.02 },
    });
    const derived = "Equal reactions on level supports, derived from the three-moment equation; recomputed";
    const share = (Math.sqrt(109) - 5) / 12;
    const four = solve({
      length: 9 + 6 * share,
      EI,
      lines: [{ w }],
      supports: [0, 3, 6, 9].map((s) => ({ s: 3 * share + s, k })),
    });
    for (const [index, reaction] of four.reactions.entries()) {
      published({
        source: derived,
        item: `four supports, x/s = (√109 − 5)/12: R${index + 1}/W`,
        expected: 0.25,
        computed: reaction / (w * (9 + 6 * share)),
        tolerance: printedTo(7),
      });
    }
  });

  it("two unequal spans", () => {
    const source = "Three-moment equation, two unequal spans (any text on structures); recomputed";
    const { reactions, part } = solve({
      length: 30,
      EI,
      lines: [{ w: 1 }],
      supports: [0, 10, 30].map((s) => ({ s, k })),
    });
    for (const [index, expected] of [1.25, 20.625, 8.125].entries()) {
      published({
        source,
        item: `spans 10 and 20, w = 1: R${index + 1}`,
        expected,
        computed: reactions[index]!,
        tolerance: printedTo(6),
      });
    }
    published({
      source,
      item: "spans 10 and 20, w = 1: moment over B",
      expected: -37.5,
      computed: part.moment!.least.value,
      tolerance: printedTo(5),
    });
    const ratio = (1 + Math.sqrt(13)) / 2;
    const relieved = solve({
      length: 10 * (1 + ratio),
      EI,
      lines: [{ w: 1 }],
      supports: [0, 10, 10 * (1 + ratio)].map((s) => ({ s, k })),
    });
    published({
      source,
      item: "l₂/l₁ = (1 + √13)/2: R1 ÷ W",
      expected: 0,
      computed: relieved.reactions[0]! / (10 * (1 + ratio)),
      tolerance: { absolute: 1e-8 },
    });
  });
});
