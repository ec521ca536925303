/** Least and most against published reactions of rigid pieces on legs and of beams whose supports move. */

import { describe, expect, it } from "vitest";
import { published } from "../helpers/published";
import { boundsIn, heightOf, modelOf, rigid, type Support, weightAt } from "../statics/bounds/handModel";

const exact = { relative: 1e-9, absolute: 1e-9 };

/** Legs of stiffness k at (±a, ±b), in the order (−,−), (+,−), (+,+), (−,+). */
function legs(a: number, b: number, k: number): Support[] {
  const corners = [[-a, -b], [a, -b], [a, b], [-a, b]] as const; // biome-ignore format: one row
  return corners.map(([s, t]) => ({ k, points: [[s, t]] }));
}

describe("a rigid load on four legs", () => {
  it("ranges of the pier problem, whatever the heights", () => {
    const source =
      "Das, Principles of Foundation Engineering (pile group formula) for the place; ranges by linear programme (Euler 1773: only bounds exist)";
    const model = modelOf([-3, 3], rigid, legs(3, 2, 1e6), [weightAt(2, 1, 100)]);
    const [ll, rl, rr, lr] = boundsIn(model, []);
    const rows = [
      ["(+,+)", rr!, 700 / 12, 75],
      ["(+,−)", rl!, 100 / 12, 25],
      ["(−,+)", lr!, 0, 50 / 3],
      ["(−,−)", ll!, 0, 50 / 3],
    ] as const;
    for (const [leg, stand, least, most] of rows) {
      const item = `100 ton at (2, 1) ft on piers at (±3, ±2) ft: ${leg}`;
      published({ source, item: `${item}, least`, expected: least, computed: stand.staticsLeast, tolerance: exact });
      published({ source, item: `${item}, most`, expected: most, computed: stand.staticsMost, tolerance: exact });
    }
    // Elastic piers at one height: the no-tension answer of the same problem
    const oneWay = [0, 25, 58.333, 16.667];
    const printed = { absolute: 5e-4 };
    [ll, rl, rr, lr].forEach((stand, i) => {
      const item = `the same, all at one height: pier ${i + 1}`;
      published({ source, item, expected: oneWay[i]!, computed: stand!.most, tolerance: printed });
      expect(stand!.least).toBeCloseTo(stand!.most, 9);
    });
  });

  it("two opposite legs of a four-leg sling must be able to carry it all", () => {
    const source = "four-leg sling on a rigid load, common practice, no source";
    const stiff = modelOf([-1, 1], rigid, legs(1, 0.5, 1e9), [weightAt(0, 0, 4)]);
    const lengths = [0, 1, 2, 3].map((leg) => heightOf(leg, -0.001, 0.001));
    for (const [leg, stand] of boundsIn(stiff, lengths).entries()) {
      const item = `central load 4, legs equal within 1 mm: leg ${leg + 1}`;
      published({ source, item: `${item}, most`, expected: 2, computed: stand.most, tolerance: exact });
      published({ source, item: `${item}, least`, expected: 0, computed: stand.least, tolerance: exact });
      published({ source, item: `${item}, statics`, expected: 2, computed: stand.staticsMost, tolerance: exact });
    }
  });

  it("one short leg", () => {
    const source = "four equal springs under a rigid load, one low by δ: ±kδ/4 (derived; lift-off at δ = W/k)";
    const table = modelOf([-1, 1], rigid, legs(1, 0.5, 10), [weightAt(0, 0, 4)]);
    for (const [δ, short, next] of [
      [0.1, 0.75, 1.25],
      [0.2, 0.5, 1.5],
      [0.39, 0.025, 1.975],
      [0.5, 0, 2],
    ] as const) {
      const [low, beside, opposite] = boundsIn(table, [heightOf(0, -δ, 0)]);
      const item = `W 4, k 10, up to ${δ} low`;
      published({ source, item: `${item}: short leg least`, expected: short, computed: low!.least, tolerance: exact });
      published({
        source,
        item: `${item}: opposite least`,
        expected: short,
        computed: opposite!.least,
        tolerance: exact,
      });
      published({ source, item: `${item}: next most`, expected: next, computed: beside!.most, tolerance: exact });
    }
    const lopsided = modelOf([-1, 1], rigid, legs(1, 0.5, 10), [weightAt(0.2, 0.1, 4)]);
    for (const [δ, expected] of [
      [0.1, [0.35, 1.25, 1.15, 1.25]],
      [0.5, [0, 1.6, 0.8, 1.6]],
    ] as const) {
      boundsIn(lopsided, [heightOf(0, -δ, 0)]).forEach((stand, leg) => {
        const item = `W 4 at (0.2, 0.1) on (±1, ±0.5), k 10, up to ${δ} low: leg ${leg + 1}`;
        const computed = leg % 2 === 0 ? stand.least : stand.most;
        published({ source, item, expected: expected[leg]!, computed, tolerance: exact });
      });
    }
  });

  it("a beam with torsional rigidity on two stands, one contact low", () => {
    const source = "q = δ/(4/k + b²L/GJ), corners W/4 ∓ q (derived, Saint-Venant torsion)";
    for (const [J, q, tolerance] of [
      [1.71, 0.00690794, { absolute: 5e-9 }],
      [204, 0.621086, { absolute: 5e-7 }],
    ] as const) {
      const [b, L, k] = [24, 240, 200];
      const corners: Support[] = [0, L].flatMap((s) => [-b / 2, b / 2].map((t) => ({ k, points: [[s, t]] as const })));
      const beam = { EI: Number.POSITIVE_INFINITY, GJ: 11_200 * J };
      const [low, beside] = boundsIn(modelOf([0, L], beam, corners, [weightAt(L / 2, 0, 12)]), [heightOf(0, -0.05, 0)]);
      const item = `W 12 kip, k 200, b 24 in, L 240 in, δ 0.05 in, J ${J}`;
      published({ source, item: `${item}: least`, expected: 3 - q, computed: low!.least, tolerance });
      published({ source, item: `${item}: most beside`, expected: 3 + q, computed: beside!.most, tolerance });
    }
  });
});

