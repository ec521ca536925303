/** Pushing by hand. */

import { describe, expect, it } from "vitest";
import type { Point } from "../../../src/plan";
import {
  centreHeight,
  extentAcross,
  lesserBreadth,
  pushForce,
  rollOvers,
  sliding,
  standReserve,
  tippingOf,
} from "../../../src/statics";
import { build, g, line, point, rectangle } from "./build";

const criteria = { horizontalFraction: 0.03, pushLeast: 500 };

describe("the push", () => {
  it("is a share of the weight, at least so much, and what the slope of the floor gives", () => {
    expect(pushForce(100_000, [0, 0], criteria)).toBe(3000);
    expect(pushForce(10_000, [0, 0], criteria)).toBe(500);
    expect(pushForce(100_000, [0.03, 0.04], criteria)).toBeCloseTo(8000, 9);
  });

  it("acts at the height of the centre of gravity", () => {
    const { model, piece } = build(
      rectangle(10, 0.5),
      [{ s: 5, length: 1 }],
      [line("beam", 0, 10, [100, 200], { z: 0.4 }), point("motor", 3, 0, 500, { z: 1.2 })],
    );
    // 1500 kg at 0.4 and 500 kg at 1.2
    expect(centreHeight(model.parts[0]!, piece.masses)).toBeCloseTo(0.6, 12);
    expect(centreHeight({ ...model.parts[0]!, loads: [] }, piece.masses)).toBeNull();
  });
});

describe("rolling over", () => {
  const { model, level, piece } = build(
    rectangle(10, 0.5),
    [
      { s: 1, length: 0.6 },
      { s: 9, length: 0.6 },
    ],
    [line("beam", 0, 10, [100, 100])],
  );
  const { edges } = tippingOf(model, level, piece, null, 1000)[0]!;

  it("adds H·z to what overturns", () => {
    // Sides: 1000·g at 0.3 m rights; the person 0.2 m beyond and 600 N at 1.5 m overturn.
    const side = rollOvers(edges, 600, 1.5).find(({ from, to }) => from[1] === 0.3 && to[1] === 0.3)!;
    expect(side.reserve).toBeCloseTo((1000 * g * 0.3) / (200 + 900), 9);
  });

  it("does not mind whether the push acts above or below the tops", () => {
    expect(rollOvers(edges, 600, -1.5)).toEqual(rollOvers(edges, 600, 1.5));
  });

  it("has no reserve to state where nothing pushes and nothing overturns", () => {
    const bare = tippingOf(model, level, { ...piece, outline: rectangle(10, 0.3) }, null, 1000)[0]!;
    const side = rollOvers(bare.edges, 0, 1.5).find(({ from, to }) => from[1] === 0.3 && to[1] === 0.3)!;
    expect(side.reserve).toBeNull();
  });

  it("measures the polygon across the piece", () => {
    expect(extentAcross(edges)).toBeCloseTo(0.6, 12);
    expect(extentAcross([])).toBe(0);
  });
});

describe("sliding", () => {
  const stands = [
    { reaction: 30_000, friction: 0.3, selfWeight: 1000 },
    { reaction: 10_000, friction: 0.1, selfWeight: 1500 },
    { reaction: 0, friction: 0.1, selfWeight: 800 },
  ];

  it("between piece and tops, and under each stand by its share of the push", () => {
    const answer = sliding(stands, 1000, [300, -400], 0.1);
    expect(answer.push).toBe(1500);
    expect(answer.shares).toEqual([1125, 375, 0]);
    expect(answer.onTops).toBeCloseTo((9000 + 1000) / 1500, 12);
    expect(answer.onFloor[0]).toBeCloseTo((0.1 * 31_000) / 1125, 12);
    expect(answer.onFloor[1]).toBeCloseTo((0.1 * 11_500) / 375, 12);
    expect(answer.onFloor[2]).toBeNull();
  });

  it("has nothing to state without a push", () => {
    expect(sliding(stands, 0, [0, 0], 0.1).onTops).toBeNull();
  });
});

describe("a stand about its own feet", () => {
  // Base 1.2 (along the top) × 0.8 (square to it), 0.9 m high; top 0.2 wide; 10 kN; 1 kN own weight.
  const feet: Point[] = [
    [-0.4, -0.6],
    [0.4, -0.6],
    [-0.4, 0.6],
    [0.4, 0.6],
  ];
  const stand = {
    feet,
    middle: [0, 0] as Point,
    centre: [0, 0] as Point,
    square: [1, 0] as Point,
    topWidth: 0.2,
    height: 0.9,
    reaction: 10_000,
    selfWeight: 1000,
  };

  it("is weakest square to its top, with the reaction at the edge of the top", () => {
    // (10 000·(0.4 − 0.1) + 1000·0.4) ÷ (500·0.9)
    expect(standReserve(stand, 500)).toBeCloseTo(3400 / 450, 12);
  });

  it("feels where the reaction acts along the top", () => {
    // 0.5 m along: (10 000·0.1 + 1000·0.6) ÷ 450 about the end.
    expect(standReserve({ ...stand, centre: [0, 0.5] }, 500)).toBeCloseTo(1600 / 450, 12);
    // 0.7 m along it acts outside the base: righting is negative.
    expect(standReserve({ ...stand, centre: [0, 0.7] }, 500)).toBeCloseTo((-1000 + 600) / 450, 12);
  });

  it("does not change when everything is turned and moved", () => {
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    const move = ([x, y]: Point): Point => [c * x - s * y + 3, s * x + c * y - 5];
    const moved = {
      ...stand,
      feet: feet.map(move),
      middle: move(stand.middle),
      centre: move([0.02, 0.3]),
      square: [c, s] as Point,
    };
    expect(standReserve(moved, 500)).toBeCloseTo(standReserve({ ...stand, centre: [0.02, 0.3] }, 500)!, 12);
  });

  it("has no reserve to state without a push, and none at all on feet in a line", () => {
    expect(standReserve(stand, 0)).toBeNull();
    expect(standReserve({ ...stand, feet: feet.slice(0, 2) }, 500)).toBe(0);
  });

  it("measures the lesser breadth of its base", () => {
    expect(lesserBreadth(feet)).toBeCloseTo(0.8, 12);
    expect(
      lesserBreadth([
        [0, 0],
        [3, 0],
        [0, 4],
      ]),
    ).toBeCloseTo(2.4, 12);
    expect(lesserBreadth(feet.slice(0, 2))).toBe(0);
  });
});
