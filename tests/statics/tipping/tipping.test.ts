/** Tipping by hand, where the numbers can be followed on paper. */

import { describe, expect, it } from "vitest";
import { signedArea } from "../../../src/geometry";
import type { Load, Point } from "../../../src/plan";
import {
  leastTippingForce,
  type PartTipping,
  type StepLevel,
  standingRegion,
  standsNotToLose,
  tippingForceAt,
  tippingOf,
} from "../../../src/statics";
import { type Built, build, g, line, point, rectangle } from "./build";

const edgeAt = ({ edges }: PartTipping, outward: Point) =>
  edges.find((edge) => Math.hypot(edge.outward[0] - outward[0], edge.outward[1] - outward[1]) < 1e-9)!;
const tip = ({ model, level, piece }: Built, person = 0, most: readonly number[] | null = null): PartTipping =>
  tippingOf(model, level, piece, most, person)[0]!;

describe("a beam on two stands", () => {
  // 12 m, 100 kg/m, stands at 2 and 8, tops 1 m: polygon 2..8 × ±0.5; W = 1200·g at 6.
  const beam = build(
    rectangle(12, 0.5),
    [
      { s: 2, length: 1 },
      { s: 8, length: 1 },
    ],
    [line("beam", 0, 12, [100, 100])],
  );

  it("rights and overturns by its two sides of each edge", () => {
    const far = edgeAt(tip(beam), [1, 0]);
    // Left of s = 8: 800 kg at 4 m; right of it: 400 kg at 2 m.
    expect(far.righting).toBeCloseTo(800 * g * 4, 6);
    expect(far.overturning).toBeCloseTo(400 * g * 2, 6);
    expect(far.reserve).toBeCloseTo(4, 12);
    expect(far.distance).toBeCloseTo(2, 12);
    // Without uncertainty the margin is W times the distance of the resultant.
    expect(far.margin).toBeCloseTo(1200 * g * 2, 6);
  });

  it("counts uncertainty against it on both sides", () => {
    const uncertain = build(
      rectangle(12, 0.5),
      [
        { s: 2, length: 1 },
        { s: 8, length: 1 },
      ],
      [line("beam", 0, 12, [100, 100], { uncertainty: 0.1 })],
    );
    expect(edgeAt(tip(uncertain), [1, 0]).reserve).toBeCloseTo((4 * 0.9) / 1.1, 12);
  });

  it("puts the person at the farthest end, in the reserve but not in the margin", () => {
    const far = edgeAt(tip(beam, 1000), [1, 0]);
    expect(far.person).toBeCloseTo(4000, 9);
    expect(far.reserve).toBeCloseTo((3200 * g) / (800 * g + 4000), 12);
    expect(far.margin).toBeCloseTo(2400 * g, 6);
  });

  it("names the least force that tips it, and where", () => {
    // Far end: 2400·g over 4 m = 600·g; near end: 1200·g·4 over 2 m = 2400·g. No point lies beyond the sides.
    const { addedLoad, edges } = tip(beam);
    expect(addedLoad?.value).toBeCloseTo(600 * g, 6);
    expect(addedLoad?.s).toBe(12);
    expect(tippingForceAt(edges, 10, 0, 12)).toBeCloseTo(1200 * g, 6);
    expect(tippingForceAt(edges, 0, 0.3, 12)).toBeCloseTo(2400 * g, 6);
    expect(tippingForceAt(edges, 5, 0.5, 12)).toBeNull();
  });

  it("has nothing to reserve where nothing overturns", () => {
    const short = build(
      rectangle(12, 0.5),
      [
        { s: 0, length: 1 },
        { s: 12, length: 1 },
      ],
      [line("beam", 0, 12, [100, 100])],
    );
    const answer = tip(short, 1334);
    expect(answer.edges.map((edge) => edge.reserve)).toEqual([null, null, null, null]);
    expect(answer.addedLoad).toBeNull();
  });

  it("leaves a stand that never bears out of the polygon", () => {
    const three = build(
      rectangle(12, 0.5),
      [
        { s: 2, length: 1 },
        { s: 8, length: 1 },
        { s: 11, length: 1 },
      ],
      [line("beam", 0, 12, [100, 100])],
    );
    expect(Math.max(...tip(three).edges.map(({ from }) => from[0]))).toBe(11);
    expect(Math.max(...tip(three, 0, [7000, 7000, 0.01]).edges.map(({ from }) => from[0]))).toBe(8);
    expect(Math.max(...tip(three, 0, [7000, 7000, 0.02]).edges.map(({ from }) => from[0]))).toBe(11);
  });

  it("says neither reserve nor margin of a part that is unstable", () => {
    const level = { ...beam.level, parts: [{ ...beam.level.parts[0]!, stable: false }] } as StepLevel;
    const answer = tip({ ...beam, level }, 1334);
    expect(answer.addedLoad).toBeNull();
    expect(answer.edges.map(({ reserve, margin }) => [reserve, margin])).toEqual(Array(4).fill([null, null]));
    expect(answer.edges.every(({ distance }) => distance !== null)).toBe(true);
  });
});

