/** How much more weight the level solution takes: by hand where the reactions are statics, by search where they are not. */

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { clipToHalfPlanes, regionsArea, signedArea } from "../../../src/geometry";
import { complete, type Plan, type PlanDocument, type Point } from "../../../src/plan";
import {
  assembleStep,
  levelForce,
  levelRegion,
  PartSolver,
  type PointLoad,
  type StepLevel,
  type StepModel,
  standingMap,
  tippingOf,
} from "../../../src/statics";

function planOf(name: string): Plan {
  const text = readFileSync(new URL(`../../cases/reference/${name}.json`, import.meta.url), "utf8");
  return complete(JSON.parse(text) as PlanDocument);
}

/** Reactions by stand with a force more; null where it tips. */
function reactions(model: StepModel, s: number, t: number, force: number): number[] | null {
  const extra: PointLoad = {
    kind: "point",
    source: { kind: "load", index: 0 },
    s,
    down: force,
    momentS: 0,
    momentT: force * t,
  };
  const [part] = model.parts;
  const solver = new PartSolver({ ...part!, loads: [...part!.loads, extra] });
  if (solver.solve() === "unstable") return null;
  const sums = model.stands.map(() => 0);
  part!.contacts.forEach(({ stand }, j) => {
    sums[stand]! += solver.reactions[j]!;
  });
  return sums;
}

function levelOf(model: StepModel): StepLevel {
  const stands = reactions(model, 0, 0, 0)!.map((reaction) => ({ reaction }));
  const force = stands.reduce((sum, { reaction }) => sum + reaction, 0);
  return { stands, parts: [{ stable: true, resultant: { force, s: 0, t: 0 } }] } as unknown as StepLevel;
}

describe("two stands under a rigid beam: statics", () => {
  const plan = planOf("01-two-rigid");
  const model = assembleStep(plan, plan.steps[0]!);
  const level = levelOf(model);
  const [first, second] = model.stands.map(({ s }) => s) as [number, number];
  const [r1, r2] = level.stands.map(({ reaction }) => reaction!) as [number, number];
  const span = second - first;

  it("relieves the far stand from the overhang", () => {
    const takes = levelForce(model, level, 0, [null, null]);
    for (const out of [0.5, 1, 1.5]) {
      // About the second stand: R1·span = P·out.
      expect(takes(second + out, 0)! / ((r1 * span) / out)).toBeCloseTo(1, 9);
    }
    expect(takes((first + second) / 2, 0)).toBeNull();
  });

  it("passes a limit between the stands", () => {
    const takes = levelForce(model, level, 0, [r1 + 5000, r2 + 9000]);
    for (const share of [0.1, 0.3, 0.6, 0.9]) {
      // P·(1 − share) on the first, P·share on the second
      const least = Math.min(5000 / (1 - share), 9000 / share);
      expect(takes(first + share * span, 0)! / least).toBeCloseTo(1, 9);
    }
  });

  it("takes nothing more where a stand is past its limit already", () => {
    expect(levelForce(model, level, 0, [r1 - 1, null])((first + second) / 2, 0)).toBe(0);
  });
});

describe("against a search", () => {
  for (const name of ["07-four-elastic", "35-lift-off-one", "36-partial-contact", "12-torsion-flexible"]) {
    it(`${name}: the least force at which something gives`, () => {
      const plan = planOf(name);
      const model = assembleStep(plan, plan.steps[0]!);
      const level = levelOf(model);
      const { force: weight } = level.parts[0]!.resultant;
      const limits = model.stands.map((_, i) => (i === 1 ? null : level.stands[i]!.reaction! + 0.2 * weight));
      const takes = levelForce(model, level, 0, limits);
      const gives = (s: number, t: number, force: number): boolean => {
        const now = reactions(model, s, t, force);
        if (now === null) return true;
        return now.some((reaction, i) => {
          const limit = limits[i] ?? null;
          const bore = level.stands[i]!.reaction! > 1e-9 * weight;
          return (limit !== null && reaction > limit) || (bore && reaction <= 1e-12 * weight);
        });
      };
      const length = Math.max(...plan.piece.outline.map(([s]) => s));
      const breadth = Math.max(...plan.piece.outline.map(([, t]) => t));
      for (const along of [0, 0.13, 0.4, 0.55, 0.8, 1])
        for (const across of [-1, -0.3, 0.6]) {
          const [s, t] = [along * length, across * breadth];
          const found = takes(s, t);
          // The first of 200 forces at which it gives, up to three times the weight.
          const steps = Array.from({ length: 200 }, (_, i) => (3 * weight * (i + 1)) / 200);
          const bad = steps.find((force) => gives(s, t, force));
          if (bad === undefined) expect(found === null || found > 3 * weight * (1 - 1e-6)).toBe(true);
          else {
            expect(found).not.toBeNull();
            expect(found!).toBeLessThanOrEqual(bad * (1 + 1e-6));
            expect(gives(s, t, found! * (1 + 1e-6) + 1e-6)).toBe(true);
            expect(gives(s, t, found! * (1 - 1e-6))).toBe(false);
          }
        }
    });
  }
});

