import { describe, expect, it } from "vitest";
import { type BandNumbers, bandMarks, bandText } from "../../src/ui/band";

const rated: BandNumbers = {
  level: 4000,
  least: 1000,
  most: 6000,
  staticsLeast: 0,
  staticsMost: 9000,
  rating: 10000,
  setDownFactor: 1.25,
};

describe("where the marks of a band lie", () => {
  it("the rating sets the scale, so equal stands compare", () => {
    const { full, rating, level, span } = bandMarks(rated);
    expect(full).toBe(11500);
    expect(rating! * full).toBeCloseTo(10000, 9);
    expect(level! * full).toBeCloseTo(4000, 9);
    expect(span!.map((end) => end * full)).toEqual([1000, 6000]);
    expect(bandMarks({ ...rated, staticsMost: 40000 }).full).toBe(full);
  });

  it("the limit is the reaction that reaches the rating with the set-down factor on it", () => {
    const { full, limit } = bandMarks(rated);
    expect(limit! * full).toBeCloseTo(8000, 9);
  });

  it("what passes that limit is marked, and stretches the scale only beyond the rating", () => {
    const over = bandMarks({ ...rated, most: 20000 });
    expect(over.full).toBe(21000);
    expect(over.over![0] * over.full).toBeCloseTo(8000, 9);
    expect(over.over![1] * over.full).toBeCloseTo(20000, 9);
    expect(bandMarks({ ...rated, most: 8000 }).over).toBeNull();
    expect(bandMarks({ ...rated, least: 8500, most: 9000 }).over![0] * 11500).toBeCloseTo(8500, 9);
  });

  it("statics limits beyond the edge are cut, and it says so", () => {
    expect(bandMarks(rated).staticsCut).toBe(false);
    const cut = bandMarks({ ...rated, staticsMost: 50000 });
    expect(cut.staticsCut).toBe(true);
    expect(cut.statics![1]).toBe(1);
  });

  it("without a rating the bar is open and the statics limit sets the scale", () => {
    const open = bandMarks({ ...rated, rating: null });
    expect(open).toMatchObject({ rating: null, limit: null, over: null, full: 9000 });
  });

  it("nothing known gives no marks and no division by zero", () => {
    const none = { level: null, least: null, most: null, staticsLeast: null, staticsMost: null, rating: null };
    const marks = bandMarks({ ...none, setDownFactor: 1 });
    expect(marks).toMatchObject({ level: null, span: null, statics: null });
    expect(bandMarks({ ...none, level: 0, setDownFactor: 1 }).level).toBe(0);
  });
});

it("says the same in words", () => {
  const text = bandText(rated, (force) => `${force} N`);
  expect(text).toBe(
    "as planned 4000 N, lightest 1000 N, heaviest 6000 N, whatever the floor 0 N to 9000 N, rated 10000 N",
  );
  expect(bandText({ ...rated, least: null, most: null, rating: null }, String)).toContain("rating not known");
});