describe("continuous beams whose supports settle", () => {
  const EI = 1;
  /** Supports at 0, 1, 2, … so stiff that they do not yield, w = 1 on spans of 1. */
  const spans = (count: number) => {
    const supports = Array.from({ length: count + 1 }, (_, i): Support => ({ k: 1e8, points: [[i, -0.1], [i, 0.1]] })); // biome-ignore format: one row
    const load = {
      kind: "line",
      source: { kind: "mass", index: 0 },
      from: 0,
      to: count,
      intensity: [1, 1],
      t: 0,
    } as const;
    return modelOf([0, count], { EI, GJ: Number.POSITIVE_INFINITY }, supports, [load]);
  };
  /** The supports yield by 1e-8 and less. */
  const tolerance = { absolute: 2e-6 };

  it("two equal spans: 5wl/4 ∓ 6EIδ/l³ as the middle support moves, and 12EIδ/l³ as all three do", () => {
    const source = "AISC Manual Table 3-22c (5/4 wl); settlement by the influence matrix of two spans (derived)";
    const δ = 0.05;
    const middle = boundsIn(spans(2), [heightOf(1, -δ, δ)])[1]!;
    published({
      source,
      item: "R_B least, middle ± 0.05 wl⁴/EI",
      expected: 1.25 - 6 * δ,
      computed: middle.least,
      tolerance,
    });
    published({
      source,
      item: "R_B most, middle ± 0.05 wl⁴/EI",
      expected: 1.25 + 6 * δ,
      computed: middle.most,
      tolerance,
    });
    const all = boundsIn(
      spans(2),
      [0, 1, 2].map((support) => heightOf(support, -δ, δ)),
    )[1]!;
    published({
      source,
      item: "R_B least, all ± 0.05 wl⁴/EI",
      expected: 1.25 - 12 * δ,
      computed: all.least,
      tolerance,
    });
    published({ source, item: "R_B most, all ± 0.05 wl⁴/EI", expected: 1.25 + 12 * δ, computed: all.most, tolerance });
  });

  it("three equal spans: after lift-off the others keep what they have", () => {
    const source = "three equal spans, one support lowered or raised far (derived, one-way supports)";
    const lowered = boundsIn(spans(3), [heightOf(1, -1, 0)]);
    published({ source, item: "inner lowered: it, least", expected: 0, computed: lowered[1]!.least, tolerance });
    published({
      source,
      item: "inner lowered: near end, most",
      expected: 0.8125,
      computed: lowered[0]!.most,
      tolerance,
    });
    published({
      source,
      item: "inner lowered: other inner, most",
      expected: 2.0625,
      computed: lowered[2]!.most,
      tolerance,
    });
    published({
      source,
      item: "inner lowered: far end, least",
      expected: 0.125,
      computed: lowered[3]!.least,
      tolerance,
    });
    const raised = boundsIn(spans(3), [heightOf(1, 0, 0.2)]);
    published({ source, item: "inner raised by 0.2: it, most", expected: 2.25, computed: raised[1]!.most, tolerance });
    published({
      source,
      item: "inner raised by 0.2: near end, least",
      expected: 0,
      computed: raised[0]!.least,
      tolerance,
    });
    published({
      source,
      item: "inner raised by 0.2: far end, most",
      expected: 0.75,
      computed: raised[3]!.most,
      tolerance,
    });
  });
});
