import { describe, expect, it } from "vitest";
import { floorOf } from "../../src/floor";
import type { BayDocument, Polygon, WalkwayDocument } from "../../src/plan";
import { bay, planWith, straight } from "./plans";

const floor = (setting: Parameters<typeof planWith>[0]) => {
  const plan = planWith(setting);
  return floorOf(plan, plan.layouts[0]!);
};
const route = (over: Partial<WalkwayDocument> = {}): WalkwayDocument => ({
  name: "route",
  from: [2.5, 2],
  to: [17.5, 2],
  ...over,
});
const withRoute = (over: Partial<WalkwayDocument> = {}, more: Partial<BayDocument> = {}): BayDocument => ({
  ...bay,
  walkways: [route(over)],
  ...more,
});
const straightStand = [{ type: "straight" }];
/** A block that shuts the far side of the piece, y 4.2 to 8. */
const far: BayDocument["obstacles"] = [
  {
    name: "press",
    polygon: [
      [4, 4.2],
      [6, 4.2],
      [6, 8],
      [4, 8],
    ] as Polygon,
  },
];

describe("walkway width", () => {
  it("between the wall and the piece where nothing else stands", () => {
    // Piece from y = 3.8 up, its far side shut; the start 1.9 from the wall does not govern.
    const [walkway] = floor({
      placements: [],
      bay: withRoute({ from: [2.5, 1.9], to: [17.5, 1.9] }, { obstacles: far }),
    }).walkways;
    expect(walkway).toMatchObject({ name: "route", required: 0.7112 });
    expect(walkway!.clearWidth).toBeCloseTo(3.8, 12);
    expect(walkway!.withoutLegs).toBeCloseTo(3.8, 12);
  });

  it("legs take from it, and without them the top still does where it is below headroom", () => {
    // Straight stand at t = 0: legs to y = 3.55 and 0.05 more; top of length 1 to y = 3.5.
    const bayFar = withRoute({ from: [2.5, 1.7], to: [17.5, 1.7] }, { obstacles: far });
    const low = floor({ stands: straightStand, placements: [{ s: 5 }], bay: bayFar }).walkways[0]!;
    expect(low.clearWidth).toBeCloseTo(3.4, 12);
    const wide = floor({
      stands: straightStand,
      placements: [{ s: 5 }],
      bay: withRoute({ from: [2.5, 1.8], to: [17.5, 1.8] }, { obstacles: far }),
    });
    // Start and end allow 3.6; legs end at 4 − 0.4 − 0.05 − 0.05 = 3.5, tops at 3.5.
    expect(wide.walkways[0]!.clearWidth).toBeCloseTo(3.5, 12);
    expect(wide.walkways[0]!.withoutLegs).toBeCloseTo(3.5, 12);
    const high = floor({
      stands: straightStand,
      placements: [{ s: 5, height: 2.1 }],
      bay: withRoute({ from: [2.5, 1.8], to: [17.5, 1.8] }, { obstacles: far }),
    });
    expect(high.walkways[0]!.clearWidth).toBeCloseTo(3.5, 12);
    expect(high.walkways[0]!.withoutLegs).toBeCloseTo(3.6, 12);
  });

  it("headroom counts height, offset and shim together", () => {
    const at = (height: number, heightOffset: number, shim: number) =>
      floor({ stands: [{ type: "straight", heightOffset }], placements: [{ s: 5, height, shim }] }).stands[0]!
        .topInTheWay;
    expect(at(2.031, 0, 0)).toBe(true);
    expect(at(2.032, 0, 0)).toBe(false);
    expect(at(2.02, 0.006, 0.006)).toBe(false);
    expect(at(2.04, -0.01, 0)).toBe(true);
  });

  it("nobody walks under the piece, however high", () => {
    const across = withRoute({ from: [10, 1], to: [10, 7] });
    // Round the end of the piece: x from 15 to 20, but start and end allow 2.
    expect(floor({ placements: [], bay: across }).walkways[0]!.clearWidth).toBeCloseTo(2, 12);
    const shut = {
      obstacles: [
        {
          name: "a",
          polygon: [
            [0, 3.9],
            [5.1, 3.9],
            [5.1, 4.1],
            [0, 4.1],
          ] as Polygon,
        },
        {
          name: "b",
          polygon: [
            [14.9, 3.9],
            [20, 3.9],
            [20, 4.1],
            [14.9, 4.1],
          ] as Polygon,
        },
      ],
    };
    expect(floor({ placements: [], bay: withRoute({ from: [10, 1], to: [10, 7] }, shut) }).walkways[0]).toMatchObject({
      clearWidth: 0,
      withoutLegs: 0,
      narrowestAt: null,
    });
  });

  it("blocked at its start: 0 and null, and the walkway's own width is asked for", () => {
    const [walkway] = floor({ placements: [], bay: withRoute({ from: [7, 4], width: 1.1 }) }).walkways;
    expect(walkway).toMatchObject({ clearWidth: 0, narrowestAt: null, required: 1.1 });
  });

  it("blocked by legs only: 0 with them, open without", () => {
    // A corridor 0.6 wide in front of the piece, y 3.2 to 3.8; the stand, turned by 90°, has its frames across it:
    // plates 0.3 long, hulls y 3.25 to 3.75, grown to 3.2 and 3.8.
    const narrow: BayDocument = {
      ...withRoute({ from: [1, 3.5], to: [19, 3.5] }),
      outline: [
        [0, 3.2],
        [20, 3.2],
        [20, 4.1],
        [0, 4.1],
      ],
    };
    const result = floor({
      types: [{ ...straight, foot: { length: 0.3, width: 0.1 } }],
      stands: straightStand,
      placements: [{ s: 5, t: -0.5, angle: 90, height: 2.2 }],
      bay: narrow,
    }).walkways[0]!;
    expect(result.clearWidth).toBe(0);
    expect(result.narrowestAt).toBeNull();
    expect(result.withoutLegs).toBeCloseTo(0.6, 12);
  });
});

describe("lanes", () => {
  const lane = (from: number, to: number): Polygon => [
    [0, from],
    [20, from],
    [20, to],
    [0, to],
  ];
  it("tells feet and trip zone apart, and touching is not sharing", () => {
    // Straight stand at y 4: plates of the lower frame y 3.55 to 3.65, zone 3.5 to 3.7.
    const at = (ring: Polygon) =>
      floor({ stands: straightStand, placements: [{ s: 5 }], bay: withRoute({ lane: ring }) }).walkways[0]!.lane[0]!;
    expect(at(lane(0, 3.6)).feet).toBeCloseTo(2 * 0.2 * 0.05, 12);
    expect(at(lane(0, 3.55)).feet).toBeCloseTo(0, 12);
    // Zone below y = 3.55: 0.4 × 0.05 and two quarter discs.
    expect(at(lane(0, 3.55)).tripZone).toBeCloseTo(0.02 + (Math.PI * 0.05 ** 2) / 2, 5);
    expect(at(lane(0, 3.5)).tripZone).toBeLessThan(1e-6);
    expect(at(lane(0, 3.499))).toEqual({ stand: "S1", feet: 0, tripZone: 0 });
  });
  it("no lane, no overlaps", () => {
    expect(floor({ placements: [{ s: 5 }], bay: withRoute() }).walkways[0]!.lane).toEqual([]);
  });
});
