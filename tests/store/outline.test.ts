/** Another outline for the piece: weights stay what they are, and what lies on it stays in the bay or keeps its share. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pieceFrame, toOuter } from "../../src/geometry";
import { complete, type PlanDocument, type Point, pieceLength, read, write } from "../../src/plan";
import { edits } from "../../src/store";
import { beam } from "./plans";

const outlineOf = (from: number, to: number): readonly Point[] => [
  [from, -0.2],
  [to, -0.2],
  [to, 0.3],
  [from, 0.3],
];

const full: PlanDocument = {
  ...beam,
  piece: {
    ...beam.piece,
    pose: { x: 2, y: 3, heading: 30 },
    stiffness: [
      { from: 0, to: 5, EI: 1e8, kGA: null, GJ: null },
      { from: 5, to: 12, EI: 2e8, kGA: null, GJ: null },
    ],
    underside: [{ from: 4, to: 12, z: [0, 0.08] }],
    noRestZones: [
      {
        name: "pad",
        polygon: [
          [5, 0],
          [6, 0],
          [6, 0.1],
        ],
      },
    ],
    section: [{ from: 0, to: 12, depth: 0.6 }],
  },
  steps: beam.steps.map((step) => ({ ...step, loads: [{ name: "fitter", s: 6, t: 0, z: 0.6, force: [0, 0, -800] }] })),
};

/** kg, as the plan's masses make it up. */
const weigh = (document: PlanDocument): number =>
  document.piece.masses.reduce(
    (sum, mass) =>
      sum +
      (mass.kind === "point"
        ? mass.mass
        : ((mass.massPerLength[0] + mass.massPerLength[1]) / 2) * (mass.to - mass.from)),
    0,
  );

const reshape = (document: PlanDocument, points: readonly Point[]): PlanDocument =>
  edits["shape.points"].run(document, { ref: { kind: "outline", index: 0 }, points });
const redraw = (document: PlanDocument, points: readonly Point[]): PlanDocument =>
  edits["shape.add"].run(document, { kind: "outline", points });

/** Where the stands, the weights and the pad are in the bay, m. */
function placesInBay(document: PlanDocument): readonly Point[] {
  const { piece, layouts } = complete(document);
  const frame = pieceFrame(piece.pose);
  return [
    ...layouts[0]!.placements.map(({ s, t }): Point => [s, t]),
    ...piece.masses.flatMap((mass): Point[] => (mass.kind === "point" ? [[mass.s, mass.t]] : [])),
    ...piece.noRestZones[0]!.polygon,
  ].map((point) => toOuter(frame, point));
}

describe("a corner of the outline pulled", () => {
  test("beyond the datum end: the datum goes with it, everything else stays where it is in the bay", () => {
    const after = reshape(full, outlineOf(-1, 12));
    expect(read(write(after))).toEqual({ ok: true, document: after });
    expect(pieceLength(after.piece)).toBe(13);
    expect(after.layouts[0]!.placements.map(({ s }) => s)).toEqual([2, 7, 12]);
    for (const [index, [x, y]] of placesInBay(after).entries()) {
      expect(x).toBeCloseTo(placesInBay(full)[index]![0], 5);
      expect(y).toBeCloseTo(placesInBay(full)[index]![1], 5);
    }
    // 1200 kg on 13 m.
    expect(after.piece.masses[0]).toMatchObject({ from: 0, to: 13, massPerLength: [1200 / 13, 1200 / 13] });
    expect(after.piece.stiffness).toMatchObject([
      { from: 0, to: 6 },
      { from: 6, to: 13 },
    ]);
    expect(after.piece.underside).toMatchObject([{ from: 5, to: 13, z: [0, 0.08] }]);
    expect(after.steps[0]!.loads?.[0]?.s).toBe(7);
  });

  test("back from the far end cuts what runs past it; slopes keep their slope", () => {
    const after = reshape(full, outlineOf(0, 8));
    expect(read(write(after)).ok).toBe(true);
    expect(weigh(after)).toBeCloseTo(weigh(full), 9);
    expect(after.piece.stiffness).toMatchObject([
      { from: 0, to: 5 },
      { from: 5, to: 8 },
    ]);
    // From 0 at 4 m to 80 mm at 12 m: 40 mm at 8 m.
    expect(after.piece.underside?.[0]?.z[1]).toBeCloseTo(0.04, 12);
    expect(after.piece.pose).toEqual(full.piece.pose);
    // What did not move is the same object.
    expect(after.layouts[0]).toBe(full.layouts[0]);
  });

  test("sideways touches nothing but the outline", () => {
    const after = reshape(full, [
      [0, -0.2],
      [12, -0.2],
      [12, 0.9],
      [0, 0.3],
    ]);
    expect(after.steps).toBe(full.steps);
    expect(after.layouts).toBe(full.layouts);
    expect(after.piece.masses).toBe(full.piece.masses);
  });
});

describe("an outline drawn anew", () => {
  test("what lies on the piece keeps its share of the length", () => {
    const after = redraw(full, outlineOf(2, 8));
    expect(read(write(after)).ok).toBe(true);
    expect(pieceLength(after.piece)).toBe(6);
    // 1, 6 and 11 m of 12 m are 0.5, 3 and 5.5 m of 6 m.
    expect(after.layouts[0]!.placements.map(({ s }) => s)).toEqual([0.5, 3, 5.5]);
    expect(after.piece.masses[1]).toMatchObject({ s: 3, mass: 300 });
    expect(after.piece.masses[0]).toMatchObject({ from: 0, to: 6, massPerLength: [200, 200] });
    // The datum end lies where it was drawn: 2 m along a piece that heads 30° from (2, 3).
    expect(after.piece.pose?.x).toBeCloseTo(2 + 2 * Math.cos(Math.PI / 6), 6);
    expect(after.piece.pose?.y).toBeCloseTo(3 + 2 * Math.sin(Math.PI / 6), 6);
  });
});

test("whatever outline is drawn, the plan reads back and weighs the same", () => {
  const end = fc.integer({ min: 1, max: 400 });
  fc.assert(
    fc.property(
      fc.integer({ min: -200, max: 200 }),
      end,
      fc.array(fc.integer({ min: 1, max: 11 }), { maxLength: 4 }),
      (begins, length, cuts) => {
        const [from, to] = [begins / 10, (begins + length) / 10];
        const ends = [0, ...[...new Set(cuts)].sort((a, b) => a - b), 12];
        const stretches = ends.slice(1).map((end, index) => ({ from: ends[index]!, to: end }));
        const document: PlanDocument = {
          ...full,
          piece: {
            ...full.piece,
            stiffness: stretches.map((stretch, index) => ({ ...stretch, EI: 1e8 + index, kGA: null, GJ: null })),
            underside: stretches.map((stretch) => ({ ...stretch, z: [0, 0.01] })),
          },
        };
        const after = redraw(document, outlineOf(from, to));
        expect(read(write(after))).toEqual({ ok: true, document: after });
        expect(weigh(after)).toBeCloseTo(weigh(document), 6);
      },
    ),
    { numRuns: 60, seed: 20261125 },
  );
});
