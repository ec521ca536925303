import { describe, expect, it } from "vitest";
import { feetForces, floorOf, footprintOf, legFrameHulls, standInBay } from "../../src/floor";
import { boundingBox, polygonArea, standFrame } from "../../src/geometry";
import type { Placement, Point, StandType } from "../../src/plan";
import { aFrame, planWith, straight } from "./plans";

const placed = (over: Partial<Placement>): Placement =>
  ({ stand: "S1", s: 0, t: 0, angle: 0, height: 0.8, shim: 0, ...over }) as Placement;
const degrees = Math.PI / 180;

describe("feet", () => {
  // width/2 + height·tan 15° and legSpacing/2 + height·tan 10°, with a height of 0.8
  const square = 0.1 + 0.8 * Math.tan(15 * degrees);
  const along = 0.4 + 0.8 * Math.tan(10 * degrees);

  it("are square to and along the top, frame − first, in a frame the −square one first", () => {
    const { feet } = footprintOf(aFrame, 0.8, standFrame(placed({ s: 3, t: 1 })));
    const expected: Point[] = [
      [3 - square, 1 - along],
      [3 + square, 1 - along],
      [3 - square, 1 + along],
      [3 + square, 1 + along],
    ];
    for (const [k, [s, t]] of feet.entries()) {
      expect(s).toBeCloseTo(expected[k]![0], 14);
      expect(t).toBeCloseTo(expected[k]![1], 14);
    }
  });

  it("turn with the stand and with the piece", () => {
    // Heading 90° puts s along +y and t along −x; the stand turned by another 90° has its top along −s = −y.
    const { feet } = footprintOf(
      aFrame,
      0.8,
      standInBay(placed({ s: 2, t: 0.5, angle: 90 }), { x: 10, y: 1, heading: 90 }),
    );
    const [middleX, middleY] = [9.5, 3];
    // square = −x, along = −y
    expect(feet[0][0]).toBeCloseTo(middleX + square, 14);
    expect(feet[0][1]).toBeCloseTo(middleY + along, 14);
    expect(feet[3][0]).toBeCloseTo(middleX - square, 14);
    expect(feet[3][1]).toBeCloseTo(middleY - along, 14);
  });

  it("stand wider on a higher stand, and the shim makes no difference", () => {
    const low = footprintOf(aFrame, 0.5, standFrame(placed({})));
    const high = footprintOf(aFrame, 1.5, standFrame(placed({ shim: 0.02 })));
    expect(high.feet[1][0] - low.feet[1][0]).toBeCloseTo(Math.tan(15 * degrees), 14);
    expect(high.feet[3][1] - low.feet[3][1]).toBeCloseTo(Math.tan(10 * degrees), 14);
  });

  it("plates: length square to the top, width along it, centred on the feet", () => {
    const { plates, feet } = footprintOf(straight, 0.8, standFrame(placed({ s: 1 })));
    const { least, most } = boundingBox(plates[0]);
    expect(least[0]).toBeCloseTo(0.8, 14);
    expect(least[1]).toBeCloseTo(-0.45, 14);
    expect(most[0]).toBeCloseTo(1, 14);
    expect(most[1]).toBeCloseTo(-0.35, 14);
    expect(feet[0]).toEqual([0.9, -0.4]);
  });
});

describe("forces of the feet", () => {
  // Footing 0.8 + 2·0.8·tan 10° = 1.0821…
  const spacing = 0.8 + 1.6 * Math.tan(10 * degrees);
  it("a quarter each for a reaction in the middle", () => {
    expect(feetForces(aFrame, 0.8, 10_000, 0)).toEqual([2500, 2500, 2500, 2500]);
  });
  it("moments about the top's middle balance, wherever it acts", () => {
    for (const centre of [-0.5, -0.2, 0.37]) {
      const forces = feetForces(aFrame, 0.8, 10_000, centre);
      expect(forces[0] + forces[1] + forces[2] + forces[3]).toBeCloseTo(10_000, 9);
      expect((forces[2] + forces[3] - forces[0] - forces[1]) * (spacing / 2)).toBeCloseTo(10_000 * centre, 9);
      expect(forces[0]).toBe(forces[1]);
    }
  });
  it("over a pair of straight feet that pair carries it all", () => {
    const [a, b, c, d] = feetForces(straight, 0.8, 6000, 0.4);
    expect([a, b, c, d].map((force) => Math.round(force * 1e6) / 1e6)).toEqual([0, 0, 3000, 3000]);
  });
});

describe("leg frames", () => {
  const own = standFrame(placed({}));

  it("without splay the hull is that of the plates at every height", () => {
    for (const upTo of [0.1, 0.5, 0.8]) {
      const [minus, plus] = legFrameHulls(straight, 0.8, own, upTo);
      // From plate to plate: 0.2 + 0.2 square to the top, 0.1 along it.
      expect(polygonArea(minus)).toBeCloseTo(0.04, 14);
      expect(polygonArea(plus)).toBeCloseTo(0.04, 14);
    }
  });

  it("legs that splay outwards along the top reach back inwards with height", () => {
    // Between z = 0 and z the legs come in by z·tan 10° along the top and by z·tan 15° square to it. The plates reach
    // 0.075 and 0.05 about the foot: above them the hull is the trapezium between the plates' inner edge and the legs.
    const area = (upTo: number) => polygonArea(legFrameHulls(aFrame, 0.8, own, upTo)[1]);
    const [square, in1, in2] = [0.1 + 0.8 * Math.tan(15 * degrees), Math.tan(15 * degrees), Math.tan(10 * degrees)];
    const plates = (2 * square + 0.15) * 0.1;
    expect(area(0.1)).toBeCloseTo(plates, 12);
    const height = 0.8 * in2 - 0.05;
    const trapezium = ((2 * square + 0.15 + 2 * (square - 0.8 * in1)) / 2) * height;
    expect(area(0.8)).toBeCloseTo(plates + trapezium, 12);
    expect(area(5)).toBe(area(0.8));
  });

  it("a trip hull takes the legs up to the trip height only", () => {
    const tall = { ...aFrame, height: { min: 2, max: 2, increment: 0 } } as StandType;
    const full = polygonArea(legFrameHulls(tall, 2, own, 2)[0]);
    const low = polygonArea(legFrameHulls(tall, 2, own, 0.6858)[0]);
    expect(low).toBeLessThan(full);
    const plan = planWith({ types: [tall], placements: [{ s: 5, t: 4, height: 2 }] });
    const [stand] = floorOf(plan, plan.layouts[0]!).stands;
    expect(polygonArea(stand!.footprint.legHulls[0])).toBeCloseTo(full, 12);
    // Both frames grown by 0.05, far from the piece: a little more than twice the trip hull, less than twice the full one.
    expect(stand!.tripZone.area).toBeGreaterThan(2 * low);
  });
});
