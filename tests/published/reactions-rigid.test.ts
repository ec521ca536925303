/** Rigid pieces on points, one short leg, twist, and strips in partial contact (published-checks.md, section 5). */

import { describe, expect, it } from "vitest";
import { type Beam, solve } from "../helpers/beam";
import { printedTo, published } from "../helpers/published";

/** Legs are tops of ten nanometres: points, as far as the digits go. */
const point = 1e-8;
const exact = { absolute: 1e-9 };

/** A rigid table 8 m × 4 m about (4, 0) with a load W off its middle by e; legs at (±p, ±q) in the order (−,−) (+,−) (+,+) (−,+). */
function table(
  legs: readonly (readonly [number, number])[],
  W: number,
  e: readonly [number, number],
  low: readonly number[] = [],
  k = 1e8,
): number[] {
  const beam: Beam = {
    length: 8,
    width: 6,
    points: [{ s: 4 + e[0], t: e[1], P: W }],
    supports: legs.map(([s, t], index) => ({ s: 4 + s, t, k, top: point, lower: low[index] ?? 0 })),
  };
  return [...solve(beam).reactions];
}

const four = (p: number, q: number) =>
  [
    [-p, -q],
    [p, -q],
    [p, q],
    [-p, q],
  ] as const;

describe("5.1: equal-stiffness points", () => {
  const source =
    "Das, Principles of Foundation Engineering; Tomlinson, Pile Design (rigid cap on equal piles), from memory; recomputed";
  const rows = [
    {
      what: "rectangular table, e = (0.3, 0.1)",
      legs: four(1, 0.5),
      W: 4e4,
      e: [0.3, 0.1],
      unit: 1e4,
      right: [0.5, 1.1, 1.5, 0.9],
    },
    {
      what: "outside the core, e = (0.7, 0.2), one-way",
      legs: four(1, 0.5),
      W: 4e4,
      e: [0.7, 0.2],
      unit: 1e4,
      right: [0, 1.2, 2.2, 0.6],
    },
  ] as const;
  it.each(rows)("$what", ({ what, legs, W, e, unit, right }) => {
    for (const [index, reaction] of table(legs, W, e).entries()) {
      published({
        source,
        item: `${what}: leg ${index + 1}`,
        expected: right[index]!,
        computed: reaction / unit,
        tolerance: exact,
      });
    }
  });

  it("pier problem, no tension", () => {
    const piers =
      "Pier problem, piers at (±3, ±2) ft under 100 ton at (2, 1) ft (read in a reprint), without tension; recomputed";
    const foot = 0.3048;
    const got = table(four(3 * foot, 2 * foot), 1e6, [2 * foot, foot]);
    for (const [index, expected] of [0, 25, 58.333, 16.667].entries()) {
      published({
        source: piers,
        item: `pier ${index + 1}, ton`,
        expected,
        computed: got[index]! / 1e4,
        tolerance: printedTo(3),
      });
    }
    // The two-way shares, printed 54, 29, 21 and −4: a load that keeps all in compression is added and taken off.
    const pressed = solve({
      length: 8,
      width: 6,
      points: [
        { s: 4 + 2 * foot, t: foot, P: 1e6 },
        { s: 4, t: 0, P: 1e6 },
      ],
      supports: four(3 * foot, 2 * foot).map(([s, t]) => ({ s: 4 + s, t, k: 1e8, top: point })),
    }).reactions;
    for (const [index, expected] of [-4.17, 29.17, 54.17, 20.83].entries()) {
      published({
        source: piers,
        item: `pier ${index + 1} if it could pull, ton`,
        expected,
        computed: (pressed[index]! - 2.5e5) / 1e4,
        tolerance: printedTo(2),
      });
    }
  });

  it("three legs: statics alone", () => {
    const legs = [
      [-1.5, -0.8],
      [2, -0.3],
      [0.2, 1.4],
    ] as const;
    const right = [0.2, 0.5, 0.3];
    const e = [0, 1].map((axis) => legs.reduce((sum, leg, index) => sum + right[index]! * leg[axis]!, 0)) as [
      number,
      number,
    ];
    for (const [index, reaction] of table(legs, 1e4, e).entries()) {
      published({
        source: "Three legs under a load, barycentric coordinates (statics); recomputed",
        item: `leg ${index + 1} ÷ W`,
        expected: right[index]!,
        computed: reaction / 1e4,
        tolerance: exact,
      });
    }
  });
});

