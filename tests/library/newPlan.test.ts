import { describe, expect, it } from "vitest";
import { reportOf } from "../../src/checks";
import { genericStands } from "../../src/library/genericStands";
import { type NewPlanAnswers, newPlan, notKnown, standPlaces, standPositions } from "../../src/library/newPlan";
import { complete } from "../../src/plan";

/** 10 000 × 4.4482216152605 N, the pound-force of the international yard and pound agreement. */
const tenThousandPounds = 44482.216152605;

const answered: NewPlanAnswers = {
  kind: "member",
  name: "Beam",
  length: 12,
  width: 0.4,
  depth: 0.9,
  mass: 6000,
  basis: "scale",
  centre: { kind: "middle" },
  standCount: 4,
  stand: "horse",
  rating: { load: tenThousandPounds, per: "stand" },
  tops: "laser",
  display: { units: "us" },
};

const nothingKnown: NewPlanAnswers = {
  kind: null,
  name: "",
  length: null,
  width: null,
  depth: null,
  mass: null,
  basis: null,
  centre: null,
  standCount: null,
  stand: null,
  rating: null,
  tops: null,
  display: { units: "metric" },
};

const only = (change: Partial<NewPlanAnswers>) => newPlan({ ...answered, ...change });
const massOf = (change: Partial<NewPlanAnswers>) => only(change).piece.masses[0]!;

describe("what is known goes into the plan as it was said", () => {
  it("an even piece is a line mass of mass over length", () => {
    expect(massOf({})).toMatchObject({ kind: "line", from: 0, to: 12, massPerLength: [500, 500], uncertainty: 0.01 });
  });

  it("a marked centre is the centroid of the line mass, and of a point mass near an end", () => {
    const line = massOf({ centre: { kind: "at", s: 7, t: 0.05 } });
    if (line.kind !== "line") throw new Error("expected a line mass");
    const [a, b] = line.massPerLength;
    // Centroid of a trapezium over l: l·(a + 2b)/(3(a + b)); its whole: (a + b)·l/2.
    expect((12 * (a + 2 * b)) / (3 * (a + b))).toBeCloseTo(7, 12);
    expect(((a + b) * 12) / 2).toBeCloseTo(6000, 9);
    expect(line.t).toBe(0.05);
    expect(massOf({ centre: { kind: "at", s: 3, t: 0 } })).toMatchObject({ kind: "point", s: 3, mass: 6000 });
  });

  it("a rating per stand is the plate's, per pair half of it, and without either word it is left open", () => {
    expect(only({}).standTypes[0]).toMatchObject({ ratedLoad: tenThousandPounds, marking: "10000 LB PER STAND" });
    expect(only({ rating: { load: tenThousandPounds, per: "pair" } }).standTypes[0]!.ratedLoad).toBe(
      tenThousandPounds / 2,
    );
    const open = only({ rating: { load: tenThousandPounds, per: null } });
    expect(open.standTypes[0]!.ratedLoad).toBeNull();
    expect(open.notes).toContain("one stand or of a pair");
  });

  it("the marking is what the plate says, in kilonewtons or in kilograms", () => {
    const marking = (load: number, per: "stand" | "pair") =>
      only({ rating: { load, per }, display: { units: "metric" } }).standTypes[0]!.marking;
    expect(marking(90_000, "pair")).toBe("90 kN PER PAIR");
    // 4000 kg × 9.80665 m/s² = 39 226.6 N.
    expect(marking(39_226.6, "stand")).toBe("4000 KG PER STAND");
    // Round in neither: 41 234 N.
    expect(marking(41_234, "stand")).toBe("41.234 kN PER STAND");
  });

  it("tops set by laser are the default criterion, the others change it", () => {
    expect(only({}).criteria).toEqual({});
    expect(only({ tops: "touch" }).criteria).toEqual({ levelTolerance: 0.0005 });
    expect(only({ tops: "tape" }).criteria).toEqual({ levelTolerance: 0.006 });
  });

  it("says nothing in the notes when everything is known, and is rigid", () => {
    expect(only({}).notes).toBe("");
    expect(only({}).piece.stiffness).toBe("rigid");
  });
});

