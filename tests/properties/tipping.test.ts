/** Invariants of tipping over random steps; a failure prints its seed and the shrunk step. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { polygonHolds, signedArea } from "../../src/geometry";
import type { LineMass, Load, Mass, Point, PointMass } from "../../src/plan";
import { type PartTipping, standingRegion, supportPolygon, tippingForceAt, tippingOf } from "../../src/statics";
import { type Built, build, g, line, point, type Top } from "../statics/tipping/build";

interface Made {
  readonly outline: readonly Point[];
  readonly tops: readonly Top[];
  readonly masses: readonly Mass[];
  readonly loads: readonly Load[];
}

const length = 10;
const between = (least: number, most: number) =>
  fc.integer({ min: 0, max: 200 }).map((i) => least + ((most - least) * i) / 200);

const topOf = fc.record({
  s: between(0.5, 9.5),
  t: between(-0.3, 0.3),
  length: between(0.3, 1.5),
  angle: between(-40, 40),
});
const lineOf = fc
  .record({
    a: between(0, 10),
    b: between(0, 10),
    q: fc.tuple(between(10, 300), between(10, 300)),
    t: between(-0.5, 0.5),
  })
  .filter(({ a, b }) => Math.abs(a - b) > 0.1)
  .map(({ a, b, q, t }) => line("line", Math.min(a, b), Math.max(a, b), q, { t }));
const pointOf = fc
  .record({ s: between(0, 10), t: between(-0.6, 0.6), mass: between(10, 2000) })
  .map(({ s, t, mass }) => point("point", s, t, mass));
const loadOf = fc.record({
  name: fc.constant("load"),
  s: between(0, 10),
  t: between(-0.5, 0.5),
  z: between(-0.5, 2),
  force: fc.tuple(between(-2000, 2000), between(-2000, 2000), between(-3000, 1000)),
});
/** A star-shaped outline that spans the whole length: seldom convex. */
const outlineOf = fc.array(between(0.4, 1.2), { minLength: 6, maxLength: 12 }).map((reaches): Point[] => {
  const n = Math.floor(reaches.length / 2);
  const lower = reaches.slice(0, n).map((reach, i): Point => [(length * i) / (n - 1), -reach]);
  const upper = reaches.slice(n, 2 * n).map((reach, i): Point => [(length * i) / (n - 1), reach]);
  return [...lower, ...upper.reverse()];
});
const made: fc.Arbitrary<Made> = fc
  .record({
    outline: outlineOf,
    tops: fc.array(topOf, { minLength: 2, maxLength: 5 }),
    masses: fc.array(fc.oneof(lineOf, pointOf), { minLength: 1, maxLength: 5 }),
    loads: fc.array(loadOf, { maxLength: 3 }),
  })
  .filter(({ tops }) => Math.max(...tops.map(({ s }) => s)) - Math.min(...tops.map(({ s }) => s)) > 1);

const builtOf = ({ outline, tops, masses, loads }: Made): Built => build(outline, tops, masses, loads);
const tip = ({ model, level, piece }: Built, person = 1334): PartTipping =>
  tippingOf(model, level, piece, null, person)[0]!;
const weightOf = (step: Made): number => builtOf({ ...step, loads: [] }).level.parts[0]!.resultant.force;
const runs = { numRuns: 300 };

