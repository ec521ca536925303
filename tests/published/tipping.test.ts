/** Tipping limits against closed forms. */

import { describe, it } from "vitest";
import { tippingForceAt, tippingOf } from "../../src/statics";
import { published } from "../helpers/published";
import { build, g, line, rectangle } from "../statics/tipping/build";

describe("a beam with one overhang (AISC Manual Table 3-23, cases 24 to 26)", () => {
  /** l between the stands, a beyond the second, w along it all; stands without breadth along the beam. */
  const overhang = (l: number, a: number, w: number) => {
    const { model, level, piece } = build(
      rectangle(l + a, 0.5),
      [
        { s: 0, length: 1 },
        { s: l, length: 1 },
      ],
      [line("beam", 0, l + a, [w / g, w / g])],
    );
    return tippingOf(model, level, piece, null, 0)[0]!;
  };

  it("the tip load that takes the far support to zero", () => {
    published({
      source: "statics: P_tip = w(l² − a²)/2a, as R1 of AISC Manual Table 3-23 cases 24 and 26 gives it",
      item: "l 10, a 3, w 2: load at the tip",
      expected: 30.3333,
      computed: overhang(10, 3, 2).addedLoad!.value,
      tolerance: { absolute: 5e-5 },
    });
    for (const [l, a, w] of [
      [8, 1, 5],
      [5, 4, 0.7],
      [6, 5.99, 3],
    ] as const) {
      published({
        source: "statics: P_tip = w(l² − a²)/2a",
        item: `l ${l}, a ${a}, w ${w}: load at the tip`,
        expected: (w * (l ** 2 - a ** 2)) / (2 * a),
        computed: overhang(l, a, w).addedLoad!.value,
        tolerance: { relative: 1e-9 },
      });
    }
  });

  it("without a load the overhang may be as long as the span", () => {
    for (const [a, expected] of [
      [9.999, 1],
      [10, 0],
      [10.001, 0],
    ] as const) {
      const far = overhang(10, a, 2).edges.find((edge) => edge.outward[0] > 0.9)!;
      published({
        source: "statics: the beam tips where a > l",
        item: `l 10, a ${a}: 1 while righting is over overturning`,
        expected,
        computed: far.righting - far.overturning > 1e-9 ? 1 : 0,
        tolerance: { absolute: 0 },
      });
    }
  });

  it("reserve is the square of l/a", () => {
    // Righting w·l²/2, overturning w·a²/2
    for (const a of [1, 2, 5, 9]) {
      const far = overhang(10, a, 2).edges.find((edge) => edge.outward[0] > 0.9)!;
      published({
        source: "statics: righting ÷ overturning = (l/a)²",
        item: `l 10, a ${a}: reserve`,
        expected: (10 / a) ** 2,
        computed: far.reserve!,
        tolerance: { relative: 1e-12 },
      });
    }
  });

  it("an added weight part of the way out", () => {
    const { edges } = overhang(10, 3, 2);
    for (const x of [0.5, 1, 2])
      published({
        source: "statics: moment w(l² − a²)/2 about the second support over the lever",
        item: `l 10, a 3, w 2: load ${x} beyond the second support`,
        expected: 91 / x,
        computed: tippingForceAt(edges, 10 + x, 0, 13)!,
        tolerance: { relative: 1e-9 },
      });
  });
});