describe("5.2: one short leg, k = 10, W = 4", () => {
  const source =
    "Rigid load on four equal springs, one low by δ, derived by statics and the plane of the piece; recomputed";
  // In units of 1e4 N and m: k = 10 units/m.
  const rows = [
    { delta: 0.1, right: [0.75, 1.25, 0.75, 1.25] },
    { delta: 0.2, right: [0.5, 1.5, 0.5, 1.5] },
    { delta: 0.39, right: [0.025, 1.975, 0.025, 1.975] },
    { delta: 0.4, right: [0, 2, 0, 2] },
    { delta: 0.45, right: [0, 2, 0, 2] },
    { delta: 1, right: [0, 2, 0, 2] },
  ];
  it.each(rows)("central load, δ = $delta", ({ delta, right }) => {
    const got = table(four(1, 0.5), 4e4, [0, 0], [delta], 1e5);
    for (const [index, expected] of right.entries()) {
      published({
        source,
        item: `short leg 1, δ = ${delta}: leg ${index + 1}`,
        expected,
        computed: got[index]! / 1e4,
        tolerance: { absolute: 1e-8 },
      });
    }
  });

  it.each([
    { delta: 0.1, right: [0.35, 1.25, 1.15, 1.25] },
    { delta: 0.5, right: [0, 1.6, 0.8, 1.6] },
  ])("load at (0.2, 0.1), δ = $delta", ({ delta, right }) => {
    const got = table(four(1, 0.5), 4e4, [0.2, 0.1], [delta], 1e5);
    for (const [index, expected] of right.entries()) {
      published({
        source,
        item: `eccentric, short leg 1, δ = ${delta}: leg ${index + 1}`,
        expected,
        computed: got[index]! / 1e4,
        tolerance: { absolute: 1e-8 },
      });
    }
  });
});

describe("5.2: beam with torsional stiffness on two pairs of contacts, one low, kip and inch", () => {
  const source = "Twisted beam on four springs, q = δ/(4/k + b²L/GJ), derived by the force method; recomputed";
  const kip = 4448.2216152605;
  const inch = 0.0254;
  const [W, k, b, L, G] = [12, 200, 24, 240, 11200];
  const corners = (J: number, delta: number): number[] => {
    const supports = [
      [0, -1],
      [L, -1],
      [L, 1],
      [0, 1],
    ].map(([s, side], index) => ({
      s: s! * inch,
      t: (side! * b * inch) / 2,
      k: (k * kip) / inch,
      top: point,
      lower: index === 0 ? delta * inch : 0,
    }));
    const GJ = G * J * kip * inch * inch;
    const points = [{ s: (L / 2) * inch, P: W * kip }];
    return solve({ length: L * inch, width: 1, EI: 1e8, GJ, points, supports }).reactions.map(
      (reaction) => reaction / kip,
    );
  };

  it.each([
    { J: 1.71, q: 0.00690794, off: 21.7141 },
    { J: 204, q: 0.621086, off: 0.241513 },
  ])("J = $J in⁴", ({ J, q, off }) => {
    const got = corners(J, 0.05);
    for (const [index, sign] of [-1, 1, -1, 1].entries()) {
      published({
        source,
        item: `J = ${J}, δ = 0.05 in: corner ${index + 1}, kip`,
        expected: W / 4 + sign * q,
        computed: got[index]!,
        tolerance: { absolute: 5e-7 },
      });
    }
    const computed = (0.05 * (W / 4)) / (W / 4 - got[0]!);
    published({
      source,
      item: `J = ${J}: δ at which the corner lets go, in`,
      expected: off,
      computed,
      tolerance: { relative: 5e-6 },
    });
    expect(corners(J, off * 1.001)[0]).toBe(0);
    expect(corners(J, off * 0.999)[0]).toBeGreaterThan(0);
  });
});

