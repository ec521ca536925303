/** A stiff piece on four or five stands: the extreme lies inside the box, where a neighbour is just about to lift off. */

import { describe, expect, test } from "vitest";
import { PartSolver, type StepModel } from "../../../src/statics";
import { boundsIn, heightOf, modelOf, rigid, weightAt } from "./handModel";

/** N, the weight; m, how far each top may be off. */
const W = 30_000;
const d = 1e-4;

/** A rigid piece on stands of 1e8 N/m whose tops bear at ±0.2 m, its weight at one place. */
function stiffPiece(places: readonly number[], at: number): StepModel {
  const supports = places.map((s) => ({ k: 1e8, points: [[s, -0.2], [s, 0.2]] as const })); // biome-ignore format: one row
  return modelOf([0, places.at(-1)!], rigid, supports, [weightAt(at, 0, W)]);
}

/** The greatest reaction of a stand over all corners of the box: every top high or low. */
function mostAtCorners(model: StepModel, stand: number): number {
  const [part] = model.parts;
  const solver = new PartSolver(part!);
  let most = 0;
  for (let corner = 0; corner < 2 ** model.stands.length; corner++) {
    part!.contacts.forEach((contact, j) => {
      solver.heights[j] = (corner >> contact.stand) & 1 ? d : -d;
    });
    expect(solver.solve()).toBe("solved");
    const sum = part!.contacts.reduce((total, c, j) => (c.stand === stand ? total + solver.reactions[j]! : total), 0);
    most = Math.max(most, sum);
  }
  return most;
}

describe.each([
  // By hand: the stand and one other carry it all, its neighbours just touching
  { places: [0, 2.4, 3.9, 6], at: 3.7, stand: 1, pair: (6 - 3.7) / (6 - 2.4) },
  { places: [0, 2, 3.9, 6, 8], at: 5.5, stand: 2, pair: (8 - 5.5) / (8 - 3.9) },
])("stands at $places, weight at $at", ({ places, at, stand, pair }) => {
  const model = stiffPiece(places, at);
  const box = places.map((_, index) => heightOf(index, -d, d));

  test("corners alone fall short by 5 % of the weight", () => {
    expect(mostAtCorners(model, stand) / W).toBeLessThan(pair - 0.05);
  });

  test("the bounds reach it, at heights inside their ranges", () => {
    const found = boundsIn(model, box)[stand]!;
    expect(found.most / W).toBeCloseTo(pair, 9);
    expect(found.staticsMost / W).toBeCloseTo(pair, 9);
    expect(found.certified).not.toBeNull();
    const heights = Object.values(found.mostAt.heights);
    expect(heights.some((height) => Math.abs(height) < 0.999 * d)).toBe(true);
  });
});
