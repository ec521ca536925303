import { describe, expect, it } from "vitest";
import { snap, stationsAcross, stationsAlong } from "../../src/geometry";
import type { StandId } from "../../src/plan";
import { planWith } from "../floor/plans";

const stations = [
  { value: 2, name: "joint" },
  { value: 2.05, name: "under lug" },
  { value: 9, name: "far end" },
];

describe("snap", () => {
  it("takes the nearest station in reach", () => {
    expect(snap(2.01, stations, 0.1)).toEqual({ value: 2, name: "joint" });
    expect(snap(2.04, stations, 0.1)).toEqual({ value: 2.05, name: "under lug" });
    expect(snap(8.9, stations, 0.1)).toEqual({ value: 9, name: "far end" });
  });
  it("none out of reach, none without stations", () => {
    expect(snap(2.3, stations, 0.1)).toBeNull();
    expect(snap(2.3, [], 1)).toBeNull();
  });
  it("of equally near ones the first", () => {
    expect(
      snap(
        1,
        [
          { value: 1.5, name: "a" },
          { value: 0.5, name: "b" },
        ],
        1,
      ),
    ).toEqual({ value: 1.5, name: "a" });
  });
  it("a round number only where no station is in reach", () => {
    expect(snap(2.08, stations, 0.1, 0.1)?.name).toBe("under lug");
    expect(snap(3.48, stations, 0.05, 0.5)).toEqual({ value: 3.5, name: "round number" });
    expect(snap(3.4, stations, 0.05, 0.5)).toBeNull();
    expect(snap(3.4, stations, 0.05, 0)).toBeNull();
    // Twelfths of a foot.
    expect(snap(1.0, [], 0.02, 0.0254)!.value).toBeCloseTo(39 * 0.0254, 14);
  });
});

describe("stations along the piece", () => {
  const plan = planWith({
    placements: [{ s: 1.5 }, { s: 8 }],
    piece: {
      ends: { datum: "end A", far: "end B" },
      stiffness: [
        { from: 0, to: 4, EI: 1e8, kGA: null, GJ: null },
        { from: 4, to: 10, EI: 2e8, kGA: null, GJ: null },
      ],
      masses: [
        { id: "lug", name: "lug", kind: "point", s: 5.5, t: 0.1, z: 0, mass: 100 },
        { id: "plate", name: "plates", kind: "line", from: 0, to: 10, massPerLength: [100, 100], t: 0, z: 0 },
      ],
    },
  });
  const layout = plan.layouts[0]!;
  const step = { parts: [[0, 6] as const, [6, 10] as const], absent: [] };
  const all = stationsAlong(plan.piece, layout, step, "S1" as StandId);
  const named = (name: string) => all.filter((station) => station.name === name).map(({ value }) => value);

  it("ends, middle, joints of stiffness and of the step's parts, masses", () => {
    expect([named("end A"), named("end B"), named("middle")]).toEqual([[0], [10], [5]]);
    expect(named("joint").sort()).toEqual([4, 6]);
    expect(named("under lug")).toEqual([5.5]);
    expect(named("under plates")).toEqual([]);
  });
  it("the other stands' mirror images, not its own", () => {
    expect(named("mirror of S2")).toEqual([2]);
    expect(named("mirror of S1")).toEqual([]);
  });
  it("the spots for two stands, on this length", () => {
    expect(named("least sag (Bessel)")[0]).toBeCloseTo(2.2030994, 7);
    expect(named("least sag (Bessel)")[1]).toBeCloseTo(7.7969006, 7);
    expect(named("ends level (Airy)")).toHaveLength(2);
    expect(named("equal reactions, three stands")).toEqual([]);
  });
  it("a mass that is absent in the step is no station, nor is a joint without parts", () => {
    const without = stationsAlong(
      plan.piece,
      layout,
      { parts: null, absent: [plan.piece.masses[0]!.id] },
      "S1" as StandId,
    );
    const names = without.map(({ name }) => name);
    expect(names).not.toContain("under lug");
    expect(without.filter(({ name }) => name === "joint").map(({ value }) => value)).toEqual([4]);
  });
  it("mirror images off the piece are left out", () => {
    const off = planWith({ placements: [{ s: 1 }, { s: -0.2 }] });
    const found = stationsAlong(off.piece, off.layouts[0]!, null, "S1" as StandId);
    expect(found.map(({ name }) => name)).not.toContain("mirror of S2");
  });
  it("across: the axis, masses, the other stands", () => {
    expect(stationsAcross(plan.piece, layout, "S1" as StandId)).toEqual([
      { value: 0, name: "axis" },
      { value: 0.1, name: "under lug" },
      { value: 0, name: "under plates" },
      { value: 0, name: "in line with S2" },
    ]);
  });
});