describe("5.3: rigid strip, length L across, load off its middle", () => {
  const [length, b, P] = [2, 0.1, 1e5];
  /** Two parallel tops carry the same, so each is the strip under half the load. */
  const strip = (eccentricity: number) =>
    solve({
      length: 4,
      width: length,
      points: [{ s: 2, t: eccentricity * length, P }],
      supports: [1, 3].map((s) => ({ s, k: 1e8 })),
    });
  /** Greatest pressure of the answer, in units of the mean pressure. */
  const pressure = (eccentricity: number) => strip(eccentricity).stands[0]!.bearingPressure! / (P / 2 / (length * b));

  it("inside the kern the five points are exact", () => {
    const source = "Rigid footing, q = P/A·(1 + 6e/L), any foundation text; recomputed";
    for (const e of [0, 1 / 24, 1 / 12, 1 / 8, 1 / 6]) {
      published({
        source,
        item: `e/L = ${e}: greatest pressure ÷ mean`,
        expected: 1 + 6 * e,
        computed: pressure(e),
        tolerance: { relative: 1e-9 },
      });
    }
  });

  it("beyond it they are the model, and differ from the continuum by a known amount", () => {
    const source =
      "Rigid strip on five Gauss–Lobatto springs, own closed form; continuum: q = 2P/[3B(L/2 − e)] (Das; Coduto; Bowles, from memory)";
    for (const e of [0.2, 0.25, 1 / 3, 0.4]) {
      const model = fivePoints(e);
      const continuum = 2 / (3 * (1 / 2 - e));
      const percent = (100 * (model - continuum)) / continuum;
      const item = `e/L = ${e.toFixed(4)}: greatest pressure ÷ mean of the five-point model (continuum ${continuum.toFixed(5)}, so ${percent.toFixed(1)} %)`;
      published({ source, item, expected: model, computed: pressure(e), tolerance: { relative: 1e-9 } });
      // What the difference is, stated as a number: it comes from the model alone.
      published({
        source,
        item: `e/L = ${e.toFixed(4)}: five points less continuum, ÷ mean`,
        expected: model - continuum,
        computed: pressure(e) - continuum,
        tolerance: { absolute: 1e-8 },
      });
    }
  });
});

/** Pressure at the edge, ÷ mean, of a rigid strip on five springs at −1, −√(3/7), 0, √(3/7), 1 (half lengths): all sets tried. */
function fivePoints(e: number): number {
  const nodes = [-1, -Math.sqrt(3 / 7), 0, Math.sqrt(3 / 7), 1];
  const weights = [1 / 20, 49 / 180, 16 / 45, 49 / 180, 1 / 20];
  for (let first = 0; first < 4; first++) {
    let [m0, m1, m2] = [0, 0, 0];
    for (let j = first; j < 5; j++) {
      m0 += weights[j]!;
      m1 += weights[j]! * nodes[j]!;
      m2 += weights[j]! * nodes[j]! ** 2;
    }
    // Pressure a + b·x with Σw·p = 1 and Σw·p·x = 2e.
    const determinant = m0 * m2 - m1 * m1;
    const a = (m2 - 2 * e * m1) / determinant;
    const b = (2 * e * m0 - m1) / determinant;
    const presses = (j: number) => a + b * nodes[j]! > 0;
    if (presses(first) && (first === 0 || !presses(first - 1))) return a + b;
  }
  throw new Error("no set of points carries the load");
}
