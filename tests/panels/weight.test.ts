import { describe, expect, it } from "vitest";
import { newPlan } from "../../src/library";
import { blockMass, newLineMass, newPointMass } from "../../src/panels/piece/newMass";
import { basesText, massOf, massPresent, weightAccount } from "../../src/panels/piece/weight";
import { complete, type LineMass, type Mass, type MassId, type Plan, type Step } from "../../src/plan";

const plan: Plan = complete(
  newPlan({
    kind: "member",
    name: "Beam",
    length: 12,
    width: 0.4,
    depth: 0.9,
    mass: 6000,
    basis: "calculated",
    centre: { kind: "middle" },
    standCount: 2,
    stand: "horse",
    rating: null,
    tops: "laser",
    display: { units: "metric" },
  }),
);
const step = plan.steps[0]!;
const lug: Mass = {
  id: "lug" as MassId,
  name: "Lug",
  kind: "point",
  s: 6,
  t: 0,
  z: 0.9,
  mass: 2000,
  uncertainty: 0.01,
  basis: "scale",
  centreWithin: { s: 0, t: 0 },
};
const withLug = { ...plan.piece, masses: [...plan.piece.masses, lug] };

describe("what a step weighs and how it was come by", () => {
  it("adds what is there, and its ± as if all erred the same way", () => {
    const account = weightAccount(withLug, step);
    expect(account.mass).toBeCloseTo(8000, 9);
    // 6000 · 10 % + 2000 · 1 %
    expect(account.within).toBeCloseTo(620, 9);
    expect(basesText(account)).toBe("75 % by calculation, 25 % by a scale");
  });

  it("leaves out what is absent and what lies off every part", () => {
    expect(weightAccount(withLug, { ...step, absent: [lug.id] }).mass).toBeCloseTo(6000, 9);
    const half: Step = { ...step, parts: [[0, 3]], absent: [lug.id] };
    expect(weightAccount(withLug, half).mass).toBeCloseTo(1500, 9);
  });

  it("cuts a line that grows as a trapezium", () => {
    const line: LineMass = { ...(plan.piece.masses[0] as LineMass), massPerLength: [0, 120] };
    // q = 10·s: from 0 to 12 that is 720; the first half holds a quarter of it.
    expect(massOf(line)).toBeCloseTo(720, 9);
    expect(massPresent(line, [[0, 6]])).toBeCloseTo(180, 9);
    expect(
      massPresent(line, [
        [-5, 0],
        [13, 20],
      ]),
    ).toBe(0);
  });

  it("nothing known is said as such", () => {
    expect(basesText({ bases: [] })).toBe("no weights yet");
    expect(basesText({ bases: [{ basis: null, share: 1 }] })).toBe("not said how");
  });
});

describe("weights as they begin", () => {
  it("a block weighs density times its three sizes, at its middle", () => {
    const block = { name: "Plate", from: 2, to: 4, t: 0.1, width: 0.5, height: 0.02, base: 0.3, density: 7850 };
    const mass = blockMass("b" as MassId, block);
    expect((mass.massPerLength[0] * (mass.to - mass.from)) / (7850 * 2 * 0.5 * 0.02)).toBeCloseTo(1, 12);
    expect(mass).toMatchObject({ t: 0.1, z: 0.31, basis: "calculated", uncertainty: 0.1 });
  });

  it("what nobody has weighed is a guess", () => {
    expect(newPointMass("p" as MassId, plan.piece)).toMatchObject({ s: 6, basis: "guess", uncertainty: 0.25 });
    expect(newLineMass("l" as MassId, plan.piece)).toMatchObject({
      from: 0,
      to: 12,
      basis: "guess",
      uncertainty: 0.25,
    });
  });
});
