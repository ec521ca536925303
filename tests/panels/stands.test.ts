import { describe, expect, it } from "vitest";
import { genericStands } from "../../src/library";
import { camber } from "../../src/panels/piece/camber";
import { freePosition, settable } from "../../src/panels/stands/freePosition";
import { standViews } from "../../src/panels/stands/picture";
import { wholeType } from "../../src/panels/stands/wholeType";
import type { Placement, StandId, StandTypeId } from "../../src/plan";
import { nextMark } from "../../src/store";

const piece = {
  outline: [
    [0, -0.2],
    [12, -0.2],
    [12, 0.2],
    [0, 0.2],
  ] as const,
};
const at = (stand: string, s: number): Placement => ({
  stand: stand as StandId,
  s,
  t: 0.05,
  angle: 0,
  height: 0.8,
  shim: 0,
});
const horse = wholeType(genericStands.find(({ type }) => type.id === "horse")!.type);

describe("where a stand goes that is placed by a button", () => {
  it("the middle of an empty layout, else the middle of the widest gap", () => {
    expect(freePosition(piece, [], horse).s).toBe(6);
    expect(freePosition(piece, [at("a", 1), at("b", 11)], horse).s).toBe(6);
    expect(freePosition(piece, [at("a", 1), at("b", 3), at("c", 11)], horse).s).toBe(7);
  });

  it("towards an end that hangs out far", () => {
    expect(freePosition(piece, [at("a", 5), at("b", 7)], horse).s).toBe(1.25);
  });

  it("on the line of the others, at a height it can be set to", () => {
    expect(freePosition(piece, [at("a", 1)], horse)).toMatchObject({ t: 0.05, height: 0.762 });
    expect(settable({ min: 0.711, max: 1.067, increment: 0.025 }, 0.8)).toBeCloseTo(0.811, 9);
    expect(settable({ min: 0.711, max: 1.067, increment: 0.025 }, 2)).toBeCloseTo(1.061, 9);
    expect(settable({ min: 0.5, max: 1, increment: 0 }, 0.77)).toBe(0.77);
  });
});

describe("marks of new stands", () => {
  const stand = (id: string, type: string) => ({ id: id as StandId, type: type as StandTypeId });
  it("go on counting after those of the same kind, and never repeat one", () => {
    const stands = [stand("H-1", "horse"), stand("H-2", "horse"), stand("H-4", "horse")];
    expect(nextMark(stands, { id: "horse" as StandTypeId, name: "Horse" })).toBe("H-5");
    expect(nextMark([...stands, stand("D-1", "die")], { id: "crib" as StandTypeId, name: "Crib" })).toBe("C-1");
    expect(nextMark([stand("C-1", "die")], { id: "crib" as StandTypeId, name: "Crib" })).toBe("C-2");
  });
});

describe("the picture of a stand", () => {
  it("has feet where leg spacing, splay and height put them", () => {
    const type = { ...horse, splay: { along: 15, across: 10 } };
    const { front, side } = standViews(type, 0.762);
    const middle = (foot: readonly (readonly [number, number])[]) => (foot[0]![0] + foot[1]![0]) / 2;
    // By hand: 1.219/2 + 0.762·tan 10° = 0.74386; 0.203/2 + 0.762·tan 15° = 0.30568 m.
    expect(middle(front.feet[1]!)).toBeCloseTo(0.74386, 4);
    expect(middle(side.feet[1]!)).toBeCloseTo(0.30568, 4);
    expect(middle(front.feet[0]!)).toBeCloseTo(-0.74386, 4);
    expect(front.top[2]).toEqual([0.762, 0.762]);
  });

  it.each(genericStands)("$type.name lies inside the extent its views name", ({ type, height }) => {
    for (const view of Object.values(standViews(wholeType(type), height)).filter((one) => typeof one !== "number"))
      for (const [x] of [...view.top, ...view.feet.flat(), ...view.legs.flat()]) {
        expect(x).toBeGreaterThanOrEqual(view.from - 1e-12);
        expect(x).toBeLessThanOrEqual(view.to + 1e-12);
      }
  });
});

it("a camber is a parabola, nothing at the ends and its rise in the middle, without gaps", () => {
  const segments = camber(12, 0.01);
  expect(segments[0]!.z[0]).toBe(0);
  expect(segments.at(-1)!.z[1]).toBe(0);
  expect(Math.max(...segments.flatMap(({ z }) => z))).toBeCloseTo(0.01, 12);
  for (const [index, { from }] of segments.entries()) expect(from).toBe(index === 0 ? 0 : segments[index - 1]!.to);
  expect(segments.at(-1)!.to).toBe(12);
});
