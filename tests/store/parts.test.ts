import { describe, expect, it } from "vitest";
import { cutAt, joinAfter, tidied } from "../../src/store";

describe("joints of a half-built piece", () => {
  it("a joint opened in the whole piece makes two parts, and welded again the whole piece", () => {
    const open = cutAt(null, 12, 5);
    expect(open).toEqual([
      [0, 5],
      [5, 12],
    ]);
    expect(joinAfter(open!, 12, 0)).toBeNull();
  });

  it("a joint at an end or in a stretch that is not there changes nothing", () => {
    const parts = [
      [0, 5],
      [7, 12],
    ] as const;
    expect(cutAt(parts, 12, 6)).toEqual(parts);
    expect(cutAt(parts, 12, 5)).toEqual(parts);
    expect(cutAt(null, 12, 0)).toBeNull();
    expect(cutAt(null, 12, 12)).toBeNull();
  });

  it("parts that do not touch cannot be welded", () => {
    const parts = [
      [0, 5],
      [7, 12],
    ] as const;
    expect(joinAfter(parts, 12, 0)).toBe(parts);
    expect(joinAfter(parts, 12, 1)).toBe(parts);
  });

  it("only the whole length is written as the whole piece", () => {
    expect(tidied([[0, 12]], 12)).toBeNull();
    expect(tidied([[0, 11]], 12)).toEqual([[0, 11]]);
  });
});