describe("tipping", () => {
  it("the margin is the weight times the distance of its centre, where all is certain and nothing is loaded", () => {
    fc.assert(
      fc.property(made, (step) => {
        const bare = { ...step, loads: [] };
        const weight = weightOf(step);
        for (const { margin, distance } of tip(builtOf(bare)).edges)
          expect(Math.abs(margin! - weight * distance!)).toBeLessThan(1e-9 * weight * length);
      }),
      runs,
    );
  });

  it("is the same for the mirror image", () => {
    fc.assert(
      fc.property(made, (step) => {
        const mirrored: Made = {
          outline: step.outline.map(([s, t]): Point => [s, -t]),
          tops: step.tops.map((top) => ({ ...top, t: -(top.t ?? 0), angle: -(top.angle ?? 0) })),
          masses: step.masses.map((mass) => ({ ...mass, t: -mass.t })),
          loads: step.loads.map((load) => ({
            ...load,
            t: -load.t,
            force: [load.force[0], -load.force[1], load.force[2]],
          })),
        };
        expectAlike(tip(builtOf(step)), tip(builtOf(mirrored)), 1, 1);
      }),
      runs,
    );
  });

  it("is the same for the piece turned end for end", () => {
    fc.assert(
      fc.property(made, (step) => {
        const turned: Made = {
          outline: step.outline.map(([s, t]): Point => [length - s, -t]),
          tops: step.tops.map((top) => ({ ...top, s: length - top.s, t: -(top.t ?? 0) })),
          masses: step.masses.map((mass) => turnedMass(mass)),
          loads: step.loads.map((load) => ({
            ...load,
            s: length - load.s,
            t: -load.t,
            force: [-load.force[0], -load.force[1], load.force[2]],
          })),
        };
        expectAlike(tip(builtOf(step)), tip(builtOf(turned)), 1, 1);
      }),
      runs,
    );
  });

  it("grows with sizes and with weights as moments do", () => {
    fc.assert(
      fc.property(made, fc.constantFrom(1e-3, 0.1, 7, 1e3), fc.constantFrom(1e-3, 0.2, 1e4), (step, size, heavy) => {
        const scaled: Made = {
          outline: step.outline.map(([s, t]): Point => [size * s, size * t]),
          tops: step.tops.map((top) => ({
            ...top,
            s: size * top.s,
            t: size * (top.t ?? 0),
            length: size * top.length,
          })),
          masses: step.masses.map((mass) => scaledMass(mass, size, heavy)),
          loads: step.loads.map(({ s, t, z, force: [a, b, c], name }) => ({
            name,
            s: size * s,
            t: size * t,
            z: size * z,
            force: [heavy * a, heavy * b, heavy * c],
          })),
        };
        expectAlike(tip(builtOf(step)), tip(builtOf(scaled), 1334 * heavy), size * heavy, heavy);
      }),
      runs,
    );
  });

  it("does not mind how a line of mass is cut up", () => {
    fc.assert(
      fc.property(made, between(0.05, 0.95), (step, share) => {
        const cut: Made = {
          ...step,
          masses: step.masses.flatMap((mass): readonly Mass[] =>
            mass.kind === "point" ? [mass] : cutLine(mass, share),
          ),
        };
        expectAlike(tip(builtOf(step)), tip(builtOf(cut)), 1, 1);
      }),
      runs,
    );
  });

  it("what is not known never helps", () => {
    fc.assert(
      fc.property(made, between(0, 0.3), between(0, 0.4), (step, uncertainty, within) => {
        const unsure: Made = {
          ...step,
          masses: step.masses.map((mass) =>
            mass.kind === "line"
              ? { ...mass, uncertainty }
              : { ...mass, uncertainty, centreWithin: { s: within, t: within / 2 } },
          ),
        };
        const weight = weightOf(step);
        const [sure, open] = [tip(builtOf(step)), tip(builtOf(unsure))];
        sure.edges.forEach((edge, i) => {
          expect(open.edges[i]!.margin! - edge.margin!).toBeLessThan(1e-9 * weight * length);
          expect(open.edges[i]!.reserve ?? Infinity).toBeLessThanOrEqual((edge.reserve ?? Infinity) * (1 + 1e-9));
        });
      }),
      runs,
    );
  });
});

