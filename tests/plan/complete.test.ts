import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { complete, criteriaOf, isChanged, type PlanDocument, pieceLength, typeOf } from "../../src/plan";

const reference = (name: string): PlanDocument =>
  JSON.parse(readFileSync(new URL(`../cases/reference/${name}.json`, import.meta.url), "utf8"));

describe("complete", () => {
  const minimal = reference("94-all-optional-left-out");

  it("fills in every default of the plan format", () => {
    const plan = complete(minimal);
    expect(plan.revision).toBe(1);
    expect(plan.notes).toBe("");
    expect(plan.display).toEqual({ units: "metric", length: null, force: null });
    expect(plan.piece.ends).toEqual({ datum: "datum end", far: "far end" });
    expect(plan.piece.masses[1]).toMatchObject({ uncertainty: 0, basis: null, centreWithin: { s: 0, t: 0 } });
    expect(plan.piece.restZones).toBeNull();
    expect(plan.standTypes[0]).toMatchObject({ ratedLoad: null, stiffness: null, casters: null, marking: "" });
    expect(plan.stands[0]).toMatchObject({ lastInspected: null, heightOffset: 0 });
    expect(plan.layouts[0]?.placements[0]).toEqual({ stand: "S1", s: 1, t: 0, height: 0.8, angle: 0, shim: 0 });
    expect(plan.steps[0]).toMatchObject({ absent: [], parts: null, bow: null, setDown: false, readings: [] });
    expect(plan.bay?.walkways[0]).toEqual({ name: "exit", from: [1, 1], to: [19, 1], lane: null });
    expect(plan.bay?.slab).toBeNull();
    expect(plan.criteria).toEqual({});
    expect(pieceLength(plan.piece)).toBe(8);
    expect(typeOf(plan, plan.stands[0]!.id).id).toBe("t1");
  });

  it("gives the same objects for the same objects", () => {
    const renamed: PlanDocument = { ...minimal, title: "another title" };
    const before = complete(minimal);
    const after = complete(renamed);
    expect(complete(minimal)).toBe(before);
    expect(after).not.toBe(before);
    expect(after.title).toBe("another title");
    for (const key of ["piece", "standTypes", "stands", "layouts", "steps", "bay", "criteria"] as const)
      expect(after[key]).toBe(before[key]);
  });

  it("completes anew only what was changed", () => {
    const first = minimal.layouts[0]!;
    const [one, ...others] = first.placements;
    const moved: PlanDocument = {
      ...minimal,
      layouts: [{ ...first, placements: [{ ...one!, s: 1.5 }, ...others] }],
    };
    const before = complete(minimal).layouts[0]!;
    const after = complete(moved).layouts[0]!;
    expect(after.placements[0]).not.toBe(before.placements[0]);
    expect(after.placements[1]).toBe(before.placements[1]);
    expect(complete(moved).piece).toBe(complete(minimal).piece);
  });

  it("keeps an object that leaves nothing out", () => {
    const plan = complete(minimal);
    expect(complete(plan)).toBe(plan);
  });
});

describe("criteria", () => {
  it("are the defaults of the specification with the plan's changes", () => {
    const criteria = criteriaOf({ criteria: { setDownFactor: 1.4, friction: { steel: 0.15 } } });
    expect(criteria).toMatchObject({ setDownFactor: 1.4, levelTolerance: 0.003, personLoad: 1334, sagLimit: null });
    expect(criteria.friction).toEqual({ steel: 0.15, hardwood: 0.3, "uhmw-pe": 0.05, rubber: 0.3 });
    expect(criteria.bearingPressure.hardwood).toBe(5.5e6);
  });

  it("know which of them a plan changes", () => {
    const plan = {
      criteria: { setDownFactor: 1.4, tipReserve: 1.5, friction: { steel: 0.15 }, require: ["slab"] },
    } as const;
    expect(isChanged(plan, "setDownFactor")).toBe(true);
    expect(isChanged(plan, "tipReserve")).toBe(false);
    expect(isChanged(plan, "cgMargin")).toBe(false);
    expect(isChanged(plan, "friction")).toBe(true);
    expect(isChanged(plan, "friction", "steel")).toBe(true);
    expect(isChanged(plan, "friction", "rubber")).toBe(false);
    expect(isChanged(plan, "require")).toBe(true);
    expect(isChanged({ criteria: {} }, "require")).toBe(false);
  });
});