describe("what counts on which side", () => {
  const stands = [
    { s: 2, length: 1 },
    { s: 8, length: 1 },
  ];
  const beam = line("beam", 0, 12, [100, 100]);

  it("a point mass whose centre may lie beyond the edge overturns from there, whole", () => {
    const sure = tip(build(rectangle(12, 0.5), stands, [beam, point("box", 7.9, 0, 100)]));
    const unsure = tip(
      build(rectangle(12, 0.5), stands, [beam, point("box", 7.9, 0, 100, { centreWithin: { s: 0.3, t: 0 } })]),
    );
    const near = tip(
      build(rectangle(12, 0.5), stands, [beam, point("box", 7.5, 0, 100, { centreWithin: { s: 0.3, t: 0 } })]),
    );
    const bare = edgeAt(tip(build(rectangle(12, 0.5), stands, [beam])), [1, 0]);
    expect(edgeAt(sure, [1, 0]).righting - bare.righting).toBeCloseTo(100 * g * 0.1, 6);
    expect(edgeAt(unsure, [1, 0]).overturning - bare.overturning).toBeCloseTo(100 * g * 0.2, 6);
    expect(edgeAt(unsure, [1, 0]).righting).toBeCloseTo(bare.righting, 6);
    expect(edgeAt(near, [1, 0]).righting - bare.righting).toBeCloseTo(100 * g * 0.2, 6);
  });

  it("a centre that may lie off in s and t counts both, square to a slanting edge", () => {
    const turned = [
      { s: 2, length: 1 },
      { s: 8, length: 1, angle: 30 },
    ];
    const with0 = tip(build(rectangle(12, 0.5), turned, [beam, point("box", 10, 0, 100)]));
    const with1 = tip(
      build(rectangle(12, 0.5), turned, [beam, point("box", 10, 0, 100, { centreWithin: { s: 0.3, t: 0.2 } })]),
    );
    const outward: Point = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const more = edgeAt(with1, outward).overturning - edgeAt(with0, outward).overturning;
    expect(more).toBeCloseTo(100 * g * (0.3 * outward[0] + 0.2 * outward[1]), 6);
  });

  it("a step's load counts only where it overturns, its F·z with its weight", () => {
    const load = (force: Load["force"], s: number, z: number): Load => ({ name: "", s, t: 0, z, force });
    const bare = edgeAt(tip(build(rectangle(12, 0.5), stands, [beam])), [1, 0]);
    const far = (loads: Load[]) => edgeAt(tip(build(rectangle(12, 0.5), stands, [beam], loads)), [1, 0]);
    // 500 N down, 1 m inside the edge, and a push of 400 N towards it at 2 m: 800 − 500 = 300 N·m over.
    expect(far([load([400, 0, -500], 7, 2)]).overturning - bare.overturning).toBeCloseTo(300, 6);
    // The same with a weaker push rights, and does not count.
    const weak = far([load([200, 0, -500], 7, 2)]);
    expect([weak.righting, weak.overturning]).toEqual([bare.righting, bare.overturning]);
    // A hoist that lifts 300 N at 3 m inside the edge overturns by 900 N·m.
    expect(far([load([0, 0, 300], 5, 0)]).overturning - bare.overturning).toBeCloseTo(900, 6);
  });

  it("a trapezium of mass is split where it crosses a slanting edge", () => {
    // Edge through (8, 0) at 30°; a line of mass at t = 0 from 6 to 10, 60 to 200 kg/m. By Simpson over fine strips.
    const turned = [
      { s: 2, length: 1 },
      { s: 8, length: 1, angle: 30 },
    ];
    const edge = edgeAt(tip(build(rectangle(12, 0.5), turned, [line("flange", 6, 10, [60, 200])])), [
      Math.cos(Math.PI / 6),
      Math.sin(Math.PI / 6),
    ]);
    let [righting, overturning] = [0, 0];
    const strips = 40_000;
    for (let i = 0; i < strips; i++) {
      const s = 6 + (4 * (i + 0.5)) / strips;
      const weight = (g * (60 + (140 * (s - 6)) / 4) * 4) / strips;
      const x = (s - 8) * Math.cos(Math.PI / 6);
      if (x > 0) overturning += weight * x;
      else righting -= weight * x;
    }
    expect(edge.righting).toBeCloseTo(righting, 4);
    expect(edge.overturning).toBeCloseTo(overturning, 4);
  });
});