describe("added weight", () => {
  const stable = ({ edges }: PartTipping): boolean => edges.every((edge) => edge.margin! > 0);

  it("put there as a mass, the tipping force brings the least margin of the edges it lies beyond to zero", () => {
    let tried = 0;
    fc.assert(
      fc.property(made, between(0, 10), between(-0.6, 0.6), (step, s, t) => {
        const before = tip(builtOf(step));
        const force = tippingForceAt(before.edges, s, t, length);
        if (!stable(before) || force === null) return;
        tried++;
        const after = tip(builtOf({ ...step, masses: [...step.masses, point("added", s, t, force / g)] }));
        const beyond = after.edges.filter((_, i) => {
          const { from, outward } = before.edges[i]!;
          return outward[0] * (s - from[0]) + outward[1] * (t - from[1]) > 0;
        });
        const least = Math.min(...beyond.map((edge) => edge.margin!));
        expect(Math.abs(least)).toBeLessThan(1e-9 * (weightOf(step) + force) * length);
      }),
      { numRuns: 600 },
    );
    expect(tried).toBeGreaterThan(60);
  });

  it("the contour of a force has inside it just the places that take it", () => {
    let [within, without] = [0, 0];
    fc.assert(
      fc.property(made, between(0.02, 3), between(0.05, 9.95), between(-1.1, 1.1), (step, share, s, t) => {
        const answer = tip(builtOf(step));
        if (!stable(answer) || !polygonHolds(step.outline, [s, t])) return;
        const force = share * weightOf(step);
        const takes = tippingForceAt(answer.edges, s, t, length) ?? Infinity;
        // Points on the contour itself belong to neither side.
        if (Math.abs(takes / force - 1) < 1e-6) return;
        const region = standingRegion(answer.edges, answer.outline, force);
        const holds = region.some((ring) => polygonHolds(ring, [s, t]));
        expect(holds).toBe(takes > force);
        if (holds) within++;
        else without++;
        const areas = region.map(signedArea);
        expect(areas.every((area) => area > 0)).toBe(true);
        expect(areas.reduce((sum, area) => sum + area, 0)).toBeLessThan(signedArea(step.outline) * (1 + 1e-9));
      }),
      { numRuns: 800 },
    );
    expect(Math.min(within, without)).toBeGreaterThan(20);
  });

  it("the least tipping force is that at some corner, and no point of the outline takes less", () => {
    fc.assert(
      fc.property(
        made,
        fc.array(fc.tuple(between(0, 1), fc.nat(30)), { minLength: 20, maxLength: 20 }),
        (step, places) => {
          const answer = tip(builtOf(step));
          const { addedLoad, edges } = answer;
          const corners = step.outline.map(([s, t]) => tippingForceAt(edges, s, t, length) ?? Infinity);
          const least = addedLoad?.value ?? Infinity;
          expect(least === Math.min(...corners) || Math.abs(least / Math.min(...corners) - 1) < 1e-9).toBe(true);
          for (const [share, i] of places) {
            const [a, b] = [step.outline[i % step.outline.length]!, step.outline[(i + 1) % step.outline.length]!];
            const [s, t] = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
            expect(tippingForceAt(edges, s, t, length) ?? Infinity).toBeGreaterThanOrEqual(least * (1 - 1e-9));
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it("the support polygon without a stand lies within the whole one", () => {
    fc.assert(
      fc.property(made, fc.nat(4), (step, lost) => {
        const { model } = builtOf(step);
        const [part] = model.parts;
        const all = supportPolygon(
          part!,
          step.tops.map(() => true),
        );
        const fewer = supportPolygon(
          part!,
          step.tops.map((_, i) => i !== lost % step.tops.length),
        );
        expect(Math.abs(signedArea(fewer))).toBeLessThanOrEqual(signedArea(all) * (1 + 1e-12));
      }),
      runs,
    );
  });
});

/** The same edges, whatever order they come in: reserves as they are, margins and the least force times a factor. */
function expectAlike(one: PartTipping, other: PartTipping, moments: number, forces: number): void {
  const scale = Math.max(...one.edges.map(({ righting, overturning }) => righting + overturning));
  const margins = (answer: PartTipping) => answer.edges.map((edge) => edge.margin!).sort((a, b) => a - b);
  const reserves = (answer: PartTipping) => answer.edges.map((e) => e.reserve ?? Infinity).sort((a, b) => a - b);
  expect(other.edges).toHaveLength(one.edges.length);
  const others = margins(other);
  margins(one).forEach((margin, i) => {
    expect(Math.abs(others[i]! / moments - margin)).toBeLessThan(1e-8 * scale);
  });
  const otherReserves = reserves(other);
  reserves(one).forEach((reserve, i) => {
    if (reserve > 1e6) expect(otherReserves[i]).toBeGreaterThan(1e6 * (1 - 1e-3));
    else expect(Math.abs(otherReserves[i]! - reserve)).toBeLessThan(1e-8 * (1 + reserve * reserve));
  });
  const [least, otherLeast] = [one.addedLoad, other.addedLoad];
  if (least === null || otherLeast === null) expect(otherLeast).toBe(least);
  else expect(Math.abs(otherLeast.value / forces - least.value)).toBeLessThan(1e-6 * (1 + least.value));
}

function turnedMass(mass: Mass): Mass {
  if (mass.kind === "point") return { ...mass, s: length - mass.s, t: -mass.t };
  const [a, b] = mass.massPerLength;
  return { ...mass, from: length - mass.to, to: length - mass.from, massPerLength: [b, a], t: -mass.t };
}

function scaledMass(mass: Mass, size: number, heavy: number): Mass {
  if (mass.kind === "point")
    return { ...mass, s: size * mass.s, t: size * mass.t, mass: heavy * mass.mass } satisfies PointMass;
  const [a, b] = mass.massPerLength;
  const massPerLength = [(heavy * a) / size, (heavy * b) / size] as const;
  return { ...mass, from: size * mass.from, to: size * mass.to, massPerLength, t: size * mass.t };
}

function cutLine(mass: LineMass, share: number): LineMass[] {
  const at = mass.from + share * (mass.to - mass.from);
  const [a, b] = mass.massPerLength;
  const middle = a + share * (b - a);
  return [
    { ...mass, to: at, massPerLength: [a, middle] },
    { ...mass, from: at, massPerLength: [middle, b] },
  ];
}
