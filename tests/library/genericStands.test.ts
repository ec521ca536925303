import { describe, expect, it } from "vitest";
import { genericStands, type NewPlanAnswers, newPlan } from "../../src/library";
import { read, write } from "../../src/plan";

const answers: NewPlanAnswers = {
  kind: "die",
  name: "Die",
  length: 3,
  width: 1.5,
  depth: 0.7,
  mass: 9000,
  basis: "hook",
  centre: { kind: "middle" },
  standCount: 3,
  stand: null,
  rating: null,
  tops: "laser",
  display: { units: "metric" },
};

describe.each(genericStands)("$type.name", ({ type }) => {
  it("comes without a rating, and makes a plan that is read", () => {
    expect(type.ratedLoad).toBeNull();
    const plan = newPlan({ ...answers, stand: type.id });
    expect(plan.stands.map((stand) => stand.type)).toEqual([type.id, type.id, type.id]);
    expect(read(write(plan))).toEqual({ ok: true, document: plan });
  });
});

it("there is one of each kind, as the names say, m", () => {
  const heights = genericStands.map(({ type }) => [type.id, type.height.min, type.height.max, type.height.increment]);
  expect(heights).toEqual([
    ["low-horse", 0.61, 0.61, 0],
    ["horse", 0.762, 0.762, 0],
    ["straight-leg-horse", 0.762, 0.762, 0],
    ["caster-horse", 0.762, 0.762, 0],
    ["adjustable", 0.711, 1.067, 0.025],
    ["die-stand", 0.457, 0.457, 0],
    ["timber-crib", 0.3, 1.2, 0.1],
  ]);
  const kind = (id: string) => genericStands.find(({ type }) => type.id === id)!.type;
  expect(kind("horse").top).toEqual({ length: 1.524, width: 0.203, material: "hardwood" });
  expect(kind("straight-leg-horse").legs).toBe("vertical");
  expect(kind("caster-horse").casters).not.toBeNull();
  expect(kind("die-stand").top.material).toBe("uhmw-pe");
});

it("names are in the units of the plan", () => {
  const names = (units: "us" | "metric") => genericStands.map(({ typeIn }) => typeIn(units).name);
  expect(names("metric").slice(0, 2)).toEqual(["Low horse, 610 mm", "Horse, 762 mm"]);
  expect(names("us")).toEqual([
    "Low horse, 24 in",
    "Horse, 30 in",
    "Straight-leg horse, 30 in",
    "Horse on retracting casters, 30 in",
    "Adjustable stand, 28 to 42 in",
    "Die stand, 18 in, plastic top",
    "Timber crib, 24 in",
  ]);
  expect(newPlan({ ...answers, stand: "horse", display: { units: "us" } }).standTypes[0]!.name).toBe("Horse, 30 in");
});
