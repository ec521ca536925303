/** Which weights, centres and loads tip a piece, by hand. */

import { describe, expect, test } from "vitest";
import type { Plan } from "../../../src/plan";
import { boundsOf, type StepBounds } from "../../../src/statics";
import { randomNumbers, randomPlan } from "./plans";

/** A rigid beam of 10 m on stands at 2 and 7 m, tops 0.4 m: its masses and loads as given. */
function beamWith(masses: readonly object[], loads: readonly object[]): Plan {
  const plan = randomPlan(randomNumbers(3), { stands: 2, masses: 1, beam: "rigid", plain: true });
  const layout = plan.layouts[0]!;
  const outline = [[0, -0.2], [10, -0.2], [10, 0.2], [0, 0.2]] as const; // biome-ignore format: one row
  return {
    ...plan,
    piece: { ...plan.piece, outline, masses: masses as Plan["piece"]["masses"] },
    layouts: [{ ...layout, placements: layout.placements.map((one, i) => ({ ...one, s: [2, 7][i]!, t: 0 })) }],
    steps: plan.steps.map((step) => ({ ...step, loads: loads as typeof step.loads })),
  };
}

const point = (
  id: string,
  s: number,
  mass: number,
  uncertainty: number,
  centre: readonly [number, number] = [0, 0],
) => ({
  id,
  name: id,
  kind: "point",
  s,
  t: 0,
  z: 0.3,
  mass,
  uncertainty,
  basis: null,
  centreWithin: { s: centre[0], t: centre[1] }, // biome-ignore format: one row
});

function tipsOf(plan: Plan): Extract<StepBounds, { status: "box tips" }>["edges"] {
  const bounds = boundsOf(plan, plan.steps[0]!);
  if (bounds.status !== "box tips") throw new Error(`expected the box to tip, not ${bounds.status}`);
  return bounds.edges;
}

const mass = (index: number) => ({ kind: "mass", mass: index });
const centre = (index: number) => ({ kind: "centre", mass: index });
const load = (index: number) => ({ kind: "load", load: index });

describe("about the stand at 7 m, masses in kg, distances in m", () => {
  test("a heavier end tips it only together with a lighter middle", () => {
    // 1000·2 = 2000 rights; 900·2.2 = 1980 overturns: 18 and 17.8 more pass the margin of 20 together, neither alone
    const [tip] = tipsOf(beamWith([point("middle", 5, 1000, 0.009), point("end", 9.2, 900, 0.009)], []));
    expect(tip!.must).toEqual([mass(0), mass(1)]);
    expect(tip!.names).toEqual([mass(0), mass(1)]);
    expect(tip!.from[0]).toBe(7);
    expect(tip!.to[0]).toBe(7);
  });

  test("what one of two would do by itself is named, neither is a must", () => {
    // Either 2 % on the end (39.6) or 2 % off the middle (40) passes the margin of 20
    const [tip] = tipsOf(beamWith([point("middle", 5, 1000, 0.02), point("end", 9.2, 900, 0.02)], []));
    expect(tip!.names).toEqual([mass(0), mass(1)]);
    expect(tip!.must).toEqual([]);
  });

  test("a centre that may lie farther out", () => {
    // 900 kg by 25 mm: 22.5 against a margin of 20
    const [tip] = tipsOf(beamWith([point("middle", 5, 1000, 0), point("end", 9.2, 900, 0, [0.025, 0])], []));
    expect(tip!.must).toEqual([centre(1)]);
    expect(boundsOf(beamWith([point("middle", 5, 1000, 0), point("end", 9.2, 900, 0, [0.022, 0])], []), beamWith([], []).steps[0]!).status).toBe("bounded"); // biome-ignore format: one row
  });

  test("a load that holds it down and may not be there", () => {
    // 1000·2 = 2000 against 1100·2.2 = 2420: it stands only with 2500 N at 5 m on it, which is 510 more
    const holding = { name: "clamp", s: 5, t: 0, z: 0.9, force: [0, 0, -2500] };
    const masses = [point("middle", 5, 1000, 0), point("end", 9.2, 1100, 0)];
    const [tip] = tipsOf(beamWith(masses, [holding]));
    expect(tip!.must).toEqual([load(0)]);
  });

  test("a load that pushes it over with a weight that may be lighter", () => {
    // 1000·2 = 2000 less 1 % = 1980; 850·2.2 = 1870; 490 N at 2.3 m = 114.9 kg·m: over by 4.9, not without either
    const person = { name: "person", s: 9.3, t: 0, z: 0.9, force: [0, 0, -490] };
    const [tip] = tipsOf(beamWith([point("middle", 5, 1000, 0.01), point("end", 9.2, 850, 0)], [person]));
    expect(tip!.must).toEqual([mass(0), load(0)]);
  });

  test("the statics limits are given all the same", () => {
    const plan = beamWith([point("middle", 5, 1000, 0.01), point("end", 9.2, 900, 0.01)], []);
    const bounds = boundsOf(plan, plan.steps[0]!);
    if (bounds.status !== "box tips") throw new Error(bounds.status);
    // Of the box only what still stands: the far stand is then just off
    expect(bounds.stands[0]!.staticsLeast).toBeCloseTo(0, 9);
    expect(bounds.stands[1]!.staticsMost / 9.80665).toBeGreaterThan(1900);
  });
});

test("about a long edge a push at a height counts", () => {
  // 1000 kg on tops of ±0.2 m: 1961.3 N·m rights; 3900 N at 0.5 m overturns 1950, 4000 N 2000
  const push = { name: "push", s: 5, t: 0, z: 0.5, force: [0, 3900, 0] };
  const stands = beamWith([point("middle", 5, 1000, 0)], [push]);
  expect(boundsOf(stands, stands.steps[0]!).status).toBe("bounded");
  const lighter = beamWith([point("middle", 5, 1000, 0.01)], [push]);
  const [tip] = tipsOf(lighter);
  expect(tip!.must).toEqual([mass(0), load(0)]);
  const over = beamWith([point("middle", 5, 1000, 0)], [{ ...push, force: [0, 4000, 0] }]);
  expect(boundsOf(over, over.steps[0]!).status).toBe("unstable");
});