describe("the outline of where it may stand", () => {
  /** A rigid die on three stands with hardly any length: statics, so every contour is a straight line. */
  const at: readonly Point[] = [
    [0.5, 0],
    [2.5, 0.8],
    [2.5, -0.8],
  ];
  const wide = planOf("114-tilt-on-a-wide-die");
  const plan: Plan = {
    ...wide,
    standTypes: wide.standTypes.map((type) => ({ ...type, top: { ...type.top, length: 1e-3 } })),
    layouts: wide.layouts.map((layout) => ({
      ...layout,
      placements: layout.placements.map((placement, i) => ({ ...placement, s: at[i]![0], t: at[i]![1] })),
    })),
  };
  const model = assembleStep(plan, plan.steps[0]!);
  const level = levelOf(model);
  const { force: weight } = level.parts[0]!.resultant;
  const limits = [null, 1, 2].map((_, i) => level.stands[i]!.reaction! + 0.15 * weight);
  const takes = levelForce(model, level, 0, limits);
  const outline: Point[] = [
    [0, -1.1],
    [3, -1.1],
    [3, 1.1],
    [0, 1.1],
  ];
  const strip = { from: 0, to: 3, least: -1.1, most: 1.1 };

  /** By barycentric coordinates: stand i gets λ_i·P, so 0 ≤ R_i + λ_i·P ≤ limit_i are two half-planes each. */
  const byStatics = (force: number): number => {
    const halfPlanes = at.flatMap((own, i) => {
      const [a, b] = [at[(i + 1) % 3]!, at[(i + 2) % 3]!];
      const normal: Point = [b[1] - a[1], a[0] - b[0]];
      const offset = normal[0] * a[0] + normal[1] * a[1];
      const scale = normal[0] * own[0] + normal[1] * own[1] - offset;
      // λ_i = (n·p − offset) ÷ scale
      const side = (sign: number, room: number) => ({
        normal: [(sign * normal[0]) / scale, (sign * normal[1]) / scale] as Point,
        offset: (sign * offset) / scale + room / force,
      });
      return [side(1, limits[i]! - level.stands[i]!.reaction!), side(-1, level.stands[i]!.reaction!)];
    });
    return clipToHalfPlanes(outline, halfPlanes).reduce((sum, ring) => sum + signedArea(ring), 0);
  };
  const area = (force: number): number =>
    levelRegion(takes, force, strip).reduce((sum, ring) => sum + signedArea(ring), 0);

  for (const share of [0.16, 0.2, 0.25, 0.3, 0.35]) {
    it(`has the area that statics gives it at ${share} of the weight`, () => {
      const expected = byStatics(share * weight);
      expect(expected).toBeGreaterThan(0.1);
      expect(expected).toBeLessThan(6.5);
      // Contours are drawn to 5 mm, over some 4 m of border.
      expect(Math.abs(area(share * weight) - expected)).toBeLessThan(0.02);
    });
  }

  it("has the force on its border and less outside it", () => {
    const force = 0.25 * weight;
    let border = 0;
    for (const ring of levelRegion(takes, force, strip)) {
      expect(signedArea(ring)).toBeGreaterThan(0);
      for (const [s, t] of ring) {
        expect(takes(s, t) ?? Infinity).toBeGreaterThanOrEqual(force * (1 - 1e-9));
        if (Math.abs(t) > 1.09 || s < 0.01 || s > 2.99) continue;
        const around = [
          [s, t - 0.01],
          [s, t + 0.01],
        ].map(([a, b]) => takes(a!, b!) ?? Infinity);
        if (Math.min(...around) < force) border++;
      }
    }
    expect(border).toBeGreaterThan(10);
  });

  it("makes a map with tipping: the smaller of the two counts", () => {
    const tipping = tippingOf(model, level, { ...plan.piece, outline }, null, 1334)[0]!;
    const forces = [0.2 * weight, 0.3 * weight];
    const map = standingMap(model, level, 0, tipping, limits, forces);
    map.contours.forEach((contour, i) => {
      const byTipping = contour.tipping.reduce((sum, ring) => sum + signedArea(ring), 0);
      expect(regionsArea(contour.level)).toBeLessThanOrEqual(byTipping + 1e-9);
      expect(Math.abs(regionsArea(contour.level) - byStatics(forces[i]!))).toBeLessThan(0.02);
    });
    // Between the stands nothing tips it; beyond the end a stand is relieved exactly when it tips.
    expect(map.at(2, 0)).toMatchObject({ tipping: null, level: takes(2, 0) });
    const end = map.at(0, 0);
    expect(end.level).toBeLessThanOrEqual(end.tipping!);
  });

  it("is the whole strip for hardly any force and nothing for a great one", () => {
    expect(area(1e-3 * weight)).toBeCloseTo(6.6, 6);
    expect(area(3 * weight)).toBe(0);
  });
});