describe("where a person may stand", () => {
  // An L-shaped plate: 6 × 4 with the corner 3..6 × 1..4 (seen from t = −1) away, 50 kg in its middle of the stands.
  const outline: Point[] = [
    [0, -2],
    [6, -2],
    [6, 0],
    [3, 0],
    [3, 2],
    [0, 2],
  ];
  const plate = build(
    outline,
    [
      { s: 1, length: 2 },
      { s: 4, length: 2, t: -0.5 },
    ],
    [point("plate", 2.2, -0.2, 800)],
  );
  const { edges, outline: rings } = tip(plate);

  it("the contour of a force is where that force tips", () => {
    for (const force of [1000, 2500, 5000, 20_000]) {
      const region = standingRegion(edges, rings, force);
      expect(region.length).toBeGreaterThan(0);
      for (const ring of region)
        for (const [s, t] of ring) {
          const tips = tippingForceAt(edges, s, t, 6);
          if (tips !== null) expect(tips).toBeGreaterThan(force * (1 - 1e-9));
        }
      // Points of the outline that the region leaves out are tipped by less.
      for (const [s, t] of outline) {
        const inside = region.some((ring) => ring.some(([a, b]) => a === s && b === t));
        if (!inside) expect(tippingForceAt(edges, s, t, 6)).toBeLessThan(force);
      }
    }
  });

  it("is the whole outline up to the least tipping force and less beyond it", () => {
    const least = leastTippingForce(edges, rings, 6)!.value;
    const area = (force: number) => standingRegion(edges, rings, force).reduce((sum, r) => sum + signedArea(r), 0);
    expect(area(least * (1 - 1e-9))).toBeCloseTo(6 * 2 + 3 * 2, 9);
    expect(area(least * 1.01)).toBeLessThan(18 - 1e-6);
    expect(area(4 * least)).toBeLessThan(area(2 * least));
    expect(area(1e9)).toBeLessThan(area(4 * least));
  });

  it("is the polygon itself for a force past all bounds, and for any force beyond an edge without margin", () => {
    // Its edge from (4, 0.5) to (1, 1) crosses the corner that is cut away: ∫ from 3 to 4 of 1 − (s − 1)/6 is 7/12.
    const polygon = signedArea(edges.map(({ from }) => from)) - 7 / 12;
    const all = standingRegion(edges, rings, 1e15).reduce((sum, ring) => sum + signedArea(ring), 0);
    expect(all).toBeCloseTo(polygon, 6);
    const none = edges.map((edge) => ({ ...edge, margin: -5 }));
    expect(standingRegion(none, rings, 1).reduce((sum, r) => sum + signedArea(r), 0)).toBeCloseTo(polygon, 9);
    expect(tippingForceAt(none, 6, -1, 6)).toBe(0);
  });
});

describe("one stand gone", () => {
  const three = (third: number) =>
    build(
      rectangle(12, 0.5),
      [
        { s: 1, length: 1 },
        { s: 5, length: 1 },
        { s: third, length: 1 },
      ],
      [line("beam", 0, 12, [100, 100])],
    );

  it("names the stands without which it tips", () => {
    // Load centre at 6: without the third stand the others end at 5; without the first, 5..11 still holds it.
    const { model, level } = three(11);
    expect(standsNotToLose(model, level)).toEqual(["S3"]);
  });

  it("counts a load centre exactly on the line of the others as lost", () => {
    const { model, level } = build(
      rectangle(12, 0.5),
      [
        { s: 1, length: 1 },
        { s: 6, length: 1 },
        { s: 11, length: 1 },
      ],
      [line("beam", 0, 12, [100, 100])],
    );
    expect(standsNotToLose(model, level)).toEqual(["S1", "S3"]);
  });

  it("says nothing of a part that is unstable anyway", () => {
    const { model, level } = three(5.5);
    const unstable = { ...level, parts: [{ ...level.parts[0]!, stable: false }] } as StepLevel;
    expect(standsNotToLose(model, unstable)).toEqual([]);
  });
});
