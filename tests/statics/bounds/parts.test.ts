/** Parts that nothing joins: a stand under the joint bears on both, a mass over the joint weighs on both. */

import { describe, expect, test } from "vitest";
import type { Plan } from "../../../src/plan";
import { assembleStep, certifiedBoundsOf, levelAt, perturb, type Witness } from "../../../src/statics";
import { randomNumbers, randomPlan } from "./plans";

/** Two stretches of 6 m; stands at the places given; a line mass over both that may be 10 % off, a point mass on the second. */
function twoStretches(places: readonly number[], beam: "rigid" | "elastic", seed: number): Plan {
  const plan = randomPlan(randomNumbers(seed), {
    stands: places.length,
    masses: 1,
    beam,
    plain: true,
    simpleBeam: true,
    levelTolerance: 0.0005,
    topTilt: 0.0002, // biome-ignore format: one row
  });
  const layout = plan.layouts[0]!;
  const outline = [[0, -0.2], [12, -0.2], [12, 0.2], [0, 0.2]] as const; // biome-ignore format: one row
  const stiffness =
    plan.piece.stiffness === "rigid" ? "rigid" : plan.piece.stiffness.map((one) => ({ ...one, to: 12 }));
  const common = { t: 0, z: 0.3, basis: null } as const;
  const masses = [
    { ...common, id: "body", name: "body", kind: "line", from: 0, to: 12, massPerLength: [150, 250], uncertainty: 0.1 },
    {
      ...common,
      id: "box",
      name: "box",
      kind: "point",
      s: 9,
      mass: 400,
      uncertainty: 0.05,
      centreWithin: { s: 0.1, t: 0 },
    },
  ] as unknown as Plan["piece"]["masses"];
  return {
    ...plan,
    piece: { ...plan.piece, outline, stiffness, masses },
    layouts: [{ ...layout, placements: layout.placements.map((one, i) => ({ ...one, s: places[i]! })) }],
    steps: plan.steps.map((step) => ({ ...step, bow: 0.001, parts: [[0, 6], [6, 12]] as const })), // biome-ignore format: one row
  };
}

function boundsIn(plan: Plan) {
  const bounds = certifiedBoundsOf(plan, plan.steps[0]!);
  if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
  return bounds.stands;
}

/** A point of the box at random, mostly at the ends of ranges. */
function anyWitness(plan: Plan, random: () => number): Witness {
  const within = (half: number) => half * (random() < 0.7 ? Math.sign(random() - 0.5) : 2 * random() - 1);
  const stands = plan.layouts[0]!.placements.map(({ stand }) => stand);
  return {
    heights: Object.fromEntries(stands.map((stand) => [stand, within(0.0005)])),
    tilts: Object.fromEntries(stands.map((stand) => [stand, within(0.0002)])),
    bows: { "0": within(0.001), "1": within(0.001) },
    masses: { body: 1 + within(0.1), box: 1 + within(0.05) },
    centres: { box: [within(0.1), 0] },
    loads: {},
    stiffness: 1,
  };
}

describe.each([
  { beam: "rigid", seed: 3 },
  { beam: "elastic", seed: 4 },
] as const)("a $beam piece in two stretches, one stand of five under the joint", ({ beam, seed }) => {
  const plan = twoStretches([1, 3.5, 6, 8, 11], beam, seed);
  const model = assembleStep(plan, plan.steps[0]!);
  const stands = boundsIn(plan);

  test("the stand under the joint bears on both", () => {
    expect(new Set(model.stands[2]!.intervals.map(({ part }) => part))).toEqual(new Set([0, 1]));
    expect(stands.every(({ certified }) => certified !== null)).toBe(true);
  });

  test("nothing tried at random goes farther, and the witnesses give their values back", () => {
    const random = randomNumbers(seed + 100);
    const { masses } = plan.piece;
    const nominal = levelAt(model, masses);
    const total = nominal.parts.reduce((sum, { resultant }) => sum + resultant.force, 0);
    for (let n = 0; n < 1_000; n++) {
      const level = levelAt(perturb(model, plan, anyWitness(plan, random)), masses);
      level.stands.forEach(({ reaction }, i) => {
        expect(reaction!).toBeLessThanOrEqual(stands[i]!.outer.most + 1e-8 * total);
        expect(reaction!).toBeGreaterThanOrEqual(stands[i]!.outer.least - 1e-8 * total);
      });
    }
    stands.forEach(({ least, most, leastAt, mostAt }, i) => {
      const at = (witness: Witness) => levelAt(perturb(model, plan, witness), masses).stands[i]!.reaction!;
      expect(Math.abs(at(leastAt) - least) / total).toBeLessThan(1e-7);
      expect(Math.abs(at(mostAt) - most) / total).toBeLessThan(1e-7);
    });
  });
});

test("what is on one stretch alone does not know of the other", () => {
  const plan = twoStretches([1, 3, 5.5, 7, 11], "elastic", 4);
  const heavier = {
    ...plan,
    piece: {
      ...plan.piece,
      masses: plan.piece.masses.map((mass) => (mass.kind === "point" ? { ...mass, mass: 900 } : mass)),
    },
  };
  const [before, after] = [boundsIn(plan), boundsIn(heavier)];
  for (const i of [0, 1, 2]) expect(after[i]).toEqual(before[i]);
  expect(after[3]!.most).toBeGreaterThan(before[3]!.most);
});
