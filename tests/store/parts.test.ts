import { describe, expect, it } from "vitest";
import { complete, type PlanDocument } from "../../src/plan";
import { cutAt, joinAfter, jointSpots, tidied, toggledJoint } from "../../src/store";
import { beam, stepOne } from "./plans";

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

describe("a joint of a step", () => {
  const partsIn = (document: PlanDocument) => document.steps.map(({ parts }) => parts ?? null);
  const halves = [
    [0, 5],
    [5, 12],
  ];

  it("is opened in that step alone", () => {
    expect(partsIn(toggledJoint(beam, stepOne, 5))).toEqual([halves, null]);
  });

  it("is welded in that step and in those after it, not before", () => {
    const last = beam.steps[1]!.id;
    const both = toggledJoint(toggledJoint(beam, stepOne, 5), last, 5);
    expect(partsIn(both)).toEqual([halves, halves]);
    expect(partsIn(toggledJoint(both, stepOne, 5))).toEqual([null, null]);
    expect(partsIn(toggledJoint(both, last, 5))).toEqual([halves, null]);
  });

  it("at the end of the piece there is none: the same document", () => {
    expect(toggledJoint(beam, stepOne, 12)).toBe(beam);
  });

  it("is marked wherever some step has one, open or welded", () => {
    const open = complete(toggledJoint(beam, stepOne, 5));
    expect(jointSpots(open, open.steps[0]!)).toEqual([{ s: 5, open: true }]);
    expect(jointSpots(open, open.steps[1]!)).toEqual([{ s: 5, open: false }]);
    const whole = complete(beam);
    expect(jointSpots(whole, whole.steps[0]!)).toEqual([]);
  });
});
