import { describe, expect, it } from "vitest";
import type { PlanSection } from "../../src/library";
import { makeUpOf, mergeAway, splitAt, stretchesOf, withSection } from "../../src/panels/piece/stretches";
import type { Polygon } from "../../src/plan";

const outline: Polygon = [
  [0, -0.2],
  [12, -0.2],
  [12, 0.2],
  [0, 0.2],
];
const heavy: PlanSection = {
  section: { depth: 0.6, yield: 345e6 },
  stiffness: { EI: 2e8, kGA: 1e9, GJ: 1e6 },
  massPerLength: 150,
};
const light: PlanSection = { section: { depth: 0.4 }, stiffness: { EI: 1e8, kGA: 5e8, GJ: 5e5 }, massPerLength: 80 };

const rigid = stretchesOf({ stiffness: "rigid", section: null, outline });

describe("a member in lengths with different sections", () => {
  it("a rigid piece is one stretch and stays rigid", () => {
    expect(rigid).toEqual([{ from: 0, to: 12, stiffness: null, strength: null }]);
    expect(makeUpOf(rigid)).toEqual({ stiffness: "rigid", section: null });
  });

  it("one section fills stiffness and strength over the whole length", () => {
    const { stiffness, section } = makeUpOf(withSection(rigid, 0, heavy));
    expect(stiffness).toEqual([{ from: 0, to: 12, EI: 2e8, kGA: 1e9, GJ: 1e6 }]);
    expect(section).toEqual({ depth: 0.6, yield: 345e6 });
  });

  it("two sections side by side are read back as they were made", () => {
    const two = withSection(splitAt(withSection(rigid, 0, heavy), 5), 1, light);
    const made = makeUpOf(two);
    expect(made.stiffness).toEqual([
      { from: 0, to: 5, EI: 2e8, kGA: 1e9, GJ: 1e6 },
      { from: 5, to: 12, EI: 1e8, kGA: 5e8, GJ: 5e5 },
    ]);
    expect(made.section).toEqual([
      { from: 0, to: 5, depth: 0.6, yield: 345e6 },
      { from: 5, to: 12, depth: 0.4 },
    ]);
    expect(stretchesOf({ ...made, outline })).toEqual(two);
  });

  it("a removed stretch is taken over by its neighbour, without a gap", () => {
    const three = splitAt(splitAt(withSection(rigid, 0, heavy), 4), 8);
    for (const index of [0, 1, 2]) {
      const after = mergeAway(three, index);
      expect(after).toHaveLength(2);
      expect(after[0]!.from).toBe(0);
      expect(after[0]!.to).toBe(after[1]!.from);
      expect(after[1]!.to).toBe(12);
    }
    expect(mergeAway(rigid, 0)).toBe(rigid);
  });

  it("a stretch nothing is known of counts as stiff as the stiffest beside it", () => {
    const mixed = withSection(splitAt(rigid, 6), 0, light);
    expect(makeUpOf(mixed).stiffness).toEqual([
      { from: 0, to: 6, EI: 1e8, kGA: 5e8, GJ: 5e5 },
      { from: 6, to: 12, EI: 1e8, kGA: 5e8, GJ: 5e5 },
    ]);
    expect(makeUpOf(mixed).section).toEqual([{ from: 0, to: 6, depth: 0.4 }]);
  });
});