describe("what “don't know” means", () => {
  it.each([
    ["scale", 0.01],
    ["hook", 0.02],
    ["maker", 0.05],
    ["model", 0.05],
    ["calculated", 0.1],
    ["guess", 0.25],
  ] as const)("a weight by %s is within ± %f", (basis, uncertainty) => {
    expect(massOf({ basis })).toMatchObject({ basis, uncertainty });
  });

  it("a guess, and a weight nobody vouches for, has its centre within a tenth of length and width", () => {
    for (const change of [{ basis: "guess" }, { basis: null }, { mass: null }] as const)
      expect(massOf(change)).toMatchObject({
        kind: "point",
        basis: "guess",
        uncertainty: 0.25,
        s: 6,
        centreWithin: { s: 1.2, t: 0.04 },
      });
  });

  it("a centre not known keeps the weight's own ±", () => {
    expect(massOf({ centre: null })).toMatchObject({ kind: "point", uncertainty: 0.01, centreWithin: { t: 0.04 } });
  });

  it("a weight not known is guessed from the size: a plate of steel as solid", () => {
    const plate = newPlan({ ...answered, kind: "plate", length: 2, width: 1, depth: 0.1, mass: null });
    expect(plate.piece.masses[0]).toMatchObject({ mass: 1570, basis: "guess" });
  });

  it("tops whose setting nobody knows count as set by tape", () => {
    expect(only({ tops: null }).criteria).toEqual({ levelTolerance: 0.006 });
  });

  it("with nothing known at all there is still a plan, and each gap is a sentence in its notes", () => {
    const plan = newPlan(nothingKnown);
    expect(plan.layouts[0]!.placements).toHaveLength(2);
    expect(plan.standTypes[0]!.ratedLoad).toBeNull();
    expect(plan.notes).toBe(notKnown(nothingKnown).join("\n"));
    expect(notKnown(nothingKnown)).toHaveLength(8);
  });
});

describe("where stands begin", () => {
  it("two at the Bessel points, more in the middles of equal lengths, to 10 mm", () => {
    expect(standPositions(10, 2, 5, 0.2)).toEqual([2.2, 7.8]);
    expect(standPositions(12, 4, 6, 0.2)).toEqual([1.5, 4.5, 7.5, 10.5]);
  });

  it("three under a die are two and one, each with a third of an even piece; under a narrow one they stand in a line", () => {
    const top = { length: 0.914, width: 0.305 };
    const wide = standPlaces("die", [3, 2.5], 3, [1.5, 0], top);
    // Pair at l/3, one at 5l/6: moments about the pair give R₃ = W·(l/2 − l/3)/(5l/6 − l/3) = W/3.
    expect(wide).toEqual([
      [1, -0.63],
      [1, 0.63],
      [2.5, 0],
    ]);
    const narrow = standPlaces("plate", [3, 0.8], 3, [1.5, 0], top);
    expect(narrow.map(([, t]) => t)).toEqual([0, 0, 0]);
    expect(standPlaces("member", [12, 2.5], 3, [6, 0], top).map(([, t]) => t)).toEqual([0, 0, 0]);
    expect(standPlaces("die", [3, 2.5], 4, [1.5, 0], top).map(([, t]) => t)).toEqual([0, 0, 0, 0]);
  });

  it.each(["die", "plate"] as const)("three stands of a new %s stand, and clear of each other", (kind) => {
    const plan = newPlan({ ...answered, kind, length: 3, width: 2.5, standCount: 3, stand: "die-stand" });
    const { findings } = reportOf(complete(plan));
    const verdict = (code: string) => findings.find((one) => one.code === code)?.verdict;
    expect(verdict("tips")).toBe("holds");
    expect(verdict("stands-overlap")).toBe("holds");
    expect(new Set(plan.layouts[0]!.placements.map(({ t }) => t)).size).toBe(3);
  });

  it("they follow the centre of gravity but stay under the piece", () => {
    expect(standPositions(12, 4, 6.5, 0.2)).toEqual([2, 5, 8, 11]);
    const far = standPositions(12, 4, 11, 0.2);
    expect(Math.max(...far)).toBe(11.9);
  });

  it.each(genericStands)("$type.name can be set to the height it begins with", ({ type, height }) => {
    const steps = type.height.increment === 0 ? 0 : (height - type.height.min) / type.height.increment;
    expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
    expect(height).toBeGreaterThanOrEqual(type.height.min);
    expect(height).toBeLessThanOrEqual(type.height.max);
    expect(type.legSpacing).toBeLessThanOrEqual(type.top.length);
  });
});
